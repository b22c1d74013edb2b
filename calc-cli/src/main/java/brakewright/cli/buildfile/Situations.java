package brakewright.cli.buildfile;

import brakewright.profile.Situation;
import brakewright.profile.Uncertain;
import brakewright.spec.Build;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The vehicle of a build file in its use, for which settings are looked for. */
public final class Situations {

    private Situations() {}

    /**
     * Makes the situation: what the file leaves out and would follow from a speed cap follows it.
     *
     * @param file the build file
     * @return its situation
     */
    public static Situation of(BuildFile file) {
        List<Variations.Spread> spreads = file.variations().uncertain();
        List<Uncertain> ranges = spreads.stream().map(Variations.Spread::range).toList();
        List<InputPlace> places =
                new ArrayList<>(spreads.stream().map(Variations.Spread::place).toList());
        places.add(new InputPlace(Input.SETTINGS_SPEED_CAP, 0, InputPlace.Part.WHOLE));
        boolean follows =
                file.find(Input.USE_SPEED_MAX, 0)
                        .map(each -> each.from() == Resolved.From.ASSUMED)
                        .orElse(true);
        Map<List<Double>, Build> made = new HashMap<>();
        return Situation.of(
                ranges,
                (values, settings) -> {
                    double[] all = Arrays.copyOf(values, places.size());
                    all[values.length] = settings.speedCap().orElse(Double.NaN);
                    Build build =
                            made.computeIfAbsent(
                                    key(all, follows), each -> build(file, places, all, follows));
                    return build.withSettings(settings);
                });
    }

    private static List<Double> key(double[] values, boolean follows) {
        double[] key = values.clone();
        key[key.length - 1] = follows ? key[key.length - 1] : 0.0;
        return Arrays.stream(key).boxed().toList();
    }

    private static Build build(
            BuildFile file, List<InputPlace> places, double[] values, boolean follows) {
        boolean isCapped = follows && !Double.isNaN(values[values.length - 1]);
        int count = isCapped ? values.length : values.length - 1;
        try {
            return count == 0
                    ? file.build()
                    : file.variations()
                            .with(places.subList(0, count), Arrays.copyOf(values, count));
        } catch (BuildFileException wrong) {
            throw new Tolerated.Impossible(wrong);
        }
    }
}

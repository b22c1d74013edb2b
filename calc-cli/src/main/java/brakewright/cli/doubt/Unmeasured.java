package brakewright.cli.doubt;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputPlace;
import brakewright.buildfile.UsualSpread;
import brakewright.profile.Doubts;
import brakewright.profile.Uncertain;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The values that a file does not give but tables and defaults do, within their usual spreads: what
 * to measure first, and what the verdict would be. Stated tolerances are held at their unfavourable
 * corner meanwhile.
 *
 * @param values of which a usual spread is known
 * @param doubts what they do to the verdict
 */
public record Unmeasured(List<Doubtful> values, Doubts doubts) {

    /** Assumption: our own choice; more seldom all lie on the unfavourable side at once. */
    private static final int TOGETHER = 5;

    /** Copies the values. */
    public Unmeasured {
        values = List.copyOf(values);
    }

    /**
     * One such value.
     *
     * @param place where it would stand
     * @param range its usual spread
     * @param kind how well it is known
     */
    public record Doubtful(InputPlace place, Uncertain range, String kind) {

        private static Doubtful of(UsualSpread usual) {
            return new Doubtful(usual.spread().place(), Ranges.of(usual.spread()), usual.kind());
        }
    }

    /**
     * Weighs them.
     *
     * @param file the build file, with the changes that are judged
     * @param tolerated what the tolerances stated do; empty where none is
     * @return the result; empty where every value with a usual spread is given, or the spreads
     *     reach values that do not go together
     */
    public static Optional<Unmeasured> of(BuildFile file, Optional<Tolerated> tolerated) {
        return of(file, tolerated, TOGETHER);
    }

    /** Each by itself alone: the verdict is the nominal one. */
    static Optional<Unmeasured> weighed(BuildFile file, Optional<Tolerated> tolerated) {
        return of(file, tolerated, 0);
    }

    private static Optional<Unmeasured> of(
            BuildFile file, Optional<Tolerated> tolerated, int together) {
        List<InputPlace> fixed = tolerated.map(Tolerated::places).orElse(List.of());
        double[] worst =
                tolerated.stream()
                        .flatMap(each -> each.tolerances().worst().values().stream())
                        .mapToDouble(Double::doubleValue)
                        .toArray();
        List<Doubtful> values =
                file.spreads().usual().stream()
                        .map(Doubtful::of)
                        .filter(each -> isPossible(file, fixed, worst, each))
                        .toList();
        if (values.isEmpty()) {
            return Optional.empty();
        }
        List<InputPlace> all = new ArrayList<>(fixed);
        values.forEach(each -> all.add(each.place()));
        try {
            return Optional.of(
                    new Unmeasured(
                            values,
                            Doubts.of(
                                    values.stream().map(Doubtful::range).toList(),
                                    doubted -> made(file, all, joined(worst, doubted)),
                                    together)));
        } catch (Vehicles.Impossible apart) {
            return Optional.empty();
        }
    }

    private static boolean isPossible(
            BuildFile file, List<InputPlace> fixed, double[] worst, Doubtful each) {
        List<InputPlace> all = new ArrayList<>(fixed);
        all.add(each.place());
        try {
            made(file, all, joined(worst, new double[] {each.range().low()}));
            made(file, all, joined(worst, new double[] {each.range().high()}));
            return true;
        } catch (Vehicles.Impossible apart) {
            return false;
        }
    }

    private static Build made(BuildFile file, List<InputPlace> places, double[] values) {
        try {
            return file.variations().with(places, values);
        } catch (BuildFileException wrong) {
            throw new Vehicles.Impossible(wrong);
        }
    }

    private static double[] joined(double[] one, double[] other) {
        double[] all = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, all, one.length, other.length);
        return all;
    }
}

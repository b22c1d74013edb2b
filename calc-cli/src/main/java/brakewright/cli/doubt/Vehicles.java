package brakewright.cli.doubt;

import brakewright.assembly.Resolved;
import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputPlace;
import brakewright.buildfile.Spread;
import brakewright.profile.Situation;
import brakewright.profile.Uncertain;
import brakewright.profile.Variation;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Settings;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The vehicle of a build file at any values within its tolerances and with any settings laid over
 * its own. What is derived from a number follows it, the highest speed in use for example the speed
 * cap where the file tells none.
 *
 * <p>What differs in settings alone is made from one vehicle, which is kept: so a search over
 * settings at the same values costs little. May be used by several threads.
 */
public final class Vehicles {

    /** Assumption: our own choice; a search over corners comes back to fewer than these. */
    private static final int KEPT = 512;

    private static final InputPlace CAP =
            new InputPlace(Input.SETTINGS_SPEED_CAP, WhichPack.WHOLE, InputPlace.Part.WHOLE);

    private final BuildFile file;
    private final List<InputPlace> places;
    private final List<Uncertain> ranges;
    private final boolean capIsFollowed;
    private final Map<Key, Build> kept = new Recent();

    private record Key(List<Double> values, OptionalDouble cap) {}

    /** A combination of values that do not go together; the file tells what is wrong with them. */
    public static final class Impossible extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final transient BuildFileException why;

        Impossible(BuildFileException why) {
            super(why);
            this.why = why;
        }

        /**
         * Returns what does not go together.
         *
         * @return the complaint
         */
        public BuildFileException why() {
            return why;
        }
    }

    /** The vehicles used last. */
    private static final class Recent extends LinkedHashMap<Key, Build> {

        private static final long serialVersionUID = 1L;

        private Recent() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Build> eldest) {
            return size() > KEPT;
        }
    }

    private Vehicles(BuildFile file) {
        this.file = file;
        List<Spread> spreads = file.spreads().stated();
        this.places = spreads.stream().map(Spread::place).toList();
        this.ranges = Ranges.of(spreads);
        this.capIsFollowed =
                file.find(Input.USE_SPEED_MAX, WhichPack.WHOLE)
                        .map(Resolved::from)
                        .filter(Resolved.From.FILE::equals)
                        .isEmpty();
    }

    /**
     * Prepares the vehicles of a file.
     *
     * @param file the build file, with the changes that hold throughout
     * @return its vehicles
     */
    public static Vehicles of(BuildFile file) {
        return new Vehicles(file);
    }

    /**
     * Returns whether the file states no tolerance.
     *
     * @return true where the nominal vehicle is the only one
     */
    public boolean isExact() {
        return ranges.isEmpty();
    }

    /**
     * Returns the numbers that carry a tolerance.
     *
     * @return where they stand; empty where all are exact
     */
    public List<InputPlace> places() {
        return places;
    }

    /**
     * Returns the ranges of these numbers.
     *
     * @return in the same order
     */
    public List<Uncertain> ranges() {
        return ranges;
    }

    /**
     * Returns the vehicle at the nominal values.
     *
     * @param settings laid over those of the file
     * @return the vehicle
     * @throws Impossible if the values do not go together
     */
    public Build with(Settings settings) {
        return laidOver(
                followed(settings).isPresent()
                        ? made(List.of(), new double[0], followed(settings))
                        : file.build(),
                settings);
    }

    /**
     * Returns the vehicle at other values.
     *
     * @param values of the numbers that carry a tolerance, in calculation units
     * @param settings laid over those of the file
     * @return the vehicle
     * @throws Impossible if the values do not go together
     */
    public Build at(double[] values, Settings settings) {
        return laidOver(made(places, values, followed(settings)), settings);
    }

    /**
     * Returns the vehicle at other values, for settings that stay.
     *
     * @param settings laid over those of the file
     * @return makes the vehicle, and throws {@link Impossible} where values do not go together
     */
    public Variation under(Settings settings) {
        return values -> at(values, settings);
    }

    /**
     * Returns the vehicle in its use, for which settings are looked for.
     *
     * @return its situation; it takes settings as they are told, and none of those of the file
     */
    public Situation situation() {
        return Situation.of(
                ranges,
                (values, settings) ->
                        (isExact() && followed(settings).isEmpty()
                                        ? file.build()
                                        : made(places, values, followed(settings)))
                                .withSettings(settings));
    }

    private static Build laidOver(Build build, Settings settings) {
        return settings.equals(Settings.NONE)
                ? build
                : build.withSettings(build.settings().overlaidBy(settings));
    }

    /** A cap that the use follows makes another use; empty for one that it does not. */
    private OptionalDouble followed(Settings settings) {
        return capIsFollowed ? settings.speedCap() : OptionalDouble.empty();
    }

    private Build made(List<InputPlace> which, double[] values, OptionalDouble cap) {
        Key key = new Key(Arrays.stream(values).boxed().toList(), cap);
        synchronized (kept) {
            Build known = kept.get(key);
            if (known != null) {
                return known;
            }
        }
        Build build = makes(which, values, cap);
        synchronized (kept) {
            kept.put(key, build);
        }
        return build;
    }

    private Build makes(List<InputPlace> which, double[] values, OptionalDouble cap) {
        try {
            if (cap.isEmpty()) {
                return file.variations().with(which, values);
            }
            List<InputPlace> all = new ArrayList<>(which);
            all.add(CAP);
            double[] numbers = Arrays.copyOf(values, all.size());
            numbers[values.length] = cap.getAsDouble();
            return file.variations().with(all, numbers);
        } catch (BuildFileException wrong) {
            throw new Impossible(wrong);
        }
    }
}

package brakewright.cli.buildfile;

import brakewright.profile.Distribution;
import brakewright.profile.Tolerances;
import brakewright.profile.Uncertain;
import brakewright.profile.Variation;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import java.util.List;
import java.util.Optional;

/**
 * What the tolerances stated in a build file make of it.
 *
 * @param places the numbers that carry a tolerance
 * @param tolerances what they do
 * @param distribution the share of cases within limits; empty where no cases were asked for
 */
public record Tolerated(
        List<InputPlace> places, Tolerances tolerances, Optional<Distribution> distribution) {

    /** Copies the places. */
    public Tolerated {
        places = List.copyOf(places);
    }

    /**
     * Works out what the tolerances do.
     *
     * @param file the build file
     * @param changes settings laid over those of the file
     * @param cases how many cases to count; 0 for none
     * @param seed of the cases
     * @return the result; empty where the file states no tolerance
     * @throws BuildFileException if the tolerances reach values that do not go together
     */
    public static Optional<Tolerated> of(BuildFile file, Settings changes, int cases, long seed)
            throws BuildFileException {
        List<Variations.Spread> spreads = file.variations().uncertain();
        if (spreads.isEmpty()) {
            return Optional.empty();
        }
        List<InputPlace> places = spreads.stream().map(Variations.Spread::place).toList();
        List<Uncertain> ranges = spreads.stream().map(Variations.Spread::range).toList();
        Variation variation = variation(file, places, changes);
        try {
            return Optional.of(
                    new Tolerated(
                            places,
                            Tolerances.of(ranges, variation),
                            cases > 0
                                    ? Optional.of(Distribution.of(ranges, variation, cases, seed))
                                    : Optional.empty()));
        } catch (Impossible impossible) {
            throw impossible.why;
        }
    }

    /**
     * Finds the vehicle at the unfavourable corner alone.
     *
     * @param file the build file
     * @param changes settings laid over those of the file
     * @return the vehicle on which the verdict rests; empty where the file states no tolerance
     * @throws BuildFileException if the tolerances reach values that do not go together
     */
    public static Optional<Build> worst(BuildFile file, Settings changes)
            throws BuildFileException {
        List<Variations.Spread> spreads = file.variations().uncertain();
        if (spreads.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    Tolerances.unfavourable(
                                    spreads.stream().map(Variations.Spread::range).toList(),
                                    variation(
                                            file,
                                            spreads.stream().map(Variations.Spread::place).toList(),
                                            changes))
                            .build());
        } catch (Impossible impossible) {
            throw impossible.why;
        }
    }

    private static Variation variation(BuildFile file, List<InputPlace> places, Settings changes) {
        return values -> {
            Build build = made(file, places, values);
            return build.withSettings(build.settings().overlaidBy(changes));
        };
    }

    /** Carries what is wrong with a vehicle out of a calculation. */
    static final class Impossible extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final transient BuildFileException why;

        Impossible(BuildFileException why) {
            super(why);
            this.why = why;
        }
    }

    private static Build made(BuildFile file, List<InputPlace> places, double[] values) {
        try {
            return file.variations().with(places, values);
        } catch (BuildFileException wrong) {
            throw new Impossible(wrong);
        }
    }

    /**
     * Returns the outcome at the unfavourable corner.
     *
     * @return the outcome that counts
     */
    public Verdict.Outcome outcome() {
        return tolerances.worst().evaluation().outcome();
    }
}

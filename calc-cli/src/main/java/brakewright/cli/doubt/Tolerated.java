package brakewright.cli.doubt;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputPlace;
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
     * @param file the build file, with the changes that are judged
     * @param cases how many cases to count; 0 for none
     * @param seed of the cases
     * @return the result; empty where the file states no tolerance
     * @throws BuildFileException if the tolerances reach values that do not go together
     */
    public static Optional<Tolerated> of(BuildFile file, int cases, long seed)
            throws BuildFileException {
        Vehicles vehicles = Vehicles.of(file);
        if (vehicles.isExact()) {
            return Optional.empty();
        }
        Variation variation = vehicles.under(Settings.NONE);
        try {
            return Optional.of(
                    new Tolerated(
                            vehicles.places(),
                            Tolerances.of(vehicles.ranges(), variation),
                            cases > 0
                                    ? Optional.of(
                                            Distribution.of(
                                                    vehicles.ranges(), variation, cases, seed))
                                    : Optional.empty()));
        } catch (Vehicles.Impossible impossible) {
            throw impossible.why();
        }
    }

    /**
     * Finds the vehicle at the unfavourable corner alone.
     *
     * @param file the build file, with the changes that are judged
     * @return the vehicle on which the verdict rests; empty where the file states no tolerance
     * @throws BuildFileException if the tolerances reach values that do not go together
     */
    public static Optional<Build> worst(BuildFile file) throws BuildFileException {
        Vehicles vehicles = Vehicles.of(file);
        if (vehicles.isExact()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    Tolerances.unfavourable(vehicles.ranges(), vehicles.under(Settings.NONE))
                            .build());
        } catch (Vehicles.Impossible impossible) {
            throw impossible.why();
        }
    }

    /**
     * Returns the name of a value that carries a tolerance.
     *
     * @param range the value
     * @return its key
     */
    public String name(Uncertain range) {
        int place = tolerances.inputs().indexOf(range);
        return place < 0 ? range.input().key() : places.get(place).name();
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

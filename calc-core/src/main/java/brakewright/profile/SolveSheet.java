package brakewright.profile;

import brakewright.review.Finding;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A question for a value that just keeps a vehicle within limits, and its answer.
 *
 * @param present the value now in the file; empty where there is none
 * @param low the lowest value asked about
 * @param high the highest value asked about
 * @param isOrdered whether lower values are milder throughout
 * @param cells what the cells of the pack asked about weigh; empty where that is not known
 * @param vehicleMass the mass of the vehicle in the file [kg]
 * @param answer the value
 * @param beside what other settings exceed
 */
public record SolveSheet(
        OptionalDouble present,
        double low,
        double high,
        boolean isOrdered,
        Optional<CellMass> cells,
        double vehicleMass,
        Answer answer,
        List<Finding> beside) {

    /** Copies the findings. */
    public SolveSheet {
        beside = List.copyOf(beside);
    }

    /**
     * Returns what the cells weigh now.
     *
     * @return their mass [kg]; empty where that is not known
     */
    public OptionalDouble cellsNow() {
        return cells.isPresent() && present.isPresent()
                ? OptionalDouble.of(cells.get().of(present.getAsDouble()))
                : OptionalDouble.empty();
    }

    /**
     * Returns what as many cells weigh as the answer names.
     *
     * @return their mass [kg]; empty where that is not known
     */
    public OptionalDouble cellsAnswered() {
        return cells.isPresent()
                ? OptionalDouble.of(cells.get().of(answer.counting().value()))
                : OptionalDouble.empty();
    }

    /**
     * Returns whether those would be most of the vehicle.
     *
     * @return true where they weigh more than half of it
     */
    public boolean isMostlyCells() {
        return cells.filter(mass -> mass.isMostOf(answer.counting().value(), vehicleMass))
                .isPresent();
    }
}

package brakewright.limit;

import java.util.Comparator;
import java.util.List;

/**
 * The highest permitted value of a setting: the least of its constraints.
 *
 * @param id which setting
 * @param constraints at least one; the first of equals is said to bind
 */
public record Limit(LimitId id, List<Constraint> constraints) {

    /** Copies the constraints. */
    public Limit {
        constraints = List.copyOf(constraints);
        if (constraints.isEmpty()) {
            throw new IllegalArgumentException(id.key() + " has no constraint");
        }
    }

    /**
     * Returns the constraint that sets the limit.
     *
     * @return the least constraint
     */
    public Constraint binding() {
        return constraints.stream()
                .min(Comparator.comparingDouble(Constraint::limit))
                .orElseThrow();
    }

    /**
     * Returns the limit.
     *
     * @return the highest permitted value, in the unit of the setting
     */
    public double value() {
        return binding().limit();
    }
}

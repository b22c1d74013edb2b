package brakewright.replay;

import brakewright.limit.ConstraintId;
import brakewright.limit.PackLimit;
import java.util.List;
import java.util.Optional;

/**
 * Where a ride sends into the packs, or draws from them, more than they may take or give at the
 * charge and temperature that they have by then.
 *
 * @param isReturned whether the current flows into the packs
 * @param first the first such point
 * @param worst the point of the greatest excess
 * @param permitted there [A]
 * @param heldBy what permits no more
 */
public record BeyondLimit(
        boolean isReturned,
        RidePoint first,
        RidePoint worst,
        double permitted,
        ConstraintId heldBy) {

    /** A current on its limit is not beyond it [A]. */
    private static final double ROUNDING = 1e-6;

    static Optional<BeyondLimit> of(List<RidePoint> course, PackLimit limit, boolean isReturned) {
        RidePoint first = null;
        RidePoint worst = null;
        double most = ROUNDING;
        for (RidePoint point : course) {
            double current = isReturned ? -point.packCurrent() : point.packCurrent();
            if (current <= 0.0) {
                continue;
            }
            double excess = current - limit.valueAt(point.state().charge(), point.state().cellsC());
            if (excess > ROUNDING && first == null) {
                first = point;
            }
            if (excess > most) {
                most = excess;
                worst = point;
            }
        }
        if (first == null || worst == null) {
            return Optional.empty();
        }
        double charge = worst.state().charge();
        double cellsC = worst.state().cellsC();
        return Optional.of(
                new BeyondLimit(
                        isReturned,
                        first,
                        worst,
                        limit.valueAt(charge, cellsC),
                        limit.at(charge, cellsC).binding().id()));
    }

    /**
     * Returns how much flows where it is most beyond the limit.
     *
     * @return of all controllers together [A]
     */
    public double current() {
        return Math.abs(worst.packCurrent());
    }
}

package brakewright.battery;

import brakewright.spec.Require;
import brakewright.spec.Unit;

/** How cells of unequal resistance in parallel share a current. */
public final class UnequalCells {

    private UnequalCells() {}

    /**
     * Returns how much more than its even share the strongest cell of a group carries.
     *
     * <p>With one cell at resistance {@code r(1−σ)} and the others at r, the currents divide as the
     * conductances do: {@code k = P/(1 + (P−1)·(1−σ))}.
     *
     * <p>Source: Kirchhoff's laws; the check values are in the outside checks.
     *
     * @param parallel cells in the group, at least one
     * @param spread how far the best cell lies below the others in resistance [1], from 0 to 0.9
     * @return the factor k; 1 for a single cell
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double strongestShare(int parallel, double spread) {
        Require.atLeastOne("cells in parallel", parallel);
        Require.within("resistance spread", spread, 0.0, 0.9, Unit.RATIO);
        return parallel / (1.0 + (parallel - 1) * (1.0 - spread));
    }
}

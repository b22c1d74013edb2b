package brakewright.limit;

import brakewright.spec.CurrentBasis;

/** How the formulas of a motor are written in the basis of its current. */
public final class BasisFormulas {

    private BasisFormulas() {}

    /**
     * Returns the torque per current.
     *
     * @param basis of the current
     * @return the formula, from {@code K}
     */
    static String torqueConstant(CurrentBasis basis) {
        return switch (basis) {
            case PHASE_PEAK -> "√3/2·K";
            case PHASE_RMS -> "√2·√3/2·K";
            case DC_EQUIVALENT -> "K";
        };
    }

    /**
     * Returns what the resistance between terminals is multiplied by for the copper loss.
     *
     * @param basis of the current
     * @return the factor with its sign of multiplication; empty for 1
     */
    public static String lossShare(CurrentBasis basis) {
        return switch (basis) {
            case PHASE_PEAK -> "3/4·";
            case PHASE_RMS -> "3/2·";
            case DC_EQUIVALENT -> "";
        };
    }

    /**
     * Returns the peak of a phase current.
     *
     * @param basis of the current, a sinusoidal one
     * @param symbol of the current
     * @return the formula
     */
    public static String peak(CurrentBasis basis, String symbol) {
        return basis == CurrentBasis.PHASE_RMS ? "√2·" + symbol : symbol;
    }

    /**
     * Says what the current is.
     *
     * @param basis of the current
     * @return a clause
     */
    static String meaning(CurrentBasis basis) {
        return switch (basis) {
            case PHASE_PEAK -> "current as peak of the phase";
            case PHASE_RMS -> "current as effective value of the phase, its peak √2 times as much";
            case DC_EQUIVALENT -> "current as direct current";
        };
    }
}

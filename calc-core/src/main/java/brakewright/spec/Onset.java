package brakewright.spec;

/**
 * How the resistance of a cell comes about within the pulse that it is given for.
 *
 * <p>{@code k + (1 − k)·(1 − e^(−t/τ))/(1 − e^(−10 s/τ))} of the pulse resistance is there after a
 * time t: the ohmic share k at once, all of it after 10 s.
 *
 * <p>Source: equivalent circuit of first order, e.g. Plett, Battery Management Systems, vol. 1
 * (2015), chapter 2; scaled so that a pulse resistance stays what it is.
 *
 * @param ohmicShare k, what of the pulse resistance is there at once [1], above 0 and at most 1
 * @param timeConstant τ, with which the rest comes [s], positive
 */
public record Onset(double ohmicShare, double timeConstant) {

    /** All of the pulse resistance is there at once. */
    public static final Onset AT_ONCE = new Onset(1.0, 1.0);

    /**
     * Validates both.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Onset {
        Require.positive("ohmic share", ohmicShare, Unit.RATIO);
        Require.within("ohmic share", ohmicShare, 0.0, 1.0, Unit.RATIO);
        Require.positive("time constant of the onset", timeConstant, Unit.SECOND);
    }

    /**
     * Returns how much of the pulse resistance is there after a time.
     *
     * @param seconds since the current began [s], not negative
     * @return the share [1], rising from the ohmic one to 1 at 10 s
     */
    public double after(double seconds) {
        return seconds >= Cell.PULSE
                ? 1.0
                : ohmicShare + (1.0 - ohmicShare) * Math.expm1(-seconds / timeConstant) / whole();
    }

    /**
     * Returns when a share of the pulse resistance is there.
     *
     * @param share of it [1]
     * @return the time since the current began [s]; 0 for what is there at once, infinite for more
     *     than the whole
     */
    public double reaches(double share) {
        if (share <= ohmicShare) {
            return 0.0;
        }
        if (share > 1.0) {
            return Double.POSITIVE_INFINITY;
        }
        double come = (share - ohmicShare) / (1.0 - ohmicShare);
        return Math.min(Cell.PULSE, -timeConstant * Math.log1p(come * whole()));
    }

    /** {@code −(1 − e^(−10 s/τ))}. */
    private double whole() {
        return Math.expm1(-Cell.PULSE / timeConstant);
    }
}

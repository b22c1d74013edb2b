package brakewright.spec;

/**
 * How the resistance of a cell for a pulse of about 10 s depends on its charge, either way; both
 * parts are told in the resistance out of it at mid charge.
 *
 * @param drawn while it is drawn from, over charge state [1]; positive
 * @param moreCharged how much more while it is charged, over charge state [1]; not negative
 */
public record ResistanceByCharge(Curve drawn, Curve moreCharged) {

    /**
     * Validates both parts.
     *
     * @throws IllegalArgumentException if a factor is not positive, or a cell would resist less
     *     while it is charged
     */
    public ResistanceByCharge {
        Require.positive("resistance factor by charge", drawn.least(), Unit.RATIO);
        Require.notNegative("further resistance while charged", moreCharged.least(), Unit.RATIO);
    }

    /**
     * A cell that resists alike either way.
     *
     * @param drawn factor over charge state [1]; positive
     * @return the same for both
     */
    public static ResistanceByCharge alike(Curve drawn) {
        return new ResistanceByCharge(drawn, Curve.constant(0.0));
    }

    /**
     * Returns the factor while the cell is charged.
     *
     * @return over charge state [1]; nowhere below that while it is drawn from
     */
    public Curve charged() {
        return drawn.plus(moreCharged, 1.0);
    }
}

package brakewright.spec;

/**
 * How the resistance of a cell for a pulse of about 10 s depends on its charge, either way and in
 * the cold; all parts are told in the resistance out of it at mid charge.
 *
 * <p>{@code f_s + c·e_s}, and {@code f_s + m_s + c·e_s} while it is charged: nearly empty, some
 * cells resist more in the cold than one factor of the temperature tells. How cold it is, c, is 0
 * from 25 °C on and 1 at 10 °C, straight over the reciprocal of the absolute temperature, and goes
 * on so in frost.
 *
 * <p>Assumption: c. Where a cell was measured over its charge in the cold at all, that was at one
 * temperature beside 25 °C, so that two points lie on any such line; the reciprocal is what {@link
 * ArrheniusCurve} takes, too. Nothing was found that was measured over the charge in frost.
 *
 * @param drawn f_s, while it is drawn from, over charge state [1]; positive
 * @param moreCharged m_s, how much more while it is charged, over charge state [1]; not negative
 * @param moreInTheCold e_s, how much more at 10 °C, either way, over charge state [1]; not negative
 */
public record ResistanceByCharge(Curve drawn, Curve moreCharged, Curve moreInTheCold) {

    /** From which temperature on a cell is not cold [°C]. */
    private static final double MILD_C = 25.0;

    /** At which temperature it is told how much more a cell resists in the cold [°C]. */
    private static final double COLD_C = 10.0;

    /**
     * Validates all parts.
     *
     * @throws IllegalArgumentException if a factor is not positive, or a cell would resist less
     *     while it is charged or in the cold
     */
    public ResistanceByCharge {
        Require.positive("resistance factor by charge", drawn.least(), Unit.RATIO);
        Require.notNegative("further resistance while charged", moreCharged.least(), Unit.RATIO);
        Require.notNegative("further resistance in the cold", moreInTheCold.least(), Unit.RATIO);
    }

    /**
     * A cell of which one factor of the temperature is true at every charge.
     *
     * @param drawn while it is drawn from, over charge state [1]; positive
     * @param moreCharged how much more while it is charged, over charge state [1]; not negative
     */
    public ResistanceByCharge(Curve drawn, Curve moreCharged) {
        this(drawn, moreCharged, Curve.constant(0.0));
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

    /**
     * Returns this dependence with another factor while the cell is drawn from.
     *
     * @param replacement over charge state [1]; positive
     * @return a changed copy
     */
    public ResistanceByCharge withDrawn(Curve replacement) {
        return new ResistanceByCharge(replacement, moreCharged, moreInTheCold);
    }

    /**
     * Returns how cold a cell is for which it is told how much more it resists then.
     *
     * @param temperatureC [°C], above absolute zero
     * @return c [1], 0 from 25 °C on and 1 at 10 °C
     */
    public static double coldness(double temperatureC) {
        if (temperatureC >= MILD_C) {
            return 0.0;
        }
        double mild = ArrheniusCurve.reciprocal(MILD_C);
        return (ArrheniusCurve.reciprocal(temperatureC) - mild)
                / (ArrheniusCurve.reciprocal(COLD_C) - mild);
    }
}

package brakewright.limit;

/**
 * What of an ampacity is left in air of another temperature than it was told for.
 *
 * <p>{@code √((T_i − T)/(T_i − T_r))}: a conductor loses heat in proportion to how much warmer it
 * is than the air, and makes heat with the square of its current.
 *
 * <p>Source: NEC (NFPA 70) 310.15(B), equation for ambient temperature correction; the factors of
 * its table for insulation of 60, 75 and 90 °C follow from it.
 */
public final class AmbientCorrection {

    /**
     * The air for which ampacities are told [°C].
     *
     * <p>Source: as above, and ABYC E-11.
     */
    public static final double RATED_C = 30.0;

    private AmbientCorrection() {}

    /**
     * Returns the factor of an ampacity that was told for air of {@value #RATED_C} °C.
     *
     * @param insulationC highest temperature of the insulation [°C], above {@value #RATED_C}
     * @param airC of the air [°C]
     * @return the factor; 0 where the air is as warm as the insulation bears [1]
     */
    public static double factor(double insulationC, double airC) {
        return Math.sqrt(Math.max(0.0, insulationC - airC) / (insulationC - RATED_C));
    }
}

package brakewright.machine;

import brakewright.spec.MotorHeat;

/**
 * How fast the rises of winding and case change at one constant current: {@code z' = M·z + h} with
 * the matrix {@code M = (A B; C D)} and its eigenvalues, which are real and distinct. The one
 * nearer to zero is the determinant over the other: a difference of nearly equal numbers would tell
 * little of a very light winding.
 *
 * @param perKelvin copper loss more for every kelvin of the winding [W/K]
 * @param windingByItself A [1/s]
 * @param windingByCase B [1/s], positive
 * @param caseByWinding C [1/s], positive
 * @param caseByItself D [1/s], negative
 * @param slow the greater eigenvalue [1/s]; positive where the winding runs away
 * @param fast the lesser eigenvalue [1/s], negative
 */
public record WindingRates(
        double perKelvin,
        double windingByItself,
        double windingByCase,
        double caseByWinding,
        double caseByItself,
        double slow,
        double fast) {

    /**
     * Works out the rates of a motor.
     *
     * @param heat the thermal figures
     * @param lossResistanceAt20C Re at 20 °C [Ω]
     * @param current [A]
     * @return the rates
     */
    public static WindingRates of(MotorHeat heat, double lossResistanceAt20C, double current) {
        double between = 1.0 / heat.windingToCase();
        double outward = 1.0 / heat.caseToAir();
        double square = current * current;
        double perKelvin = Copper.TEMPERATURE_COEFFICIENT_AT_20_C * lossResistanceAt20C * square;
        double a = (perKelvin - between) / heat.windingHeatCapacity();
        double b = between / heat.windingHeatCapacity();
        double c = between / heat.caseHeatCapacity();
        double d = -(between + outward) / heat.caseHeatCapacity();
        double mean = (a + d) / 2.0;
        double half = Math.sqrt((a - d) * (a - d) / 4.0 + b * c);
        double determinant =
                (between * outward - perKelvin * (between + outward))
                        / (heat.windingHeatCapacity() * heat.caseHeatCapacity());
        double farther = mean + Math.copySign(half, mean);
        double nearer = determinant / farther;
        return new WindingRates(
                perKelvin, a, b, c, d, Math.max(farther, nearer), Math.min(farther, nearer));
    }

    /** A less the lesser eigenvalue: BC over D less it where A and it are nearly equal. */
    double aboveFast() {
        return windingByItself >= caseByItself
                ? windingByItself - fast
                : windingByCase * caseByWinding / (caseByItself - fast);
    }

    /** The greater eigenvalue less A, likewise. */
    double belowSlow() {
        return windingByItself >= caseByItself
                ? windingByCase * caseByWinding / (slow - caseByItself)
                : slow - windingByItself;
    }

    /** The slow part of a vector (winding, case), seen in the winding. */
    double slowly(double winding, double shell) {
        return (aboveFast() * winding + windingByCase * shell) / (slow - fast);
    }

    /** The fast part, likewise. */
    double fastly(double winding, double shell) {
        return (belowSlow() * winding - windingByCase * shell) / (slow - fast);
    }

    /**
     * Returns the rise of the winding that steady heating makes in a time, from nothing.
     *
     * @param winding how fast it heats the winding [K/s]
     * @param shell how fast it heats the case [K/s]
     * @param time [s]
     * @return [K]
     */
    public double heated(double winding, double shell, double time) {
        return slowly(winding, shell) * growth(slow, time)
                + fastly(winding, shell) * growth(fast, time);
    }

    /** ∫₀ᵗ e^(λτ)dτ [s]. */
    static double growth(double rate, double time) {
        return rate == 0.0 ? time : Math.expm1(rate * time) / rate;
    }
}

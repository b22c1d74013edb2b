package brakewright.spec;

import java.util.Arrays;

/**
 * A factor tabulated over temperature, read by the rule of Arrhenius: what resists in a cell
 * follows {@code e^(E/(R·T))}, so that the logarithm of the factor is a straight line over {@code
 * 1/T}.
 *
 * <p>Between two points the line leads from one to the other. Beyond the ends the first and the
 * last line go on: colder cells resist more than the coldest that was measured, warmer ones less
 * than the warmest. How far such a line leads astray is told in the developers' page on the
 * battery.
 *
 * <p>Source: S. Arrhenius, Zeitschrift für physikalische Chemie 4 (1889) 226, for the rate of a
 * reaction; for cells e.g. Plett, Battery Management Systems, vol. 1 (2015), chapter 2.
 */
public final class ArrheniusCurve {

    private static final double ABSOLUTE_ZERO_C = -273.15;

    private final Curve points;

    /** Reciprocal temperatures [1/K], descending as the temperatures ascend. */
    private final double[] reciprocals;

    private final double[] factors;
    private final double[] logarithms;

    private ArrheniusCurve(Curve points) {
        this.points = points;
        this.factors = points.ordinates();
        this.reciprocals =
                Arrays.stream(points.abscissas()).map(ArrheniusCurve::reciprocal).toArray();
        this.logarithms = Arrays.stream(factors).map(Math::log).toArray();
    }

    /**
     * Makes the curve through points.
     *
     * @param points the factor [1], positive, over temperature in °C
     * @return the curve
     * @throws IllegalArgumentException if a factor is not positive or a temperature not above
     *     absolute zero
     */
    public static ArrheniusCurve through(Curve points) {
        Require.positive("resistance factor by temperature", points.least(), Unit.RATIO);
        Require.ascending("temperatures", ABSOLUTE_ZERO_C, points.abscissas()[0], Unit.CELSIUS);
        return new ArrheniusCurve(points);
    }

    /** Of the absolute temperature [1/K]. */
    static double reciprocal(double temperatureC) {
        return 1.0 / (temperatureC - ABSOLUTE_ZERO_C);
    }

    /**
     * Reads the factor.
     *
     * @param temperatureC [°C], above absolute zero
     * @return the factor there, positive [1]
     * @throws IllegalArgumentException if the temperature is NaN or not above absolute zero
     */
    public double at(double temperatureC) {
        Require.number("where a curve is read", temperatureC, Unit.CELSIUS);
        Require.ascending("cell temperature", ABSOLUTE_ZERO_C, temperatureC, Unit.CELSIUS);
        double place = reciprocal(temperatureC);
        int above = 1;
        while (above < reciprocals.length - 1 && place < reciprocals[above]) {
            above++;
        }
        if (place == reciprocals[above]) {
            return factors[above];
        }
        double share =
                (place - reciprocals[above - 1]) / (reciprocals[above] - reciprocals[above - 1]);
        return factors[above - 1] * Math.exp(share * (logarithms[above] - logarithms[above - 1]));
    }

    /**
     * Returns the least factor between two temperatures.
     *
     * @param lowC the lower of them [°C], above absolute zero
     * @param highC the higher of them [°C]
     * @return the least factor [1]
     */
    public double least(double lowC, double highC) {
        double[] temperatures = points.abscissas();
        double least = Math.min(at(lowC), at(highC));
        for (int i = 0; i < temperatures.length; i++) {
            if (temperatures[i] > lowC && temperatures[i] < highC) {
                least = Math.min(least, factors[i]);
            }
        }
        return least;
    }

    /**
     * Returns the points of the table.
     *
     * @return the factor over temperature in °C
     */
    Curve points() {
        return points;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ArrheniusCurve curve && points.equals(curve.points);
    }

    @Override
    public int hashCode() {
        return points.hashCode();
    }

    @Override
    public String toString() {
        return points.toString();
    }
}

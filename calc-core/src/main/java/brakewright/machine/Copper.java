package brakewright.machine;

import brakewright.spec.Require;
import brakewright.spec.Unit;

/** Copper windings and conductors over temperature. */
public final class Copper {

    /**
     * Temperature coefficient of resistance at constant mass, referred to 20 °C [1/K].
     *
     * <p>Source: IEC 60028:1925, International Standard of Resistance for Copper (value as commonly
     * quoted; from memory of the standard).
     */
    public static final double TEMPERATURE_COEFFICIENT_AT_20_C = 3.93e-3;

    /**
     * Temperature at which copper melts [°C].
     *
     * <p>Source: International Temperature Scale of 1990, freezing point of copper.
     */
    public static final double MELTING_C = 1084.62;

    private Copper() {}

    /**
     * Returns the resistance at a temperature over that at 20 °C.
     *
     * <p>{@code R(T)/R20 = 1 + α·(T − 20 °C)}.
     *
     * @param temperatureC the mean temperature of the copper [°C]
     * @return the factor [1]
     * @throws IllegalArgumentException if the temperature is NaN
     */
    public static double resistanceFactor(double temperatureC) {
        Require.number("temperature of copper", temperatureC, Unit.CELSIUS);
        return 1.0 + TEMPERATURE_COEFFICIENT_AT_20_C * (temperatureC - 20.0);
    }
}

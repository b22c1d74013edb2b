package brakewright.road;

import brakewright.spec.Require;
import brakewright.spec.Unit;

/**
 * The density of dry air at an altitude.
 *
 * <p>Source: ISO 2533:1975, Standard Atmosphere, troposphere: {@code p = p0·(1 − β·H/T0)^(g/(β·R))}
 * with {@code T0 = 288.15 K}, {@code p0 = 101325 Pa}, {@code β = 0.0065 K/m}, {@code R = 287.05287
 * J/(kg·K)}, the exponent 5.25588. Altitude is taken as geopotential (0.02 % at 3 km).
 */
public final class StandardAtmosphere {

    private static final double SEA_LEVEL_PRESSURE = 101_325.0;
    private static final double SEA_LEVEL_TEMPERATURE_K = 288.15;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double EXPONENT = 5.25588;
    private static final double GAS_CONSTANT = 287.05287;
    private static final double ZERO_CELSIUS_K = 273.15;

    private StandardAtmosphere() {}

    /**
     * Returns the density at the standard pressure of an altitude and a real temperature.
     *
     * @param altitude above sea level [m], from −500 to 9000
     * @param temperatureC of the air [°C], from −60 to 70
     * @return the density [kg/m³]
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double density(double altitude, double temperatureC) {
        Require.within("altitude", altitude, -500.0, 9000.0, Unit.METRE);
        Require.within("air temperature", temperatureC, -60.0, 70.0, Unit.CELSIUS);
        double pressure =
                SEA_LEVEL_PRESSURE
                        * Math.pow(
                                1.0 - LAPSE_K_PER_M * altitude / SEA_LEVEL_TEMPERATURE_K, EXPONENT);
        return pressure / (GAS_CONSTANT * (temperatureC + ZERO_CELSIUS_K));
    }

    /**
     * Returns the temperature that the standard gives an altitude.
     *
     * @param altitude above sea level [m], from −500 to 9000
     * @return the temperature [°C]
     * @throws IllegalArgumentException if the altitude is outside its range
     */
    public static double temperatureC(double altitude) {
        Require.within("altitude", altitude, -500.0, 9000.0, Unit.METRE);
        return SEA_LEVEL_TEMPERATURE_K - LAPSE_K_PER_M * altitude - ZERO_CELSIUS_K;
    }
}

package brakewright.powertrain;

import brakewright.spec.Require;
import brakewright.spec.Unit;

/**
 * What happens between the pack's opening and the controllers' destruction.
 *
 * <p>Assumption: the motors go on sending the same power while the voltage rises; a controller that
 * notices and stops in time is not counted on.
 */
public final class BusRise {

    private BusRise() {}

    /**
     * Returns how long the bus capacitance can take the braking power once the pack is cut off.
     *
     * <p>{@code t = C·(Vmax² − V²)/(2·p)}.
     *
     * <p>Source: energy of a capacitor.
     *
     * @param capacitance of all controllers together [F], positive
     * @param voltage before [V], not negative
     * @param voltageMax that the controllers bear [V], not negative
     * @param power returned by the motors [W], positive
     * @return the time [s]; 0 if the voltage is too high already
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double time(double capacitance, double voltage, double voltageMax, double power) {
        Require.positive("bus capacitance", capacitance, Unit.FARAD);
        Require.notNegative("bus voltage", voltage, Unit.VOLT);
        Require.notNegative("highest bus voltage", voltageMax, Unit.VOLT);
        Require.positive("braking power", power, Unit.WATT);
        return Math.max(
                0.0, capacitance * (voltageMax * voltageMax - voltage * voltage) / (2.0 * power));
    }
}

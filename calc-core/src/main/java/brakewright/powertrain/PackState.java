package brakewright.powertrain;

import brakewright.battery.AlongCharge;
import brakewright.battery.AtCharge;
import brakewright.battery.BatteryModel;
import brakewright.battery.TerminalPower;
import brakewright.spec.Cell;
import org.jspecify.annotations.Nullable;

/**
 * The pack at one charge state and temperature, as the power train sees it.
 *
 * <p>Whoever drives meets one resistance, whoever brakes the other: each is worked out when it is
 * first asked for.
 */
public final class PackState {

    private final double charge;
    private final double temperatureC;
    private final double voltage;
    private final @Nullable BatteryModel pack;
    private final double seconds;

    private double resistance;
    private double resistanceInto;

    private PackState(
            double charge,
            double temperatureC,
            double voltage,
            @Nullable BatteryModel pack,
            double seconds,
            double resistance,
            double resistanceInto) {
        this.charge = charge;
        this.temperatureC = temperatureC;
        this.voltage = voltage;
        this.pack = pack;
        this.seconds = seconds;
        this.resistance = resistance;
        this.resistanceInto = resistanceInto;
    }

    /**
     * A pack that resists alike either way.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @param voltage open circuit [V]
     * @param resistance at the terminals [Ω]
     */
    public PackState(double charge, double temperatureC, double voltage, double resistance) {
        this(charge, temperatureC, voltage, null, Cell.PULSE, resistance, resistance);
    }

    /**
     * Reads the pack model.
     *
     * @param pack the pack
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return its state
     */
    public static PackState of(BatteryModel pack, double charge, double temperatureC) {
        return of(pack, charge, temperatureC, Cell.PULSE);
    }

    /**
     * Reads the pack model after a current has flowed for a time.
     *
     * @param pack the pack
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; 10 s for the pulse resistance, infinite for ever
     * @return its state
     */
    public static PackState of(
            BatteryModel pack, double charge, double temperatureC, double seconds) {
        return new PackState(
                charge,
                temperatureC,
                pack.openCircuitVoltage(charge),
                pack,
                seconds,
                Double.NaN,
                Double.NaN);
    }

    /**
     * Reads packs that are looked at at one charge state, after a current has flowed for a time.
     *
     * @param out the packs while they are drawn from
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; 10 s for the pulse resistance, infinite for ever
     * @return their state
     */
    public static PackState of(AtCharge out, double temperatureC, double seconds) {
        return new PackState(
                out.charge(),
                temperatureC,
                out.voltage(),
                out.model(),
                seconds,
                out.resistance(temperatureC, seconds),
                Double.NaN);
    }

    /**
     * Reads the pack model at several charge states.
     *
     * @param out the packs while they are drawn from
     * @param into the same packs while they are charged
     * @param temperatureC the cell temperature [°C]
     * @return their states, in the order of the charge states
     */
    public static PackState[] of(AlongCharge out, AlongCharge into, double temperatureC) {
        double[] charges = out.charges();
        double[] voltages = out.voltages();
        double[] drawn = out.resistances(temperatureC, Cell.PULSE);
        double[] charged = into.resistances(temperatureC, Cell.PULSE);
        PackState[] states = new PackState[charges.length];
        for (int i = 0; i < states.length; i++) {
            states[i] =
                    new PackState(
                            charges[i],
                            temperatureC,
                            voltages[i],
                            null,
                            Cell.PULSE,
                            drawn[i],
                            charged[i]);
        }
        return states;
    }

    /**
     * Returns the charge state.
     *
     * @return [1]
     */
    public double charge() {
        return charge;
    }

    /**
     * Returns the cell temperature.
     *
     * @return [°C]
     */
    public double temperatureC() {
        return temperatureC;
    }

    /**
     * Returns the voltage at rest.
     *
     * @return open circuit [V]
     */
    public double voltage() {
        return voltage;
    }

    /**
     * Returns the resistance that a current out of the pack meets.
     *
     * @return at the terminals [Ω]
     */
    public double resistance() {
        if (pack != null && Double.isNaN(resistance)) {
            resistance = pack.resistance(charge, temperatureC, seconds);
        }
        return resistance;
    }

    /**
     * Returns the resistance that a current into the pack meets.
     *
     * @return at the terminals [Ω]
     */
    public double resistanceInto() {
        if (pack != null && Double.isNaN(resistanceInto)) {
            resistanceInto = pack.into().resistance(charge, temperatureC, seconds);
        }
        return resistanceInto;
    }

    /**
     * Returns the current into the pack for a power into it.
     *
     * @param power into the pack; negative when drawn [W]
     * @return the current into the pack; negative when drawn, negative infinity if more is drawn
     *     than the pack can give [A]
     */
    public double currentInto(double power) {
        return power >= 0.0
                ? TerminalPower.returnedCurrent(voltage, resistanceInto(), power)
                : -TerminalPower.drawnCurrent(voltage, resistance(), -power);
    }

    /**
     * Returns the power at the terminals while a current is pushed back.
     *
     * @param current into the pack, not negative [A]
     * @return the power [W]
     */
    public double powerReturnedBy(double current) {
        return TerminalPower.returnedPower(voltage, resistanceInto(), current);
    }

    /**
     * Returns the power at the terminals while a current is drawn.
     *
     * <p>Beyond the current of greatest power the power would fall again; the greatest is returned.
     *
     * @param current out of the pack, not negative [A]
     * @return the power [W]
     */
    public double powerDrawnBy(double current) {
        return isBeyondGreatestPower(current)
                ? greatestPower()
                : TerminalPower.drawnPower(voltage, resistance(), current);
    }

    /**
     * Returns whether a current pulls the voltage to half of that at rest, where the power is
     * greatest, or further.
     *
     * @param current out of the pack, not negative [A]
     * @return true if it does
     */
    public boolean isBeyondGreatestPower(double current) {
        return 2.0 * current * resistance() >= voltage;
    }

    /**
     * Returns the greatest power that can be drawn.
     *
     * @return U²/(4R) [W]
     */
    public double greatestPower() {
        return TerminalPower.greatestDrawnPower(voltage, resistance());
    }

    /**
     * Returns the terminal voltage.
     *
     * @param current into the pack; negative when drawn [A]
     * @return the voltage [V]
     */
    public double terminalVoltage(double current) {
        return voltage + current * (current > 0.0 ? resistanceInto() : resistance());
    }

    /**
     * Returns the terminal voltage while a power is drawn.
     *
     * @param power out of the pack, not more than it can give [W]
     * @return the voltage [V]
     */
    public double loadedVoltage(double power) {
        return terminalVoltage(currentInto(-power));
    }
}

package brakewright.spec;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One cell as its maker rates it.
 *
 * @param capacityAh [Ah], positive
 * @param dischargeCurrent highest continuous discharge current [A], positive
 * @param chargeCurrent highest continuous charge current [A], positive
 * @param voltageMax charging limit voltage [V], above {@code voltageMin}
 * @param voltageMin discharge cut-off voltage [V], positive
 * @param resistance while drawn from for a pulse of about 10 s, at mid charge and 25 °C [Ω],
 *     positive
 * @param openCircuitVoltage over charge state [V]; never falling
 * @param resistanceByCharge factor of {@code resistance} over charge state, either way
 * @param resistanceByTemperature factor of {@code resistance} over temperature [1]
 * @param relaxation how its resistance goes on rising in a long pull
 * @param heatCapacity of one cell [J/K], positive; empty where unknown
 * @param charging the temperatures at which it may be charged
 * @param discharging the temperatures at which it may be discharged
 * @param pulse what it bears for a short time; empty where its maker rates no pulse
 * @param taperFloor where a low-voltage taper ends at the lowest if no protection opens before [V];
 *     of no effect below {@code voltageMin}
 */
public record Cell(
        double capacityAh,
        double dischargeCurrent,
        double chargeCurrent,
        double voltageMax,
        double voltageMin,
        double resistance,
        Curve openCircuitVoltage,
        ResistanceByCharge resistanceByCharge,
        ArrheniusCurve resistanceByTemperature,
        Relaxation relaxation,
        OptionalDouble heatCapacity,
        ChargingWindow charging,
        DischargingWindow discharging,
        Optional<PulseRating> pulse,
        double taperFloor) {

    /** How long the pulse lasts for which cell resistances are given [s]. */
    public static final double PULSE = 10.0;

    /**
     * Validates the cell.
     *
     * @throws IllegalArgumentException if a number is outside its range, the open-circuit voltage
     *     falls anywhere, or a resistance factor is not positive
     */
    public Cell {
        Require.positive("cell capacity", capacityAh, Unit.AMPERE_HOUR);
        Require.positive("cell discharge current", dischargeCurrent, Unit.AMPERE);
        Require.positive("cell charge current", chargeCurrent, Unit.AMPERE);
        Require.positive("cell lowest voltage", voltageMin, Unit.VOLT);
        Require.ascending("cell voltage limits", voltageMin, voltageMax, Unit.VOLT);
        Require.positive("cell resistance", resistance, Unit.OHM);
        if (!openCircuitVoltage.neverFalls()) {
            throw new IllegalArgumentException(
                    "open-circuit voltage must not fall as charge rises, was "
                            + openCircuitVoltage);
        }
        Require.positive("open-circuit voltage", openCircuitVoltage.least(), Unit.VOLT);
        Require.positive("taper floor", taperFloor, Unit.VOLT);
        Require.positive("cell heat capacity", heatCapacity, Unit.JOULE_PER_KELVIN);
    }

    /**
     * Returns this cell with another capacity.
     *
     * @param replacement [Ah], positive
     * @return a changed copy
     */
    public Cell withCapacityAh(double replacement) {
        Copy copy = new Copy(this);
        copy.capacityAh = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with another rating of what it gives.
     *
     * @param replacement highest continuous current [A], positive
     * @return a changed copy
     */
    public Cell withDischargeCurrent(double replacement) {
        Copy copy = new Copy(this);
        copy.dischargeCurrent = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with another rating of what it takes.
     *
     * @param replacement highest continuous current [A], positive
     * @return a changed copy
     */
    public Cell withChargeCurrent(double replacement) {
        Copy copy = new Copy(this);
        copy.chargeCurrent = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with another resistance.
     *
     * @param replacement of a pulse of about 10 s, at mid charge and 25 °C [Ω], positive
     * @return a changed copy
     */
    public Cell withResistance(double replacement) {
        Copy copy = new Copy(this);
        copy.resistance = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with another voltage at rest.
     *
     * @param replacement over charge state [V]; never falling
     * @return a changed copy
     */
    public Cell withOpenCircuitVoltage(Curve replacement) {
        Copy copy = new Copy(this);
        copy.openCircuitVoltage = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with a resistance that follows the charge otherwise.
     *
     * @param replacement factor over charge state, either way
     * @return a changed copy
     */
    public Cell withResistanceByCharge(ResistanceByCharge replacement) {
        Copy copy = new Copy(this);
        copy.resistanceByCharge = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with a resistance that follows the temperature otherwise.
     *
     * @param replacement factor over temperature [1]
     * @return a changed copy
     */
    public Cell withResistanceByTemperature(ArrheniusCurve replacement) {
        Copy copy = new Copy(this);
        copy.resistanceByTemperature = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with another rise in a long pull.
     *
     * @param replacement how its resistance goes on rising
     * @return a changed copy
     */
    public Cell withRelaxation(Relaxation replacement) {
        Copy copy = new Copy(this);
        copy.relaxation = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with another heat capacity.
     *
     * @param replacement of one cell [J/K], positive; empty where unknown
     * @return a changed copy
     */
    public Cell withHeatCapacity(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.heatCapacity = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with another window for charging.
     *
     * @param replacement the temperatures at which it may be charged
     * @return a changed copy
     */
    public Cell withCharging(ChargingWindow replacement) {
        Copy copy = new Copy(this);
        copy.charging = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with another window for discharging.
     *
     * @param replacement the temperatures at which it may be discharged
     * @return a changed copy
     */
    public Cell withDischarging(DischargingWindow replacement) {
        Copy copy = new Copy(this);
        copy.discharging = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with other ratings for a pulse.
     *
     * @param replacement what it bears for a short time; empty where it is not rated
     * @return a changed copy
     */
    public Cell withPulse(Optional<PulseRating> replacement) {
        Copy copy = new Copy(this);
        copy.pulse = replacement;
        return copy.made();
    }

    /**
     * Returns this cell with another floor of tapers.
     *
     * @param replacement [V], positive
     * @return a changed copy
     */
    public Cell withTaperFloor(double replacement) {
        Copy copy = new Copy(this);
        copy.taperFloor = replacement;
        return copy.made();
    }

    /** What a changed copy is made of: the one place that lists all components. */
    private static final class Copy {

        private double capacityAh;
        private double dischargeCurrent;
        private double chargeCurrent;
        private final double voltageMax;
        private final double voltageMin;
        private double resistance;
        private Curve openCircuitVoltage;
        private ResistanceByCharge resistanceByCharge;
        private ArrheniusCurve resistanceByTemperature;
        private Relaxation relaxation;
        private OptionalDouble heatCapacity;
        private ChargingWindow charging;
        private DischargingWindow discharging;
        private Optional<PulseRating> pulse;
        private double taperFloor;

        Copy(Cell from) {
            this.capacityAh = from.capacityAh;
            this.dischargeCurrent = from.dischargeCurrent;
            this.chargeCurrent = from.chargeCurrent;
            this.voltageMax = from.voltageMax;
            this.voltageMin = from.voltageMin;
            this.resistance = from.resistance;
            this.openCircuitVoltage = from.openCircuitVoltage;
            this.resistanceByCharge = from.resistanceByCharge;
            this.resistanceByTemperature = from.resistanceByTemperature;
            this.relaxation = from.relaxation;
            this.heatCapacity = from.heatCapacity;
            this.charging = from.charging;
            this.discharging = from.discharging;
            this.pulse = from.pulse;
            this.taperFloor = from.taperFloor;
        }

        Cell made() {
            return new Cell(
                    capacityAh,
                    dischargeCurrent,
                    chargeCurrent,
                    voltageMax,
                    voltageMin,
                    resistance,
                    openCircuitVoltage,
                    resistanceByCharge,
                    resistanceByTemperature,
                    relaxation,
                    heatCapacity,
                    charging,
                    discharging,
                    pulse,
                    taperFloor);
        }
    }
}

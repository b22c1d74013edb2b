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

    /** A cell down to whose lowest voltage a taper may go. */
    public Cell(
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
            Optional<PulseRating> pulse) {
        this(
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
                voltageMin);
    }

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
}

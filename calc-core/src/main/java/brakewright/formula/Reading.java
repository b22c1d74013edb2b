package brakewright.formula;

import brakewright.spec.Input;
import brakewright.spec.Unit;

/** What formulas read from an input in another way than {@link Notation} has it. */
public enum Reading {
    /** The voltage at rest of the group that is asked about, from the cells' curve [V]. */
    GROUP_AT_REST(
            Input.CELL_OPEN_CIRCUIT_VOLTAGE, "u_g", "its cells at rest, from the curve", Unit.VOLT),
    /** The voltage at rest of the mean cell while a group has another [V]. */
    MEAN_AT_REST(
            Input.CELL_OPEN_CIRCUIT_VOLTAGE, "u_m", "mean cell then, from its curve", Unit.VOLT),
    /** The charge state at which the cells of the fullest group have a voltage [1]. */
    FULLEST_CHARGE(
            Input.CELL_OPEN_CIRCUIT_VOLTAGE, "s_g", "its fullest group, from curve", Unit.RATIO),
    /** The charge state at which the cells of the emptiest group have a voltage [1]. */
    EMPTIEST_CHARGE(
            Input.CELL_OPEN_CIRCUIT_VOLTAGE, "s_g", "its emptiest group, from curve", Unit.RATIO),
    /** The least of the factors of a cell's resistance over the charge [1]. */
    LEAST_BY_CHARGE(
            Input.CELL_RESISTANCE_BY_CHARGE, "f_s", "its least factor at any charge", Unit.RATIO),
    /** The least of the factors of a cell's resistance over the temperature [1]. */
    LEAST_BY_TEMPERATURE(
            Input.CELL_RESISTANCE_BY_TEMPERATURE,
            "f_T",
            "its least factor at any temperature",
            Unit.RATIO),
    /** Where the low-voltage taper begins [V]. */
    TAPER_BEGINS(Input.SETTINGS_LOW_VOLTAGE_TAPER, "V_b", "taper begins", Unit.VOLT),
    /** Where the low-voltage taper ends [V]. */
    TAPER_ENDS(Input.SETTINGS_LOW_VOLTAGE_TAPER, "V_e", "taper ends", Unit.VOLT),
    /** The temperature of the air, taken for a motor that has stood in it [°C]. */
    COLD_MOTOR(Input.USE_AMBIENT, "T_0", "winding and case at the start", Unit.CELSIUS);

    private final Input input;
    private final Notation notation;

    Reading(Input input, String symbol, String meaning, Unit unit) {
        this.input = input;
        this.notation = new Notation(symbol, meaning, unit);
    }

    /**
     * Makes a term of it.
     *
     * @param value the number
     * @return the term
     */
    public Term of(double value) {
        return Term.given(notation, value, input);
    }
}

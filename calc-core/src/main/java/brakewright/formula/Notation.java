package brakewright.formula;

import brakewright.spec.Input;
import brakewright.spec.Unit;

/**
 * How formulas write an input: the one catalogue of symbols and wordings. What is read from an
 * input in another way than usual is a {@link Reading}.
 *
 * @param symbol as formulas write it
 * @param meaning what it is
 * @param unit as pages write it; empty for a ratio
 */
record Notation(String symbol, String meaning, Unit unit) {

    /**
     * Returns how an input is written.
     *
     * @param input which
     * @return its notation
     * @throws IllegalArgumentException if no formula names the input
     */
    static Notation of(Input input) {
        return switch (input) {
            case RIDER_MASS -> new Notation("m_r", "rider", Unit.KILOGRAM);
            case RIDER_MASS_HEIGHT ->
                    new Notation("h_r", "height of rider's mass centre", Unit.METRE);
            case RIDER_SUPPORT_HALF_LENGTH ->
                    new Notation("l", "half length of support", Unit.METRE);
            case VEHICLE_MASS -> new Notation("m_v", "vehicle", Unit.KILOGRAM);
            case VEHICLE_CARGO -> new Notation("m_c", "cargo", Unit.KILOGRAM);
            case VEHICLE_WHEEL_DIAMETER ->
                    new Notation("d", "diameter of driven wheels", Unit.METRE);
            case VEHICLE_WHEELBASE -> new Notation("L", "wheelbase", Unit.METRE);
            case VEHICLE_MASS_CENTRE_HEIGHT ->
                    new Notation("h", "height of mass centre", Unit.METRE);
            case VEHICLE_MASS_CENTRE_FROM_FRONT ->
                    new Notation("b", "mass centre behind front axle", Unit.METRE);
            case VEHICLE_ROLLING_RESISTANCE ->
                    new Notation("crr", "coefficient of rolling", Unit.RATIO);
            case VEHICLE_DRAG_AREA ->
                    new Notation("CdA", "drag coefficient times area", Unit.SQUARE_METRE);
            case VEHICLE_GRIP -> new Notation("μ", "grip, dry", Unit.RATIO);
            case VEHICLE_ROTATING_SHARE -> new Notation("j", "share of turning parts", Unit.RATIO);
            case DRIVE_MOTORS -> new Notation("n", "motors", Unit.RATIO);
            case DRIVE_REDUCTION -> new Notation("G", "reduction", Unit.RATIO);
            case DRIVE_EFFICIENCY -> new Notation("η", "efficiency of drive", Unit.RATIO);
            case MOTOR_KV -> new Notation("Kv", "speed per volt", Unit.RPM_PER_VOLT);
            case MOTOR_RESISTANCE -> new Notation("R_20", "between terminals at 20 °C", Unit.OHM);
            case MOTOR_POLE_PAIRS -> new Notation("p", "pole pairs", Unit.RATIO);
            case MOTOR_INDUCTANCE -> new Notation("L", "inductance of a phase", Unit.HENRY);
            case MOTOR_NO_LOAD_CURRENT -> new Notation("I_0", "no-load current", Unit.AMPERE);
            case MOTOR_VISCOUS_DRAG ->
                    new Notation("c_v", "viscous drag", Unit.NEWTON_METRE_SECOND_PER_RADIAN);
            case MOTOR_WINDING_LIMIT ->
                    new Notation("T_lim", "highest of the winding", Unit.CELSIUS);
            case MOTOR_WINDING_TO_CASE ->
                    new Notation("R_wc", "winding to case", Unit.KELVIN_PER_WATT);
            case MOTOR_CASE_TO_AIR -> new Notation("R_ca", "case to air", Unit.KELVIN_PER_WATT);
            case MOTOR_WINDING_HEAT_CAPACITY ->
                    new Notation("C_w", "heat capacity of winding", Unit.JOULE_PER_KELVIN);
            case MOTOR_CASE_HEAT_CAPACITY ->
                    new Notation("C_c", "heat capacity of case", Unit.JOULE_PER_KELVIN);
            case CONTROLLER_COUNT -> new Notation("N", "controllers", Unit.RATIO);
            case CONTROLLER_VOLTAGE_RATING ->
                    new Notation("V_r", "controller voltage rating", Unit.VOLT);
            case CONTROLLER_EFFICIENCY ->
                    new Notation("ηc", "efficiency of controllers", Unit.RATIO);
            case CONTROLLER_REGEN_RESPONSE ->
                    new Notation("t_r", "response of the regen limiter", Unit.SECOND);
            case PACK_SERIES -> new Notation("S", "cells in series", Unit.RATIO);
            case PACK_PARALLEL -> new Notation("P", "cells in parallel", Unit.RATIO);
            case PACK_JOINT_RESISTANCE -> new Notation("R_j", "joints and leads", Unit.OHM);
            case PACK_RESISTANCE_SPREAD ->
                    new Notation("σ", "spread of cell resistance", Unit.RATIO);
            case PACK_GROUP_CHARGE -> new Notation("d", "charge among groups", Unit.RATIO);
            case PACK_GROUP_CAPACITY -> new Notation("κ", "capacity among groups", Unit.RATIO);
            case PACK_GROUP_RESISTANCE ->
                    new Notation("x_g", "resistance among groups", Unit.RATIO);
            case PACK_TEMPERATURE -> new Notation("T_p", "temperature of the cells", Unit.CELSIUS);
            case CELL_CAPACITY -> new Notation("q", "charge of a cell", Unit.AMPERE_HOUR);
            case CELL_DISCHARGE_CURRENT,
                    CELL_CHARGE_CURRENT,
                    CELL_DISCHARGE_PULSE,
                    CELL_CHARGE_PULSE ->
                    new Notation("i", "rating of one cell", Unit.AMPERE);
            case CELL_CHARGE_CURRENT_BY_CHARGE ->
                    new Notation("f", "share permitted at that charge", Unit.RATIO);
            case CELL_CHARGE_TEMPERATURE, CELL_DISCHARGE_TEMPERATURE ->
                    new Notation("x", "share permitted when so warm", Unit.RATIO);
            case CELL_VOLTAGE_MAX -> new Notation("u_max", "highest cell voltage", Unit.VOLT);
            case CELL_VOLTAGE_MIN -> new Notation("u_min", "lowest cell voltage", Unit.VOLT);
            case CELL_TAPER_FLOOR ->
                    new Notation("u_cut", "usual cut-off of its chemistry", Unit.VOLT);
            case PROTECTION_OVERVOLTAGE_TRIP, PROTECTION_UNDERVOLTAGE_TRIP ->
                    new Notation("u_trip", "cell at which protection opens", Unit.VOLT);
            case PROTECTION_CHARGE_TRIP_DELAY,
                    PROTECTION_OVERVOLTAGE_TRIP_DELAY,
                    PROTECTION_DISCHARGE_TRIP_DELAY,
                    PROTECTION_UNDERVOLTAGE_TRIP_DELAY ->
                    new Notation("t_d", "for which that trip waits", Unit.SECOND);
            case CELL_OPEN_CIRCUIT_VOLTAGE ->
                    new Notation("u", "cell at rest, from its curve", Unit.VOLT);
            case CELL_RESISTANCE -> new Notation("r", "of a cell, 10 s pulse", Unit.OHM);
            case CELL_RESISTANCE_BY_CHARGE ->
                    new Notation("f_s", "its factor at that charge", Unit.RATIO);
            case CELL_RESISTANCE_COLD_BY_CHARGE ->
                    new Notation("c_s", "more there, so cold", Unit.RATIO);
            case CELL_RESISTANCE_BY_TEMPERATURE ->
                    new Notation("f_T", "its factor at that temperature", Unit.RATIO);
            case CELL_SUSTAINED_RISE ->
                    new Notation("x_r", "further rise in a long pull", Unit.RATIO);
            case CELL_OHMIC_SHARE -> new Notation("k", "of the pulse's, there at once", Unit.RATIO);
            case CELL_ONSET_TIME -> new Notation("τ_f", "time constant of the rest", Unit.SECOND);
            case CELL_RELAXATION_TIME -> new Notation("τ", "time constant of that", Unit.SECOND);
            case CELL_MASS -> new Notation("c", "of a cell, from mass", Unit.JOULE_PER_KELVIN);
            case MOTOR_CURRENT_RATING,
                    CONTROLLER_MOTOR_CURRENT_RATING,
                    CONTROLLER_PACK_CURRENT_RATING,
                    PROTECTION_DISCHARGE_TRIP,
                    PROTECTION_CHARGE_TRIP,
                    WIRING_FUSE,
                    WIRING_PLUG_RATING,
                    TRUNK_FUSE,
                    TRUNK_PLUG_RATING ->
                    new Notation("I_r", "rating", Unit.AMPERE);
            case WIRING_WIRE_AMPACITY, TRUNK_WIRE_AMPACITY ->
                    new Notation("I_r", "ampacity", Unit.AMPERE);
            case TRUNK_RESISTANCE -> new Notation("R_t", "wiring of all packs together", Unit.OHM);
            case USE_CHARGE_FROM -> new Notation("s_f", "fullest charge in use", Unit.RATIO);
            case USE_CHARGE_TO -> new Notation("s_e", "emptiest charge in use", Unit.RATIO);
            case USE_SPEED_MAX -> new Notation("v", "highest speed in use", Unit.METRE_PER_SECOND);
            case USE_AMBIENT -> new Notation("T_a", "temperature of the air", Unit.CELSIUS);
            case USE_DECK_TEMPERATURE -> new Notation("T_d", "air in the deck", Unit.CELSIUS);
            case USE_PACK_TEMPERATURE -> new Notation("T", "coldest cells in use", Unit.CELSIUS);
            case USE_ALTITUDE -> new Notation("h_a", "altitude", Unit.METRE);
            case USE_SLOPE_MAX -> new Notation("i", "steepest slope", Unit.RATIO);
            case USE_SLOPE_LENGTH -> new Notation("L_s", "length of the slope", Unit.METRE);
            case USE_HARD_PULL -> new Notation("t_p", "length of a hard pull", Unit.SECOND);
            case USE_HARD_BRAKE -> new Notation("t_b", "longest hard braking", Unit.SECOND);
            case USE_CRUISE_SPEED -> new Notation("v", "cruise speed", Unit.METRE_PER_SECOND);
            case USE_HEADWIND -> new Notation("w", "headwind", Unit.METRE_PER_SECOND);
            case USE_IDLE_POWER -> new Notation("P_i", "electronics and lights", Unit.WATT);
            case USE_STOPS_PER_KM -> new Notation("k", "stops", Unit.PER_KILOMETRE);
            case MARGINS_TRIP, MARGINS_RATING, MARGINS_FUSE, MARGINS_CONTROLLER_VOLTAGE ->
                    new Notation("m", "margin", Unit.RATIO);
            case MARGINS_CELL -> new Notation("m", "margin in a closed deck", Unit.RATIO);
            case MARGINS_OVERVOLTAGE -> new Notation("m", "margin per cell", Unit.VOLT);
            case MARGINS_GRIP -> new Notation("m_μ", "margin for grip", Unit.RATIO);
            case CRITERIA_RIDER_DECELERATION_MAX ->
                    new Notation("a", "deceleration that is borne", Unit.METRE_PER_SECOND_SQUARED);
            case SETTINGS_MOTOR_DRIVE_CURRENT ->
                    new Notation("I_m", "motor current set", Unit.AMPERE);
            case SETTINGS_PACK_DISCHARGE_CURRENT, SETTINGS_PACK_REGEN_CURRENT ->
                    new Notation("I_c", "set at each controller", Unit.AMPERE);
            case SETTINGS_SPEED_CAP -> new Notation("v", "speed cap", Unit.METRE_PER_SECOND);
            default -> throw new IllegalArgumentException(input.key() + " is in no formula");
        };
    }
}

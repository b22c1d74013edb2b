package brakewright.formula;

import brakewright.spec.Input;

/**
 * How formulas write an input: the one catalogue of symbols and wordings. What is read from an
 * input in another way than usual is a {@link Reading}.
 *
 * @param symbol as formulas write it
 * @param meaning what it is
 * @param unit as pages write it; empty for a ratio
 */
record Notation(String symbol, String meaning, String unit) {

    /**
     * Returns how an input is written.
     *
     * @param input which
     * @return its notation
     * @throws IllegalArgumentException if no formula names the input
     */
    static Notation of(Input input) {
        return switch (input) {
            case RIDER_MASS -> new Notation("m_r", "rider", "kg");
            case RIDER_MASS_HEIGHT -> new Notation("h_r", "height of rider's mass centre", "m");
            case RIDER_SUPPORT_HALF_LENGTH -> new Notation("l", "half length of support", "m");
            case VEHICLE_MASS -> new Notation("m_v", "vehicle", "kg");
            case VEHICLE_CARGO -> new Notation("m_c", "cargo", "kg");
            case VEHICLE_WHEEL_DIAMETER -> new Notation("d", "diameter of driven wheels", "m");
            case VEHICLE_WHEELBASE -> new Notation("L", "wheelbase", "m");
            case VEHICLE_MASS_CENTRE_HEIGHT -> new Notation("h", "height of mass centre", "m");
            case VEHICLE_MASS_CENTRE_FROM_FRONT ->
                    new Notation("b", "mass centre behind front axle", "m");
            case VEHICLE_ROLLING_RESISTANCE -> new Notation("crr", "coefficient of rolling", "");
            case VEHICLE_DRAG_AREA -> new Notation("CdA", "drag coefficient times area", "m²");
            case VEHICLE_GRIP -> new Notation("μ", "grip, dry", "");
            case VEHICLE_ROTATING_SHARE -> new Notation("j", "share of turning parts", "");
            case DRIVE_MOTORS -> new Notation("n", "motors", "");
            case DRIVE_REDUCTION -> new Notation("G", "reduction", "");
            case DRIVE_EFFICIENCY -> new Notation("η", "efficiency of drive", "");
            case MOTOR_KV -> new Notation("Kv", "speed per volt", "rpm/V");
            case MOTOR_RESISTANCE -> new Notation("R_20", "between terminals at 20 °C", "Ω");
            case MOTOR_POLE_PAIRS -> new Notation("p", "pole pairs", "");
            case MOTOR_INDUCTANCE -> new Notation("L", "inductance of a phase", "H");
            case MOTOR_NO_LOAD_CURRENT -> new Notation("I_0", "no-load current", "A");
            case MOTOR_VISCOUS_DRAG -> new Notation("c_v", "viscous drag", "N·m·s/rad");
            case MOTOR_WINDING_LIMIT -> new Notation("T_lim", "highest of the winding", "°C");
            case MOTOR_WINDING_TO_CASE -> new Notation("R_wc", "winding to case", "K/W");
            case MOTOR_CASE_TO_AIR -> new Notation("R_ca", "case to air", "K/W");
            case MOTOR_WINDING_HEAT_CAPACITY ->
                    new Notation("C_w", "heat capacity of winding", "J/K");
            case MOTOR_CASE_HEAT_CAPACITY -> new Notation("C_c", "heat capacity of case", "J/K");
            case CONTROLLER_COUNT -> new Notation("N", "controllers", "");
            case CONTROLLER_VOLTAGE_RATING -> new Notation("V_r", "controller voltage rating", "V");
            case CONTROLLER_EFFICIENCY -> new Notation("ηc", "efficiency of controllers", "");
            case CONTROLLER_REGEN_RESPONSE ->
                    new Notation("t_r", "response of the regen limiter", "s");
            case PACK_SERIES -> new Notation("S", "cells in series", "");
            case PACK_PARALLEL -> new Notation("P", "cells in parallel", "");
            case PACK_JOINT_RESISTANCE -> new Notation("R_j", "joints and leads", "Ω");
            case PACK_RESISTANCE_SPREAD -> new Notation("σ", "spread of cell resistance", "");
            case PACK_GROUP_CHARGE -> new Notation("d", "charge among groups", "");
            case PACK_GROUP_CAPACITY -> new Notation("κ", "capacity among groups", "");
            case PACK_GROUP_RESISTANCE -> new Notation("x_g", "resistance among groups", "");
            case PACK_TEMPERATURE -> new Notation("T_p", "temperature of the cells", "°C");
            case CELL_CAPACITY -> new Notation("q", "charge of a cell", "Ah");
            case CELL_DISCHARGE_CURRENT,
                    CELL_CHARGE_CURRENT,
                    CELL_DISCHARGE_PULSE,
                    CELL_CHARGE_PULSE ->
                    new Notation("i", "rating of one cell", "A");
            case CELL_CHARGE_CURRENT_BY_CHARGE ->
                    new Notation("f", "share permitted at that charge", "");
            case CELL_CHARGE_TEMPERATURE, CELL_DISCHARGE_TEMPERATURE ->
                    new Notation("x", "share permitted when so warm", "");
            case CELL_VOLTAGE_MAX -> new Notation("u_max", "highest cell voltage", "V");
            case CELL_VOLTAGE_MIN -> new Notation("u_min", "lowest cell voltage", "V");
            case CELL_TAPER_FLOOR -> new Notation("u_cut", "usual cut-off of its chemistry", "V");
            case PROTECTION_OVERVOLTAGE_TRIP, PROTECTION_UNDERVOLTAGE_TRIP ->
                    new Notation("u_trip", "cell at which protection opens", "V");
            case CELL_OPEN_CIRCUIT_VOLTAGE ->
                    new Notation("u", "cell at rest, from its curve", "V");
            case CELL_RESISTANCE -> new Notation("r", "of a cell, 10 s pulse", "Ω");
            case CELL_RESISTANCE_BY_CHARGE -> new Notation("f_s", "its factor at that charge", "");
            case CELL_RESISTANCE_BY_TEMPERATURE ->
                    new Notation("f_T", "its factor at that temperature", "");
            case CELL_SUSTAINED_RISE -> new Notation("x_r", "further rise in a long pull", "");
            case CELL_OHMIC_SHARE -> new Notation("k", "of the pulse's, there at once", "");
            case CELL_ONSET_TIME -> new Notation("τ_f", "time constant of the rest", "s");
            case CELL_RELAXATION_TIME -> new Notation("τ", "time constant of that", "s");
            case CELL_MASS -> new Notation("c", "of a cell, from mass", "J/K");
            case MOTOR_CURRENT_RATING,
                    CONTROLLER_MOTOR_CURRENT_RATING,
                    CONTROLLER_PACK_CURRENT_RATING,
                    PROTECTION_DISCHARGE_TRIP,
                    PROTECTION_CHARGE_TRIP,
                    WIRING_FUSE,
                    WIRING_PLUG_RATING,
                    TRUNK_FUSE,
                    TRUNK_PLUG_RATING ->
                    new Notation("I_r", "rating", "A");
            case WIRING_WIRE_AMPACITY, TRUNK_WIRE_AMPACITY -> new Notation("I_r", "ampacity", "A");
            case TRUNK_RESISTANCE -> new Notation("R_t", "wiring of all packs together", "Ω");
            case USE_CHARGE_FROM -> new Notation("s_f", "fullest charge in use", "");
            case USE_CHARGE_TO -> new Notation("s_e", "emptiest charge in use", "");
            case USE_SPEED_MAX -> new Notation("v", "highest speed in use", "m/s");
            case USE_AMBIENT -> new Notation("T_a", "temperature of the air", "°C");
            case USE_DECK_TEMPERATURE -> new Notation("T_d", "air in the deck", "°C");
            case USE_PACK_TEMPERATURE -> new Notation("T", "coldest cells in use", "°C");
            case USE_ALTITUDE -> new Notation("h_a", "altitude", "m");
            case USE_SLOPE_MAX -> new Notation("i", "steepest slope", "");
            case USE_SLOPE_LENGTH -> new Notation("L_s", "length of the slope", "m");
            case USE_HARD_PULL -> new Notation("t_p", "length of a hard pull", "s");
            case USE_HARD_BRAKE -> new Notation("t_b", "longest hard braking", "s");
            case USE_CRUISE_SPEED -> new Notation("v", "cruise speed", "m/s");
            case USE_HEADWIND -> new Notation("w", "headwind", "m/s");
            case USE_IDLE_POWER -> new Notation("P_i", "electronics and lights", "W");
            case USE_STOPS_PER_KM -> new Notation("k", "stops", "1/km");
            case MARGINS_TRIP, MARGINS_RATING, MARGINS_FUSE, MARGINS_CONTROLLER_VOLTAGE ->
                    new Notation("m", "margin", "");
            case MARGINS_CELL -> new Notation("m", "margin in a closed deck", "");
            case MARGINS_OVERVOLTAGE -> new Notation("m", "margin per cell", "V");
            case MARGINS_GRIP -> new Notation("m_μ", "margin for grip", "");
            case CRITERIA_RIDER_DECELERATION_MAX ->
                    new Notation("a", "deceleration that is borne", "m/s²");
            case SETTINGS_MOTOR_DRIVE_CURRENT -> new Notation("I_m", "motor current set", "A");
            case SETTINGS_PACK_DISCHARGE_CURRENT, SETTINGS_PACK_REGEN_CURRENT ->
                    new Notation("I_c", "set at each controller", "A");
            case SETTINGS_SPEED_CAP -> new Notation("v", "speed cap", "m/s");
            default -> throw new IllegalArgumentException(input.key() + " is in no formula");
        };
    }
}

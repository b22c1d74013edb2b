package brakewright.spec;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Every quantity that describes a vehicle, its use and its settings, by the name it has in a build
 * file. A result names the inputs it rests on with these, so that their origin can be told.
 */
public enum Input {
    /** {@code rider.mass}. */
    RIDER_MASS("rider.mass", "kg"),
    /** {@code rider.stance}. */
    RIDER_STANCE("rider.stance", ""),
    /** {@code rider.mass_height}. */
    RIDER_MASS_HEIGHT("rider.mass_height", "m"),
    /** {@code rider.support_half_length}. */
    RIDER_SUPPORT_HALF_LENGTH("rider.support_half_length", "m"),
    /** {@code vehicle.mass}. */
    VEHICLE_MASS("vehicle.mass", "kg"),
    /** {@code vehicle.cargo}. */
    VEHICLE_CARGO("vehicle.cargo", "kg"),
    /** {@code vehicle.wheel_diameter}. */
    VEHICLE_WHEEL_DIAMETER("vehicle.wheel_diameter", "m"),
    /** {@code vehicle.wheelbase}. */
    VEHICLE_WHEELBASE("vehicle.wheelbase", "m"),
    /** {@code vehicle.mass_centre_height}. */
    VEHICLE_MASS_CENTRE_HEIGHT("vehicle.mass_centre_height", "m"),
    /** {@code vehicle.mass_centre_from_front}. */
    VEHICLE_MASS_CENTRE_FROM_FRONT("vehicle.mass_centre_from_front", "m"),
    /** {@code vehicle.driven_axle}. */
    VEHICLE_DRIVEN_AXLE("vehicle.driven_axle", ""),
    /** {@code vehicle.rolling_resistance}. */
    VEHICLE_ROLLING_RESISTANCE("vehicle.rolling_resistance", "1"),
    /** {@code vehicle.drag_area}. */
    VEHICLE_DRAG_AREA("vehicle.drag_area", "m2"),
    /** {@code vehicle.grip}. */
    VEHICLE_GRIP("vehicle.grip", "1"),
    /** {@code vehicle.grip_wet}. */
    VEHICLE_GRIP_WET("vehicle.grip_wet", "1"),
    /** {@code vehicle.tyres}. */
    VEHICLE_TYRES("vehicle.tyres", ""),
    /** {@code vehicle.rotating_share}. */
    VEHICLE_ROTATING_SHARE("vehicle.rotating_share", "1"),
    /** {@code vehicle.friction_brake.deceleration}. */
    VEHICLE_FRICTION_BRAKE_DECELERATION("vehicle.friction_brake.deceleration", "m/s2"),
    /** {@code drive.motors}. */
    DRIVE_MOTORS("drive.motors", "1"),
    /** {@code drive.reduction}. */
    DRIVE_REDUCTION("drive.reduction", "1"),
    /** {@code drive.efficiency}. */
    DRIVE_EFFICIENCY("drive.efficiency", "1"),
    /** {@code motor.kv}. */
    MOTOR_KV("motor.kv", "rpm/V"),
    /** {@code motor.resistance}. */
    MOTOR_RESISTANCE("motor.resistance", "ohm"),
    /** {@code motor.pole_pairs}. */
    MOTOR_POLE_PAIRS("motor.pole_pairs", "1"),
    /** {@code motor.inductance}. */
    MOTOR_INDUCTANCE("motor.inductance", "H"),
    /** {@code motor.no_load_current}. */
    MOTOR_NO_LOAD_CURRENT("motor.no_load_current", "A"),
    /** {@code motor.viscous_drag}. */
    MOTOR_VISCOUS_DRAG("motor.viscous_drag", "N*m*s/rad"),
    /** {@code motor.current_rating}. */
    MOTOR_CURRENT_RATING("motor.current_rating", "A"),
    /** {@code motor.winding_limit}. */
    MOTOR_WINDING_LIMIT("motor.winding_limit", "degC"),
    /** {@code motor.winding_to_case}. */
    MOTOR_WINDING_TO_CASE("motor.winding_to_case", "K/W"),
    /** {@code motor.case_to_air}. */
    MOTOR_CASE_TO_AIR("motor.case_to_air", "K/W"),
    /** {@code motor.winding_heat_capacity}. */
    MOTOR_WINDING_HEAT_CAPACITY("motor.winding_heat_capacity", "J/K"),
    /** {@code motor.case_heat_capacity}. */
    MOTOR_CASE_HEAT_CAPACITY("motor.case_heat_capacity", "J/K"),
    /** {@code controller.count}. */
    CONTROLLER_COUNT("controller.count", "1"),
    /** {@code controller.current_basis}. */
    CONTROLLER_CURRENT_BASIS("controller.current_basis", ""),
    /** {@code controller.motor_current_rating}. */
    CONTROLLER_MOTOR_CURRENT_RATING("controller.motor_current_rating", "A"),
    /** {@code controller.pack_current_rating}. */
    CONTROLLER_PACK_CURRENT_RATING("controller.pack_current_rating", "A"),
    /** {@code controller.voltage_rating}. */
    CONTROLLER_VOLTAGE_RATING("controller.voltage_rating", "V"),
    /** {@code controller.efficiency}. */
    CONTROLLER_EFFICIENCY("controller.efficiency", "1"),
    /** {@code controller.bus_capacitance}. */
    CONTROLLER_BUS_CAPACITANCE("controller.bus_capacitance", "F"),
    /** {@code controller.regen_response}. */
    CONTROLLER_REGEN_RESPONSE("controller.regen_response", "s"),
    /** {@code controller.brake_ends_below}. */
    CONTROLLER_BRAKE_ENDS_BELOW("controller.brake_ends_below", "m/s"),
    /** {@code pack.series}. */
    PACK_SERIES("pack.series", "1"),
    /** {@code pack.parallel}. */
    PACK_PARALLEL("pack.parallel", "1"),
    /** {@code pack.joint_resistance}. */
    PACK_JOINT_RESISTANCE("pack.joint_resistance", "ohm"),
    /** {@code pack.resistance_spread}. */
    PACK_RESISTANCE_SPREAD("pack.resistance_spread", "1"),
    /** {@code pack.group_spread.charge}. */
    PACK_GROUP_CHARGE("pack.group_spread.charge", "1"),
    /** {@code pack.group_spread.capacity}. */
    PACK_GROUP_CAPACITY("pack.group_spread.capacity", "1"),
    /** {@code pack.group_spread.resistance}. */
    PACK_GROUP_RESISTANCE("pack.group_spread.resistance", "1"),
    /** {@code pack.temperature}. */
    PACK_TEMPERATURE("pack.temperature", "degC"),
    /** {@code pack.to_air}. */
    PACK_TO_AIR("pack.to_air", "K/W"),
    /** {@code pack.charge}. */
    PACK_CHARGE("pack.charge", "1"),
    /** {@code pack.cell.chemistry}. */
    CELL_CHEMISTRY("pack.cell.chemistry", ""),
    /** {@code pack.cell.capacity}. */
    CELL_CAPACITY("pack.cell.capacity", "Ah"),
    /** {@code pack.cell.discharge_current}. */
    CELL_DISCHARGE_CURRENT("pack.cell.discharge_current", "A"),
    /** {@code pack.cell.charge_current}. */
    CELL_CHARGE_CURRENT("pack.cell.charge_current", "A"),
    /** {@code pack.cell.charge_current_by_charge}. */
    CELL_CHARGE_CURRENT_BY_CHARGE("pack.cell.charge_current_by_charge", "1"),
    /** {@code pack.cell.voltage_max}. */
    CELL_VOLTAGE_MAX("pack.cell.voltage_max", "V"),
    /** {@code pack.cell.voltage_min}. */
    CELL_VOLTAGE_MIN("pack.cell.voltage_min", "V"),
    /** {@code pack.cell.taper_floor}. */
    CELL_TAPER_FLOOR("pack.cell.taper_floor", "V"),
    /** {@code pack.cell.resistance}. */
    CELL_RESISTANCE("pack.cell.resistance", "ohm"),
    /** {@code pack.cell.mass}. */
    CELL_MASS("pack.cell.mass", "kg"),
    /** {@code pack.cell.open_circuit_voltage}. */
    CELL_OPEN_CIRCUIT_VOLTAGE("pack.cell.open_circuit_voltage", "V"),
    /** {@code pack.cell.resistance_by_charge}. */
    CELL_RESISTANCE_BY_CHARGE("pack.cell.resistance_by_charge", "1"),
    /** {@code pack.cell.resistance_into_by_charge}. */
    CELL_RESISTANCE_INTO_BY_CHARGE("pack.cell.resistance_into_by_charge", "1"),
    /** {@code pack.cell.resistance_by_temperature}. */
    CELL_RESISTANCE_BY_TEMPERATURE("pack.cell.resistance_by_temperature", "1"),
    /** {@code pack.cell.sustained_rise}. */
    CELL_SUSTAINED_RISE("pack.cell.sustained_rise", "1"),
    /** {@code pack.cell.sustained_rise_by_charge}. */
    CELL_SUSTAINED_RISE_BY_CHARGE("pack.cell.sustained_rise_by_charge", "1"),
    /** {@code pack.cell.relaxation_time}. */
    CELL_RELAXATION_TIME("pack.cell.relaxation_time", "s"),
    /** {@code pack.cell.ohmic_share}. */
    CELL_OHMIC_SHARE("pack.cell.ohmic_share", "1"),
    /** {@code pack.cell.onset_time}. */
    CELL_ONSET_TIME("pack.cell.onset_time", "s"),
    /** {@code pack.cell.specific_heat}. */
    CELL_SPECIFIC_HEAT("pack.cell.specific_heat", "J/(kg*K)"),
    /** {@code pack.cell.charge_temperature}. */
    CELL_CHARGE_TEMPERATURE("pack.cell.charge_temperature", "degC"),
    /** {@code pack.cell.cold_band}. */
    CELL_COLD_BAND("pack.cell.cold_band", "K"),
    /** {@code pack.cell.cold_charge_share}. */
    CELL_COLD_CHARGE_SHARE("pack.cell.cold_charge_share", "1"),
    /** {@code pack.cell.discharge_temperature}. */
    CELL_DISCHARGE_TEMPERATURE("pack.cell.discharge_temperature", "degC"),
    /** {@code pack.cell.discharge_pulse}. */
    CELL_DISCHARGE_PULSE("pack.cell.discharge_pulse", "A"),
    /** {@code pack.cell.charge_pulse}. */
    CELL_CHARGE_PULSE("pack.cell.charge_pulse", "A"),
    /** {@code pack.cell.pulse_time}. */
    CELL_PULSE_TIME("pack.cell.pulse_time", "s"),
    /** {@code pack.protection.path}. */
    PROTECTION_PATH("pack.protection.path", ""),
    /** {@code pack.protection.discharge_trip}. */
    PROTECTION_DISCHARGE_TRIP("pack.protection.discharge_trip", "A"),
    /** {@code pack.protection.charge_trip}. */
    PROTECTION_CHARGE_TRIP("pack.protection.charge_trip", "A"),
    /** {@code pack.protection.cell_overvoltage_trip}. */
    PROTECTION_OVERVOLTAGE_TRIP("pack.protection.cell_overvoltage_trip", "V"),
    /** {@code pack.protection.cell_undervoltage_trip}. */
    PROTECTION_UNDERVOLTAGE_TRIP("pack.protection.cell_undervoltage_trip", "V"),
    /** {@code pack.protection.charge_trip_delay}. */
    PROTECTION_CHARGE_TRIP_DELAY("pack.protection.charge_trip_delay", "s"),
    /** {@code pack.protection.cell_overvoltage_trip_delay}. */
    PROTECTION_OVERVOLTAGE_TRIP_DELAY("pack.protection.cell_overvoltage_trip_delay", "s"),
    /** {@code pack.wiring.fuse}. */
    WIRING_FUSE("pack.wiring.fuse", "A"),
    /** {@code pack.wiring.fuse_family}. */
    WIRING_FUSE_FAMILY("pack.wiring.fuse_family", ""),
    /** {@code pack.wiring.fuse_voltage}. */
    WIRING_FUSE_VOLTAGE("pack.wiring.fuse_voltage", "V"),
    /** {@code pack.wiring.fuse_breaking_capacity}. */
    WIRING_FUSE_BREAKING_CAPACITY("pack.wiring.fuse_breaking_capacity", "A"),
    /** {@code pack.wiring.wire}. */
    WIRING_WIRE("pack.wiring.wire", ""),
    /** {@code pack.wiring.wire_ampacity}. */
    WIRING_WIRE_AMPACITY("pack.wiring.wire_ampacity", "A"),
    /** {@code pack.wiring.length}. */
    WIRING_LENGTH("pack.wiring.length", "m"),
    /** {@code pack.wiring.plug}. */
    WIRING_PLUG("pack.wiring.plug", ""),
    /** {@code pack.wiring.plug_rating}. */
    WIRING_PLUG_RATING("pack.wiring.plug_rating", "A"),
    /** {@code pack.wiring.plug_anti_spark}. */
    WIRING_PLUG_ANTI_SPARK("pack.wiring.plug_anti_spark", ""),
    /** {@code battery.joining}. */
    PACKS_JOINING("battery.joining", ""),
    /** {@code battery.fuse}. */
    TRUNK_FUSE("battery.fuse", "A"),
    /** {@code battery.fuse_family}. */
    TRUNK_FUSE_FAMILY("battery.fuse_family", ""),
    /** {@code battery.fuse_voltage}. */
    TRUNK_FUSE_VOLTAGE("battery.fuse_voltage", "V"),
    /** {@code battery.fuse_breaking_capacity}. */
    TRUNK_FUSE_BREAKING_CAPACITY("battery.fuse_breaking_capacity", "A"),
    /** {@code battery.wire}. */
    TRUNK_WIRE("battery.wire", ""),
    /** {@code battery.wire_ampacity}. */
    TRUNK_WIRE_AMPACITY("battery.wire_ampacity", "A"),
    /** {@code battery.length}. */
    TRUNK_LENGTH("battery.length", "m"),
    /** {@code battery.lead_resistance}. */
    TRUNK_RESISTANCE("battery.lead_resistance", "ohm"),
    /** {@code battery.plug}. */
    TRUNK_PLUG("battery.plug", ""),
    /** {@code battery.plug_rating}. */
    TRUNK_PLUG_RATING("battery.plug_rating", "A"),
    /** {@code battery.plug_anti_spark}. */
    TRUNK_PLUG_ANTI_SPARK("battery.plug_anti_spark", ""),
    /** {@code use.charge_from}. */
    USE_CHARGE_FROM("use.charge_from", "1"),
    /** {@code use.charge_to}. */
    USE_CHARGE_TO("use.charge_to", "1"),
    /** {@code use.speed_max}. */
    USE_SPEED_MAX("use.speed_max", "m/s"),
    /** {@code use.ambient}. */
    USE_AMBIENT("use.ambient", "degC"),
    /** {@code use.deck_temperature}. */
    USE_DECK_TEMPERATURE("use.deck_temperature", "degC"),
    /** {@code use.pack_temperature}. */
    USE_PACK_TEMPERATURE("use.pack_temperature", "degC"),
    /** {@code use.altitude}. */
    USE_ALTITUDE("use.altitude", "m"),
    /** {@code use.slope_max}. */
    USE_SLOPE_MAX("use.slope_max", "1"),
    /** {@code use.slope_length}. */
    USE_SLOPE_LENGTH("use.slope_length", "m"),
    /** {@code use.hard_pull}. */
    USE_HARD_PULL("use.hard_pull", "s"),
    /** {@code use.hard_brake}. */
    USE_HARD_BRAKE("use.hard_brake", "s"),
    /** {@code use.reaction_time}. */
    USE_REACTION_TIME("use.reaction_time", "s"),
    /** {@code use.brake_build_up}. */
    USE_BRAKE_BUILD_UP("use.brake_build_up", "s"),
    /** {@code use.cruise_speed}. */
    USE_CRUISE_SPEED("use.cruise_speed", "m/s"),
    /** {@code use.headwind}. */
    USE_HEADWIND("use.headwind", "m/s"),
    /** {@code use.idle_power}. */
    USE_IDLE_POWER("use.idle_power", "W"),
    /** {@code use.stops_per_km}. */
    USE_STOPS_PER_KM("use.stops_per_km", "1/km"),
    /** {@code use.measured_consumption}. */
    USE_MEASURED_CONSUMPTION("use.measured_consumption", "Wh/km"),
    /** {@code use.measured_speed}. */
    USE_MEASURED_SPEED("use.measured_speed", "m/s"),
    /** {@code margins.trip}. */
    MARGINS_TRIP("margins.trip", "1"),
    /** {@code margins.rating}. */
    MARGINS_RATING("margins.rating", "1"),
    /** {@code margins.cell}. */
    MARGINS_CELL("margins.cell", "1"),
    /** {@code margins.fuse}. */
    MARGINS_FUSE("margins.fuse", "1"),
    /** {@code margins.overvoltage}. */
    MARGINS_OVERVOLTAGE("margins.overvoltage", "V"),
    /** {@code margins.controller_voltage}. */
    MARGINS_CONTROLLER_VOLTAGE("margins.controller_voltage", "1"),
    /** {@code margins.grip}. */
    MARGINS_GRIP("margins.grip", "1"),
    /** {@code criteria.deceleration_min}. */
    CRITERIA_DECELERATION_MIN("criteria.deceleration_min", "m/s2"),
    /** {@code criteria.rider_deceleration_max}. */
    CRITERIA_RIDER_DECELERATION_MAX("criteria.rider_deceleration_max", "m/s2"),
    /** {@code criteria.climb_min}. */
    CRITERIA_CLIMB_MIN("criteria.climb_min", "1"),
    /** {@code criteria.range_min}. */
    CRITERIA_RANGE_MIN("criteria.range_min", "m"),
    /** {@code settings.motor_drive_current}. */
    SETTINGS_MOTOR_DRIVE_CURRENT("settings.motor_drive_current", "A"),
    /** {@code settings.motor_brake_current}. */
    SETTINGS_MOTOR_BRAKE_CURRENT("settings.motor_brake_current", "A"),
    /** {@code settings.pack_discharge_current}. */
    SETTINGS_PACK_DISCHARGE_CURRENT("settings.pack_discharge_current", "A"),
    /** {@code settings.pack_regen_current}. */
    SETTINGS_PACK_REGEN_CURRENT("settings.pack_regen_current", "A"),
    /** {@code settings.low_voltage_taper}. */
    SETTINGS_LOW_VOLTAGE_TAPER("settings.low_voltage_taper", "V"),
    /** {@code settings.high_voltage_taper}. */
    SETTINGS_HIGH_VOLTAGE_TAPER("settings.high_voltage_taper", "V"),
    /** {@code settings.speed_cap}. */
    SETTINGS_SPEED_CAP("settings.speed_cap", "m/s");

    private static final Map<String, Input> BY_KEY = index();

    private final String key;
    private final String unit;

    Input(String key, String unit) {
        this.key = key;
        this.unit = unit;
    }

    /**
     * Returns the name in a build file.
     *
     * @return the dotted key
     */
    public String key() {
        return key;
    }

    /**
     * Returns the unit in which calculations take the quantity, in plain letters.
     *
     * @return the unit; "1" for a ratio or a count, empty for a word
     */
    public String unit() {
        return unit;
    }

    /**
     * Finds an input by its name.
     *
     * @param key the dotted key
     * @return the input; empty if there is none of that name
     */
    public static Optional<Input> ofKey(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    private static Map<String, Input> index() {
        Map<String, Input> index = new TreeMap<>();
        for (Input input : values()) {
            index.put(input.key, input);
        }
        return index;
    }
}

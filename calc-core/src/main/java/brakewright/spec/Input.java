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
    RIDER_MASS("rider.mass", Unit.KILOGRAM),
    /** {@code rider.stance}. */
    RIDER_STANCE("rider.stance", Unit.NONE),
    /** {@code rider.mass_height}. */
    RIDER_MASS_HEIGHT("rider.mass_height", Unit.METRE),
    /** {@code rider.support_half_length}. */
    RIDER_SUPPORT_HALF_LENGTH("rider.support_half_length", Unit.METRE),
    /** {@code vehicle.mass}. */
    VEHICLE_MASS("vehicle.mass", Unit.KILOGRAM),
    /** {@code vehicle.cargo}. */
    VEHICLE_CARGO("vehicle.cargo", Unit.KILOGRAM),
    /** {@code vehicle.wheel_diameter}. */
    VEHICLE_WHEEL_DIAMETER("vehicle.wheel_diameter", Unit.METRE),
    /** {@code vehicle.wheelbase}. */
    VEHICLE_WHEELBASE("vehicle.wheelbase", Unit.METRE),
    /** {@code vehicle.mass_centre_height}. */
    VEHICLE_MASS_CENTRE_HEIGHT("vehicle.mass_centre_height", Unit.METRE),
    /** {@code vehicle.mass_centre_from_front}. */
    VEHICLE_MASS_CENTRE_FROM_FRONT("vehicle.mass_centre_from_front", Unit.METRE),
    /** {@code vehicle.driven_axle}. */
    VEHICLE_DRIVEN_AXLE("vehicle.driven_axle", Unit.NONE),
    /** {@code vehicle.rolling_resistance}. */
    VEHICLE_ROLLING_RESISTANCE("vehicle.rolling_resistance", Unit.RATIO),
    /** {@code vehicle.drag_area}. */
    VEHICLE_DRAG_AREA("vehicle.drag_area", Unit.SQUARE_METRE),
    /** {@code vehicle.grip}. */
    VEHICLE_GRIP("vehicle.grip", Unit.RATIO),
    /** {@code vehicle.grip_wet}. */
    VEHICLE_GRIP_WET("vehicle.grip_wet", Unit.RATIO),
    /** {@code vehicle.tyres}. */
    VEHICLE_TYRES("vehicle.tyres", Unit.NONE),
    /** {@code vehicle.rotating_share}. */
    VEHICLE_ROTATING_SHARE("vehicle.rotating_share", Unit.RATIO),
    /** {@code vehicle.friction_brake.deceleration}. */
    VEHICLE_FRICTION_BRAKE_DECELERATION(
            "vehicle.friction_brake.deceleration", Unit.METRE_PER_SECOND_SQUARED),
    /** {@code drive.motors}. */
    DRIVE_MOTORS("drive.motors", Unit.RATIO),
    /** {@code drive.reduction}. */
    DRIVE_REDUCTION("drive.reduction", Unit.RATIO),
    /** {@code drive.efficiency}. */
    DRIVE_EFFICIENCY("drive.efficiency", Unit.RATIO),
    /** {@code motor.kv}. */
    MOTOR_KV("motor.kv", Unit.RPM_PER_VOLT),
    /** {@code motor.resistance}. */
    MOTOR_RESISTANCE("motor.resistance", Unit.OHM),
    /** {@code motor.pole_pairs}. */
    MOTOR_POLE_PAIRS("motor.pole_pairs", Unit.RATIO),
    /** {@code motor.inductance}. */
    MOTOR_INDUCTANCE("motor.inductance", Unit.HENRY),
    /** {@code motor.no_load_current}. */
    MOTOR_NO_LOAD_CURRENT("motor.no_load_current", Unit.AMPERE),
    /** {@code motor.viscous_drag}. */
    MOTOR_VISCOUS_DRAG("motor.viscous_drag", Unit.NEWTON_METRE_SECOND_PER_RADIAN),
    /** {@code motor.current_rating}. */
    MOTOR_CURRENT_RATING("motor.current_rating", Unit.AMPERE),
    /** {@code motor.winding_limit}. */
    MOTOR_WINDING_LIMIT("motor.winding_limit", Unit.CELSIUS),
    /** {@code motor.winding_to_case}. */
    MOTOR_WINDING_TO_CASE("motor.winding_to_case", Unit.KELVIN_PER_WATT),
    /** {@code motor.case_to_air}. */
    MOTOR_CASE_TO_AIR("motor.case_to_air", Unit.KELVIN_PER_WATT),
    /** {@code motor.winding_heat_capacity}. */
    MOTOR_WINDING_HEAT_CAPACITY("motor.winding_heat_capacity", Unit.JOULE_PER_KELVIN),
    /** {@code motor.case_heat_capacity}. */
    MOTOR_CASE_HEAT_CAPACITY("motor.case_heat_capacity", Unit.JOULE_PER_KELVIN),
    /** {@code controller.count}. */
    CONTROLLER_COUNT("controller.count", Unit.RATIO),
    /** {@code controller.current_basis}. */
    CONTROLLER_CURRENT_BASIS("controller.current_basis", Unit.NONE),
    /** {@code controller.motor_current_rating}. */
    CONTROLLER_MOTOR_CURRENT_RATING("controller.motor_current_rating", Unit.AMPERE),
    /** {@code controller.pack_current_rating}. */
    CONTROLLER_PACK_CURRENT_RATING("controller.pack_current_rating", Unit.AMPERE),
    /** {@code controller.voltage_rating}. */
    CONTROLLER_VOLTAGE_RATING("controller.voltage_rating", Unit.VOLT),
    /** {@code controller.efficiency}. */
    CONTROLLER_EFFICIENCY("controller.efficiency", Unit.RATIO),
    /** {@code controller.bus_capacitance}. */
    CONTROLLER_BUS_CAPACITANCE("controller.bus_capacitance", Unit.FARAD),
    /** {@code controller.regen_response}. */
    CONTROLLER_REGEN_RESPONSE("controller.regen_response", Unit.SECOND),
    /** {@code controller.brake_ends_below}. */
    CONTROLLER_BRAKE_ENDS_BELOW("controller.brake_ends_below", Unit.METRE_PER_SECOND),
    /** {@code pack.series}. */
    PACK_SERIES("pack.series", Unit.RATIO),
    /** {@code pack.parallel}. */
    PACK_PARALLEL("pack.parallel", Unit.RATIO),
    /** {@code pack.joint_resistance}. */
    PACK_JOINT_RESISTANCE("pack.joint_resistance", Unit.OHM),
    /** {@code pack.resistance_spread}. */
    PACK_RESISTANCE_SPREAD("pack.resistance_spread", Unit.RATIO),
    /** {@code pack.group_spread.charge}. */
    PACK_GROUP_CHARGE("pack.group_spread.charge", Unit.RATIO),
    /** {@code pack.group_spread.capacity}. */
    PACK_GROUP_CAPACITY("pack.group_spread.capacity", Unit.RATIO),
    /** {@code pack.group_spread.resistance}. */
    PACK_GROUP_RESISTANCE("pack.group_spread.resistance", Unit.RATIO),
    /** {@code pack.temperature}. */
    PACK_TEMPERATURE("pack.temperature", Unit.CELSIUS),
    /** {@code pack.to_air}. */
    PACK_TO_AIR("pack.to_air", Unit.KELVIN_PER_WATT),
    /** {@code pack.charge}. */
    PACK_CHARGE("pack.charge", Unit.RATIO),
    /** {@code pack.cell.chemistry}. */
    CELL_CHEMISTRY("pack.cell.chemistry", Unit.NONE),
    /** {@code pack.cell.capacity}. */
    CELL_CAPACITY("pack.cell.capacity", Unit.AMPERE_HOUR),
    /** {@code pack.cell.discharge_current}. */
    CELL_DISCHARGE_CURRENT("pack.cell.discharge_current", Unit.AMPERE),
    /** {@code pack.cell.charge_current}. */
    CELL_CHARGE_CURRENT("pack.cell.charge_current", Unit.AMPERE),
    /** {@code pack.cell.charge_current_by_charge}. */
    CELL_CHARGE_CURRENT_BY_CHARGE("pack.cell.charge_current_by_charge", Unit.RATIO),
    /** {@code pack.cell.voltage_max}. */
    CELL_VOLTAGE_MAX("pack.cell.voltage_max", Unit.VOLT),
    /** {@code pack.cell.voltage_min}. */
    CELL_VOLTAGE_MIN("pack.cell.voltage_min", Unit.VOLT),
    /** {@code pack.cell.taper_floor}. */
    CELL_TAPER_FLOOR("pack.cell.taper_floor", Unit.VOLT),
    /** {@code pack.cell.resistance}. */
    CELL_RESISTANCE("pack.cell.resistance", Unit.OHM),
    /** {@code pack.cell.mass}. */
    CELL_MASS("pack.cell.mass", Unit.KILOGRAM),
    /** {@code pack.cell.open_circuit_voltage}. */
    CELL_OPEN_CIRCUIT_VOLTAGE("pack.cell.open_circuit_voltage", Unit.VOLT),
    /** {@code pack.cell.resistance_by_charge}. */
    CELL_RESISTANCE_BY_CHARGE("pack.cell.resistance_by_charge", Unit.RATIO),
    /** {@code pack.cell.resistance_into_by_charge}. */
    CELL_RESISTANCE_INTO_BY_CHARGE("pack.cell.resistance_into_by_charge", Unit.RATIO),
    /** {@code pack.cell.resistance_cold_by_charge}. */
    CELL_RESISTANCE_COLD_BY_CHARGE("pack.cell.resistance_cold_by_charge", Unit.RATIO),
    /** {@code pack.cell.resistance_by_temperature}. */
    CELL_RESISTANCE_BY_TEMPERATURE("pack.cell.resistance_by_temperature", Unit.RATIO),
    /** {@code pack.cell.sustained_rise}. */
    CELL_SUSTAINED_RISE("pack.cell.sustained_rise", Unit.RATIO),
    /** {@code pack.cell.sustained_rise_by_charge}. */
    CELL_SUSTAINED_RISE_BY_CHARGE("pack.cell.sustained_rise_by_charge", Unit.RATIO),
    /** {@code pack.cell.relaxation_time}. */
    CELL_RELAXATION_TIME("pack.cell.relaxation_time", Unit.SECOND),
    /** {@code pack.cell.ohmic_share}. */
    CELL_OHMIC_SHARE("pack.cell.ohmic_share", Unit.RATIO),
    /** {@code pack.cell.onset_time}. */
    CELL_ONSET_TIME("pack.cell.onset_time", Unit.SECOND),
    /** {@code pack.cell.specific_heat}. */
    CELL_SPECIFIC_HEAT("pack.cell.specific_heat", Unit.JOULE_PER_KILOGRAM_KELVIN),
    /** {@code pack.cell.charge_temperature}. */
    CELL_CHARGE_TEMPERATURE("pack.cell.charge_temperature", Unit.CELSIUS),
    /** {@code pack.cell.cold_band}. */
    CELL_COLD_BAND("pack.cell.cold_band", Unit.KELVIN),
    /** {@code pack.cell.cold_charge_share}. */
    CELL_COLD_CHARGE_SHARE("pack.cell.cold_charge_share", Unit.RATIO),
    /** {@code pack.cell.discharge_temperature}. */
    CELL_DISCHARGE_TEMPERATURE("pack.cell.discharge_temperature", Unit.CELSIUS),
    /** {@code pack.cell.discharge_pulse}. */
    CELL_DISCHARGE_PULSE("pack.cell.discharge_pulse", Unit.AMPERE),
    /** {@code pack.cell.charge_pulse}. */
    CELL_CHARGE_PULSE("pack.cell.charge_pulse", Unit.AMPERE),
    /** {@code pack.cell.pulse_time}. */
    CELL_PULSE_TIME("pack.cell.pulse_time", Unit.SECOND),
    /** {@code pack.protection.path}. */
    PROTECTION_PATH("pack.protection.path", Unit.NONE),
    /** {@code pack.protection.discharge_trip}. */
    PROTECTION_DISCHARGE_TRIP("pack.protection.discharge_trip", Unit.AMPERE),
    /** {@code pack.protection.charge_trip}. */
    PROTECTION_CHARGE_TRIP("pack.protection.charge_trip", Unit.AMPERE),
    /** {@code pack.protection.cell_overvoltage_trip}. */
    PROTECTION_OVERVOLTAGE_TRIP("pack.protection.cell_overvoltage_trip", Unit.VOLT),
    /** {@code pack.protection.cell_undervoltage_trip}. */
    PROTECTION_UNDERVOLTAGE_TRIP("pack.protection.cell_undervoltage_trip", Unit.VOLT),
    /** {@code pack.protection.charge_trip_delay}. */
    PROTECTION_CHARGE_TRIP_DELAY("pack.protection.charge_trip_delay", Unit.SECOND),
    /** {@code pack.protection.cell_overvoltage_trip_delay}. */
    PROTECTION_OVERVOLTAGE_TRIP_DELAY("pack.protection.cell_overvoltage_trip_delay", Unit.SECOND),
    /** {@code pack.protection.discharge_trip_delay}. */
    PROTECTION_DISCHARGE_TRIP_DELAY("pack.protection.discharge_trip_delay", Unit.SECOND),
    /** {@code pack.protection.cell_undervoltage_trip_delay}. */
    PROTECTION_UNDERVOLTAGE_TRIP_DELAY("pack.protection.cell_undervoltage_trip_delay", Unit.SECOND),
    /** {@code pack.wiring.fuse}. */
    WIRING_FUSE("pack.wiring.fuse", Unit.AMPERE),
    /** {@code pack.wiring.fuse_family}. */
    WIRING_FUSE_FAMILY("pack.wiring.fuse_family", Unit.NONE),
    /** {@code pack.wiring.fuse_voltage}. */
    WIRING_FUSE_VOLTAGE("pack.wiring.fuse_voltage", Unit.VOLT),
    /** {@code pack.wiring.fuse_breaking_capacity}. */
    WIRING_FUSE_BREAKING_CAPACITY("pack.wiring.fuse_breaking_capacity", Unit.AMPERE),
    /** {@code pack.wiring.wire}. */
    WIRING_WIRE("pack.wiring.wire", Unit.NONE),
    /** {@code pack.wiring.wire_ampacity}. */
    WIRING_WIRE_AMPACITY("pack.wiring.wire_ampacity", Unit.AMPERE),
    /** {@code pack.wiring.length}. */
    WIRING_LENGTH("pack.wiring.length", Unit.METRE),
    /** {@code pack.wiring.plug}. */
    WIRING_PLUG("pack.wiring.plug", Unit.NONE),
    /** {@code pack.wiring.plug_rating}. */
    WIRING_PLUG_RATING("pack.wiring.plug_rating", Unit.AMPERE),
    /** {@code pack.wiring.plug_anti_spark}. */
    WIRING_PLUG_ANTI_SPARK("pack.wiring.plug_anti_spark", Unit.NONE),
    /** {@code battery.joining}. */
    PACKS_JOINING("battery.joining", Unit.NONE),
    /** {@code battery.fuse}. */
    TRUNK_FUSE("battery.fuse", Unit.AMPERE),
    /** {@code battery.fuse_family}. */
    TRUNK_FUSE_FAMILY("battery.fuse_family", Unit.NONE),
    /** {@code battery.fuse_voltage}. */
    TRUNK_FUSE_VOLTAGE("battery.fuse_voltage", Unit.VOLT),
    /** {@code battery.fuse_breaking_capacity}. */
    TRUNK_FUSE_BREAKING_CAPACITY("battery.fuse_breaking_capacity", Unit.AMPERE),
    /** {@code battery.wire}. */
    TRUNK_WIRE("battery.wire", Unit.NONE),
    /** {@code battery.wire_ampacity}. */
    TRUNK_WIRE_AMPACITY("battery.wire_ampacity", Unit.AMPERE),
    /** {@code battery.length}. */
    TRUNK_LENGTH("battery.length", Unit.METRE),
    /** {@code battery.lead_resistance}. */
    TRUNK_RESISTANCE("battery.lead_resistance", Unit.OHM),
    /** {@code battery.plug}. */
    TRUNK_PLUG("battery.plug", Unit.NONE),
    /** {@code battery.plug_rating}. */
    TRUNK_PLUG_RATING("battery.plug_rating", Unit.AMPERE),
    /** {@code battery.plug_anti_spark}. */
    TRUNK_PLUG_ANTI_SPARK("battery.plug_anti_spark", Unit.NONE),
    /** {@code use.charge_from}. */
    USE_CHARGE_FROM("use.charge_from", Unit.RATIO),
    /** {@code use.charge_to}. */
    USE_CHARGE_TO("use.charge_to", Unit.RATIO),
    /** {@code use.speed_max}. */
    USE_SPEED_MAX("use.speed_max", Unit.METRE_PER_SECOND),
    /** {@code use.ambient}. */
    USE_AMBIENT("use.ambient", Unit.CELSIUS),
    /** {@code use.deck_temperature}. */
    USE_DECK_TEMPERATURE("use.deck_temperature", Unit.CELSIUS),
    /** {@code use.pack_temperature}. */
    USE_PACK_TEMPERATURE("use.pack_temperature", Unit.CELSIUS),
    /** {@code use.altitude}. */
    USE_ALTITUDE("use.altitude", Unit.METRE),
    /** {@code use.slope_max}. */
    USE_SLOPE_MAX("use.slope_max", Unit.RATIO),
    /** {@code use.slope_length}. */
    USE_SLOPE_LENGTH("use.slope_length", Unit.METRE),
    /** {@code use.hard_pull}. */
    USE_HARD_PULL("use.hard_pull", Unit.SECOND),
    /** {@code use.hard_brake}. */
    USE_HARD_BRAKE("use.hard_brake", Unit.SECOND),
    /** {@code use.reaction_time}. */
    USE_REACTION_TIME("use.reaction_time", Unit.SECOND),
    /** {@code use.brake_build_up}. */
    USE_BRAKE_BUILD_UP("use.brake_build_up", Unit.SECOND),
    /** {@code use.cruise_speed}. */
    USE_CRUISE_SPEED("use.cruise_speed", Unit.METRE_PER_SECOND),
    /** {@code use.headwind}. */
    USE_HEADWIND("use.headwind", Unit.METRE_PER_SECOND),
    /** {@code use.idle_power}. */
    USE_IDLE_POWER("use.idle_power", Unit.WATT),
    /** {@code use.stops_per_km}. */
    USE_STOPS_PER_KM("use.stops_per_km", Unit.PER_KILOMETRE),
    /** {@code use.measured_consumption}. */
    USE_MEASURED_CONSUMPTION("use.measured_consumption", Unit.WATT_HOUR_PER_KILOMETRE),
    /** {@code use.measured_speed}. */
    USE_MEASURED_SPEED("use.measured_speed", Unit.METRE_PER_SECOND),
    /** {@code margins.trip}. */
    MARGINS_TRIP("margins.trip", Unit.RATIO),
    /** {@code margins.rating}. */
    MARGINS_RATING("margins.rating", Unit.RATIO),
    /** {@code margins.cell}. */
    MARGINS_CELL("margins.cell", Unit.RATIO),
    /** {@code margins.fuse}. */
    MARGINS_FUSE("margins.fuse", Unit.RATIO),
    /** {@code margins.overvoltage}. */
    MARGINS_OVERVOLTAGE("margins.overvoltage", Unit.VOLT),
    /** {@code margins.controller_voltage}. */
    MARGINS_CONTROLLER_VOLTAGE("margins.controller_voltage", Unit.RATIO),
    /** {@code margins.grip}. */
    MARGINS_GRIP("margins.grip", Unit.RATIO),
    /** {@code criteria.deceleration_min}. */
    CRITERIA_DECELERATION_MIN("criteria.deceleration_min", Unit.METRE_PER_SECOND_SQUARED),
    /** {@code criteria.rider_deceleration_max}. */
    CRITERIA_RIDER_DECELERATION_MAX(
            "criteria.rider_deceleration_max", Unit.METRE_PER_SECOND_SQUARED),
    /** {@code criteria.climb_min}. */
    CRITERIA_CLIMB_MIN("criteria.climb_min", Unit.RATIO),
    /** {@code criteria.range_min}. */
    CRITERIA_RANGE_MIN("criteria.range_min", Unit.METRE),
    /** {@code settings.motor_drive_current}. */
    SETTINGS_MOTOR_DRIVE_CURRENT("settings.motor_drive_current", Unit.AMPERE),
    /** {@code settings.motor_brake_current}. */
    SETTINGS_MOTOR_BRAKE_CURRENT("settings.motor_brake_current", Unit.AMPERE),
    /** {@code settings.pack_discharge_current}. */
    SETTINGS_PACK_DISCHARGE_CURRENT("settings.pack_discharge_current", Unit.AMPERE),
    /** {@code settings.pack_regen_current}. */
    SETTINGS_PACK_REGEN_CURRENT("settings.pack_regen_current", Unit.AMPERE),
    /** {@code settings.low_voltage_taper}. */
    SETTINGS_LOW_VOLTAGE_TAPER("settings.low_voltage_taper", Unit.VOLT),
    /** {@code settings.high_voltage_taper}. */
    SETTINGS_HIGH_VOLTAGE_TAPER("settings.high_voltage_taper", Unit.VOLT),
    /** {@code settings.speed_cap}. */
    SETTINGS_SPEED_CAP("settings.speed_cap", Unit.METRE_PER_SECOND);

    private static final Map<String, Input> BY_KEY = index();

    private final String key;
    private final Unit unit;

    Input(String key, Unit unit) {
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
     * Returns the unit in which calculations take the quantity.
     *
     * @return the unit; none for a word
     */
    public Unit unit() {
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

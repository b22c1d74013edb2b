package brakewright.cli.buildfile;

import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Every key of a build file: its kind, whether it must be there, the range of what is physically
 * possible, and an example.
 *
 * <p>Assumption: the ranges are our own, wide enough for any vehicle of this class; they catch
 * slips of unit and keyboard, they are no recommendation.
 */
final class Schema {

    /** Assumption: our own choice; no controller takes a current in finer steps than this [A]. */
    private static final double LEAST_CURRENT_SET = 1e-3;

    /**
     * Assumption: our own choice; what is smaller than this share of the largest possible value is
     * a slip of the keyboard, and near the end of what a computer can hold it no longer multiplies.
     */
    private static final double LEAST_SHARE = 1e-9;

    private static final boolean REQUIRED = true;
    private static final boolean OPTIONAL = false;

    /**
     * One key.
     *
     * @param input which
     * @param kind of value
     * @param required whether it must be there
     * @param low lowest possible value, in calculation units
     * @param high highest possible value
     * @param example as a build file would write the value
     */
    record Entry(
            Input input, Kind kind, boolean required, double low, double high, String example) {

        String key() {
            return input.key();
        }

        /**
         * The smallest value above 0 that means something, for a key that may be 0; the lowest
         * possible one for others.
         */
        double least() {
            if (low != 0.0) {
                return low;
            }
            boolean isCurrentSet =
                    key().startsWith("settings.")
                            && kind instanceof Kind.Measured measured
                            && measured.dimension() == Dimension.CURRENT;
            return isCurrentSet ? LEAST_CURRENT_SET : LEAST_SHARE * high;
        }
    }

    private static final Map<Input, Entry> ENTRIES = index(entries());

    private Schema() {}

    static Entry of(Input input) {
        Entry entry = ENTRIES.get(input);
        if (entry == null) {
            throw new IllegalStateException("no schema for " + input);
        }
        return entry;
    }

    static List<Entry> all() {
        return new ArrayList<>(ENTRIES.values());
    }

    private static Map<Input, Entry> index(List<Entry> entries) {
        Map<Input, Entry> index = new EnumMap<>(Input.class);
        for (Entry entry : entries) {
            index.put(entry.input(), entry);
        }
        return index;
    }

    private static Entry entry(
            Input input, Kind kind, boolean required, double low, double high, String example) {
        return new Entry(input, kind, required, low, high, example);
    }

    private static List<Entry> entries() {
        return List.of(
                entry(Input.RIDER_MASS, Kind.quantity(Dimension.MASS), REQUIRED, 10, 250, "92 kg"),
                entry(
                        Input.RIDER_STANCE,
                        Kind.words("standing-sideways", "standing-forward", "seated"),
                        REQUIRED,
                        0,
                        0,
                        "standing-sideways"),
                entry(
                        Input.RIDER_MASS_HEIGHT,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        0.05,
                        2,
                        "1.0 m"),
                entry(
                        Input.RIDER_SUPPORT_HALF_LENGTH,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        0.02,
                        2,
                        "0.25 m"),
                entry(
                        Input.VEHICLE_MASS,
                        Kind.quantity(Dimension.MASS),
                        REQUIRED,
                        1,
                        1500,
                        "14 kg"),
                entry(
                        Input.VEHICLE_CARGO,
                        Kind.quantity(Dimension.MASS),
                        OPTIONAL,
                        0,
                        1500,
                        "5 kg"),
                entry(
                        Input.VEHICLE_WHEEL_DIAMETER,
                        Kind.quantity(Dimension.LENGTH),
                        REQUIRED,
                        0.04,
                        1.5,
                        "200 mm"),
                entry(
                        Input.VEHICLE_WHEELBASE,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        0.2,
                        5,
                        "0.9 m"),
                entry(
                        Input.VEHICLE_MASS_CENTRE_HEIGHT,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        0.05,
                        3,
                        "1.0 m"),
                entry(
                        Input.VEHICLE_MASS_CENTRE_FROM_FRONT,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        0,
                        5,
                        "0.45 m"),
                entry(
                        Input.VEHICLE_DRIVEN_AXLE,
                        Kind.words("front", "rear", "both"),
                        OPTIONAL,
                        0,
                        0,
                        "rear"),
                entry(Input.VEHICLE_ROLLING_RESISTANCE, Kind.RATIO, OPTIONAL, 0, 0.3, "0.025"),
                entry(
                        Input.VEHICLE_DRAG_AREA,
                        Kind.quantity(Dimension.AREA),
                        OPTIONAL,
                        0,
                        5,
                        "0.65 m²"),
                entry(Input.VEHICLE_GRIP, Kind.RATIO, OPTIONAL, 0.02, 1.5, "0.65"),
                entry(Input.VEHICLE_GRIP_WET, Kind.RATIO, OPTIONAL, 0.02, 1.5, "0.5"),
                entry(
                        Input.VEHICLE_TYRES,
                        Kind.words("rubber", "urethane"),
                        OPTIONAL,
                        0,
                        0,
                        "rubber"),
                entry(Input.VEHICLE_ROTATING_SHARE, Kind.RATIO, OPTIONAL, 0, 0.5, "3 %"),
                entry(
                        Input.VEHICLE_FRICTION_BRAKE_DECELERATION,
                        Kind.quantity(Dimension.ACCELERATION),
                        OPTIONAL,
                        0,
                        15,
                        "3.5 m/s²"),
                entry(Input.DRIVE_MOTORS, Kind.COUNT, REQUIRED, 1, 16, "2"),
                entry(Input.DRIVE_REDUCTION, Kind.NUMBER, REQUIRED, 0.05, 200, "3.2"),
                entry(Input.DRIVE_EFFICIENCY, Kind.RATIO, OPTIONAL, 0.3, 1, "95 %"),
                entry(
                        Input.MOTOR_KV,
                        Kind.quantity(Dimension.SPEED_CONSTANT),
                        REQUIRED,
                        0.5,
                        20000,
                        "170 rpm/V"),
                entry(
                        Input.MOTOR_RESISTANCE,
                        Kind.quantity(Dimension.RESISTANCE),
                        REQUIRED,
                        0.0001,
                        20,
                        "68 mΩ"),
                entry(Input.MOTOR_POLE_PAIRS, Kind.COUNT, OPTIONAL, 1, 100, "7"),
                entry(
                        Input.MOTOR_INDUCTANCE,
                        Kind.quantity(Dimension.INDUCTANCE),
                        OPTIONAL,
                        0,
                        0.1,
                        "30 µH"),
                entry(
                        Input.MOTOR_NO_LOAD_CURRENT,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0,
                        50,
                        "1.2 A"),
                entry(
                        Input.MOTOR_VISCOUS_DRAG,
                        Kind.quantity(Dimension.VISCOUS_DRAG),
                        OPTIONAL,
                        0,
                        1,
                        "0.0001 N·m·s/rad"),
                entry(
                        Input.MOTOR_CURRENT_RATING,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.1,
                        2000,
                        "50 A"),
                entry(
                        Input.MOTOR_WINDING_LIMIT,
                        Kind.quantity(Dimension.TEMPERATURE),
                        OPTIONAL,
                        40,
                        250,
                        "120 °C"),
                entry(
                        Input.MOTOR_WINDING_TO_CASE,
                        Kind.quantity(Dimension.THERMAL_RESISTANCE),
                        OPTIONAL,
                        0.001,
                        100,
                        "0.5 K/W"),
                entry(
                        Input.MOTOR_CASE_TO_AIR,
                        Kind.quantity(Dimension.THERMAL_RESISTANCE),
                        OPTIONAL,
                        0.001,
                        100,
                        "1.2 K/W"),
                entry(
                        Input.MOTOR_WINDING_HEAT_CAPACITY,
                        Kind.quantity(Dimension.HEAT_CAPACITY),
                        OPTIONAL,
                        0.1,
                        100000.0,
                        "60 J/K"),
                entry(
                        Input.MOTOR_CASE_HEAT_CAPACITY,
                        Kind.quantity(Dimension.HEAT_CAPACITY),
                        OPTIONAL,
                        0.1,
                        1000000.0,
                        "400 J/K"),
                entry(Input.CONTROLLER_COUNT, Kind.COUNT, OPTIONAL, 1, 16, "2"),
                entry(
                        Input.CONTROLLER_CURRENT_BASIS,
                        Kind.words("phase-peak", "phase-rms", "dc-equivalent"),
                        REQUIRED,
                        0,
                        0,
                        "phase-peak"),
                entry(
                        Input.CONTROLLER_MOTOR_CURRENT_RATING,
                        Kind.quantity(Dimension.CURRENT),
                        REQUIRED,
                        0.5,
                        5000,
                        "60 A"),
                entry(
                        Input.CONTROLLER_PACK_CURRENT_RATING,
                        Kind.quantity(Dimension.CURRENT),
                        REQUIRED,
                        0.5,
                        5000,
                        "40 A"),
                entry(
                        Input.CONTROLLER_VOLTAGE_RATING,
                        Kind.quantity(Dimension.VOLTAGE),
                        REQUIRED,
                        3,
                        1000,
                        "60 V"),
                entry(Input.CONTROLLER_EFFICIENCY, Kind.RATIO, OPTIONAL, 0.3, 1, "95 %"),
                entry(
                        Input.CONTROLLER_BUS_CAPACITANCE,
                        Kind.quantity(Dimension.CAPACITANCE),
                        OPTIONAL,
                        1e-07,
                        10,
                        "2.2 mF"),
                entry(
                        Input.CONTROLLER_REGEN_RESPONSE,
                        Kind.quantity(Dimension.TIME),
                        OPTIONAL,
                        0,
                        5,
                        "20 ms"),
                entry(
                        Input.CONTROLLER_BRAKE_ENDS_BELOW,
                        Kind.quantity(Dimension.SPEED),
                        OPTIONAL,
                        0,
                        30,
                        "3 km/h"),
                entry(Input.PACK_SERIES, Kind.COUNT, REQUIRED, 1, 250, "10"),
                entry(Input.PACK_PARALLEL, Kind.COUNT, REQUIRED, 1, 500, "4"),
                entry(
                        Input.PACK_JOINT_RESISTANCE,
                        Kind.quantity(Dimension.RESISTANCE),
                        OPTIONAL,
                        0,
                        5,
                        "8 mΩ"),
                entry(Input.PACK_RESISTANCE_SPREAD, Kind.RATIO, OPTIONAL, 0, 0.9, "10 %"),
                entry(Input.PACK_GROUP_CHARGE, Kind.RATIO, OPTIONAL, 0, 0.3, "1 %"),
                entry(Input.PACK_GROUP_CAPACITY, Kind.RATIO, OPTIONAL, 0, 0.5, "2 %"),
                entry(Input.PACK_GROUP_RESISTANCE, Kind.RATIO, OPTIONAL, 0, 2, "5 %"),
                entry(
                        Input.PACK_TEMPERATURE,
                        Kind.quantity(Dimension.TEMPERATURE),
                        OPTIONAL,
                        -40,
                        80,
                        "20 °C"),
                entry(
                        Input.PACK_TO_AIR,
                        Kind.quantity(Dimension.THERMAL_RESISTANCE),
                        OPTIONAL,
                        0.001,
                        1000,
                        "1.5 K/W"),
                entry(Input.PACK_CHARGE, Kind.RATIO, OPTIONAL, 0, 1, "80 %"),
                entry(
                        Input.CELL_CHEMISTRY,
                        Kind.words("nmc", "nca", "lco", "lfp"),
                        OPTIONAL,
                        0,
                        0,
                        "nmc"),
                entry(
                        Input.CELL_CAPACITY,
                        Kind.quantity(Dimension.CHARGE),
                        OPTIONAL,
                        0.01,
                        1000,
                        "3.0 Ah"),
                entry(
                        Input.CELL_DISCHARGE_CURRENT,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.01,
                        5000,
                        "15 A"),
                entry(
                        Input.CELL_CHARGE_CURRENT,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.01,
                        5000,
                        "4 A"),
                entry(
                        Input.CELL_CHARGE_CURRENT_BY_CHARGE,
                        Kind.curve("charge-current-by-charge"),
                        OPTIONAL,
                        0.01,
                        1,
                        "[[0, 1.0], [0.79, 1.0], [0.8, 0.3], [1, 0.3]]"),
                entry(
                        Input.CELL_VOLTAGE_MAX,
                        Kind.quantity(Dimension.VOLTAGE),
                        OPTIONAL,
                        1,
                        6,
                        "4.2 V"),
                entry(
                        Input.CELL_VOLTAGE_MIN,
                        Kind.quantity(Dimension.VOLTAGE),
                        OPTIONAL,
                        0.5,
                        5,
                        "2.5 V"),
                entry(
                        Input.CELL_TAPER_FLOOR,
                        Kind.quantity(Dimension.VOLTAGE),
                        OPTIONAL,
                        0.5,
                        5,
                        "2.5 V"),
                entry(
                        Input.CELL_RESISTANCE,
                        Kind.quantity(Dimension.RESISTANCE),
                        OPTIONAL,
                        1e-05,
                        1,
                        "25 mΩ"),
                entry(Input.CELL_MASS, Kind.quantity(Dimension.MASS), OPTIONAL, 0.001, 50, "48 g"),
                entry(
                        Input.CELL_OPEN_CIRCUIT_VOLTAGE,
                        Kind.curve("open-circuit-voltage"),
                        OPTIONAL,
                        0.5,
                        6,
                        "[[0, 2.5], [0.5, 3.7], [1, 4.2]]"),
                entry(
                        Input.CELL_RESISTANCE_BY_CHARGE,
                        Kind.curve("resistance-by-charge"),
                        OPTIONAL,
                        0.05,
                        100,
                        "[[0, 1.3], [0.5, 1.0], [1, 1.3]]"),
                entry(
                        Input.CELL_RESISTANCE_BY_TEMPERATURE,
                        Kind.curve("resistance-by-temperature"),
                        OPTIONAL,
                        0.01,
                        1000,
                        "[[0, 3.0], [25, 1.0], [45, 0.8]]"),
                entry(Input.CELL_SUSTAINED_RISE, Kind.RATIO, OPTIONAL, 0, 5, "60 %"),
                entry(
                        Input.CELL_RELAXATION_TIME,
                        Kind.quantity(Dimension.TIME),
                        OPTIONAL,
                        0.1,
                        36000,
                        "60 s"),
                entry(
                        Input.CELL_SPECIFIC_HEAT,
                        Kind.quantity(Dimension.SPECIFIC_HEAT),
                        OPTIONAL,
                        100,
                        5000,
                        "1000 J/(kg·K)"),
                entry(
                        Input.CELL_CHARGE_TEMPERATURE,
                        Kind.pair(Dimension.TEMPERATURE),
                        OPTIONAL,
                        -40,
                        90,
                        "[\"0 °C\", \"45 °C\"]"),
                entry(
                        Input.CELL_COLD_BAND,
                        Kind.quantity(Dimension.TEMPERATURE_DIFFERENCE),
                        OPTIONAL,
                        0,
                        60,
                        "10 K"),
                entry(Input.CELL_COLD_CHARGE_SHARE, Kind.RATIO, OPTIONAL, 0, 1, "20 %"),
                entry(
                        Input.CELL_DISCHARGE_TEMPERATURE,
                        Kind.pair(Dimension.TEMPERATURE),
                        OPTIONAL,
                        -60,
                        100,
                        "[\"-20 °C\", \"60 °C\"]"),
                entry(
                        Input.CELL_DISCHARGE_PULSE,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.01,
                        10000,
                        "30 A"),
                entry(
                        Input.CELL_CHARGE_PULSE,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.01,
                        10000,
                        "8 A"),
                entry(
                        Input.CELL_PULSE_TIME,
                        Kind.quantity(Dimension.TIME),
                        OPTIONAL,
                        0.01,
                        600,
                        "10 s"),
                entry(
                        Input.PROTECTION_PATH,
                        Kind.words("both", "charge-lead"),
                        OPTIONAL,
                        0,
                        0,
                        "both"),
                entry(
                        Input.PROTECTION_DISCHARGE_TRIP,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.1,
                        10000,
                        "80 A"),
                entry(
                        Input.PROTECTION_CHARGE_TRIP,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.1,
                        10000,
                        "30 A"),
                entry(
                        Input.PROTECTION_OVERVOLTAGE_TRIP,
                        Kind.quantity(Dimension.VOLTAGE),
                        OPTIONAL,
                        1,
                        6,
                        "4.25 V"),
                entry(
                        Input.PROTECTION_UNDERVOLTAGE_TRIP,
                        Kind.quantity(Dimension.VOLTAGE),
                        OPTIONAL,
                        0.5,
                        5,
                        "2.8 V"),
                entry(
                        Input.PROTECTION_CHARGE_TRIP_DELAY,
                        Kind.quantity(Dimension.TIME),
                        OPTIONAL,
                        0,
                        60,
                        "9 ms"),
                entry(
                        Input.PROTECTION_OVERVOLTAGE_TRIP_DELAY,
                        Kind.quantity(Dimension.TIME),
                        OPTIONAL,
                        0,
                        60,
                        "1.2 s"),
                entry(
                        Input.WIRING_FUSE,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.1,
                        5000,
                        "60 A"),
                entry(Input.WIRING_FUSE_FAMILY, Kind.TEXT, OPTIONAL, 0, 0, "blade-58v"),
                entry(
                        Input.WIRING_FUSE_VOLTAGE,
                        Kind.quantity(Dimension.VOLTAGE),
                        OPTIONAL,
                        1,
                        2000,
                        "58 V"),
                entry(
                        Input.WIRING_FUSE_BREAKING_CAPACITY,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        1,
                        1000000,
                        "1000 A"),
                entry(Input.WIRING_WIRE, Kind.TEXT, OPTIONAL, 0, 0, "8 AWG"),
                entry(
                        Input.WIRING_WIRE_AMPACITY,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.1,
                        5000,
                        "80 A"),
                entry(
                        Input.WIRING_LENGTH,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        0,
                        50,
                        "0.6 m"),
                entry(Input.WIRING_PLUG, Kind.TEXT, OPTIONAL, 0, 0, "xt90"),
                entry(
                        Input.WIRING_PLUG_RATING,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.1,
                        5000,
                        "45 A"),
                entry(Input.WIRING_PLUG_ANTI_SPARK, Kind.words("yes", "no"), OPTIONAL, 0, 0, "yes"),
                entry(
                        Input.PACKS_JOINING,
                        Kind.words("parallel", "series"),
                        OPTIONAL,
                        0,
                        0,
                        "parallel"),
                entry(
                        Input.TRUNK_FUSE,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.1,
                        5000,
                        "60 A"),
                entry(Input.TRUNK_FUSE_FAMILY, Kind.TEXT, OPTIONAL, 0, 0, "bolted-strip-58v"),
                entry(
                        Input.TRUNK_FUSE_VOLTAGE,
                        Kind.quantity(Dimension.VOLTAGE),
                        OPTIONAL,
                        1,
                        2000,
                        "58 V"),
                entry(
                        Input.TRUNK_FUSE_BREAKING_CAPACITY,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        1,
                        1000000,
                        "1000 A"),
                entry(Input.TRUNK_WIRE, Kind.TEXT, OPTIONAL, 0, 0, "8 AWG"),
                entry(
                        Input.TRUNK_WIRE_AMPACITY,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.1,
                        5000,
                        "80 A"),
                entry(
                        Input.TRUNK_LENGTH,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        0,
                        50,
                        "0.3 m"),
                entry(
                        Input.TRUNK_RESISTANCE,
                        Kind.quantity(Dimension.RESISTANCE),
                        OPTIONAL,
                        0,
                        5,
                        "1.5 mΩ"),
                entry(Input.TRUNK_PLUG, Kind.TEXT, OPTIONAL, 0, 0, "xt90"),
                entry(
                        Input.TRUNK_PLUG_RATING,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0.1,
                        5000,
                        "45 A"),
                entry(Input.TRUNK_PLUG_ANTI_SPARK, Kind.words("yes", "no"), OPTIONAL, 0, 0, "yes"),
                entry(Input.USE_CHARGE_FROM, Kind.RATIO, OPTIONAL, 0.01, 1, "100 %"),
                entry(Input.USE_CHARGE_TO, Kind.RATIO, OPTIONAL, 0, 0.99, "10 %"),
                entry(
                        Input.USE_SPEED_MAX,
                        Kind.quantity(Dimension.SPEED),
                        OPTIONAL,
                        0.1,
                        100,
                        "25 km/h"),
                entry(
                        Input.USE_AMBIENT,
                        Kind.quantity(Dimension.TEMPERATURE),
                        OPTIONAL,
                        -40,
                        60,
                        "20 °C"),
                entry(
                        Input.USE_DECK_TEMPERATURE,
                        Kind.quantity(Dimension.TEMPERATURE),
                        OPTIONAL,
                        -40,
                        120,
                        "50 °C"),
                entry(
                        Input.USE_PACK_TEMPERATURE,
                        Kind.pair(Dimension.TEMPERATURE),
                        OPTIONAL,
                        -40,
                        80,
                        "[\"5 °C\", \"35 °C\"]"),
                entry(
                        Input.USE_ALTITUDE,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        -500,
                        9000,
                        "200 m"),
                entry(Input.USE_SLOPE_MAX, Kind.RATIO, OPTIONAL, 0, 1, "12 %"),
                entry(
                        Input.USE_SLOPE_LENGTH,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        0,
                        100000,
                        "300 m"),
                entry(
                        Input.USE_HARD_PULL,
                        Kind.quantity(Dimension.TIME),
                        OPTIONAL,
                        0.1,
                        86400,
                        "30 s"),
                entry(
                        Input.USE_HARD_BRAKE,
                        Kind.quantity(Dimension.TIME),
                        OPTIONAL,
                        0.1,
                        86400,
                        "5 s"),
                entry(
                        Input.USE_REACTION_TIME,
                        Kind.quantity(Dimension.TIME),
                        OPTIONAL,
                        0,
                        10,
                        "1.1 s"),
                entry(
                        Input.USE_BRAKE_BUILD_UP,
                        Kind.quantity(Dimension.TIME),
                        OPTIONAL,
                        0,
                        5,
                        "0.2 s"),
                entry(
                        Input.USE_CRUISE_SPEED,
                        Kind.quantity(Dimension.SPEED),
                        OPTIONAL,
                        0.1,
                        100,
                        "15 km/h"),
                entry(
                        Input.USE_HEADWIND,
                        Kind.quantity(Dimension.SPEED),
                        OPTIONAL,
                        -30,
                        30,
                        "2 m/s"),
                entry(
                        Input.USE_IDLE_POWER,
                        Kind.quantity(Dimension.POWER),
                        OPTIONAL,
                        0,
                        2000,
                        "5 W"),
                entry(Input.USE_STOPS_PER_KM, Kind.NUMBER, OPTIONAL, 0, 100, "2.5"),
                entry(
                        Input.USE_MEASURED_CONSUMPTION,
                        Kind.quantity(Dimension.CONSUMPTION),
                        OPTIONAL,
                        0.1,
                        2000,
                        "17 Wh/km"),
                entry(
                        Input.USE_MEASURED_SPEED,
                        Kind.quantity(Dimension.SPEED),
                        OPTIONAL,
                        0.1,
                        100,
                        "16 km/h"),
                entry(Input.MARGINS_TRIP, Kind.RATIO, OPTIONAL, 0, 0.9, "10 %"),
                entry(Input.MARGINS_RATING, Kind.RATIO, OPTIONAL, 0, 0.9, "10 %"),
                entry(Input.MARGINS_CELL, Kind.RATIO, OPTIONAL, 0, 0.9, "20 %"),
                entry(Input.MARGINS_FUSE, Kind.RATIO, OPTIONAL, 0, 0.9, "25 %"),
                entry(
                        Input.MARGINS_OVERVOLTAGE,
                        Kind.quantity(Dimension.VOLTAGE),
                        OPTIONAL,
                        0,
                        1,
                        "25 mV"),
                entry(Input.MARGINS_CONTROLLER_VOLTAGE, Kind.RATIO, OPTIONAL, 0, 0.9, "10 %"),
                entry(Input.MARGINS_GRIP, Kind.RATIO, OPTIONAL, 0, 0.9, "20 %"),
                entry(
                        Input.CRITERIA_DECELERATION_MIN,
                        Kind.quantity(Dimension.ACCELERATION),
                        OPTIONAL,
                        0.1,
                        15,
                        "3.5 m/s²"),
                entry(
                        Input.CRITERIA_RIDER_DECELERATION_MAX,
                        Kind.quantity(Dimension.ACCELERATION),
                        OPTIONAL,
                        0.1,
                        15,
                        "2.4 m/s²"),
                entry(Input.CRITERIA_CLIMB_MIN, Kind.RATIO, OPTIONAL, 0, 1, "10 %"),
                entry(
                        Input.CRITERIA_RANGE_MIN,
                        Kind.quantity(Dimension.LENGTH),
                        OPTIONAL,
                        1,
                        1000000.0,
                        "15 km"),
                entry(
                        Input.SETTINGS_MOTOR_DRIVE_CURRENT,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0,
                        5000,
                        "45 A"),
                entry(
                        Input.SETTINGS_MOTOR_BRAKE_CURRENT,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0,
                        5000,
                        "30 A"),
                entry(
                        Input.SETTINGS_PACK_DISCHARGE_CURRENT,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0,
                        5000,
                        "30 A"),
                entry(
                        Input.SETTINGS_PACK_REGEN_CURRENT,
                        Kind.quantity(Dimension.CURRENT),
                        OPTIONAL,
                        0,
                        5000,
                        "8 A"),
                entry(
                        Input.SETTINGS_LOW_VOLTAGE_TAPER,
                        Kind.pairOrNone(Dimension.VOLTAGE),
                        OPTIONAL,
                        1,
                        1000,
                        "[\"33 V\", \"30 V\"]"),
                entry(
                        Input.SETTINGS_HIGH_VOLTAGE_TAPER,
                        Kind.pairOrNone(Dimension.VOLTAGE),
                        OPTIONAL,
                        1,
                        1000,
                        "[\"41 V\", \"42 V\"]"),
                entry(
                        Input.SETTINGS_SPEED_CAP,
                        Kind.quantity(Dimension.SPEED),
                        OPTIONAL,
                        0.1,
                        100,
                        "25 km/h"));
    }
}

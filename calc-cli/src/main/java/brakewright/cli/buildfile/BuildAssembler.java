package brakewright.cli.buildfile;

import brakewright.spec.Axles;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Climate;
import brakewright.spec.Controllers;
import brakewright.spec.Criteria;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Curve;
import brakewright.spec.DischargingWindow;
import brakewright.spec.Drive;
import brakewright.spec.DrivenAxle;
import brakewright.spec.Effort;
import brakewright.spec.Input;
import brakewright.spec.Margins;
import brakewright.spec.Motor;
import brakewright.spec.MotorHeat;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.PulseRating;
import brakewright.spec.Rider;
import brakewright.spec.Settings;
import brakewright.spec.Stance;
import brakewright.spec.Taper;
import brakewright.spec.Use;
import brakewright.spec.Vehicle;
import brakewright.spec.Wiring;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Makes the vehicle from resolved inputs; what does not go together becomes a problem of the file.
 */
final class BuildAssembler {

    private final Given given;
    private final Map<Input, Value> values;
    private final List<Problem> problems;

    BuildAssembler(Given given, Map<Input, Resolved> inputs, List<Problem> problems) {
        this.given = given;
        this.problems = problems;
        this.values = new EnumMap<>(Input.class);
        inputs.forEach((input, resolved) -> values.put(input, resolved.value()));
    }

    private BuildAssembler(Map<Input, Value> values, Given given, List<Problem> problems) {
        this.given = given;
        this.problems = problems;
        this.values = values;
    }

    /** Makes the settings of a proposal. */
    static Settings settings(
            Map<Input, Value> values, Given given, List<Problem> problems, String proposal) {
        Settings settings =
                new BuildAssembler(values, given, problems).settings("proposals." + proposal);
        return settings == null ? Settings.NONE : settings;
    }

    Build assemble() throws BuildFileException {
        Rider rider = attempt(this::rider, Input.RIDER_MASS);
        Axles axles = attempt(this::axles, Input.VEHICLE_MASS_CENTRE_FROM_FRONT);
        Drive drive = attempt(this::drive, Input.DRIVE_MOTORS);
        Motor motor = attempt(this::motor, Input.MOTOR_KV);
        Controllers controllers = attempt(this::controllers, Input.CONTROLLER_COUNT);
        ChargingWindow charging = attempt(this::charging, Input.CELL_CHARGE_TEMPERATURE);
        DischargingWindow discharging =
                attempt(this::discharging, Input.CELL_DISCHARGE_TEMPERATURE);
        Cell cell =
                charging == null || discharging == null
                        ? null
                        : attempt(() -> cell(charging, discharging), Input.CELL_VOLTAGE_MIN);
        Climate climate = attempt(this::climate, Input.USE_PACK_TEMPERATURE);
        Use use = climate == null ? null : attempt(() -> use(climate), Input.USE_CHARGE_TO);
        Settings settings = settings("settings");
        if (rider == null
                || axles == null
                || drive == null
                || motor == null
                || controllers == null
                || cell == null
                || use == null
                || settings == null) {
            throw new BuildFileException(problems);
        }
        Build build =
                attempt(
                        () ->
                                new Build(
                                        given.title(),
                                        rider,
                                        vehicle(axles),
                                        drive,
                                        motor,
                                        controllers,
                                        pack(cell),
                                        use,
                                        margins(),
                                        criteria(),
                                        settings),
                        Input.CONTROLLER_COUNT);
        if (build == null) {
            throw new BuildFileException(problems);
        }
        return build;
    }

    private Rider rider() {
        return new Rider(
                number(Input.RIDER_MASS),
                word(Input.RIDER_STANCE, Stance.values(), Stance::key),
                number(Input.RIDER_MASS_HEIGHT),
                number(Input.RIDER_SUPPORT_HALF_LENGTH));
    }

    private Axles axles() {
        return new Axles(
                number(Input.VEHICLE_WHEELBASE),
                number(Input.VEHICLE_MASS_CENTRE_HEIGHT),
                number(Input.VEHICLE_MASS_CENTRE_FROM_FRONT),
                word(Input.VEHICLE_DRIVEN_AXLE, DrivenAxle.values(), DrivenAxle::key));
    }

    private Vehicle vehicle(Axles axles) {
        return new Vehicle(
                number(Input.VEHICLE_MASS),
                number(Input.VEHICLE_CARGO),
                number(Input.VEHICLE_WHEEL_DIAMETER),
                axles,
                number(Input.VEHICLE_ROLLING_RESISTANCE),
                number(Input.VEHICLE_DRAG_AREA),
                number(Input.VEHICLE_GRIP),
                number(Input.VEHICLE_GRIP_WET),
                number(Input.VEHICLE_ROTATING_SHARE),
                optional(Input.VEHICLE_FRICTION_BRAKE_DECELERATION));
    }

    private Drive drive() {
        return new Drive(
                count(Input.DRIVE_MOTORS),
                number(Input.DRIVE_REDUCTION),
                number(Input.DRIVE_EFFICIENCY));
    }

    private Motor motor() {
        return new Motor(
                number(Input.MOTOR_KV),
                number(Input.MOTOR_RESISTANCE),
                count(Input.MOTOR_POLE_PAIRS),
                number(Input.MOTOR_INDUCTANCE),
                number(Input.MOTOR_NO_LOAD_CURRENT),
                number(Input.MOTOR_VISCOUS_DRAG),
                optional(Input.MOTOR_CURRENT_RATING),
                number(Input.MOTOR_WINDING_LIMIT),
                heat());
    }

    private Optional<MotorHeat> heat() {
        List<Input> needed =
                List.of(
                        Input.MOTOR_WINDING_TO_CASE,
                        Input.MOTOR_CASE_TO_AIR,
                        Input.MOTOR_WINDING_HEAT_CAPACITY,
                        Input.MOTOR_CASE_HEAT_CAPACITY);
        if (!values.keySet().containsAll(needed)) {
            return Optional.empty();
        }
        return Optional.of(
                new MotorHeat(
                        number(Input.MOTOR_WINDING_TO_CASE),
                        number(Input.MOTOR_CASE_TO_AIR),
                        number(Input.MOTOR_WINDING_HEAT_CAPACITY),
                        number(Input.MOTOR_CASE_HEAT_CAPACITY)));
    }

    private Controllers controllers() {
        return new Controllers(
                count(Input.CONTROLLER_COUNT),
                word(Input.CONTROLLER_CURRENT_BASIS, CurrentBasis.values(), CurrentBasis::key),
                number(Input.CONTROLLER_MOTOR_CURRENT_RATING),
                number(Input.CONTROLLER_PACK_CURRENT_RATING),
                number(Input.CONTROLLER_VOLTAGE_RATING),
                number(Input.CONTROLLER_EFFICIENCY),
                optional(Input.CONTROLLER_BUS_CAPACITANCE));
    }

    private ChargingWindow charging() {
        Value.Pair pair = pair(Input.CELL_CHARGE_TEMPERATURE);
        return new ChargingWindow(
                pair.first(),
                pair.second(),
                number(Input.CELL_COLD_BAND),
                number(Input.CELL_COLD_CHARGE_SHARE));
    }

    private DischargingWindow discharging() {
        Value.Pair pair = pair(Input.CELL_DISCHARGE_TEMPERATURE);
        return new DischargingWindow(pair.first(), pair.second());
    }

    private Cell cell(ChargingWindow charging, DischargingWindow discharging) {
        return new Cell(
                number(Input.CELL_CAPACITY),
                number(Input.CELL_DISCHARGE_CURRENT),
                number(Input.CELL_CHARGE_CURRENT),
                number(Input.CELL_VOLTAGE_MAX),
                number(Input.CELL_VOLTAGE_MIN),
                number(Input.CELL_RESISTANCE),
                curve(Input.CELL_OPEN_CIRCUIT_VOLTAGE),
                curve(Input.CELL_RESISTANCE_BY_CHARGE),
                curve(Input.CELL_RESISTANCE_BY_TEMPERATURE),
                charging,
                discharging,
                pulse());
    }

    private Optional<PulseRating> pulse() {
        if (!values.containsKey(Input.CELL_PULSE_TIME)) {
            return Optional.empty();
        }
        return Optional.of(
                new PulseRating(
                        optional(Input.CELL_DISCHARGE_PULSE),
                        optional(Input.CELL_CHARGE_PULSE),
                        number(Input.CELL_PULSE_TIME)));
    }

    private Pack pack(Cell cell) {
        return new Pack(
                cell,
                count(Input.PACK_SERIES),
                count(Input.PACK_PARALLEL),
                number(Input.PACK_JOINT_RESISTANCE),
                number(Input.PACK_RESISTANCE_SPREAD),
                number(Input.PACK_TEMPERATURE),
                new Protection(
                        optional(Input.PROTECTION_DISCHARGE_TRIP),
                        optional(Input.PROTECTION_CHARGE_TRIP),
                        optional(Input.PROTECTION_OVERVOLTAGE_TRIP),
                        optional(Input.PROTECTION_UNDERVOLTAGE_TRIP)),
                new Wiring(
                        optional(Input.WIRING_FUSE),
                        optional(Input.WIRING_WIRE_AMPACITY),
                        optional(Input.WIRING_PLUG_RATING)));
    }

    private Climate climate() {
        Value.Pair pack = pair(Input.USE_PACK_TEMPERATURE);
        return new Climate(
                number(Input.USE_AMBIENT), pack.first(), pack.second(), number(Input.USE_ALTITUDE));
    }

    private Use use(Climate climate) {
        return new Use(
                number(Input.USE_CHARGE_FROM),
                number(Input.USE_CHARGE_TO),
                number(Input.USE_SPEED_MAX),
                climate,
                number(Input.USE_SLOPE_MAX),
                number(Input.USE_SLOPE_LENGTH),
                new Effort(
                        number(Input.USE_HARD_PULL),
                        number(Input.USE_HARD_BRAKE),
                        number(Input.USE_REACTION_TIME),
                        number(Input.USE_BRAKE_BUILD_UP)));
    }

    private Margins margins() {
        return new Margins(
                number(Input.MARGINS_TRIP),
                number(Input.MARGINS_RATING),
                number(Input.MARGINS_FUSE),
                number(Input.MARGINS_OVERVOLTAGE),
                number(Input.MARGINS_CONTROLLER_VOLTAGE),
                number(Input.MARGINS_GRIP));
    }

    private Criteria criteria() {
        return new Criteria(
                number(Input.CRITERIA_DECELERATION_MIN),
                number(Input.CRITERIA_RIDER_DECELERATION_MAX),
                number(Input.CRITERIA_CLIMB_MIN),
                optional(Input.CRITERIA_RANGE_MIN));
    }

    private @Nullable Settings settings(String table) {
        Optional<Taper> low = taper(Input.SETTINGS_LOW_VOLTAGE_TAPER, table + ".low_voltage_taper");
        Optional<Taper> high =
                taper(Input.SETTINGS_HIGH_VOLTAGE_TAPER, table + ".high_voltage_taper");
        return attempt(
                () ->
                        new Settings(
                                optional(Input.SETTINGS_MOTOR_DRIVE_CURRENT),
                                optional(Input.SETTINGS_MOTOR_BRAKE_CURRENT),
                                optional(Input.SETTINGS_PACK_DISCHARGE_CURRENT),
                                optional(Input.SETTINGS_PACK_REGEN_CURRENT),
                                low,
                                high,
                                optional(Input.SETTINGS_SPEED_CAP)),
                table + (low.isPresent() ? ".low_voltage_taper" : ".high_voltage_taper"));
    }

    private Optional<Taper> taper(Input input, String key) {
        if (!(values.get(input) instanceof Value.Pair pair)) {
            return Optional.empty();
        }
        return Optional.ofNullable(attempt(() -> new Taper(pair.first(), pair.second()), key));
    }

    private <T> @Nullable T attempt(Supplier<T> supplier, Input blamed) {
        return attempt(supplier, blamed.key());
    }

    private <T> @Nullable T attempt(Supplier<T> supplier, String key) {
        try {
            return supplier.get();
        } catch (IllegalArgumentException wrong) {
            problems.add(
                    new Problem(
                            given.line(key),
                            key,
                            String.valueOf(wrong.getMessage()),
                            Consistency.expected(key)));
            return null;
        }
    }

    private Value value(Input input) {
        Value value = values.get(input);
        if (value == null) {
            throw new IllegalStateException("no value for " + input.key());
        }
        return value;
    }

    private double number(Input input) {
        return ((Value.Number) value(input)).quantity().value();
    }

    private int count(Input input) {
        return (int) number(input);
    }

    private OptionalDouble optional(Input input) {
        return values.containsKey(input)
                ? OptionalDouble.of(number(input))
                : OptionalDouble.empty();
    }

    private Value.Pair pair(Input input) {
        return (Value.Pair) value(input);
    }

    private Curve curve(Input input) {
        return ((Value.Points) value(input)).curve();
    }

    private <E> E word(Input input, E[] all, java.util.function.Function<E, String> key) {
        String text = ((Value.Word) value(input)).text();
        for (E each : all) {
            if (key.apply(each).equals(text)) {
                return each;
            }
        }
        throw new IllegalStateException(input.key() + " is " + text);
    }
}

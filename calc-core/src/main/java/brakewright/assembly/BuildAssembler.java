package brakewright.assembly;

import brakewright.spec.Axles;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Controllers;
import brakewright.spec.Criteria;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Drive;
import brakewright.spec.DrivenAxle;
import brakewright.spec.FuseBreaking;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Margins;
import brakewright.spec.Motor;
import brakewright.spec.MotorHeat;
import brakewright.spec.Pack;
import brakewright.spec.Rider;
import brakewright.spec.Settings;
import brakewright.spec.Stance;
import brakewright.spec.Use;
import brakewright.spec.Vehicle;
import brakewright.spec.Wiring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Makes the vehicle from resolved inputs; what does not go together is noted. */
public final class BuildAssembler {

    private final String title;
    private final Completed inputs;
    private final List<UnaryOperator<String>> packs;
    private final Values values;
    private final Attempts attempts;

    /**
     * Prepares the making.
     *
     * @param title what the vehicle is called
     * @param inputs all of them
     * @param packs what the keys of each pack are called, from the name of the same key of a single
     *     pack
     * @param attempts where refusals are noted
     */
    public BuildAssembler(
            String title, Completed inputs, List<UnaryOperator<String>> packs, Attempts attempts) {
        this.title = title;
        this.inputs = inputs;
        this.packs = packs;
        this.values = Values.of(inputs.whole());
        this.attempts = attempts;
    }

    /**
     * Makes the vehicle.
     *
     * @return the vehicle; empty where a part of it was refused
     */
    public Optional<Build> assemble() {
        Rider rider = attempt(this::rider, Input.RIDER_MASS);
        Axles axles = attempt(this::axles, Input.VEHICLE_MASS_CENTRE_FROM_FRONT);
        Drive drive = attempt(this::drive, Input.DRIVE_MOTORS);
        Motor motor = attempt(this::motor, Input.MOTOR_KV);
        Controllers controllers = attempt(this::controllers, Input.CONTROLLER_COUNT);
        Battery battery = battery();
        Use use = new UseAssembler(values, attempts).assemble();
        Settings settings = new SettingsAssembler(values, attempts).assemble();
        if (rider == null
                || axles == null
                || drive == null
                || motor == null
                || controllers == null
                || battery == null
                || use == null
                || settings == null) {
            return Optional.empty();
        }
        return Optional.ofNullable(
                attempt(
                        () ->
                                new Build(
                                        title,
                                        rider,
                                        vehicle(axles),
                                        drive,
                                        motor,
                                        controllers,
                                        battery,
                                        use,
                                        margins(),
                                        criteria(),
                                        settings),
                        Input.CONTROLLER_COUNT));
    }

    private @Nullable Battery battery() {
        List<Pack> made = new ArrayList<>();
        for (int k = 0; k < inputs.packs().size(); k++) {
            Pack pack = new PackAssembler(packs.get(k), inputs.packs().get(k), attempts).assemble();
            if (pack != null) {
                made.add(pack);
            }
        }
        if (made.size() < inputs.packs().size()) {
            return null;
        }
        return made.size() == 1
                ? Battery.of(made.get(0))
                : attempts.attempt(() -> joined(made), "packs");
    }

    private Battery joined(List<Pack> made) {
        Joining joining = values.word(Input.PACKS_JOINING, Joining.values(), Joining::key);
        if (joining == Joining.SERIES && made.stream().map(Pack::joinedAt).distinct().count() > 1) {
            throw new IllegalArgumentException(
                    "packs in series must be equally full, and these are not all told to be");
        }
        return new Battery(
                made,
                joining,
                new Wiring(
                        values.optional(Input.TRUNK_FUSE),
                        new FuseBreaking(
                                values.optional(Input.TRUNK_FUSE_VOLTAGE),
                                values.optional(Input.TRUNK_FUSE_BREAKING_CAPACITY)),
                        values.optional(Input.TRUNK_WIRE_AMPACITY),
                        values.optional(Input.TRUNK_PLUG_RATING),
                        values.isYes(Input.TRUNK_PLUG_ANTI_SPARK)),
                values.number(Input.TRUNK_RESISTANCE));
    }

    private Rider rider() {
        return new Rider(
                values.number(Input.RIDER_MASS),
                values.word(Input.RIDER_STANCE, Stance.values(), Stance::key),
                values.number(Input.RIDER_MASS_HEIGHT),
                values.number(Input.RIDER_SUPPORT_HALF_LENGTH));
    }

    private Axles axles() {
        return new Axles(
                values.number(Input.VEHICLE_WHEELBASE),
                values.number(Input.VEHICLE_MASS_CENTRE_HEIGHT),
                values.number(Input.VEHICLE_MASS_CENTRE_FROM_FRONT),
                values.word(Input.VEHICLE_DRIVEN_AXLE, DrivenAxle.values(), DrivenAxle::key));
    }

    private Vehicle vehicle(Axles axles) {
        return new Vehicle(
                values.number(Input.VEHICLE_MASS),
                values.number(Input.VEHICLE_CARGO),
                values.number(Input.VEHICLE_WHEEL_DIAMETER),
                axles,
                values.number(Input.VEHICLE_ROLLING_RESISTANCE),
                values.number(Input.VEHICLE_DRAG_AREA),
                values.number(Input.VEHICLE_GRIP),
                values.number(Input.VEHICLE_GRIP_WET),
                values.number(Input.VEHICLE_ROTATING_SHARE),
                values.optional(Input.VEHICLE_FRICTION_BRAKE_DECELERATION));
    }

    private Drive drive() {
        return new Drive(
                values.count(Input.DRIVE_MOTORS),
                values.number(Input.DRIVE_REDUCTION),
                values.number(Input.DRIVE_EFFICIENCY));
    }

    private Motor motor() {
        return new Motor(
                values.number(Input.MOTOR_KV),
                values.number(Input.MOTOR_RESISTANCE),
                values.count(Input.MOTOR_POLE_PAIRS),
                values.number(Input.MOTOR_INDUCTANCE),
                values.number(Input.MOTOR_NO_LOAD_CURRENT),
                values.number(Input.MOTOR_VISCOUS_DRAG),
                values.optional(Input.MOTOR_CURRENT_RATING),
                values.number(Input.MOTOR_WINDING_LIMIT),
                heat());
    }

    private Optional<MotorHeat> heat() {
        List<Input> needed =
                List.of(
                        Input.MOTOR_WINDING_TO_CASE,
                        Input.MOTOR_CASE_TO_AIR,
                        Input.MOTOR_WINDING_HEAT_CAPACITY,
                        Input.MOTOR_CASE_HEAT_CAPACITY);
        if (!values.hasAll(needed)) {
            return Optional.empty();
        }
        return Optional.of(
                new MotorHeat(
                        values.number(Input.MOTOR_WINDING_TO_CASE),
                        values.number(Input.MOTOR_CASE_TO_AIR),
                        values.number(Input.MOTOR_WINDING_HEAT_CAPACITY),
                        values.number(Input.MOTOR_CASE_HEAT_CAPACITY)));
    }

    private Controllers controllers() {
        return new Controllers(
                values.count(Input.CONTROLLER_COUNT),
                values.word(
                        Input.CONTROLLER_CURRENT_BASIS, CurrentBasis.values(), CurrentBasis::key),
                values.number(Input.CONTROLLER_MOTOR_CURRENT_RATING),
                values.number(Input.CONTROLLER_PACK_CURRENT_RATING),
                values.number(Input.CONTROLLER_VOLTAGE_RATING),
                values.number(Input.CONTROLLER_EFFICIENCY),
                values.optional(Input.CONTROLLER_BUS_CAPACITANCE),
                values.number(Input.CONTROLLER_REGEN_RESPONSE),
                values.number(Input.CONTROLLER_BRAKE_ENDS_BELOW));
    }

    private Margins margins() {
        return new Margins(
                values.number(Input.MARGINS_TRIP),
                values.number(Input.MARGINS_RATING),
                values.number(Input.MARGINS_FUSE),
                values.number(Input.MARGINS_OVERVOLTAGE),
                values.number(Input.MARGINS_CONTROLLER_VOLTAGE),
                values.number(Input.MARGINS_GRIP),
                values.number(Input.MARGINS_CELL));
    }

    private Criteria criteria() {
        return new Criteria(
                values.number(Input.CRITERIA_DECELERATION_MIN),
                values.number(Input.CRITERIA_RIDER_DECELERATION_MAX),
                values.number(Input.CRITERIA_CLIMB_MIN),
                values.optional(Input.CRITERIA_RANGE_MIN));
    }

    private <T> @Nullable T attempt(Supplier<T> part, Input blamed) {
        return attempts.attempt(part, blamed.key());
    }
}

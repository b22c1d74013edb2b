package brakewright.assembly;

import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Stance;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.stream.DoubleStream;

/**
 * Takes what is still missing of a vehicle: the default of the tables, or what follows from other
 * inputs. Nothing that is told is replaced.
 */
public final class Completion {

    /**
     * Assumption: our own choice; wheels of a board that are smaller are of urethane as a rule, and
     * those that are greater have tyres of rubber [m].
     */
    private static final double LEAST_TYRE = 0.12;

    /** Assumption: a steady speed in everyday riding, our own choice. */
    private static final double CRUISE_SHARE = 0.6;

    private final InputSet inputs;
    private final List<PackCompletion> packs;
    private final DoubleSupplier trunk;

    /**
     * Prepares the completion.
     *
     * @param inputs what is told of the whole vehicle
     * @param packs what is told of each pack, at least one
     * @param trunk the resistance of the leads that carry the current of several packs [Ω]
     */
    public Completion(InputSet inputs, List<PackCompletion> packs, DoubleSupplier trunk) {
        this.inputs = inputs;
        this.packs = packs;
        this.trunk = trunk;
    }

    /**
     * Completes.
     *
     * @return all inputs
     * @throws MissingInput if something is needed that is neither told nor in the tables
     */
    public Completed complete() {
        if (isDirect()) {
            inputs.derive(Input.DRIVE_EFFICIENCY, 1.0, "direct drive: no belt, chain or gears");
        }
        completeTyres();
        for (Input input : Input.values()) {
            if (!PackCompletion.isOfPack(input)) {
                inputs.assume(input);
            }
        }
        inputs.derive(Input.VEHICLE_DRIVEN_AXLE, new Value.Word("rear"), "the usual driven axle");
        inputs.assumeShare(Input.VEHICLE_MASS_CENTRE_FROM_FRONT, Input.VEHICLE_WHEELBASE);
        inputs.derive(Input.CONTROLLER_COUNT, 1, "one controller");
        inputs.derive(Input.MOTOR_INDUCTANCE, 0.0, "left out of the voltage need");
        inputs.derive(Input.MOTOR_VISCOUS_DRAG, 0.0, "drag taken as constant");
        packs.forEach(pack -> pack.complete(inputs.number(Input.USE_AMBIENT)));
        completeBattery();
        completeUse();
        return new Completed(inputs.inputs(), packs.stream().map(PackCompletion::inputs).toList());
    }

    /** What the wheels roll on says how they grip on a wet road. */
    private void completeTyres() {
        boolean isBoard =
                inputs.word(Input.RIDER_STANCE)
                        .filter(Stance.STANDING_SIDEWAYS.key()::equals)
                        .isPresent();
        boolean isSmall = isBoard && inputs.number(Input.VEHICLE_WHEEL_DIAMETER) < LEAST_TYRE;
        inputs.derive(
                Input.VEHICLE_TYRES,
                new Value.Word(isSmall ? "urethane" : "rubber"),
                isSmall ? "a board on wheels below 120 mm" : "the usual tyres");
        inputs.word(Input.VEHICLE_TYRES).ifPresent(tyres -> inputs.learn("tyres", tyres));
    }

    /** A motor that turns as often as the wheel, exactly. */
    private boolean isDirect() {
        return inputs.quantity(Input.DRIVE_REDUCTION).equals(Quantity.exact(1.0));
    }

    private void completeBattery() {
        if (packs.size() > 1) {
            inputs.derive(
                    Input.PACKS_JOINING,
                    new Value.Word(Joining.PARALLEL.key()),
                    "the usual way to join packs");
            inputs.derive(
                    Input.TRUNK_RESISTANCE,
                    trunk.getAsDouble(),
                    "the leads of battery.wire and length");
        }
    }

    private void completeUse() {
        if (!inputs.has(Input.USE_DECK_TEMPERATURE)) {
            double rise = inputs.tableDefault("use.deck_rise").number();
            inputs.derive(
                    Input.USE_DECK_TEMPERATURE,
                    inputs.number(Input.USE_AMBIENT) + rise,
                    plain(rise) + " K above use.ambient, our own choice");
        }
        double temperature = packs.get(0).temperature();
        inputs.derive(
                Input.USE_PACK_TEMPERATURE,
                new Value.Pair(temperature, temperature),
                "pack.temperature throughout");
        inputs.derive(
                Input.USE_SPEED_MAX, highestSpeed(), "settings.speed_cap, or the no-load speed");
        inputs.derive(
                Input.USE_CRUISE_SPEED,
                CRUISE_SHARE * inputs.number(Input.USE_SPEED_MAX),
                "60 % of use.speed_max, our own choice");
        if (inputs.has(Input.USE_MEASURED_CONSUMPTION)) {
            inputs.derive(
                    Input.USE_MEASURED_SPEED,
                    inputs.number(Input.USE_CRUISE_SPEED),
                    "use.cruise_speed");
        }
    }

    private double highestSpeed() {
        if (inputs.has(Input.SETTINGS_SPEED_CAP)) {
            return inputs.number(Input.SETTINGS_SPEED_CAP);
        }
        double angularSpeed = fullVoltage() * inputs.number(Input.MOTOR_KV) * 2.0 * Math.PI / 60.0;
        return angularSpeed
                / inputs.number(Input.DRIVE_REDUCTION)
                * inputs.number(Input.VEHICLE_WHEEL_DIAMETER)
                / 2.0;
    }

    /** Packs in parallel are full where the first of them is. */
    private double fullVoltage() {
        DoubleStream each = packs.stream().mapToDouble(PackCompletion::fullVoltage);
        boolean inSeries =
                inputs.word(Input.PACKS_JOINING).filter(Joining.SERIES.key()::equals).isPresent();
        return inSeries ? each.sum() : each.min().orElseThrow();
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}

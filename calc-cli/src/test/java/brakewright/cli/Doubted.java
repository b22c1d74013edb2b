package brakewright.cli;

import brakewright.limit.Limits;
import brakewright.profile.Uncertain;
import brakewright.profile.Variation;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Climate;
import brakewright.spec.Controllers;
import brakewright.spec.Input;
import brakewright.spec.Motor;
import brakewright.spec.Pack;
import brakewright.spec.Rider;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import brakewright.spec.Vehicle;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * A vehicle of one pack of which eight inputs are known to 5 to 20 %. The tolerances are invented.
 *
 * @param build at nominal values
 * @param inputs that are not known exactly
 */
record Doubted(Build build, List<Uncertain> inputs) implements Variation {

    static Doubted of(Example example) {
        return of(build(example));
    }

    /**
     * The same vehicle set to just below its limits, and charged less full: here the tolerances of
     * most inputs bear on the verdict.
     */
    static Doubted justWithin(Example example) {
        Build build = build(example);
        Use use = build.use();
        Limits limits = Limits.of(build);
        double cells = build.battery().temperatureC();
        int count = build.controllers().count();
        Use emptier =
                use.withChargeTo(0.2)
                        .withChargeFrom(0.75)
                        .withClimate(
                                new Climate(use.climate().ambientC(), cells, cells, 0.0, 30.0));
        return of(
                build.withUse(emptier)
                        .withSettings(
                                new Settings(
                                        below(limits.motorDrive().value()),
                                        below(limits.motorBrake().value()),
                                        below(limits.packDischarge().valueAt(0.2, cells) / count),
                                        below(limits.packRegen().valueAt(0.75, cells) / count),
                                        Optional.empty(),
                                        Optional.empty(),
                                        below(
                                                Limits.of(build.withUse(emptier))
                                                        .speedCap()
                                                        .value()))));
    }

    private static OptionalDouble below(double limit) {
        return OptionalDouble.of(0.98 * limit);
    }

    private static Build build(Example example) {
        return BuildArgument.read(Path.of(example.path())).build();
    }

    private static Doubted of(Build build) {
        Motor motor = build.motor();
        Vehicle vehicle = build.vehicle();
        Cell cell = build.battery().packs().get(0).cell();
        double efficiency = build.controllers().efficiency();
        return new Doubted(
                build,
                List.of(
                        about(Input.MOTOR_RESISTANCE, motor.resistanceAt20C(), 0.10),
                        about(Input.MOTOR_KV, motor.kvRpmPerVolt(), 0.05),
                        about(Input.CELL_RESISTANCE, cell.resistance(), 0.20),
                        about(Input.CELL_CAPACITY, cell.capacityAh(), 0.10),
                        new Uncertain(
                                Input.CONTROLLER_EFFICIENCY,
                                efficiency,
                                0.95 * efficiency,
                                Math.min(1.0, 1.05 * efficiency)),
                        about(Input.RIDER_MASS, build.rider().mass(), 0.15),
                        about(Input.VEHICLE_DRAG_AREA, vehicle.dragArea(), 0.20),
                        about(
                                Input.VEHICLE_ROLLING_RESISTANCE,
                                vehicle.rollingResistance(),
                                0.20)));
    }

    private static Uncertain about(Input input, double nominal, double tolerance) {
        return new Uncertain(
                input, nominal, (1.0 - tolerance) * nominal, (1.0 + tolerance) * nominal);
    }

    /** Values within the tolerances; every fourth, on average, at an end. */
    double[] sample(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return inputs.stream()
                .mapToDouble(
                        each -> random.nextInt(4) > 0 ? inside(each, random) : end(each, random))
                .toArray();
    }

    /** Values within the tolerances, all equally likely. */
    double[] evenSample(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return inputs.stream().mapToDouble(each -> inside(each, random)).toArray();
    }

    private static double inside(Uncertain input, SplittableRandom random) {
        return input.low() + random.nextDouble() * (input.high() - input.low());
    }

    private static double end(Uncertain input, SplittableRandom random) {
        return random.nextBoolean() ? input.low() : input.high();
    }

    @Override
    public Build with(double[] values) {
        Motor motor = build.motor();
        Controllers controllers = build.controllers();
        Rider rider = build.rider();
        Vehicle vehicle = build.vehicle();
        return build.withRider(rider.withMass(values[5]))
                .withVehicle(vehicle.withRollingResistance(values[7]).withDragArea(values[6]))
                .withMotor(motor.withKvRpmPerVolt(values[1]).withResistanceAt20C(values[0]))
                .withControllers(controllers.withEfficiency(values[4]))
                .withBattery(
                        Battery.of(pack(build.battery().packs().get(0), values[2], values[3])));
    }

    private static Pack pack(Pack pack, double resistance, double capacityAh) {
        Cell cell = pack.cell();
        return pack.withCell(cell.withCapacityAh(capacityAh).withResistance(resistance));
    }

    double[] nominal() {
        return inputs.stream().mapToDouble(Uncertain::nominal).toArray();
    }
}

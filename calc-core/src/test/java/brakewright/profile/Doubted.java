package brakewright.profile;

import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Controllers;
import brakewright.spec.Input;
import brakewright.spec.Motor;
import brakewright.spec.Rider;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A vehicle of which six inputs are not known exactly.
 *
 * @param build at nominal values
 * @param inputs resistance and Kv of the motor, resistance and capacity of the cells, efficiency of
 *     the controllers, mass of the rider
 */
record Doubted(Build build, List<Uncertain> inputs) implements Variation {

    static Doubted of(Build build, double tolerance) {
        List<Uncertain> inputs = new ArrayList<>();
        Motor motor = build.motor();
        Cell cell = Builds.pack(build).cell();
        inputs.add(about(Input.MOTOR_RESISTANCE, motor.resistanceAt20C(), tolerance));
        inputs.add(about(Input.MOTOR_KV, motor.kvRpmPerVolt(), tolerance));
        inputs.add(about(Input.CELL_RESISTANCE, cell.resistance(), tolerance));
        inputs.add(about(Input.CELL_CAPACITY, cell.capacityAh(), tolerance));
        double efficiency = build.controllers().efficiency();
        inputs.add(
                new Uncertain(
                        Input.CONTROLLER_EFFICIENCY,
                        efficiency,
                        (1.0 - tolerance) * efficiency,
                        Math.min(1.0, (1.0 + tolerance) * efficiency)));
        inputs.add(about(Input.RIDER_MASS, build.rider().mass(), tolerance));
        return new Doubted(build, inputs);
    }

    private static Uncertain about(Input input, double nominal, double tolerance) {
        return new Uncertain(
                input, nominal, (1.0 - tolerance) * nominal, (1.0 + tolerance) * nominal);
    }

    /** The same with one input known to be nominal. */
    Doubted knowing(int index) {
        List<Uncertain> fewer = new ArrayList<>(inputs);
        Uncertain old = inputs.get(index);
        fewer.set(index, new Uncertain(old.input(), old.nominal(), old.nominal(), old.nominal()));
        return new Doubted(build, fewer);
    }

    /** Values within the tolerances; every fourth, on average, at an end. */
    double[] sample(SplittableRandom random) {
        return inputs.stream()
                .mapToDouble(
                        each ->
                                random.nextInt(4) > 0
                                        ? each.at(random.nextDouble())
                                        : random.nextBoolean() ? each.low() : each.high())
                .toArray();
    }

    @Override
    public Build with(double[] values) {
        Motor motor = build.motor();
        Controllers controllers = build.controllers();
        Rider rider = build.rider();
        Build changed =
                Builds.withMotor(
                        build, motor.withKvRpmPerVolt(values[1]).withResistanceAt20C(values[0]));
        changed = Builds.withControllers(changed, controllers.withEfficiency(values[4]));
        // cells of several packs change alike
        double resistance = values[2] / inputs.get(2).nominal();
        double capacity = values[3] / inputs.get(3).nominal();
        changed =
                Builds.withCells(
                        changed,
                        cell ->
                                cell(
                                        cell,
                                        resistance * cell.resistance(),
                                        capacity * cell.capacityAh()));
        return changed.withRider(rider.withMass(values[5]));
    }

    private static Cell cell(Cell cell, double resistance, double capacityAh) {
        return cell.withCapacityAh(capacityAh).withResistance(resistance);
    }
}

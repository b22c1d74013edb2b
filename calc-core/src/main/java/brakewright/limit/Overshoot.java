package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.formula.Derivation;
import brakewright.formula.Inputs;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * In a hard grab the brake current is there before the limiter of the pack regen current acts, and
 * the pack takes what the motors return. Where a trip waits less long than that, it opens; so the
 * motor brake current must return no more than the trip permits, whatever pack regen current is
 * set: a charge trip at any charge state in use, an over-voltage trip at least at the lowest, above
 * which the charge is what counts.
 *
 * <p>Assumption: the whole brake current is there at once, as if the brakes had no build-up, and no
 * limiter holds back any of it until the end of its response. Both err on the side of more.
 *
 * <p>Assumption: the resistance of a pulse of 10 s. That of the first instant is less, and lets
 * some per cent more current in.
 */
final class Overshoot {

    private final Build build;
    private final Inputs inputs;
    private final MotorSteps motor;
    private final BatteryModel model;

    /**
     * Sets out.
     *
     * @param build the vehicle
     * @param motor the steps about its motors
     * @param model its packs, for a current into them
     */
    Overshoot(Build build, MotorSteps motor, BatteryModel model) {
        this.build = build;
        this.inputs = new Inputs(build);
        this.motor = motor;
        this.model = model;
    }

    /** One for every pack with a trip that is known to be quicker than the limiter. */
    List<Constraint> constraints(PackLimit regen) {
        Map<WhichPack, Constraint> ofPacks = new LinkedHashMap<>();
        for (PackConstraint trip : regen.constraints()) {
            if (TripDelay.isQuicker(build, trip)) {
                ofPacks.merge(
                        trip.pack(),
                        constraint(trip),
                        (one, other) -> other.limit() < one.limit() ? other : one);
            }
        }
        return List.copyOf(ofPacks.values());
    }

    /** At the state in use in which the least power makes the current that is permitted. */
    private Constraint constraint(PackConstraint trip) {
        PackState worst =
                PackState.of(model, build.use().chargeTo(), build.battery().temperatureC());
        double least = power(trip, worst);
        for (double cellsC : build.cellTemperatures()) {
            for (double charge : charges(trip)) {
                PackState state = PackState.of(model, charge, cellsC);
                double power = power(trip, state);
                if (power < least) {
                    worst = state;
                    least = power;
                }
            }
        }
        return at(trip, worst, least);
    }

    private static double power(PackConstraint trip, PackState state) {
        return state.powerReturnedBy(trip.limitAt(state.charge(), state.temperatureC()));
    }

    private List<Double> charges(PackConstraint trip) {
        double from = build.use().chargeFrom();
        double to = build.use().chargeTo();
        if (trip.variesWithCharge()) {
            return List.of(to);
        }
        List<Double> all = new ArrayList<>(List.of(to, from));
        for (double point : model.points()) {
            if (point > to && point < from) {
                all.add(point);
            }
        }
        return all;
    }

    private Constraint at(PackConstraint trip, PackState pack, double power) {
        Powertrain powertrain = Powertrain.of(build);
        Constraint permitted = trip.at(pack.charge(), pack.temperatureC());
        Steps steps = new Steps().with(permitted.steps());
        Term current =
                steps.add(
                        Term.computed(
                                "I_t",
                                "return that the trip permits",
                                permitted.limit(),
                                Unit.AMPERE),
                        permitted.derivation().formula(),
                        permitted.derivation().source(),
                        permitted.derivation().terms().toArray(Term[]::new));
        BatterySteps battery = new BatterySteps(build.battery(), model);
        Term voltage = battery.voltage(steps, "U", "packs at rest", pack.charge());
        Term resistance =
                battery.resistance(
                        steps,
                        "resistance of the packs",
                        pack.charge(),
                        pack.temperatureC(),
                        Lasting.pulse(build, model));
        Term whole =
                steps.add(
                        Term.computed("P_t", "power at which it opens", power, Unit.WATT),
                        "I_t·(U + I_t·R)",
                        PackTerms.KIRCHHOFF,
                        current,
                        voltage,
                        resistance);
        double perMotor = power / (build.drive().motors() * build.controllers().efficiency());
        Term each =
                steps.add(
                        Term.computed("p", "the same, of one motor", perMotor, Unit.WATT),
                        "P_t/(n·ηc)",
                        "conservation of energy",
                        whole,
                        inputs.of(Input.DRIVE_MOTORS),
                        inputs.of(Input.CONTROLLER_EFFICIENCY));
        Term speed = new Inputs(build).highestSpeed();
        Step torque = motor.torqueConstant();
        Step turning = motor.turning(speed);
        steps.with(List.of(motor.voltageConstant(), torque, turning));
        double backEmf = powertrain.motor().torqueConstant() * turning.result().value();
        Term emf =
                steps.add(
                        Term.computed("E", "power per current, no loss", backEmf, Unit.VOLT),
                        "kt·ω",
                        MotorSteps.MACHINE,
                        torque.result(),
                        turning.result());
        Term loss = motor.lossResistance(steps);
        double limit =
                powertrain.limitedBrakeCurrent(Double.POSITIVE_INFINITY, speed.value(), power);
        boolean isFree = Double.isInfinite(limit);
        List<Term> conditions = new ArrayList<>(permitted.conditions());
        conditions.add(inputs.of(Input.CONTROLLER_REGEN_RESPONSE));
        return new Constraint(
                ConstraintId.REGEN_OVERSHOOT,
                limit,
                permitted.decisive(),
                conditions,
                steps.all(),
                new Derivation(
                        isFree
                                ? Constraint.NO_BOUND + "E² − 4·R_e·p ≤ 0"
                                : "2·p/(E + √(E² − 4·R_e·p))",
                        "conservation of energy, the smaller root",
                        emf,
                        loss,
                        each),
                trip.pack());
    }

    /** A cap above the highest speed in use lets the vehicle go that fast. */
}

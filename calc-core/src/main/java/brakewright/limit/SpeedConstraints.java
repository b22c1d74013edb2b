package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.formula.Derivation;
import brakewright.formula.Inputs;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What limits the speed: where the back-EMF exceeds a voltage, the motor generates through the
 * controller whatever that is told.
 *
 * <p>The voltage of the packs falls as they empty, so the bound is that of the emptiest in use: a
 * cap for full packs would let an emptier one be charged by force.
 *
 * <p>Assumption: full modulation, so that the peak voltage between two lines of the motor may equal
 * that of the supply. Kv is read as speed per peak line-to-line volt.
 *
 * <p>Assumption: the packs rest. A current that they give lowers their voltage and lets the motor
 * generate earlier; what is returned then raises it again.
 */
final class SpeedConstraints {

    private final Build build;
    private final Inputs inputs;
    private final Powertrain powertrain;
    private final BatteryModel model;
    private final MotorSteps motor;

    SpeedConstraints(Build build, BatteryModel model) {
        this.build = build;
        this.inputs = new Inputs(build);
        this.powertrain = Powertrain.of(build);
        this.model = model;
        this.motor = new MotorSteps(build);
    }

    Limit cap() {
        return new Limit(LimitId.SPEED_CAP, List.of(withinRating(), withinPack()));
    }

    private Constraint withinRating() {
        double margin = build.margins().controllerVoltage();
        double rating = build.controllers().voltageRating();
        double highest = (1.0 - margin) * rating;
        return backEmf(
                ConstraintId.CONTROLLER_BACK_EMF,
                highest,
                Input.CONTROLLER_VOLTAGE_RATING,
                steps ->
                        steps.add(
                                Term.computed("V", "highest at the controller", highest, Unit.VOLT),
                                "(1 − m)·V_r",
                                "own choice, the rating less a margin",
                                inputs.of(Input.MARGINS_CONTROLLER_VOLTAGE),
                                inputs.of(Input.CONTROLLER_VOLTAGE_RATING)));
    }

    private Constraint withinPack() {
        double fullest = build.use().chargeFrom();
        double emptiest = build.use().chargeTo();
        double least =
                Math.min(model.openCircuitVoltage(fullest), model.openCircuitVoltage(emptiest));
        return backEmf(
                        ConstraintId.PACK_BACK_EMF,
                        least,
                        Input.USE_CHARGE_TO,
                        steps -> leastInUse(steps, fullest, emptiest, least))
                .under(inputs.of(Input.USE_CHARGE_FROM), inputs.of(Input.USE_CHARGE_TO));
    }

    private Term leastInUse(Steps steps, double fullest, double emptiest, double least) {
        BatterySteps packs = new BatterySteps(build.battery(), model);
        Term full = packs.voltage(steps, "U_f", "packs at rest, fullest in use", fullest);
        Term empty = packs.voltage(steps, "U_e", "packs at rest, emptiest in use", emptiest);
        return steps.add(
                Term.computed("V", "lowest of those in use", least, Unit.VOLT),
                "min(U_f, U_e)",
                "own choice, the cap must hold down to the emptiest in use",
                full,
                empty);
    }

    private Constraint backEmf(
            ConstraintId id, double volts, Input decisive, Function<Steps, Term> voltage) {
        return new Constraint(
                id,
                powertrain.speed(volts / powertrain.motor().voltageConstant()),
                decisive,
                Working.when(() -> words(voltage)));
    }

    private Working.Words words(Function<Steps, Term> found) {
        Steps steps = new Steps();
        Term voltage = found.apply(steps);
        Step constant = motor.voltageConstant();
        List<Term> terms =
                new ArrayList<>(
                        List.of(
                                voltage,
                                inputs.of(Input.VEHICLE_WHEEL_DIAMETER),
                                inputs.of(Input.DRIVE_REDUCTION)));
        terms.add(constant.result());
        return new Working.Words(
                steps.with(List.of(constant)),
                new Derivation(
                        "V·d/(2·G·K)", "rolling without slip; " + MotorSteps.MACHINE, terms));
    }
}

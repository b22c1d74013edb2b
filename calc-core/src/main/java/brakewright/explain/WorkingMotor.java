package brakewright.explain;

import static brakewright.formula.Term.computed;

import brakewright.formula.Inputs;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.BasisFormulas;
import brakewright.limit.MotorSteps;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Input;
import brakewright.spec.Unit;

/** The steps about the motors: constants, current for a force, power and voltage for a current. */
final class WorkingMotor {

    static final String BALANCE = "conservation of energy";
    static final String COPPER = "IEC 60028:1925, temperature coefficient of copper";

    private final Build build;
    private final Steps steps;
    private final Inputs inputs;
    private final MotorSteps shared;
    private final Powertrain powertrain;
    private final Term voltageConstant;
    private final Term torqueConstant;
    private final Term terminalResistance;
    private final Term lossResistance;

    WorkingMotor(Build build, Steps steps) {
        this.build = build;
        this.steps = steps;
        this.inputs = new Inputs(build);
        this.shared = new MotorSteps(build);
        this.powertrain = Powertrain.of(build);
        this.voltageConstant = steps.add(shared.voltageConstant());
        this.torqueConstant = steps.add(shared.torqueConstant());
        this.terminalResistance = winding();
        this.lossResistance = loss();
    }

    CurrentBasis basis() {
        return build.controllers().basis();
    }

    /** The peak of a phase current, as it is written. */
    String peak(String symbol) {
        return BasisFormulas.peak(basis(), symbol);
    }

    Term voltageConstant() {
        return voltageConstant;
    }

    Term torqueConstant() {
        return torqueConstant;
    }

    Term terminalResistance() {
        return terminalResistance;
    }

    Term lossResistance() {
        return lossResistance;
    }

    Powertrain powertrain() {
        return powertrain;
    }

    private Term winding() {
        double air = build.use().climate().ambientC();
        return steps.add(
                computed(
                        "R_w",
                        "resistance between terminals",
                        powertrain.motor().terminalResistance(air),
                        Unit.OHM),
                "R_20·(1 + 0.00393·(T_a − 20))",
                COPPER + "; windings at the temperature of the air",
                inputs.of(Input.MOTOR_RESISTANCE),
                inputs.of(Input.USE_AMBIENT));
    }

    private Term loss() {
        double air = build.use().climate().ambientC();
        return steps.add(
                computed(
                        "R_e",
                        "resistance of copper loss",
                        powertrain.motor().lossResistance(air),
                        Unit.OHM),
                BasisFormulas.lossShare(basis()) + "R_w",
                MotorSteps.MACHINE,
                terminalResistance);
    }

    /** What the vehicle is given. */
    Inputs inputs() {
        return inputs;
    }

    Term turning(Term speed) {
        return steps.add(shared.turning(speed));
    }

    Term drag(Term turning) {
        return steps.add(
                computed(
                        "T0",
                        "drag torque of one motor",
                        powertrain.motor().dragTorque(turning.value()),
                        Unit.NEWTON_METRE),
                "K·I_0 + c_v·ω",
                MotorSteps.MACHINE,
                voltageConstant,
                inputs.of(Input.MOTOR_NO_LOAD_CURRENT),
                inputs.of(Input.MOTOR_VISCOUS_DRAG),
                turning);
    }

    Term holding(Term force, Term drag, double speed) {
        return steps.add(
                computed(
                        "I",
                        "current per motor that holds it",
                        powertrain.thrustCurrent(force.value(), speed),
                        Unit.AMPERE),
                "(F·d/(2·n·G·η) + T0)/kt",
                BALANCE,
                force,
                inputs.of(Input.VEHICLE_WHEEL_DIAMETER),
                inputs.of(Input.DRIVE_MOTORS),
                inputs.of(Input.DRIVE_REDUCTION),
                inputs.of(Input.DRIVE_EFFICIENCY),
                drag,
                torqueConstant);
    }

    /** The thrust of a current, not below nothing. */
    Term thrust(String symbol, String meaning, Term current, Term drag, double speed) {
        return steps.add(
                computed(symbol, meaning, powertrain.thrust(current.value(), speed), Unit.NEWTON),
                "max(0, 2·n·(kt·" + current.symbol() + " − T0)·G·η/d)",
                BALANCE,
                inputs.of(Input.DRIVE_MOTORS),
                torqueConstant,
                current,
                drag,
                inputs.of(Input.DRIVE_REDUCTION),
                inputs.of(Input.DRIVE_EFFICIENCY),
                inputs.of(Input.VEHICLE_WHEEL_DIAMETER));
    }

    Term drawn(String symbol, Term current, Term turning) {
        double speed = powertrain.speed(turning.value());
        return steps.add(
                computed(
                        symbol,
                        "power drawn for it",
                        powertrain.drawnPower(current.value(), speed),
                        Unit.WATT),
                "n·(kt·ω·" + current.symbol() + " + R_e·" + current.symbol() + "²)/ηc",
                BALANCE,
                inputs.of(Input.DRIVE_MOTORS),
                torqueConstant,
                turning,
                current,
                lossResistance,
                inputs.of(Input.CONTROLLER_EFFICIENCY));
    }
}

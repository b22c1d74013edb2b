package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.constant;
import static brakewright.formula.Term.given;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.BasisFormulas;
import brakewright.machine.Copper;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Input;

/** The steps about the motors: constants, current for a force, power and voltage for a current. */
final class WorkingMotor {

    static final String MACHINE =
            "permanent-magnet machine, e.g. Fitzgerald, Kingsley, Umans, Electric Machinery";
    static final String BALANCE = "conservation of energy";
    static final String COPPER = "IEC 60028:1925, temperature coefficient of copper";

    private final Build build;
    private final Steps steps;
    private final Powertrain powertrain;
    private final Term voltageConstant;
    private final Term torqueConstant;
    private final Term terminalResistance;
    private final Term lossResistance;

    WorkingMotor(Build build, Steps steps) {
        this.build = build;
        this.steps = steps;
        this.powertrain = Powertrain.of(build);
        this.voltageConstant = constant();
        this.torqueConstant = torque();
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

    private Term constant() {
        return steps.add(
                computed("K", "voltage constant", powertrain.motor().voltageConstant(), "V·s/rad"),
                "60/(2·π·Kv)",
                MACHINE,
                given(Input.MOTOR_KV, build.motor().kvRpmPerVolt()));
    }

    private Term torque() {
        return steps.add(
                computed("kt", "torque per current", powertrain.motor().torqueConstant(), "N·m/A"),
                BasisFormulas.torqueConstant(basis()),
                MACHINE + "; " + BasisFormulas.meaning(basis()),
                voltageConstant);
    }

    private Term winding() {
        double air = build.use().climate().ambientC();
        return steps.add(
                computed(
                        "R_w",
                        "resistance between terminals",
                        build.motor().resistanceAt20C() * Copper.resistanceFactor(air),
                        "Ω"),
                "R_20·(1 + 0.00393·(T_a − 20))",
                COPPER + "; windings at the temperature of the air",
                given(Input.MOTOR_RESISTANCE, build.motor().resistanceAt20C()),
                WorkingRoad.air(build));
    }

    private Term loss() {
        double air = build.use().climate().ambientC();
        return steps.add(
                computed(
                        "R_e",
                        "resistance of copper loss",
                        powertrain.motor().lossResistance(air),
                        "Ω"),
                BasisFormulas.lossShare(basis()) + "R_w",
                MACHINE,
                terminalResistance);
    }

    Term wheel() {
        return given(Input.VEHICLE_WHEEL_DIAMETER, build.vehicle().wheelDiameter());
    }

    Term polePairs() {
        return given(Input.MOTOR_POLE_PAIRS, build.motor().polePairs());
    }

    Term inductance() {
        return given(Input.MOTOR_INDUCTANCE, build.motor().inductance());
    }

    Term motors() {
        return given(Input.DRIVE_MOTORS, build.drive().motors());
    }

    Term reduction() {
        return given(Input.DRIVE_REDUCTION, build.drive().reduction());
    }

    Term efficiency() {
        return given(Input.DRIVE_EFFICIENCY, build.drive().efficiency());
    }

    Term controllers() {
        return given(Input.CONTROLLER_EFFICIENCY, build.controllers().efficiency());
    }

    Term turning(Term speed) {
        return steps.add(
                computed(
                        "ω",
                        "speed of the motors",
                        powertrain.angularSpeed(speed.value()),
                        "rad/s"),
                "2·G·" + speed.symbol() + "/d",
                "rolling without slip",
                reduction(),
                speed,
                wheel());
    }

    Term drag(Term turning) {
        double viscous = build.motor().viscousDrag();
        return steps.add(
                computed(
                        "T0",
                        "drag torque of one motor",
                        powertrain.motor().dragTorque(turning.value()),
                        "N·m"),
                "K·I_0 + c_v·ω",
                MACHINE,
                voltageConstant,
                given(Input.MOTOR_NO_LOAD_CURRENT, build.motor().noLoadCurrent()),
                given(Input.MOTOR_VISCOUS_DRAG, viscous),
                turning);
    }

    Term holding(Term force, Term drag, double speed) {
        return steps.add(
                computed(
                        "I",
                        "current per motor that holds it",
                        powertrain.thrustCurrent(force.value(), speed),
                        "A"),
                "(F·d/(2·n·G·η) + T0)/kt",
                BALANCE,
                force,
                wheel(),
                motors(),
                reduction(),
                efficiency(),
                drag,
                torqueConstant);
    }

    /** The thrust of a current, not below nothing. */
    Term thrust(String symbol, String meaning, Term current, Term drag, double speed) {
        return steps.add(
                computed(symbol, meaning, powertrain.thrust(current.value(), speed), "N"),
                "max(0, 2·n·(kt·" + current.symbol() + " − T0)·G·η/d)",
                BALANCE,
                motors(),
                torqueConstant,
                current,
                drag,
                reduction(),
                efficiency(),
                wheel());
    }

    Term drawn(String symbol, Term current, Term turning) {
        double speed = powertrain.speed(turning.value());
        return steps.add(
                computed(
                        symbol,
                        "power drawn for it",
                        powertrain.drawnPower(current.value(), speed),
                        "W"),
                "n·(kt·ω·" + current.symbol() + " + R_e·" + current.symbol() + "²)/ηc",
                BALANCE,
                motors(),
                torqueConstant,
                turning,
                current,
                lossResistance,
                controllers());
    }
}

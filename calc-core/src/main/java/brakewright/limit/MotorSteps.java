package brakewright.limit;

import brakewright.formula.Derivation;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.Powertrain;
import brakewright.road.Gravity;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;

/**
 * The steps that several bounds on the current of a motor share: its constants and drag, the mass
 * and the road.
 *
 * <p>Assumption: with a dc-equivalent current the torque is {@code K·I}, as if the current passed
 * from phase to phase at once; the dips that the inductance makes at each commutation are left out.
 */
final class MotorSteps {

    static final String MACHINE =
            "permanent-magnet machine, e.g. Fitzgerald, Kingsley, Umans, Electric Machinery";
    static final String NEWTON = "Newton's second law";
    static final Term GRAVITY = Term.constant("g", "standard gravity", Gravity.STANDARD, "m/s²");

    private static final String ROAD =
            "road load, Martin et al., J. Appl. Biomech. 14(3):276-291 (1998)";

    private final Build build;
    private final Powertrain powertrain;
    private final Step voltageConstant;

    MotorSteps(Build build) {
        this.build = build;
        this.powertrain = Powertrain.of(build);
        this.voltageConstant =
                new Step(
                        Term.computed(
                                "K",
                                "voltage constant",
                                powertrain.motor().voltageConstant(),
                                "V·s/rad"),
                        new Derivation(
                                "60/(2·π·Kv)",
                                MACHINE,
                                List.of(Term.given(Input.MOTOR_KV, build.motor().kvRpmPerVolt()))));
    }

    /** K. */
    Step voltageConstant() {
        return voltageConstant;
    }

    /** kt, from K. */
    Step torqueConstant() {
        CurrentBasis basis = build.controllers().basis();
        return new Step(
                Term.computed(
                        "kt", "torque per current", powertrain.motor().torqueConstant(), "N·m/A"),
                new Derivation(
                        BasisFormulas.torqueConstant(basis),
                        MACHINE + "; " + BasisFormulas.meaning(basis),
                        List.of(voltageConstant.result())));
    }

    /** Re of a winding at the temperature of the air. */
    Term lossResistance(Steps steps) {
        return steps.add(
                Term.computed(
                        "R_e",
                        "resistance of copper loss",
                        powertrain.motor().lossResistance(build.use().climate().ambientC()),
                        "Ω"),
                BasisFormulas.lossShare(build.controllers().basis())
                        + "R_20·(1 + 0.00393·(T_a − 20))",
                "IEC 60028:1925, temperature coefficient of copper; " + MACHINE,
                Term.given(Input.MOTOR_RESISTANCE, build.motor().resistanceAt20C()),
                air());
    }

    /** The current that makes the torque of the drag. */
    Step currentOfDrag(Term drag, Term torqueConstant) {
        return new Step(
                Term.computed(
                        "I_d", "current of the drag", drag.value() / torqueConstant.value(), "A"),
                new Derivation(drag.symbol() + "/kt", MACHINE, List.of(drag, torqueConstant)));
    }

    /** The current per motor for each newton of all driven wheels, braking or driving. */
    Step currentForForce(Term torqueConstant, boolean isBraking) {
        double efficiency = build.drive().efficiency();
        return new Step(
                Term.computed(
                        "c",
                        "current for each newton",
                        build.vehicle().wheelDiameter()
                                * (isBraking ? efficiency : 1.0 / efficiency)
                                / (2.0
                                        * build.drive().motors()
                                        * build.drive().reduction()
                                        * torqueConstant.value()),
                        "A/N"),
                new Derivation(
                        isBraking ? "η·d/(2·n·G·kt)" : "d/(2·n·G·η·kt)",
                        "conservation of energy from motor to road",
                        List.of(efficiency(), wheel(), motors(), reduction(), torqueConstant)));
    }

    /** T0, the drag torque of a motor that hardly turns, from K. */
    Step dragAtRest() {
        return new Step(
                Term.computed(
                        "T0",
                        build.motor().viscousDrag() == 0.0
                                ? "drag torque of one motor"
                                : "drag torque, hardly turning",
                        powertrain.motor().dragTorque(0.0),
                        "N·m"),
                new Derivation(
                        "K·I_0", MACHINE, List.of(voltageConstant.result(), noLoadCurrent())));
    }

    /**
     * How fast the motor turns and what it drags at a speed, from K; the last step is the drag.
     *
     * @param speed [m/s]
     */
    List<Step> dragAt(Term speed) {
        double viscous = build.motor().viscousDrag();
        if (viscous == 0.0) {
            return List.of(dragAtRest());
        }
        Step turning = turning(speed);
        return List.of(
                turning,
                new Step(
                        Term.computed(
                                "T_v",
                                "drag torque at that speed",
                                powertrain.motor().dragTorque(turning.result().value()),
                                "N·m"),
                        new Derivation(
                                "K·I_0 + c_v·ω",
                                MACHINE,
                                List.of(
                                        voltageConstant.result(),
                                        noLoadCurrent(),
                                        Term.given(Input.MOTOR_VISCOUS_DRAG, viscous),
                                        turning.result()))));
    }

    Step turning(Term speed) {
        return new Step(
                Term.computed(
                        "ω",
                        "speed of the motors",
                        powertrain.angularSpeed(speed.value()),
                        "rad/s"),
                new Derivation(
                        "2·G·v/d", "rolling without slip", List.of(reduction(), speed, wheel())));
    }

    /** The mass that moves. */
    Step mass() {
        return new Step(
                Term.computed("m", "mass that moves", build.mass(), "kg"),
                new Derivation(
                        "m_r + m_v + m_c",
                        "sum of what is aboard",
                        List.of(
                                Term.given(Input.RIDER_MASS, build.rider().mass()),
                                Term.given(Input.VEHICLE_MASS, build.vehicle().mass()),
                                Term.given(Input.VEHICLE_CARGO, build.vehicle().cargo()))));
    }

    /** The air and, last, the load of a level road at a speed; from the mass. */
    List<Step> road(Term mass, Term speed) {
        RoadLoad load = RoadLoad.of(build);
        Term density = Term.computed("ρ", "density of the air", load.airDensity(), "kg/m³");
        List<Step> steps = new ArrayList<>();
        steps.add(
                new Step(
                        density,
                        new Derivation(
                                "101325·(1 − 0.0065·h_a/288.15)^5.25588/(287.05287·(T_a + 273.15))",
                                "ISO 2533:1975, Standard Atmosphere, at the temperature given",
                                List.of(
                                        Term.given(
                                                Input.USE_ALTITUDE,
                                                build.use().climate().altitude()),
                                        air()))));
        steps.add(
                new Step(
                        Term.computed("F_r", "road load", load.force(speed.value(), 0.0, 0.0), "N"),
                        new Derivation(
                                "m·g·crr + ½·ρ·CdA·v²",
                                ROAD,
                                List.of(
                                        mass,
                                        GRAVITY,
                                        Term.given(
                                                Input.VEHICLE_ROLLING_RESISTANCE,
                                                load.rollingResistance()),
                                        density,
                                        Term.given(Input.VEHICLE_DRAG_AREA, load.dragArea()),
                                        speed))));
        return steps;
    }

    Term fastest() {
        return Term.given(Input.USE_SPEED_MAX, build.use().speedMax());
    }

    /** The highest that will be met: that in use, or a speed cap above it. */
    Term highest() {
        return build.highestSpeed() > build.use().speedMax()
                ? Term.given(Input.SETTINGS_SPEED_CAP, build.highestSpeed())
                : fastest();
    }

    Term air() {
        return Term.given(Input.USE_AMBIENT, build.use().climate().ambientC());
    }

    Term wheel() {
        return Term.given(Input.VEHICLE_WHEEL_DIAMETER, build.vehicle().wheelDiameter());
    }

    Term reduction() {
        return Term.given(Input.DRIVE_REDUCTION, build.drive().reduction());
    }

    Term motors() {
        return Term.given(Input.DRIVE_MOTORS, build.drive().motors());
    }

    Term efficiency() {
        return Term.given(Input.DRIVE_EFFICIENCY, build.drive().efficiency());
    }

    private Term noLoadCurrent() {
        return Term.given(Input.MOTOR_NO_LOAD_CURRENT, build.motor().noLoadCurrent());
    }
}

package brakewright.limit;

import brakewright.formula.Inputs;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.Powertrain;
import brakewright.road.Gravity;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * The steps that several bounds on the current of a motor share: its constants and drag, the mass
 * and the road.
 *
 * <p>Assumption: with a dc-equivalent current the torque is {@code K·I}, as if the current passed
 * from phase to phase at once; the dips that the inductance makes at each commutation are left out.
 */
public final class MotorSteps {

    /** A source. */
    public static final String MACHINE =
            "permanent-magnet machine, e.g. Fitzgerald, Kingsley, Umans, Electric Machinery";

    /** A source. */
    public static final String NEWTON = "Newton's second law";

    /** The acceleration of free fall. */
    public static final Term GRAVITY =
            Term.constant("g", "standard gravity", Gravity.STANDARD, Unit.METRE_PER_SECOND_SQUARED);

    /** A source. */
    public static final String ROAD =
            "road load, Martin et al., J. Appl. Biomech. 14(3):276-291 (1998)";

    private final Build build;
    private final Inputs inputs;
    private final Powertrain powertrain;
    private final Step voltageConstant;

    /**
     * Prepares the steps of a vehicle.
     *
     * @param build the vehicle
     */
    public MotorSteps(Build build) {
        this.build = build;
        this.inputs = new Inputs(build);
        this.powertrain = Powertrain.of(build);
        this.voltageConstant =
                new Step(
                        Term.computed(
                                "K",
                                "voltage constant",
                                powertrain.motor().voltageConstant(),
                                Unit.VOLT_SECOND_PER_RADIAN),
                        "60/(2·π·Kv)",
                        MACHINE,
                        inputs.of(Input.MOTOR_KV));
    }

    /**
     * Returns the voltage constant.
     *
     * @return K
     */
    public Step voltageConstant() {
        return voltageConstant;
    }

    /**
     * Returns the torque constant.
     *
     * @return kt, from K
     */
    public Step torqueConstant() {
        CurrentBasis basis = build.controllers().basis();
        return new Step(
                Term.computed(
                        "kt",
                        "torque per current",
                        powertrain.motor().torqueConstant(),
                        Unit.NEWTON_METRE_PER_AMPERE),
                BasisFormulas.torqueConstant(basis),
                MACHINE + "; " + BasisFormulas.meaning(basis),
                voltageConstant.result());
    }

    /** Re of a winding at the temperature of the air. */
    Term lossResistance(Steps steps) {
        return steps.add(
                Term.computed(
                        "R_e",
                        "resistance of copper loss",
                        powertrain.motor().lossResistance(build.use().climate().ambientC()),
                        Unit.OHM),
                BasisFormulas.lossShare(build.controllers().basis())
                        + "R_20·(1 + 0.00393·(T_a − 20))",
                "IEC 60028:1925, temperature coefficient of copper; " + MACHINE,
                inputs.of(Input.MOTOR_RESISTANCE),
                inputs.of(Input.USE_AMBIENT));
    }

    /** The current that makes the torque of the drag. */
    Step currentOfDrag(Term drag, Term torqueConstant) {
        return new Step(
                Term.computed(
                        "I_d",
                        "current of the drag",
                        drag.value() / torqueConstant.value(),
                        Unit.AMPERE),
                drag.symbol() + "/kt",
                MACHINE,
                drag,
                torqueConstant);
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
                        Unit.AMPERE_PER_NEWTON),
                isBraking ? "η·d/(2·n·G·kt)" : "d/(2·n·G·η·kt)",
                "conservation of energy from motor to road",
                inputs.of(Input.DRIVE_EFFICIENCY),
                inputs.of(Input.VEHICLE_WHEEL_DIAMETER),
                inputs.of(Input.DRIVE_MOTORS),
                inputs.of(Input.DRIVE_REDUCTION),
                torqueConstant);
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
                        Unit.NEWTON_METRE),
                "K·I_0",
                MACHINE,
                voltageConstant.result(),
                inputs.of(Input.MOTOR_NO_LOAD_CURRENT));
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
                                Unit.NEWTON_METRE),
                        "K·I_0 + c_v·ω",
                        MACHINE,
                        voltageConstant.result(),
                        inputs.of(Input.MOTOR_NO_LOAD_CURRENT),
                        inputs.of(Input.MOTOR_VISCOUS_DRAG),
                        turning.result()));
    }

    /**
     * Returns how fast the motors turn.
     *
     * @param speed of the vehicle [m/s]
     * @return ω
     */
    public Step turning(Term speed) {
        return new Step(
                Term.computed(
                        "ω",
                        "speed of the motors",
                        powertrain.angularSpeed(speed.value()),
                        Unit.RADIAN_PER_SECOND),
                "2·G·" + speed.symbol() + "/d",
                "rolling without slip",
                inputs.of(Input.DRIVE_REDUCTION),
                speed,
                inputs.of(Input.VEHICLE_WHEEL_DIAMETER));
    }

    /**
     * Returns the mass that moves.
     *
     * @return m
     */
    public Step mass() {
        return new Step(
                Term.computed("m", "mass that moves", build.mass(), Unit.KILOGRAM),
                "m_r + m_v + m_c",
                "sum of what is aboard",
                inputs.of(Input.RIDER_MASS),
                inputs.of(Input.VEHICLE_MASS),
                inputs.of(Input.VEHICLE_CARGO));
    }

    /**
     * Returns the density of the air.
     *
     * @return ρ
     */
    public Step density() {
        return new Step(
                Term.computed(
                        "ρ",
                        "density of the air",
                        RoadLoad.of(build).airDensity(),
                        Unit.KILOGRAM_PER_CUBIC_METRE),
                "101325·(1 − 0.0065·h_a/288.15)^5.25588/(287.05287·(T_a + 273.15))",
                "ISO 2533:1975, Standard Atmosphere, at the temperature given",
                inputs.of(Input.USE_ALTITUDE),
                inputs.of(Input.USE_AMBIENT));
    }

    /** The air and, last, the load of a level road at a speed; from the mass. */
    List<Step> road(Term mass, Term speed) {
        RoadLoad load = RoadLoad.of(build);
        Step density = density();
        List<Step> steps = new ArrayList<>(List.of(density));
        steps.add(
                new Step(
                        Term.computed(
                                "F_r",
                                "road load",
                                load.force(speed.value(), 0.0, 0.0),
                                Unit.NEWTON),
                        "m·g·crr + ½·ρ·CdA·v²",
                        ROAD,
                        mass,
                        GRAVITY,
                        inputs.of(Input.VEHICLE_ROLLING_RESISTANCE),
                        density.result(),
                        inputs.of(Input.VEHICLE_DRAG_AREA),
                        speed));
        return steps;
    }
}

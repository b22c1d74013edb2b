package brakewright.limit;

import brakewright.formula.Derivation;
import brakewright.formula.Inputs;
import brakewright.formula.Reading;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.machine.WindingRates;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.MotorHeat;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.List;

/**
 * The steps to the current that brings a cold winding just to its limit in a time.
 *
 * <p>The current itself is found by search. The steps put it into the exact solution of the two
 * heat balances: the rise of the winding is {@code y_d + q·R_a·I²}, that of drag and that of copper
 * loss.
 *
 * <p>Source: two-body thermal network, Portescap, Understanding Thermal Parameters of DC Motors
 * (2021); its solution by eigenvalues is elementary.
 */
final class HeatSteps {

    private static final String NETWORK =
            "two-body thermal network, Portescap, Thermal Parameters of DC Motors (2021)";
    private static final String COPPER = "IEC 60028:1925, temperature coefficient of copper";

    private final Build build;
    private final Inputs inputs;
    private final MotorSteps motor;
    private final MotorHeat heat;
    private final double time;
    private final Term duration;
    private final Term current;
    private final Steps steps = new Steps();

    private HeatSteps(Build build, MotorSteps motor, double time, Input timeInput, double current) {
        this.build = build;
        this.inputs = new Inputs(build);
        this.motor = motor;
        this.heat = build.motor().heat().orElseThrow();
        this.time = time;
        this.duration = Term.given(timeInput, time);
        this.current = Term.searched("I", "this limit, found by search", current, Unit.AMPERE);
    }

    /**
     * The constraint, from a winding and a case at the temperature of the air.
     *
     * @param build the vehicle
     * @param motor the steps about its motors
     * @param time how long the current flows [s]
     * @param timeInput where that was given
     * @param current that was found [A]
     */
    static Constraint constraint(
            Build build, MotorSteps motor, double time, Input timeInput, double current) {
        return new Constraint(
                ConstraintId.WINDING_HEAT,
                current,
                Input.MOTOR_WINDING_LIMIT,
                List.of(Reading.COLD_MOTOR.of(build.use().climate().ambientC())),
                Working.when(() -> new HeatSteps(build, motor, time, timeInput, current).words()),
                WhichPack.WHOLE);
    }

    private Working.Words words() {
        Term atAir = lossResistance("R_a", "R_20·(1 + 0.00393·(T_a − 20))");
        Term drag = dragLoss();
        WindingRates rates =
                WindingRates.of(
                        heat, Powertrain.of(build).motor().lossResistance(20.0), current.value());
        Term a = windingRate(rates.windingByItself());
        Term d = caseRate(rates.caseByItself());
        Term slow = slow(rates.slow(), a, d);
        Term fast = fast(rates.fast(), a, d, slow);
        Term perWatt = perWatt(rates, a, slow, fast);
        Term byDrag = byDrag(rates, drag, slow, fast);
        return new Working.Words(
                steps,
                new Derivation(
                        "√(max(0, T_lim − T_a − y_d)/(R_a·q))",
                        NETWORK,
                        inputs.of(Input.MOTOR_WINDING_LIMIT),
                        inputs.of(Input.USE_AMBIENT),
                        byDrag,
                        atAir,
                        perWatt));
    }

    private Term lossResistance(String symbol, String terminals) {
        return steps.add(
                Term.computed(
                        symbol,
                        "resistance of loss, cold winding",
                        Powertrain.of(build)
                                .motor()
                                .lossResistance(build.use().climate().ambientC()),
                        Unit.OHM),
                lossShare() + terminals,
                COPPER + "; " + MotorSteps.MACHINE,
                inputs.of(Input.MOTOR_RESISTANCE),
                inputs.of(Input.USE_AMBIENT));
    }

    /** All of the drag at the highest speed that is met heats the case. */
    private Term dragLoss() {
        Step turning = motor.turning(inputs.highestSpeed());
        List<Step> drag = motor.dragAt(inputs.highestSpeed());
        Term torque = drag.get(drag.size() - 1).result();
        steps.with(List.of(motor.voltageConstant(), turning));
        steps.with(List.of(drag.get(drag.size() - 1)));
        return steps.add(
                Term.computed(
                        "P_d",
                        "drag loss of one motor",
                        MotorHeatBalance.caseLoss(build, build.highestSpeed()),
                        Unit.WATT),
                torque.symbol() + "·ω",
                "own choice, all of the drag heats the case",
                torque,
                turning.result());
    }

    private Term windingRate(double value) {
        return steps.add(
                Term.computed("A", "winding from itself", value, Unit.PER_SECOND),
                NetworkFormulas.windingByItself("0.00393·" + lossShare() + "R_20·I²"),
                NETWORK,
                inputs.of(Input.MOTOR_RESISTANCE),
                current,
                inputs.of(Input.MOTOR_WINDING_TO_CASE),
                inputs.of(Input.MOTOR_WINDING_HEAT_CAPACITY));
    }

    private Term caseRate(double value) {
        return steps.add(
                Term.computed("D", "case from itself", value, Unit.PER_SECOND),
                NetworkFormulas.CASE_BY_ITSELF,
                NETWORK,
                inputs.of(Input.MOTOR_WINDING_TO_CASE),
                inputs.of(Input.MOTOR_CASE_TO_AIR),
                inputs.of(Input.MOTOR_CASE_HEAT_CAPACITY));
    }

    private Term fast(double value, Term a, Term d, Term slow) {
        return steps.add(
                Term.computed("l_f", "fast rate of change", value, Unit.PER_SECOND),
                "A + D − l_s",
                NETWORK,
                a,
                d,
                slow);
    }

    private Term slow(double value, Term a, Term d) {
        return steps.add(
                Term.computed("l_s", "slow rate of change", value, Unit.PER_SECOND),
                NetworkFormulas.rate(a.symbol(), d.symbol(), '+', "1/(R_wc²·C_w·C_c)"),
                NETWORK,
                a,
                d,
                inputs.of(Input.MOTOR_WINDING_TO_CASE),
                inputs.of(Input.MOTOR_WINDING_HEAT_CAPACITY),
                inputs.of(Input.MOTOR_CASE_HEAT_CAPACITY));
    }

    private Term perWatt(WindingRates rates, Term a, Term slow, Term fast) {
        double value = rates.heated(1.0 / heat.windingHeatCapacity(), 0.0, time);
        return steps.add(
                Term.computed("q", "rise for each watt in copper", value, Unit.KELVIN_PER_WATT),
                "((A − l_f)·"
                        + grown("l_s")
                        + " − (A − l_s)·"
                        + grown("l_f")
                        + ")/((l_s − l_f)·C_w)",
                NETWORK,
                a,
                slow,
                fast,
                duration,
                inputs.of(Input.MOTOR_WINDING_HEAT_CAPACITY));
    }

    private Term byDrag(WindingRates rates, Term drag, Term slow, Term fast) {
        double value = rates.heated(0.0, drag.value() / heat.caseHeatCapacity(), time);
        return steps.add(
                Term.computed("y_d", "rise of the winding by drag", value, Unit.KELVIN),
                "P_d·(" + grown("l_s") + " − " + grown("l_f") + ")/((l_s − l_f)·R_wc·C_w·C_c)",
                NETWORK,
                drag,
                slow,
                duration,
                fast,
                inputs.of(Input.MOTOR_WINDING_TO_CASE),
                inputs.of(Input.MOTOR_WINDING_HEAT_CAPACITY),
                inputs.of(Input.MOTOR_CASE_HEAT_CAPACITY));
    }

    private String grown(String rate) {
        return "(exp(" + rate + "·" + duration.symbol() + ") − 1)/" + rate;
    }

    private String lossShare() {
        return BasisFormulas.lossShare(build.controllers().basis());
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.constant;
import static brakewright.formula.Term.searched;

import brakewright.formula.Inputs;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.BasisFormulas;
import brakewright.limit.MotorHeatBalance;
import brakewright.limit.MotorSteps;
import brakewright.machine.WindingHeat;
import brakewright.machine.WindingRates;
import brakewright.machine.WindingResponse;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.worksheet.HeatSheet;
import brakewright.worksheet.WarmStart;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How continuous current, pull time and recovery of a motor came about. */
final class WorkingHeat {

    /** Assumption: our own choice; a rest is shown where the balance holds so closely [K]. */
    private static final double AGREEMENT = 1e-4;

    private static final Term NO_RISE = constant("y_0", "rise of a cold motor", 0.0, Unit.KELVIN);
    private static final WorkingNetwork.Pair STILL = new WorkingNetwork.Pair(NO_RISE, NO_RISE);

    private final Worksheet sheet;
    private final Build build;
    private final HeatSheet.Known known;
    private final Steps steps = new Steps();
    private final Inputs inputs;
    private final WindingHeat heat;
    private final WorkingMotor motor;
    private final Term at20C;

    private WorkingHeat(Worksheet sheet, HeatSheet.Known known) {
        this.sheet = sheet;
        this.build = sheet.build();
        this.known = known;
        this.inputs = new Inputs(build);
        this.heat = MotorHeatBalance.of(build).orElseThrow();
        this.motor = new WorkingMotor(build, steps);
        this.at20C =
                steps.add(
                        computed(
                                "R_e20",
                                "resistance of copper loss at 20 °C",
                                motor.powertrain().motor().lossResistance(20.0),
                                Unit.OHM),
                        BasisFormulas.lossShare(motor.basis()) + "R_20",
                        MotorSteps.MACHINE,
                        inputs.of(Input.MOTOR_RESISTANCE));
    }

    static WorkingOutcome continuous(Worksheet sheet) {
        return sheet.heat()
                .known()
                .<WorkingOutcome>map(known -> new WorkingHeat(sheet, known).continuous())
                .orElseGet(() -> unknown(ResultId.CONTINUOUS_CURRENT));
    }

    static WorkingOutcome pullTime(Worksheet sheet) {
        Optional<HeatSheet.Known> known = sheet.heat().known();
        if (known.isEmpty()) {
            return unknown(ResultId.PULL_TIME);
        }
        return known.get().timeAtDriveSetting().isPresent()
                ? new WorkingHeat(sheet, known.get()).pullTime()
                : new WorkingMissing(
                        ResultId.PULL_TIME,
                        "The drive current never heats the winding to its limit: see"
                                + " continuous-current.");
    }

    static WorkingOutcome recovery(Worksheet sheet) {
        Optional<HeatSheet.Known> known = sheet.heat().known();
        if (known.isEmpty()) {
            return unknown(ResultId.RECOVERY);
        }
        return known.get().recovery().isPresent()
                ? new WorkingHeat(sheet, known.get()).recovery()
                : new WorkingMissing(
                        ResultId.RECOVERY,
                        known.get().timeAtDriveSetting().isEmpty()
                                ? "The drive current never heats the winding to its limit, so there"
                                        + " is nothing to recover from."
                                : "A pull of the length in use is not borne even from cold: see"
                                        + " pull-time.");
    }

    private static WorkingOutcome unknown(ResultId id) {
        return new WorkingMissing(
                id, "The motor's thermal figures are not given: see motor.winding_to_case.");
    }

    /** The loss of drag in one motor at a speed. */
    private Term drag(String symbol, Term speed) {
        Term turning = motor.turning(speed);
        return drag(symbol, speed, turning, motor.drag(turning));
    }

    private Term drag(String symbol, Term speed, Term turning, Term torque) {
        return steps.add(
                computed(
                        symbol,
                        "drag loss of one motor",
                        MotorHeatBalance.caseLoss(build, speed.value()),
                        Unit.WATT),
                "T0·ω",
                "all of the drag heats the case",
                torque,
                turning);
    }

    private WorkingOutcome continuous() {
        Term loss = drag("P_d", inputs.highestSpeed());
        Term limit = inputs.of(Input.MOTOR_WINDING_LIMIT);
        Term hot =
                steps.add(
                        computed(
                                "R_hot",
                                "resistance of loss, hot winding",
                                motor.powertrain().motor().lossResistance(limit.value()),
                                Unit.OHM),
                        "R_e20·(1 + 0.00393·(T_lim − 20))",
                        WorkingMotor.COPPER,
                        at20C,
                        limit);
        steps.add(
                computed("I", "continuous current", known.continuousCurrent(), Unit.AMPERE),
                "√(max(0, T_lim − T_a − P_d·R_ca)/(R_hot·(R_wc + R_ca)))",
                WorkingNetwork.TWO_BODIES + ", steady state",
                limit,
                inputs.of(Input.USE_AMBIENT),
                loss,
                inputs.of(Input.MOTOR_CASE_TO_AIR),
                hot,
                inputs.of(Input.MOTOR_WINDING_TO_CASE));
        return Working.of(
                ResultId.CONTINUOUS_CURRENT,
                "Current per motor that the winding bears for ever, drag counted as at the highest"
                        + " speed in use.",
                List.of(inputs.of(Input.USE_AMBIENT)),
                steps);
    }

    /** What the set drive current heats, and where that leads in the end. */
    private record Propulsion(
            Term current,
            WorkingNetwork network,
            WorkingNetwork.Pair end,
            Term rise,
            Term cold,
            WorkingNetwork.Parts parts) {}

    private Propulsion pulling() {
        Term loss = drag("P_d", inputs.highestSpeed());
        Term current = WorkingThrust.set(build, sheet.operation().drive());
        WindingResponse response = heat.response(heat.cold(), current.value());
        Term perKelvin = perKelvin("k", response.rates(), current);
        WorkingNetwork.Pair end = end("z_w", "z_c", response.balance(), perKelvin, current, loss);
        WorkingNetwork network = new WorkingNetwork(inputs, steps, response.rates(), perKelvin, "");
        Term rise =
                steps.add(
                        computed(
                                "z_lim",
                                "rise that the winding bears",
                                heat.limitRiseK(),
                                Unit.KELVIN),
                        "T_lim − T_a",
                        "rises are counted from the air",
                        inputs.of(Input.MOTOR_WINDING_LIMIT),
                        inputs.of(Input.USE_AMBIENT));
        WorkingNetwork.Parts parts = network.amplitudes("", response, STILL, end);
        Term cold =
                searched(
                        "t_c",
                        "time from cold",
                        known.timeAtDriveSetting().orElseThrow(),
                        Unit.SECOND);
        network.reaches(cold, rise, end.winding(), parts);
        return new Propulsion(current, network, end, rise, cold, parts);
    }

    /** What copper loses more for every kelvin, at a current. */
    private Term perKelvin(String symbol, WindingRates rates, Term current) {
        return steps.add(
                computed(
                        symbol,
                        "copper loss more for each kelvin",
                        rates.perKelvin(),
                        Unit.WATT_PER_KELVIN),
                "0.00393·R_e20·" + current.symbol() + "²",
                WorkingMotor.COPPER,
                at20C,
                current);
    }

    /** The rises of winding and case at which nothing would change any more. */
    private WorkingNetwork.Pair end(
            String winding,
            String shell,
            WindingHeat.Rises balance,
            Term perKelvin,
            Term current,
            Term loss) {
        String square = "R_e·" + current.symbol() + "²";
        String k = perKelvin.symbol();
        Term first =
                steps.add(
                        computed(
                                winding,
                                "balance rise of winding",
                                balance.windingK(),
                                Unit.KELVIN),
                        "("
                                + square
                                + "·(R_wc + R_ca) + "
                                + loss.symbol()
                                + "·R_ca)/(1 − "
                                + k
                                + "·(R_wc + R_ca))",
                        WorkingNetwork.TWO_BODIES,
                        motor.lossResistance(),
                        current,
                        inputs.of(Input.MOTOR_WINDING_TO_CASE),
                        inputs.of(Input.MOTOR_CASE_TO_AIR),
                        loss,
                        perKelvin);
        if (first.value() < 0.0) {
            steps.note(
                    "Negative: at this current heat grows faster than it can leave, and no balance"
                            + " is ever reached; the formula of the rise holds all the same.");
        }
        Term second =
                steps.add(
                        computed(shell, "balance rise of case", balance.caseK(), Unit.KELVIN),
                        "(" + square + " + " + k + "·" + winding + " + " + loss.symbol() + ")·R_ca",
                        WorkingNetwork.TWO_BODIES,
                        motor.lossResistance(),
                        current,
                        perKelvin,
                        first,
                        loss,
                        inputs.of(Input.MOTOR_CASE_TO_AIR));
        return new WorkingNetwork.Pair(first, second);
    }

    private WorkingOutcome pullTime() {
        Propulsion pulling = pulling();
        OptionalDouble warmer =
                known.afterCruise() instanceof WarmStart.Borne borne
                        ? borne.lasts()
                        : OptionalDouble.empty();
        if (warmer.isPresent()) {
            WindingHeat cruising =
                    MotorHeatBalance.at(build, build.use().riding().cruiseSpeed()).orElseThrow();
            WorkingNetwork.Pair start = warm(cruising);
            WindingResponse response =
                    heat.response(
                            ((WarmStart.Borne) known.afterCruise()).start(),
                            pulling.current().value());
            WorkingNetwork.Parts parts =
                    pulling.network().amplitudes("w", response, start, pulling.end());
            pulling.network()
                    .reaches(
                            searched(
                                    "t_w",
                                    "time after a long ride",
                                    warmer.getAsDouble(),
                                    Unit.SECOND),
                            pulling.rise(),
                            pulling.end().winding(),
                            parts);
        }
        return Working.of(
                ResultId.PULL_TIME,
                "How long the winding bears the drive current: t_c from the temperature of the"
                        + " air"
                        + afterCruise(warmer),
                List.of(inputs.of(Input.USE_AMBIENT)),
                steps);
    }

    private String afterCruise(OptionalDouble warmer) {
        if (known.afterCruise() instanceof WarmStart.TooHot) {
            return ". A long ride at the cruise speed alone is more than it bears.";
        }
        if (known.afterCruise() instanceof WarmStart.NotReached) {
            return ". The settings do not reach the cruise speed, so no ride warms it before.";
        }
        return warmer.isPresent()
                ? ", t_w after a long ride at the cruise speed."
                : ". After a long ride at the cruise speed it bears it for ever.";
    }

    /** The motor after a long ride at the cruise speed. */
    private WorkingNetwork.Pair warm(WindingHeat cruising) {
        Term speed = inputs.of(Input.USE_CRUISE_SPEED);
        WorkingRoad road = new WorkingRoad(build, steps);
        Term rolling = road.rolling(road.mass());
        Term air = road.windy(road.density(), speed);
        Term resistance = road.together(rolling, air);
        Term turning = motor.turning(speed);
        Term torque = motor.drag(turning);
        Term loss = drag("P_dw", speed, turning, torque);
        Term current = motor.holding(resistance, torque, speed.value());
        WindingResponse response = cruising.response(cruising.cold(), current.value());
        Term perKelvin = perKelvin("k_w", response.rates(), current);
        return end("y_w", "y_c", response.balance(), perKelvin, current, loss);
    }

    private WorkingOutcome recovery() {
        Propulsion pulling = pulling();
        WorkingNetwork network = pulling.network();
        Term hot = network.caseRise("y_h", pulling.cold(), pulling.end().shell(), pulling.parts());
        WindingHeat still = MotorHeatBalance.at(build, 0.0).orElseThrow();
        WindingResponse resting =
                still.response(
                        still.temperatures(
                                new WindingHeat.Rises(pulling.rise().value(), hot.value())),
                        0.0);
        Term none =
                constant(
                        "k_0",
                        "no current, no loss",
                        resting.rates().perKelvin(),
                        Unit.WATT_PER_KELVIN);
        WorkingNetwork rests = new WorkingNetwork(inputs, steps, resting.rates(), none, "r");
        WorkingNetwork.Parts parts =
                rests.amplitudes("r", resting, new WorkingNetwork.Pair(pulling.rise(), hot), STILL);
        Term rest = searched("t_r", "rest", known.recovery().orElseThrow(), Unit.SECOND);
        Term shell = rests.caseRise("y_c", rest, STILL.shell(), parts);
        Term start = start(pulling, shell);
        double left = resting.risesAt(rest.value()).windingK() - start.value();
        if (Math.max(left, -left) > AGREEMENT) {
            return new WorkingMissing(
                    ResultId.RECOVERY,
                    "The drive current hardly exceeds what the winding bears for ever: after the"
                            + " rest the winding touches its limit early in the pull and cools"
                            + " again, so no balance at the end of the pull tells the rest. See"
                            + " continuous-current.");
        }
        rests.reaches(rest, start, STILL.winding(), parts);
        return Working.of(
                ResultId.RECOVERY,
                "Rest after the winding has reached its limit at the drive current, until a hard"
                        + " pull of the length in use is borne again.",
                List.of(inputs.of(Input.USE_AMBIENT), inputs.of(Input.USE_HARD_PULL)),
                steps);
    }

    /** The winding's rise from which the pull just ends at the limit. */
    private Term start(Propulsion pulling, Term shell) {
        WorkingNetwork network = pulling.network();
        Term pull = inputs.of(Input.USE_HARD_PULL);
        WindingResponse.Beforehand before =
                pulling.parts()
                        .response()
                        .before(pulling.rise().value(), pull.value(), shell.value());
        Term slowGrowth = growth("e_s", before.slowGrowth(), network.slow(), pull);
        Term fastGrowth = growth("e_f", before.fastGrowth(), network.fast(), pull);
        return steps.add(
                computed(
                        "y_p",
                        "rise that leaves room for the pull",
                        before.windingK(),
                        Unit.KELVIN),
                "z_w + ((z_lim − z_w)·(l_s − l_f) − B·(y_c − z_c)·(e_s − e_f))"
                        + "/((A − l_f)·e_s − (A − l_s)·e_f)",
                WorkingNetwork.TWO_BODIES,
                pulling.end().winding(),
                pulling.rise(),
                network.slow(),
                network.fast(),
                network.b(),
                shell,
                pulling.end().shell(),
                slowGrowth,
                fastGrowth,
                network.a());
    }

    private Term growth(String symbol, double value, Term rate, Term time) {
        return steps.add(
                computed(symbol, "growth over the pull", value, Unit.RATIO),
                "exp(" + rate.symbol() + "·t_p)",
                WorkingNetwork.TWO_BODIES,
                rate,
                time);
    }
}

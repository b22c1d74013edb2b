package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.constant;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;
import static brakewright.formula.Term.searched;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.BasisFormulas;
import brakewright.limit.MotorHeatBalance;
import brakewright.machine.Copper;
import brakewright.spec.Build;
import brakewright.spec.Input;
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

    private final Worksheet sheet;
    private final Build build;
    private final HeatSheet.Known known;
    private final Steps steps = new Steps();
    private final WorkingMotor motor;
    private final Term at20C;

    private WorkingHeat(Worksheet sheet, HeatSheet.Known known) {
        this.sheet = sheet;
        this.build = sheet.build();
        this.known = known;
        this.motor = new WorkingMotor(build, steps);
        this.at20C =
                steps.add(
                        computed(
                                "R_e20",
                                "resistance of copper loss at 20 °C",
                                motor.powertrain().motor().lossResistance(20.0),
                                "Ω"),
                        BasisFormulas.lossShare(motor.basis()) + "R_20",
                        WorkingMotor.MACHINE,
                        given(Input.MOTOR_RESISTANCE, build.motor().resistanceAt20C()));
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
                        "W"),
                "T0·ω",
                "all of the drag heats the case",
                torque,
                turning);
    }

    private Term fastest() {
        return given(Input.USE_SPEED_MAX, build.use().speedMax());
    }

    private WorkingOutcome continuous() {
        Term loss = drag("P_d", fastest());
        Term limit = WorkingNetwork.limit(build);
        Term hot =
                steps.add(
                        computed(
                                "R_hot",
                                "resistance of loss, hot winding",
                                motor.powertrain().motor().lossResistance(limit.value()),
                                "Ω"),
                        "R_e20·(1 + 0.00393·(T_lim − 20))",
                        "IEC 60028:1925, temperature coefficient of copper",
                        at20C,
                        limit);
        steps.add(
                computed("I", "continuous current", known.continuousCurrent(), "A"),
                "√(max(0, T_lim − T_a − P_d·R_ca)/(R_hot·(R_wc + R_ca)))",
                WorkingNetwork.TWO_BODIES + ", steady state",
                limit,
                WorkingRoad.air(build),
                loss,
                WorkingNetwork.toAir(build),
                hot,
                WorkingNetwork.betweenWinding(build));
        return Working.of(
                ResultId.CONTINUOUS_CURRENT,
                "Current per motor that the winding bears for ever, drag counted as at the highest"
                        + " speed in use.",
                List.of(WorkingRoad.air(build)),
                steps);
    }

    /** What the set drive current heats, and where that leads in the end. */
    private record Pulling(
            WorkingNetwork network, Term winding, Term shell, Term rise, Term cold, Term[] parts) {}

    private Term current() {
        double set = sheet.operation().drive().motorCurrent();
        return build.settings().motorDriveCurrent().isPresent()
                ? given(Input.SETTINGS_MOTOR_DRIVE_CURRENT, set)
                : modelled("I_m", "limit, see motor-drive-current", set, "A");
    }

    private Pulling pulling() {
        Term loss = drag("P_d", fastest());
        Term current = current();
        Term perKelvin = WorkingNetwork.perKelvin(steps, "k", at20C, current);
        Term[] end = end("z_w", "z_c", perKelvin, current, loss);
        WorkingNetwork network = new WorkingNetwork(build, steps, perKelvin, "");
        Term rise =
                steps.add(
                        computed(
                                "z_lim",
                                "rise that the winding bears",
                                build.motor().windingLimitC() - build.use().climate().ambientC(),
                                "K"),
                        "T_lim − T_a",
                        "rises are counted from the air",
                        WorkingNetwork.limit(build),
                        WorkingRoad.air(build));
        Term still = constant("y_0", "rise of a cold motor", 0.0, "K");
        Term[] parts = network.amplitudes("", still, still, end[0], end[1]);
        Term cold =
                network.reaches(
                        searched(
                                "t_c",
                                "time from cold",
                                known.timeAtDriveSetting().orElseThrow(),
                                "s"),
                        rise,
                        end[0],
                        parts);
        return new Pulling(network, end[0], end[1], rise, cold, parts);
    }

    /** The rises of winding and case at which nothing would change any more. */
    private Term[] end(String winding, String shell, Term perKelvin, Term current, Term loss) {
        double between = WorkingNetwork.betweenWinding(build).value();
        double outward = WorkingNetwork.toAir(build).value();
        double both = between + outward;
        double air = build.use().climate().ambientC();
        double atAir =
                at20C.value() * Copper.resistanceFactor(air) * current.value() * current.value();
        double rise = (atAir * both + loss.value() * outward) / (1.0 - perKelvin.value() * both);
        String square = "R_e·" + current.symbol() + "²";
        String k = perKelvin.symbol();
        Term first =
                steps.add(
                        computed(winding, "balance rise of winding", rise, "K"),
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
                        WorkingNetwork.betweenWinding(build),
                        WorkingNetwork.toAir(build),
                        loss,
                        perKelvin);
        if (rise < 0.0) {
            steps.note(
                    "Negative: at this current heat grows faster than it can leave, and no balance"
                            + " is ever reached; the formula of the rise holds all the same.");
        }
        Term second =
                steps.add(
                        computed(
                                shell,
                                "balance rise of case",
                                (atAir + perKelvin.value() * rise + loss.value()) * outward,
                                "K"),
                        "(" + square + " + " + k + "·" + winding + " + " + loss.symbol() + ")·R_ca",
                        WorkingNetwork.TWO_BODIES,
                        motor.lossResistance(),
                        current,
                        perKelvin,
                        first,
                        loss,
                        WorkingNetwork.toAir(build));
        return new Term[] {first, second};
    }

    private WorkingOutcome pullTime() {
        Pulling pulling = pulling();
        OptionalDouble warmer =
                known.afterCruise() instanceof WarmStart.Borne borne
                        ? borne.lasts()
                        : OptionalDouble.empty();
        if (warmer.isPresent()) {
            Term[] start = warm();
            Term[] parts =
                    pulling.network()
                            .amplitudes(
                                    "w", start[0], start[1], pulling.winding(), pulling.shell());
            pulling.network()
                    .reaches(
                            searched("t_w", "time after a long ride", warmer.getAsDouble(), "s"),
                            pulling.rise(),
                            pulling.winding(),
                            parts);
        }
        return Working.of(
                ResultId.PULL_TIME,
                "How long the winding bears the drive current: t_c from the temperature of the"
                        + " air"
                        + afterCruise(warmer),
                List.of(WorkingRoad.air(build)),
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
    private Term[] warm() {
        Term speed = WorkingPower.speed(build);
        WorkingRoad road = new WorkingRoad(build, steps);
        Term rolling = road.rolling(road.mass());
        Term air = road.windy(road.density(), speed);
        Term resistance = road.together(rolling, air);
        Term turning = motor.turning(speed);
        Term torque = motor.drag(turning);
        Term loss = drag("P_dw", speed, turning, torque);
        Term current = motor.holding(resistance, torque, speed.value());
        Term perKelvin = WorkingNetwork.perKelvin(steps, "k_w", at20C, current);
        return end("y_w", "y_c", perKelvin, current, loss);
    }

    private WorkingOutcome recovery() {
        Pulling pulling = pulling();
        WorkingNetwork network = pulling.network();
        Term hot = network.caseRise("y_h", pulling.cold(), pulling.shell(), pulling.parts());
        Term none = constant("k_0", "no current, no loss", 0.0, "W/K");
        WorkingNetwork resting = new WorkingNetwork(build, steps, none, "r");
        Term still = constant("y_0", "rise of a cold motor", 0.0, "K");
        Term[] parts = resting.amplitudes("r", pulling.rise(), hot, still, still);
        Term rest = searched("t_r", "rest", known.recovery().orElseThrow(), "s");
        Term shell = resting.caseRise("y_c", rest, still, parts);
        Term start = start(pulling, shell);
        if (Math.abs(resting.rise(rest, still, parts) - start.value()) > AGREEMENT) {
            return new WorkingMissing(
                    ResultId.RECOVERY,
                    "The drive current hardly exceeds what the winding bears for ever: after the"
                            + " rest the winding touches its limit early in the pull and cools"
                            + " again, so no balance at the end of the pull tells the rest. See"
                            + " continuous-current.");
        }
        resting.reaches(rest, start, still, parts);
        return Working.of(
                ResultId.RECOVERY,
                "Rest after the winding has reached its limit at the drive current, until a hard"
                        + " pull of the length in use is borne again.",
                List.of(WorkingRoad.air(build), pull()),
                steps);
    }

    private Term pull() {
        return given(Input.USE_HARD_PULL, build.use().effort().hardPull());
    }

    /** The winding's rise from which the pull just ends at the limit. */
    private Term start(Pulling pulling, Term shell) {
        WorkingNetwork network = pulling.network();
        double slow = network.slow().value();
        double fast = network.fast().value();
        double a = network.a().value();
        double b = network.b().value();
        Term pull = pull();
        Term slowGrowth = growth("e_s", network.slow(), pull);
        Term fastGrowth = growth("e_f", network.fast(), pull);
        double value =
                pulling.winding().value()
                        + ((pulling.rise().value() - pulling.winding().value()) * (slow - fast)
                                        - b
                                                * (shell.value() - pulling.shell().value())
                                                * (slowGrowth.value() - fastGrowth.value()))
                                / ((a - fast) * slowGrowth.value()
                                        - (a - slow) * fastGrowth.value());
        return steps.add(
                computed("y_p", "rise that leaves room for the pull", value, "K"),
                "z_w + ((z_lim − z_w)·(l_s − l_f) − B·(y_c − z_c)·(e_s − e_f))"
                        + "/((A − l_f)·e_s − (A − l_s)·e_f)",
                WorkingNetwork.TWO_BODIES,
                pulling.winding(),
                pulling.rise(),
                network.slow(),
                network.fast(),
                network.b(),
                shell,
                pulling.shell(),
                slowGrowth,
                fastGrowth,
                network.a());
    }

    private Term growth(String symbol, Term rate, Term time) {
        return steps.add(
                computed(symbol, "growth over the pull", Math.exp(rate.value() * time.value()), ""),
                "exp(" + rate.symbol() + "·t_p)",
                WorkingNetwork.TWO_BODIES,
                rate,
                time);
    }
}

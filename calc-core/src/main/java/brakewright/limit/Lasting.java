package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.formula.Inputs;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Input;
import brakewright.spec.Settings;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.List;

/**
 * By how much more than a pulse a braking that lasts shifts the cells' voltage, with its working.
 *
 * @param build the vehicle
 * @param model the packs that take the current
 * @param current for which the time was found, of all controllers [A]
 * @param time how long it lasts
 */
public record Lasting(Build build, BatteryModel model, double current, BrakingTime time) {

    static Lasting of(Build build, BatteryModel model, double current) {
        return new Lasting(build, model, current, BrakingTime.of(build, model, current));
    }

    /**
     * Returns a pulse: nothing beyond the resistance that cells are told by.
     *
     * @param build the vehicle
     * @param model its packs
     * @return how it lasts
     */
    public static Lasting pulse(Build build, BatteryModel model) {
        return new Lasting(build, model, 0.0, new BrakingTime(0.0, BrakingTime.Reason.HARD_BRAKE));
    }

    /**
     * Returns a current that flows for ever.
     *
     * @param build the vehicle
     * @param model its packs
     * @return how it lasts
     */
    public static Lasting endless(Build build, BatteryModel model) {
        return new Lasting(
                build,
                model,
                0.0,
                new BrakingTime(Double.POSITIVE_INFINITY, BrakingTime.Reason.SLOPE));
    }

    /**
     * Returns how long it lasts for a limit: the pulse that cell resistances are given for, or
     * longer.
     *
     * @return the time [s]; infinite for ever
     */
    public double seconds() {
        return Math.max(Cell.PULSE, time.seconds());
    }

    /** Whether it meets more resistance than a pulse. */
    boolean rises(Cell cell) {
        return seconds() > Cell.PULSE && cell.relaxation().rise() > 0.0;
    }

    private boolean isEndless() {
        return Double.isInfinite(seconds());
    }

    /** What follows the resistance in a formula; nothing where it is that of a pulse. */
    String formula(Cell cell) {
        if (!rises(cell)) {
            return "";
        }
        return isEndless() ? "·(1 + x_r)" : "·(1 + x_r·(1 − exp(−(t_b − 10)/τ)))";
    }

    /** Where that is from. */
    String source(Cell cell) {
        return rises(cell)
                ? "; first-order equivalent circuit, e.g. Plett, Battery Management Systems 1"
                        + " (2015), ch. 2"
                : "";
    }

    /**
     * The terms of that; the steps to them are added.
     *
     * @param share by what share an endless current exceeds the pulse resistance
     */
    List<Term> terms(Steps steps, Cell cell, double share) {
        if (!rises(cell)) {
            return List.of();
        }
        Term rise = Term.given(Input.CELL_SUSTAINED_RISE, share);
        if (isEndless()) {
            return List.of(rise);
        }
        return List.of(
                rise,
                steps.found("t_b").orElseGet(() -> duration(steps)),
                Term.given(Input.CELL_RELAXATION_TIME, cell.relaxation().timeConstant()));
    }

    private Term duration(Steps steps) {
        if (time.reason() == BrakingTime.Reason.HARD_BRAKE) {
            return Term.given(Input.USE_HARD_BRAKE, seconds());
        }
        boolean isStop = time.reason() == BrakingTime.Reason.STOP;
        MotorSteps motor = new MotorSteps(build);
        Step mass = motor.mass();
        steps.with(List.of(mass));
        List<Term> terms = new ArrayList<>(List.of(mass.result()));
        terms.addAll(isStop ? motion() : slope());
        Settings settings = build.settings();
        Step set =
                SetCurrent.step(
                        build,
                        current,
                        settings.packRegenCurrent(),
                        Input.SETTINGS_PACK_REGEN_CURRENT);
        steps.with(List.of(set));
        terms.add(
                new BatterySteps(build.battery(), model)
                        .voltage(steps, "U_l", "at rest, lowest in use", build.use().chargeTo()));
        terms.add(set.result());
        return steps.add(
                WhichPack.WHOLE,
                Term.computed(
                        "t_b",
                        isStop ? "a stop at that current" : "the slope at that current",
                        seconds(),
                        Unit.SECOND),
                isStop ? "½·m·(1 + j)·v²/(U_l·I_set)" : "L_s·m·g·(i − crr)/(√(1 + i²)·U_l·I_set)",
                "conservation of energy; nothing of it is lost otherwise",
                terms);
    }

    private List<Term> motion() {
        return List.of(
                new Inputs(build).of(Input.VEHICLE_ROTATING_SHARE),
                new Inputs(build).highestSpeed());
    }

    private List<Term> slope() {
        return List.of(
                new Inputs(build).of(Input.USE_SLOPE_LENGTH),
                MotorSteps.GRAVITY,
                new Inputs(build).of(Input.USE_SLOPE_MAX),
                new Inputs(build).of(Input.VEHICLE_ROLLING_RESISTANCE));
    }
}

package brakewright.heat;

import brakewright.battery.AtCharge;
import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.numeric.Pieces;
import brakewright.powertrain.PackState;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The temperature of one pack's cells, step by step while the charge falls: {@code C·dT/dt =
 * I²·r(s,T) − (T − Ta)/Rth}.
 *
 * <p>Within a step the heat is that of its middle, at the temperature that the cells have there; so
 * much heat in and what leaves to the air are then solved exactly. Between two knots of the pack's
 * curves as many steps are taken as keep each below {@link #STEP_K} and, where they change, below
 * the time in which the cells follow their heat.
 *
 * <p>Source: heat balance of one body; the exponential midpoint rule.
 */
final class WarmingCourse {

    /** A step changes the temperature by no more than about this [K]. */
    private static final double STEP_K = 0.5;

    /** No step is longer than this part of the charge [1]. */
    private static final double STEP_CHARGE = 0.025;

    /** No step is longer than this part of the time in which the cells follow their heat [1]. */
    private static final double STEP_TIME = 0.25;

    /**
     * Nor is one shorter for that than it takes them to change by about this [K]: at the end of a
     * step cells that follow their heat at once are as warm as its middle makes them, which is off
     * by half of it. Assumption: our own choice, far below what any temperature is told to.
     */
    private static final double LEAST_STEP_K = 1e-3;

    /** What is beyond all sense is not followed more finely. */
    private static final int MOST_STEPS = 400;

    private final BatteryModel model;
    private final int place;
    private final PackModel pack;
    private final ToDoubleFunction<PackState> current;
    private final double coulombs;
    private final double warmC;
    private final double stopC;

    private OneBody body;
    private double heatFactor = 1.0;
    private double cellsC;
    private double highestC;
    private double time;
    private double heat;
    private double warmAfter;
    private double stoppedAfter;
    private double power;
    private double duration;

    /**
     * Sets out.
     *
     * @param model all packs
     * @param place the one that is followed
     * @param current out of all packs at a state of them [A]; infinite where it cannot be drawn
     * @param startC of the cells [°C]
     * @param airC around [°C]
     */
    WarmingCourse(
            BatteryModel model,
            int place,
            ToDoubleFunction<PackState> current,
            double startC,
            double airC) {
        this.model = model;
        this.place = place;
        this.pack = model.packs().get(place);
        this.current = current;
        this.body =
                new OneBody(
                        pack.pack().series()
                                * pack.pack().parallel()
                                * pack.pack().cell().heatCapacity().orElseThrow(),
                        pack.pack().toAir(),
                        airC);
        this.coulombs = 3600.0 * model.capacityAh();
        this.warmC = pack.pack().cell().charging().highestC();
        this.stopC = pack.pack().cell().discharging().highestC();
        this.cellsC = startC;
        this.highestC = startC;
        this.warmAfter = startC > warmC ? 0.0 : Double.NaN;
        this.stoppedAfter = startC > stopC ? 0.0 : Double.NaN;
    }

    /** Takes more or less heat and a longer or shorter way to the air than is known [1]. */
    WarmingCourse doubting(double heatFactor, double toAirFactor) {
        this.heatFactor = heatFactor;
        this.body = body.withToAir(toAirFactor);
        return this;
    }

    /**
     * Rides from a charge state down to another.
     *
     * @return whether the current can be drawn throughout
     */
    boolean ride(double from, double to) {
        double[] ends = Pieces.of(model.knots(), to, from);
        for (int i = ends.length - 1; i > 0; i--) {
            if (!piece(ends[i], ends[i - 1])) {
                return false;
            }
        }
        return true;
    }

    private boolean piece(double upper, double lower) {
        double whole = upper - lower;
        AtCharge middle = model.at(upper - 0.5 * whole);
        if (!flows(middle, whole, cellsC) || !(duration < Double.POSITIVE_INFINITY)) {
            return false;
        }
        int steps = steps(whole);
        if (steps == 1) {
            return step(middle, whole);
        }
        double width = whole / steps;
        for (int step = 0; step < steps; step++) {
            AtCharge there = model.at(upper - (step + 0.5) * width);
            if (!flows(there, width, cellsC) || !step(there, width)) {
                return false;
            }
        }
        return true;
    }

    /** Into how many a piece is divided through which the heat of its middle flows. */
    private int steps(double width) {
        double change = Math.abs(after(duration) - cellsC);
        double following =
                Math.min(duration / (STEP_TIME * body.timeConstant()), change / LEAST_STEP_K);
        double most = Math.max(Math.max(change / STEP_K, width / STEP_CHARGE), following);
        return (int) Math.min(MOST_STEPS, 1.0 + most);
    }

    /** A step of which it is known what flows at the temperature that the cells have before it. */
    private boolean step(AtCharge middle, double width) {
        if (!flows(middle, width, after(0.5 * duration))) {
            return false;
        }
        advance();
        return true;
    }

    /** Works out power of heat and duration of a step, if the current can be drawn there. */
    private boolean flows(AtCharge middle, double width, double atC) {
        double whole = current.applyAsDouble(PackState.of(middle, atC, Double.POSITIVE_INFINITY));
        if (!(whole < Double.POSITIVE_INFINITY)) {
            return false;
        }
        double own = whole * middle.share(place, atC);
        double cells =
                pack.pack().series()
                        * middle.cellResistance(place, atC, Double.POSITIVE_INFINITY)
                        / pack.pack().parallel();
        power = heatFactor * own * own * cells;
        duration = width * coulombs / whole;
        return true;
    }

    private void advance() {
        if (Double.isFinite(stoppedAfter)) {
            time += duration;
            return;
        }
        double end = after(duration);
        if (Double.isNaN(warmAfter) && end > warmC) {
            warmAfter = time + until(warmC);
        }
        double heated = duration;
        if (end > stopC) {
            heated = until(stopC);
            stoppedAfter = time + heated;
            end = stopC;
        }
        heat += power * heated;
        cellsC = end;
        highestC = Math.max(highestC, end);
        time += duration;
    }

    private double after(double seconds) {
        return body.after(cellsC, power, seconds);
    }

    /** The time at which the step passes a temperature; it does. */
    private double until(double temperatureC) {
        return body.until(temperatureC, cellsC, power);
    }

    /** Cell temperature by now [°C]; where it has stopped, that at which it did. */
    double cellsC() {
        return cellsC;
    }

    /** The highest of all [°C]. */
    double highestC() {
        return highestC;
    }

    /** Since the beginning, what is ridden after a stop included [s]. */
    double time() {
        return time;
    }

    /** In the cells until now, or until it stopped [J]. */
    double heat() {
        return heat;
    }

    /** All cells of the pack. */
    OneBody body() {
        return body;
    }

    /** When the cells became too warm to be charged [s]; empty where they did not. */
    OptionalDouble warmAfter() {
        return Double.isNaN(warmAfter) ? OptionalDouble.empty() : OptionalDouble.of(warmAfter);
    }

    /** When they became too warm to be discharged [s]; empty where they did not. */
    OptionalDouble stoppedAfter() {
        return Double.isNaN(stoppedAfter)
                ? OptionalDouble.empty()
                : OptionalDouble.of(stoppedAfter);
    }
}

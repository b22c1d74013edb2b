package brakewright.braking;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Greatest;
import brakewright.numeric.Root;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Spending;
import brakewright.spec.Build;
import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * A stop from a speed with all brakes applied in full.
 *
 * <p>{@code a(v) = (F_brake + F_friction + F_road)/(m·(1 + j))}, distance {@code ∫ v/a dv}; while
 * the brakes build up, both grow in proportion to time. The way ridden in the reaction time comes
 * on top. Both brakes together never ask more of the road than {@code μ·m·g·cosθ}.
 *
 * <p>Assumption: the slope is the same all the way, there is no wind, and the friction brake gives
 * one deceleration at every speed and temperature, as far as the grip goes.
 *
 * <p>Source: Newton's second law; mean fully developed deceleration as UN Regulation No. 13, Annex
 * 4, 1.1.2, defines it: {@code (vb² − ve²)/(2·(Se − Sb))} with {@code vb = 0.8·v0} and {@code ve =
 * 0.1·v0}.
 */
public final class Stop {

    private static final double DEVELOPED_FROM = 0.8;
    private static final double DEVELOPED_TO = 0.1;

    /** Slower than this the vehicle stands [m/s]. */
    private static final double CREEP = 1e-9;

    /** So slight a deceleration, as of air alone, takes for ever to stop [m/s²]. */
    private static final double FOR_EVER = 1e-12;

    /** How far on both sides of the fade speed, where the force may jump, it is looked at [1]. */
    private static final double EDGE = 1e-12;

    /** Without an electric brake there is no speed above which the pack weakens it [m/s]. */
    private static final double NEVER_FADES = Double.POSITIVE_INFINITY;

    private static final double[] NOWHERE = {};

    private final Build build;
    private final Braking braking;

    /** The same without the electric brake. */
    private final Braking bereft;

    /**
     * Sets up stops of a vehicle.
     *
     * @param build the vehicle
     * @param brake its electric brake
     * @param surroundings where it brakes
     */
    public Stop(Build build, ElectricBrake brake, Surroundings surroundings) {
        this.build = build;
        this.braking = new Braking(build, brake, surroundings);
        this.bereft =
                new Braking(
                        build,
                        new ElectricBrake(brake.powertrain(), 0.0, 0.0, Optional.empty()),
                        surroundings);
    }

    /**
     * Brakes to a standstill.
     *
     * @param speed at the beginning [m/s], positive
     * @param charge the charge state at the beginning [1], from 0 to 1
     * @return how it ends
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public StopOutcome from(double speed, double charge) {
        return from(speed, charge, Double.POSITIVE_INFINITY);
    }

    /**
     * Brakes to a standstill while the electric brake vanishes on the way. The friction brake goes
     * on, and so does the motors' own drag.
     *
     * @param speed at the beginning [m/s], positive
     * @param charge the charge state at the beginning [1], from 0 to 1
     * @param lasts how long the electric brake acts, its build-up included [s], not negative;
     *     infinite where it does all the way
     * @return how it ends
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public StopOutcome from(double speed, double charge, double lasts) {
        Require.positive("speed", speed, Unit.METRE_PER_SECOND);
        Require.within("charge state", charge, 0.0, 1.0, Unit.RATIO);
        if (!(lasts >= 0.0)) {
            throw new IllegalArgumentException(
                    "time of the electric brake must not be negative, was " + lasts + " s");
        }
        double[] tally = new double[Counted.COUNT];
        Counted.CHARGE.put(tally, charge);
        Tally.Peak peak = new Tally.Peak(charge);
        double developed = buildUp(speed, lasts, peak, tally);
        PackState state = braking.pack(Counted.CHARGE.in(tally));
        double fade = braking.fadeSpeed(state);
        OptionalDouble held = heldAt(braking, developed, fade, state);
        if (held.isPresent()) {
            double bereftAt =
                    lasts < Double.POSITIVE_INFINITY
                            ? heldAt(bereft, developed, NEVER_FADES, state).orElse(0.0)
                            : 0.0;
            return new StopOutcome.Unstoppable(Math.max(held.getAsDouble(), bereftAt));
        }
        double[] gripped = gripSpeeds(developed, fade, state);
        double vanishes = vanishes(developed, fade, gripped, lasts, tally);
        held = heldAt(bereft, vanishes, NEVER_FADES, state);
        if (held.isPresent()) {
            return new StopOutcome.Unstoppable(held.getAsDouble());
        }
        SpeedIntegral acting = new SpeedIntegral(braking, peak);
        SpeedIntegral without = new SpeedIntegral(bereft, peak);
        double fully = slow(speed, developed, fade, gripped, vanishes, acting, without, tally);
        SpeedIntegral weaker = without.leastForce() < acting.leastForce() ? without : acting;
        if (weaker.leastForce() <= 0.0) {
            return new StopOutcome.Unstoppable(weaker.leastForceSpeed());
        }
        double packCurrent = peak.rate() / braking.chargePerCoulomb();
        return new StopOutcome.Stopped(
                Counted.DISTANCE.in(tally),
                Counted.TIME.in(tally),
                mean(speed, tally),
                leastDeceleration(weaker, speed, tally),
                Double.isNaN(fully) ? mean(speed, tally) : fully,
                fade,
                packCurrent,
                braking.cellVoltage(packCurrent, peak.charge()),
                Counted.CHARGE.in(tally),
                Math.sqrt(Counted.CURRENT_SQUARED.in(tally) / Counted.TIME.in(tally)),
                Counted.TERMINALS.in(tally),
                spent(speed, tally));
    }

    /** The speed once the brakes that are left have built up; 0 if the vehicle stops before. */
    private double buildUp(double speed, double lasts, Tally.Peak peak, double[] tally) {
        double duration = build.use().effort().buildUp();
        double acting = Math.min(duration, lasts);
        double now =
                acting > 0.0
                        ? new BuildUp(braking, duration, peak).add(speed, tally, 0.0, acting)
                        : speed;
        return acting < duration && now > 0.0
                ? new BuildUp(bereft, duration, peak).add(now, tally, acting, duration)
                : now;
    }

    /**
     * The speed at which the electric brake vanishes once the brakes have built up; 0 where the
     * vehicle stands before.
     */
    private double vanishes(
            double developed, double fade, double[] gripped, double lasts, double[] tally) {
        if (lasts == Double.POSITIVE_INFINITY || developed == 0.0) {
            return 0.0;
        }
        if (Counted.TIME.in(tally) >= lasts) {
            return developed;
        }
        DoubleUnaryOperator early = speed -> lasts - timeAt(speed, developed, fade, gripped, tally);
        if (!(early.applyAsDouble(0.0) < 0.0)) {
            return 0.0;
        }
        double vanishes = Root.between(early, 0.0, developed, Accuracy.MODEL);
        return vanishes < CREEP ? 0.0 : vanishes;
    }

    /** The time at which a speed is reached with the electric brake [s]. */
    private double timeAt(
            double speed, double developed, double fade, double[] gripped, double[] tally) {
        double[] own = tally.clone();
        SpeedIntegral integral = new SpeedIntegral(braking, new Tally.Peak(Counted.CHARGE.in(own)));
        double here = developed;
        for (double mark : marks(developed, fade, gripped, speed)) {
            if (mark >= speed) {
                integral.add(here, mark, own);
                here = mark;
            }
        }
        return Counted.TIME.in(own);
    }

    /**
     * Slows down with the brakes built up.
     *
     * @param speed at the beginning of the stop [m/s]
     * @param developed at the end of the build-up [m/s]
     * @param gripped where grip begins or ceases to hold the wheels back [m/s]
     * @param vanishes below which the electric brake is gone [m/s]
     * @return the mean fully developed deceleration; NaN where the build-up ends too late for one
     */
    private double slow(
            double speed,
            double developed,
            double fade,
            double[] gripped,
            double vanishes,
            SpeedIntegral acting,
            SpeedIntegral without,
            double[] tally) {
        double vb = Math.min(developed, DEVELOPED_FROM * speed);
        double ve = Math.min(developed, DEVELOPED_TO * speed);
        double distanceFrom = Counted.DISTANCE.in(tally);
        double distanceTo = Counted.DISTANCE.in(tally);
        double here = developed;
        for (double mark : marks(developed, fade, gripped, vb, ve, vanishes)) {
            (here > vanishes ? acting : without).add(here, mark, tally);
            here = mark;
            if (mark == vb) {
                distanceFrom = Counted.DISTANCE.in(tally);
            }
            if (mark == ve) {
                distanceTo = Counted.DISTANCE.in(tally);
            }
        }
        return vb > ve ? (vb * vb - ve * ve) / (2.0 * (distanceTo - distanceFrom)) : Double.NaN;
    }

    private static double mean(double speed, double[] tally) {
        return speed * speed / (2.0 * Counted.DISTANCE.in(tally));
    }

    private double leastDeceleration(SpeedIntegral integral, double speed, double[] tally) {
        return Double.isInfinite(integral.leastForce())
                ? speed / Counted.TIME.in(tally)
                : integral.leastForce() / braking.inertia();
    }

    /**
     * The highest speed at which the brakes are no stronger than the slope, if there is one.
     *
     * <p>Up to the fade speed the force grows with speed, and jumps up where the electric brake
     * begins to act. Beyond it the force that the pack limit leaves bends upwards, so it has one
     * least place, and grip takes off what lies above a force that grows with speed. So a window in
     * which the slope is stronger contains the start, that least place, or the fade speed, or
     * reaches down to standstill.
     */
    private static OptionalDouble heldAt(
            Braking braking, double start, double fade, PackState state) {
        if (start <= CREEP || braking.leastSlowing(CREEP, start, state) > 0.0) {
            return OptionalDouble.empty();
        }
        if (braking.slowing(start, state) <= 0.0) {
            return OptionalDouble.of(start);
        }
        double faded = Math.max(CREEP, fade * (1.0 + EDGE));
        double below = start;
        if (faded < start) {
            double weakest =
                    Greatest.between(
                            speed -> -braking.slowingBeforeGrip(speed, state),
                            faded,
                            start,
                            Accuracy.PEAK);
            if (braking.slowing(weakest, state) <= 0.0) {
                return crossing(braking, weakest, start, state);
            }
            if (braking.slowing(faded, state) <= 0.0) {
                return crossing(braking, faded, weakest, state);
            }
            below = Math.max(CREEP, fade * (1.0 - EDGE));
        }
        double creeping = braking.slowing(CREEP, state);
        if (creeping > 0.0) {
            return creeping > FOR_EVER * braking.inertia()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(CREEP);
        }
        return heldBelow(braking, below, state);
    }

    /**
     * The same between creeping, where the slope is stronger, and a speed up to which force grows.
     */
    private static OptionalDouble heldBelow(Braking braking, double speed, PackState state) {
        if (braking.slowing(speed, state) <= 0.0) {
            return OptionalDouble.of(speed);
        }
        double ends = braking.endsBelow();
        if (ends <= CREEP || ends > speed) {
            return crossing(braking, CREEP, speed, state);
        }
        if (braking.slowing(ends, state) <= 0.0) {
            return crossing(braking, ends, speed, state);
        }
        double coasting = Math.nextDown(ends);
        return braking.slowing(coasting, state) > 0.0
                ? crossing(braking, CREEP, coasting, state)
                : OptionalDouble.of(ends);
    }

    private static OptionalDouble crossing(
            Braking braking, double low, double high, PackState state) {
        return OptionalDouble.of(
                Root.between(speed -> braking.slowing(speed, state), low, high, Accuracy.MODEL));
    }

    /**
     * The speeds below the start at which the integrand bends, descending, standstill last. What
     * bends at less than creeping is left to the piece above: the square of such a speed may be too
     * small for a number.
     */
    private double[] marks(double start, double fade, double[] gripped, double... others) {
        DoubleStream bends =
                DoubleStream.concat(
                                DoubleStream.of(
                                        fade, braking.crossoverSpeed(), braking.endsBelow()),
                                DoubleStream.of(gripped))
                        .filter(mark -> mark >= CREEP);
        DoubleStream standstill = DoubleStream.of(0.0);
        return DoubleStream.concat(DoubleStream.of(others), DoubleStream.concat(bends, standstill))
                .filter(mark -> mark < start)
                .distinct()
                .map(mark -> -mark)
                .sorted()
                .map(mark -> -mark)
                .toArray();
    }

    /**
     * The speeds at which grip begins or ceases to hold the driven wheels back, with the electric
     * brake or with the motors' drag alone. Between two bends the force before grip rises, or,
     * above the fade speed, has one least place.
     */
    private double[] gripSpeeds(double start, double fade, PackState state) {
        if (start <= CREEP || !braking.mayMeetGrip(start)) {
            return NOWHERE;
        }
        DoubleStream.Builder found = DoubleStream.builder();
        double upper = start;
        for (double mark : marks(start, fade, NOWHERE)) {
            double low = Math.max(CREEP, mark);
            double high = Math.nextDown(upper);
            if (low < high) {
                addGripSpeeds(speed -> braking.beyondGrip(speed, state), low, high, found);
                addGripSpeeds(speed -> bereft.beyondGrip(speed, state), low, high, found);
            }
            upper = mark;
        }
        return found.build().toArray();
    }

    private static void addGripSpeeds(
            DoubleUnaryOperator beyond, double low, double high, DoubleStream.Builder found) {
        double atLow = beyond.applyAsDouble(low);
        double atHigh = beyond.applyAsDouble(high);
        if (atLow * atHigh < 0.0) {
            found.add(Root.between(beyond, low, high, Accuracy.MODEL));
        } else if (atLow > 0.0 && atHigh > 0.0) {
            double weakest =
                    Greatest.between(
                            speed -> -beyond.applyAsDouble(speed), low, high, Accuracy.PEAK);
            if (beyond.applyAsDouble(weakest) < 0.0) {
                found.add(Root.between(beyond, low, weakest, Accuracy.MODEL));
                found.add(Root.between(beyond, weakest, high, Accuracy.MODEL));
            }
        }
    }

    /** The speed is lost, and electronics and lights are no matter of a stop. */
    private Spending spent(double speed, double[] tally) {
        return new Spending(
                Counted.AIR.in(tally),
                Counted.ROLLING.in(tally),
                Counted.CLIMBED.in(tally),
                -0.5 * braking.inertia() * speed * speed,
                Counted.FRICTION.in(tally),
                Counted.DRIVE.in(tally),
                Counted.MOTOR_DRAG.in(tally),
                Counted.COPPER.in(tally),
                Counted.CONTROLLER.in(tally),
                0.0,
                Counted.PACK.in(tally));
    }
}

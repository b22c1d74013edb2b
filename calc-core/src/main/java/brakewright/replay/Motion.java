package brakewright.replay;

import brakewright.machine.WindingHeat;
import brakewright.spec.Build;

/**
 * One step of a ride: force, current and heat are those at its mean speed.
 *
 * <p>Over a length d a force F changes the square of the speed, {@code m·(v1² − v0²)/2 = F·d}, and
 * {@code d = v·t} with the mean speed v. So pulling away is exact where the thrust is even, and the
 * work of every force is power times time to rounding.
 *
 * <p>Source: Newton's second law; the implicit midpoint rule.
 */
final class Motion {

    private static final int ROUNDS = 60;

    /** Of the mean speed, far below what steps differ by. */
    private static final double SETTLED = 1e-6;

    /** A mean speed is never less: a step ends [m/s]. */
    private static final double CREEP = 1e-6;

    /** With which a mean is guessed where the vehicle stands [m/s²]. */
    private static final double GUESSED = 1.0;

    private final double inertia;
    private final PackUnderway packs;

    Motion(Build build, PackUnderway packs) {
        this.inertia = build.inertia();
        this.packs = packs;
    }

    /**
     * Goes on for a length, as fast as the drive permits up to a speed, or down to it.
     *
     * @param from where it begins
     * @param length [m], positive
     * @param target the speed wanted at the end [m/s]
     * @param at what drive and brakes do there
     */
    Step over(Underway from, double length, double target, Forces at) {
        Forces forces = at.withWindings(from.windingC());
        double before = from.speed();
        double mean =
                before > 0.0
                        ? 0.5 * (before + (target > before ? before : target))
                        : 0.5 * Math.sqrt(2.0 * GUESSED * length);
        double low = 0.0;
        double high = Double.POSITIVE_INFINITY;
        double lastMean = Double.NaN;
        double lastOff = Double.NaN;
        double current = 0.0;
        for (int round = 1; ; round++) {
            double seconds = length / mean;
            PackUnderway.Step pack = packs.during(from, current, seconds);
            double resistance = forces.resistance(mean);
            Flow flow = forces.flow(wanted(from, length, mean, target, forces), mean, pack);
            double square = before * before + 2.0 * length * (flow.force() - resistance) / inertia;
            double after = Math.sqrt(Math.max(0.0, square));
            double off = 0.5 * (before + after) - mean;
            low = off > 0.0 ? mean : low;
            high = off < 0.0 ? mean : high;
            boolean isSettled =
                    round > 1 && (Math.abs(off) <= SETTLED * mean || high - low <= SETTLED * mean);
            boolean isStopped = square < -SETTLED * before * before;
            if (isSettled || round == ROUNDS || !Double.isFinite(flow.packCurrent())) {
                return new Step(
                        moved(from, length, seconds, after, mean, flow, forces, pack),
                        seconds,
                        mean,
                        flow,
                        flow.packCurrent() >= 0.0 ? pack.out() : pack.into(),
                        isSettled && !isStopped,
                        isStopped);
            }
            current = flow.packCurrent();
            double secant = mean - off * (mean - lastMean) / (off - lastOff);
            lastMean = mean;
            lastOff = off;
            mean = next(round == 1 ? mean + off : secant, mean, low, high);
        }
    }

    /** A guess, where it lies between what is too slow and what is too fast; else half way. */
    private static double next(double guess, double mean, double low, double high) {
        if (guess > low && guess < high) {
            return Math.max(CREEP, guess);
        }
        return high < Double.POSITIVE_INFINITY ? 0.5 * (low + high) : 2.0 * mean;
    }

    /** Stands for a time. */
    Step standing(Underway from, double seconds, Forces at) {
        return told(from, seconds, 0.0, 0.0, at);
    }

    /**
     * Goes on as it is told to, whether or not all that is permitted suffices for it.
     *
     * @param from where it begins
     * @param seconds how long [s]
     * @param length how far meanwhile [m], not negative
     * @param target the speed at the end [m/s]
     * @param at what drive and brakes do there
     */
    Step told(Underway from, double seconds, double length, double target, Forces at) {
        Forces forces = at.withWindings(from.windingC());
        double mean = length > 0.0 ? length / seconds : 0.0;
        double wanted = length > 0.0 ? wanted(from, length, mean, target, forces) : 0.0;
        double current = 0.0;
        for (int round = 1; ; round++) {
            PackUnderway.Step pack = packs.during(from, current, seconds);
            Flow flow = forces.flow(wanted, mean, pack);
            if (round == ROUNDS
                    || !Double.isFinite(flow.packCurrent())
                    || Math.abs(flow.packCurrent() - current) <= SETTLED) {
                return new Step(
                        moved(from, length, seconds, target, mean, flow, forces, pack),
                        seconds,
                        mean,
                        flow,
                        flow.packCurrent() >= 0.0 ? pack.out() : pack.into(),
                        true,
                        false);
            }
            current = flow.packCurrent();
        }
    }

    /** The mean force that such a stretch takes; negative to slow down [N]. */
    double wanted(Underway from, double length, double mean, double target, Forces forces) {
        double gain = 0.5 * (target - from.speed()) * (target + from.speed());
        return inertia * gain / length + forces.resistance(mean);
    }

    private static Underway moved(
            Underway from,
            double length,
            double seconds,
            double speed,
            double mean,
            Flow flow,
            Forces forces,
            PackUnderway.Step pack) {
        double current = flow.packCurrent();
        WindingHeat.Temperatures motors = forces.warmed(from, flow.motorCurrent(), mean, seconds);
        return new Underway(
                from.distance() + length,
                from.time() + seconds,
                speed,
                pack.chargeAfter(current),
                pack.fastSagAfter(current),
                pack.slowSagAfter(current),
                pack.cellsAfterC(current),
                motors.windingC(),
                motors.caseC());
    }
}

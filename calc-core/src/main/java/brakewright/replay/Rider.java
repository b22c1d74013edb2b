package brakewright.replay;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Rides a route step by step, and remembers what happened. */
final class Rider {

    /** Assumption: our own choice; with less of a gain in a full pull it is held back [m/s²]. */
    private static final double NO_GAIN = 0.1;

    /** Assumption: our own choice; so much slower or faster than allowed is told [m/s]. */
    private static final double TOLD = 0.1;

    /** Slower than this the vehicle is as good as standing [m/s]. */
    private static final double STANDING = 0.05;

    /**
     * Of the accuracy of a ride: the errors of steps add up, to the same side while pulling away.
     */
    private static final double SHARE_OF_STEP = 0.1;

    /** With which a leg is begun [m]. */
    private static final double FIRST = 5.0;

    /** No step is longer: curves of the pack bend meanwhile [m]. */
    private static final double LONGEST = 250.0;

    /** Nor moves it more charge, for the same reason [1]. */
    private static final double MOST_CHARGE = 0.005;

    /**
     * Nor changes it the speed by more, of itself and of {@link #LEAST_SPEED}, times the root of
     * the accuracy: a step and its halves are all blind to a current that bends behind the last of
     * their mean speeds, as where the pack's limit lets go of a brake. What they miss grows with
     * the square of the change.
     */
    private static final double MOST_GAIN = 4.0;

    /**
     * Nothing is looked at more finely [m]. A leg of {@link #MANY} steps, as where a brake sets in
     * and out by turns, goes on in steps of at least {@link #ROUGHEST} of its length.
     */
    private static final double SHORTEST = 1e-4;

    private static final double ROUGHEST = 1e-3;
    private static final double MANY = 2000.0;

    /** A speed or a current counts as at least so much where steps are compared [m/s, A]. */
    private static final double LEAST_SPEED = 0.5;

    private static final double LEAST_CURRENT = 0.5;

    private static final double LONGEST_STAND = 60.0;
    private static final double CHARGE_ACCURACY = 1e-9;
    private static final int CHARGE_ROUNDS = 30;

    private final Build build;
    private final Route route;
    private final double accuracy;
    private final double mostGain;
    private final PackUnderway packs;
    private final Motion motion;
    private final List<Forces> forces = new ArrayList<>();
    private final Plan plan;
    private final List<RidePoint> course = new ArrayList<>();
    private final List<HeldBack> heldBack = new ArrayList<>();
    private RideTotals totals = RideTotals.NOTHING;
    private Underway now = Underway.rested(0.0, 0.0, 0.0);
    private double height;
    private double next;
    private double finest;
    private int made;

    Rider(Build build, Operation operation, Route route, double accuracy) {
        this.build = build;
        this.route = route;
        this.accuracy = SHARE_OF_STEP * accuracy;
        this.mostGain = MOST_GAIN * Math.sqrt(accuracy);
        this.packs = new PackUnderway(build);
        this.motion = new Motion(build, packs);
        route.legs().forEach(leg -> forces.add(new Forces(build, operation, leg.slope())));
        this.plan = new Plan(build, route, forces);
    }

    RouteRide ride(Underway start) {
        now = start;
        Flow still = motion.standing(start, 0.0, forces.get(0)).flow();
        course.add(
                new RidePoint(
                        start,
                        0.0,
                        plan.ceiling(0, route.legs().get(0).length()),
                        0.0,
                        still.packCurrent(),
                        still.packVoltage(),
                        Optional.empty()));
        RouteEnd end = RouteEnd.ARRIVES;
        for (int leg = 0; leg < route.legs().size() && end == RouteEnd.ARRIVES; leg++) {
            end = leg(leg);
        }
        return new RouteRide(
                route,
                end,
                course,
                totals,
                heldBack,
                beyond(),
                build.motor().windingLimitC(),
                packs.warmestC(),
                build.motor().heat().isPresent(),
                packs.isHeatKnown());
    }

    private List<BeyondLimit> beyond() {
        Limits limits = Limits.of(build);
        return Stream.of(
                        BeyondLimit.of(course, limits.packRegen(), true),
                        BeyondLimit.of(course, limits.packDischarge(), false))
                .flatMap(Optional::stream)
                .toList();
    }

    private RouteEnd leg(int leg) {
        Leg road = route.legs().get(leg);
        double begin = now.distance();
        double bottom = height;
        double slowing = Math.max(0.0, road.length() - plan.slowingLength(leg));
        next = FIRST;
        finest = SHORTEST;
        made = 0;
        double done = 0.0;
        while (done < road.length()) {
            double mark = done < slowing ? slowing : road.length();
            double length = Math.min(mark - done, Math.min(LONGEST, next));
            if (mark - done - length < SHORTEST) {
                length = mark - done;
            }
            Tried tried = tried(leg, done, length);
            Optional<RouteEnd> ends =
                    ended(tried.steps().get(0)).or(() -> ended(tried.steps().get(1)));
            if (ends.isPresent()) {
                if (ends.get() == RouteEnd.CHARGE_USED) {
                    useUp(leg, done, tried.length(), bottom);
                    return RouteEnd.CHARGE_USED;
                }
                if (tried.length() < 2.0 * SHORTEST) {
                    remember(stuck(leg, tried.steps().get(0), road.length() - done));
                    return RouteEnd.STUCK;
                }
                next = tried.length() / 4.0;
                continue;
            }
            double before = done;
            done = tried.length() == mark - done ? mark : done + tried.length();
            for (Step step : tried.steps()) {
                before += tried.length() / tried.steps().size();
                take(leg, step, road.length() - before, bottom, road.rise() / road.length(), begin);
            }
        }
        height = bottom + road.rise();
        if (plan.exit(leg) == 0.0 && now.speed() > TOLD) {
            return RouteEnd.CANNOT_STOP;
        }
        return stand(leg, road.standing());
    }

    private Optional<RouteEnd> ended(Step step) {
        boolean isStanding =
                step.flow().isFull()
                        && step.flow().force() >= 0.0
                        && step.end().speed() < STANDING
                        && step.end().speed() <= step.speed();
        if (step.isStopped() || isStanding || !Double.isFinite(step.flow().packCurrent())) {
            return Optional.of(RouteEnd.STUCK);
        }
        return step.end().charge() < build.use().chargeTo()
                ? Optional.of(RouteEnd.CHARGE_USED)
                : Optional.empty();
    }

    /** A length with the two steps that were made of it. */
    private record Tried(double length, List<Step> steps) {}

    /** Shortens a length until one step and two of half of it agree. */
    private Tried tried(int leg, double done, double most) {
        double left = route.legs().get(leg).length() - done;
        double length = most;
        while (true) {
            Step whole = step(leg, now, length, left - length);
            Step first = step(leg, now, length / 2.0, left - length / 2.0);
            Step second = step(leg, first.end(), length / 2.0, left - length);
            double off =
                    whole.isSettled() && first.isSettled() && second.isSettled()
                            ? off(whole, first, second) / accuracy
                            : Double.POSITIVE_INFINITY;
            if (off <= 1.0 || length <= finest) {
                made++;
                double part = made / MANY;
                finest =
                        Math.max(SHORTEST, ROUGHEST * route.legs().get(leg).length() * part * part);
                next =
                        Math.max(
                                finest,
                                length * Math.max(0.3, Math.min(3.0, 0.9 / Math.cbrt(off))));
                return new Tried(length, List.of(first, second));
            }
            length = Math.max(finest, length * Math.max(0.1, Math.min(0.5, 0.9 / Math.cbrt(off))));
        }
    }

    private Step step(int leg, Underway from, double length, double left) {
        return motion.over(from, length, plan.ceiling(leg, left), forces.get(leg));
    }

    /** By how much a step differs from its two halves, of itself. */
    private double off(Step whole, Step first, Step second) {
        double time = first.seconds() + second.seconds();
        double speed = second.end().speed();
        double charge =
                first.flow().packCurrent() * first.seconds()
                        + second.flow().packCurrent() * second.seconds();
        if (Math.abs(whole.end().charge() - now.charge()) > MOST_CHARGE
                || Math.abs(speed - now.speed()) > mostGain * Math.max(LEAST_SPEED, now.speed())) {
            return Double.POSITIVE_INFINITY;
        }
        double least = LEAST_CURRENT * time;
        return Math.max(
                Math.abs(whole.seconds() - time) / time,
                Math.max(
                        Math.abs(whole.end().speed() - speed) / Math.max(LEAST_SPEED, speed),
                        Math.abs(whole.flow().packCurrent() * whole.seconds() - charge)
                                / Math.max(least, Math.abs(charge))));
    }

    /** Shortens the last step until the charge in use is just gone. */
    private void useUp(int leg, double done, double most, double bottom) {
        Leg road = route.legs().get(leg);
        double length = most;
        Step step = step(leg, now, length, road.length() - done - length);
        for (int round = 0; round < CHARGE_ROUNDS; round++) {
            double over = build.use().chargeTo() - step.end().charge();
            if (Math.abs(over) <= CHARGE_ACCURACY) {
                break;
            }
            double used = now.charge() - step.end().charge();
            length = Math.max(0.0, Math.min(most, length * (1.0 - over / used)));
            if (length == 0.0) {
                return;
            }
            step = step(leg, now, length, road.length() - done - length);
        }
        take(
                leg,
                step,
                road.length() - done - length,
                bottom,
                road.rise() / road.length(),
                now.distance() - done);
    }

    private void take(int leg, Step step, double left, double bottom, double climb, double begin) {
        totals = totals.plus(step);
        double allowed = plan.ceiling(leg, left);
        Optional<HeldBack> held = held(leg, step, allowed);
        held.ifPresent(this::remember);
        course.add(
                new RidePoint(
                        step.end(),
                        bottom + climb * (step.end().distance() - begin),
                        allowed,
                        step.flow().motorCurrent(),
                        step.flow().packCurrent(),
                        step.flow().packVoltage(),
                        held.map(HeldBack::holder)));
        now = step.end();
    }

    private void remember(HeldBack held) {
        int last = heldBack.size() - 1;
        if (last >= 0 && heldBack.get(last).isContinuedBy(held)) {
            heldBack.set(last, heldBack.get(last).plus(held));
        } else {
            heldBack.add(held);
        }
    }

    private Optional<HeldBack> held(int leg, Step step, double allowed) {
        double speed = step.end().speed();
        Forces there = forces.get(leg).withWindings(now.windingC());
        PackState pack = step.pack();
        double from = now.distance();
        double to = step.end().distance();
        if (speed > allowed + TOLD) {
            Holder holder = there.slowing(step.speed(), pack);
            return Optional.of(new HeldBack(holder, true, from, to, speed, allowed));
        }
        double gain = (speed - now.speed()) / step.seconds();
        if (step.flow().isFull() && speed < allowed - TOLD && gain < NO_GAIN) {
            Holder holder = there.pulling(step.speed(), pack);
            return Optional.of(new HeldBack(holder, false, from, to, speed, allowed));
        }
        double wished = route.legs().get(leg).speed();
        return plan.allowed(leg) < wished && speed > plan.allowed(leg) - TOLD
                ? Optional.of(
                        new HeldBack(Holder.SPEED_CAP, false, from, to, plan.allowed(leg), wished))
                : Optional.empty();
    }

    /** What lets it stand there. */
    private HeldBack stuck(int leg, Step step, double left) {
        Holder holder =
                Double.isFinite(step.flow().packCurrent())
                        ? forces.get(leg)
                                .withWindings(now.windingC())
                                .pulling(step.speed(), step.pack())
                        : Holder.PACK_POWER;
        return new HeldBack(
                holder, false, now.distance(), now.distance(), 0.0, plan.ceiling(leg, left));
    }

    private RouteEnd stand(int leg, double seconds) {
        double left = seconds;
        while (left > 0.0) {
            double part = Math.min(left, LONGEST_STAND);
            Step step = motion.standing(now, part, forces.get(leg));
            left -= part;
            take(leg, step, 0.0, height, 0.0, now.distance());
            if (now.charge() < build.use().chargeTo()) {
                return RouteEnd.CHARGE_USED;
            }
        }
        return RouteEnd.ARRIVES;
    }
}

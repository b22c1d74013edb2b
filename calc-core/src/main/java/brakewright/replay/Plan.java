package brakewright.replay;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import java.util.List;

/**
 * How fast a route may be ridden anywhere, so that there is room to slow down for what comes.
 *
 * <p>Assumption: a rider slows down as hard as is wanted of the brakes (criteria), or with 80 % of
 * what they give where that is less: at their weakest between walking pace and the allowed speed,
 * the pack as full as in use. Gentler than 0.15 m/s² nobody plans.
 */
final class Plan {

    private static final double SHARE = 0.8;
    private static final double GENTLEST = 0.15;
    private static final int PROBES = 8;

    private final double[] allowed;
    private final double[] exits;
    private final double[] slowing;

    Plan(Build build, Route route, List<Forces> forces) {
        List<Leg> legs = route.legs();
        double cap = build.settings().speedCap().orElse(Double.POSITIVE_INFINITY);
        PackState full =
                PackState.of(
                        new BatteryModel(build.battery()).into(),
                        build.use().chargeFrom(),
                        build.battery().temperatureC());
        this.allowed = legs.stream().mapToDouble(leg -> Math.min(cap, leg.speed())).toArray();
        this.exits = new double[legs.size()];
        this.slowing = new double[legs.size()];
        double ahead = route.exit();
        for (int leg = legs.size() - 1; leg >= 0; leg--) {
            slowing[leg] =
                    Math.max(
                            GENTLEST,
                            Math.min(
                                    build.criteria().decelerationMin(),
                                    SHARE * weakest(forces.get(leg), allowed[leg], full)));
            exits[leg] = legs.get(leg).standing() > 0.0 ? 0.0 : Math.min(allowed[leg], ahead);
            ahead =
                    Math.min(
                            allowed[leg],
                            Math.sqrt(
                                    exits[leg] * exits[leg]
                                            + 2.0 * slowing[leg] * legs.get(leg).length()));
        }
    }

    private static double weakest(Forces forces, double fastest, PackState full) {
        double slowest = Math.min(Forces.WALKING, fastest);
        double weakest = Double.POSITIVE_INFINITY;
        for (int probe = 0; probe <= PROBES; probe++) {
            double speed = slowest + (fastest - slowest) * probe / PROBES;
            weakest = Math.min(weakest, forces.deceleration(speed, full));
        }
        return weakest;
    }

    /** The highest speed on a leg, what comes behind it left aside [m/s]. */
    double allowed(int leg) {
        return allowed[leg];
    }

    /** The highest speed at the end of a leg [m/s]. */
    double exit(int leg) {
        return exits[leg];
    }

    /** How far before the end of a leg one begins to slow down at the allowed speed [m]. */
    double slowingLength(int leg) {
        return Math.max(
                0.0,
                (allowed[leg] * allowed[leg] - exits[leg] * exits[leg]) / (2.0 * slowing[leg]));
    }

    /** The highest speed so far before the end of a leg [m/s]. */
    double ceiling(int leg, double left) {
        return Math.min(
                allowed[leg],
                Math.sqrt(exits[leg] * exits[leg] + 2.0 * slowing[leg] * Math.max(0.0, left)));
    }
}

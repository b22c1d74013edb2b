package brakewright.replay;

import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.List;

/**
 * A road, in legs.
 *
 * @param legs in the order in which they are ridden, at least one
 * @param exit the highest speed at its end [m/s], not negative; 0 where the vehicle stops there
 */
public record Route(List<Leg> legs, double exit) {

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is no leg or the speed is negative
     */
    public Route {
        legs = List.copyOf(legs);
        Require.atLeastOne("number of legs", legs.size());
        Require.notNegative("speed at the end of a route", exit, Unit.METRE_PER_SECOND);
    }

    /**
     * A route at whose end the vehicle stops.
     *
     * @param legs in the order in which they are ridden, at least one
     */
    public Route(List<Leg> legs) {
        this(legs, 0.0);
    }

    /**
     * Returns how long it is.
     *
     * @return along the road [m]
     */
    public double length() {
        return legs.stream().mapToDouble(Leg::length).sum();
    }

    /**
     * Returns how much higher its end lies than its beginning.
     *
     * @return [m]; negative where it lies lower
     */
    public double rise() {
        return legs.stream().mapToDouble(Leg::rise).sum();
    }
}

package brakewright.road;

import brakewright.spec.Rider;

/** When a standing rider tips over their own feet. */
public final class RiderBalance {

    private RiderBalance() {}

    /**
     * Returns the acceleration or deceleration at which a standing rider begins to tip.
     *
     * <p>A rigid body whose mass centre stands h above a support that reaches half a length l from
     * its middle tips at {@code a/g = l/h}. The rider is taken as unbraced: one who leans in time
     * bears more, one who is surprised less.
     *
     * <p>Source: equilibrium of moments about the edge of the support.
     *
     * @param rider the rider
     * @return [1] a/g; infinite for a seated rider, to whom this does not apply
     */
    public static double tip(Rider rider) {
        return rider.stance().isStanding()
                ? rider.supportHalfLength() / rider.massHeight()
                : Double.POSITIVE_INFINITY;
    }
}

package brakewright.spec;

/**
 * Where the axles stand under the common mass centre of vehicle, rider and cargo.
 *
 * @param wheelbase distance between the axles [m], positive
 * @param massCentreHeight above the ground [m], positive
 * @param massCentreFromFront distance behind the front axle [m], from 0 to the wheelbase
 * @param driven the axle or axles with motors
 */
public record Axles(
        double wheelbase, double massCentreHeight, double massCentreFromFront, DrivenAxle driven) {

    /**
     * Validates the axles.
     *
     * @throws IllegalArgumentException if a length is not positive or the mass centre is not
     *     between the axles
     */
    public Axles {
        Require.positive("wheelbase", wheelbase, Unit.METRE);
        Require.positive("mass-centre height", massCentreHeight, Unit.METRE);
        Require.within("mass centre from front", massCentreFromFront, 0.0, wheelbase, Unit.METRE);
    }

    /**
     * Returns these axles with a higher or lower mass centre.
     *
     * @param replacement above the road [m], positive
     * @return a changed copy
     */
    public Axles withMassCentreHeight(double replacement) {
        return new Axles(wheelbase, replacement, massCentreFromFront, driven);
    }

    /**
     * Returns these axles with a mass centre further on or back.
     *
     * @param replacement behind the front axle [m], between the axles
     * @return a changed copy
     */
    public Axles withMassCentreFromFront(double replacement) {
        return new Axles(wheelbase, massCentreHeight, replacement, driven);
    }

    /**
     * Returns these axles with another driven axle.
     *
     * @param replacement which is driven and braked by the motors
     * @return a changed copy
     */
    public Axles withDriven(DrivenAxle replacement) {
        return new Axles(wheelbase, massCentreHeight, massCentreFromFront, replacement);
    }
}

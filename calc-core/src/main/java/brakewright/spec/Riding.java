package brakewright.spec;

import java.util.Optional;

/**
 * How the vehicle is ridden between hard pulls: what its range is told for.
 *
 * @param cruiseSpeed steady speed [m/s], positive
 * @param headwind [m/s], from −30 to 30; negative from behind
 * @param idlePower of electronics and lights, drawn from the pack all the time [W], not negative
 * @param stopsPerMetre in town [1/m], not negative
 * @param measured what was measured on the road; empty where nothing was
 */
public record Riding(
        double cruiseSpeed,
        double headwind,
        double idlePower,
        double stopsPerMetre,
        Optional<Measured> measured) {

    /**
     * Validates the riding.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Riding {
        Require.positive("cruise speed", cruiseSpeed, Unit.METRE_PER_SECOND);
        Require.within("headwind", headwind, -30.0, 30.0, Unit.METRE_PER_SECOND);
        Require.notNegative("idle power", idlePower, Unit.WATT);
        Require.notNegative("stops per distance", stopsPerMetre, Unit.PER_METRE);
    }

    /**
     * Returns this riding with another wind.
     *
     * @param replacement [m/s], from −30 to 30; negative from behind
     * @return a changed copy
     */
    public Riding withHeadwind(double replacement) {
        return new Riding(cruiseSpeed, replacement, idlePower, stopsPerMetre, measured);
    }

    /**
     * Returns this riding with other electronics and lights.
     *
     * @param replacement what they draw [W], not negative
     * @return a changed copy
     */
    public Riding withIdlePower(double replacement) {
        return new Riding(cruiseSpeed, headwind, replacement, stopsPerMetre, measured);
    }

    /**
     * Returns this riding with more or fewer stops.
     *
     * @param replacement [1/m], not negative
     * @return a changed copy
     */
    public Riding withStopsPerMetre(double replacement) {
        return new Riding(cruiseSpeed, headwind, idlePower, replacement, measured);
    }

    /**
     * Returns how far stops in town are apart.
     *
     * @return the distance [m]; infinite where there are none
     */
    public double metresPerStop() {
        return 1.0 / stopsPerMetre;
    }

    /**
     * A consumption measured at the pack's terminals.
     *
     * @param energyPerMetre [J/m], positive
     * @param speed mean speed at which it was measured [m/s], positive
     */
    public record Measured(double energyPerMetre, double speed) {

        /**
         * Validates the measurement.
         *
         * @throws IllegalArgumentException if a number is not positive
         */
        public Measured {
            Require.positive("measured consumption", energyPerMetre, Unit.JOULE_PER_METRE);
            Require.positive("speed of the measurement", speed, Unit.METRE_PER_SECOND);
        }
    }
}

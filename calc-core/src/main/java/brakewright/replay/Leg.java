package brakewright.replay;

import brakewright.road.Slope;
import brakewright.spec.Require;
import brakewright.spec.Unit;

/**
 * A part of a route, even from end to end.
 *
 * @param length along the road [m], positive
 * @param rise its end above its beginning; negative downhill [m], less than the length either way
 * @param speed the highest that is allowed [m/s], positive
 * @param standing how long the vehicle stands at its end [s], not negative; it passes where 0
 */
public record Leg(double length, double rise, double speed, double standing) {

    /**
     * Validates the leg.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Leg {
        Require.positive("length of a leg", length, Unit.METRE);
        Require.number("rise of a leg", rise, Unit.METRE);
        if (!(Math.abs(rise) < length)) {
            throw new IllegalArgumentException(
                    "a leg of " + length + " m cannot rise by " + rise + " m");
        }
        Require.positive("allowed speed", speed, Unit.METRE_PER_SECOND);
        Require.notNegative("standing time", standing, Unit.SECOND);
    }

    /**
     * Returns how steep it is.
     *
     * @return rise over run [1]
     */
    public double slope() {
        return Slope.ofRise(rise, length);
    }
}

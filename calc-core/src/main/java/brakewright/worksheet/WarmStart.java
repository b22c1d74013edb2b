package brakewright.worksheet;

import brakewright.machine.WindingHeat;
import java.util.OptionalDouble;

/** How long the winding bears the drive current after a long ride at the cruise speed. */
public sealed interface WarmStart {

    /**
     * The ride leaves something to spare.
     *
     * @param start the motor at its end
     * @param lasts until the winding limit at the drive current, from there; empty if never [s]
     */
    record Borne(WindingHeat.Temperatures start, OptionalDouble lasts) implements WarmStart {

        /**
         * Returns how warm the winding is after the ride.
         *
         * @return its temperature [°C]
         */
        public double windingC() {
            return start.windingC();
        }

        /**
         * Returns how warm the case is after the ride.
         *
         * @return its temperature [°C]
         */
        public double caseC() {
            return start.caseC();
        }
    }

    /** The ride alone brings the winding to its limit. */
    record TooHot() implements WarmStart {}

    /** The settings do not reach the cruise speed, so there is no such ride. */
    record NotReached() implements WarmStart {}
}

package brakewright.recording;

import brakewright.limit.ConstraintId;
import brakewright.spec.Unit;
import java.util.Locale;
import java.util.Optional;

/**
 * A limit of the vehicle that a ride went beyond.
 *
 * @param what which
 * @param seconds for how long, each row counted half way to its neighbours [s]
 * @param rows in how many rows
 * @param first where it did first
 * @param worst where it went farthest beyond
 * @param limit at that place, in the unit of what is limited
 * @param boundBy what holds the limit down there; empty where it is a plain voltage of the cells
 */
public record Exceeded(
        What what,
        double seconds,
        int rows,
        Moment first,
        Moment worst,
        double limit,
        Optional<ConstraintId> boundBy) {

    /** What was exceeded. */
    public enum What {
        /** The current out of the pack at that charge and temperature. */
        PACK_MAY_GIVE(Unit.AMPERE),
        /** The current into the pack at that charge and temperature. */
        PACK_MAY_TAKE(Unit.AMPERE),
        /** The current of a motor that drives; that is its limit either way. */
        MOTOR_CURRENT(Unit.AMPERE),
        /** The highest speed. */
        SPEED(Unit.METRE_PER_SECOND),
        /** The pack's voltage at which its emptiest cells are at their cut-off. */
        CELL_FLOOR(Unit.VOLT),
        /** The pack's voltage at which its fullest cells are at their charging limit. */
        CELL_CEILING(Unit.VOLT);

        private final Unit unit;

        What(Unit unit) {
            this.unit = unit;
        }

        /**
         * Returns the unit of the limit.
         *
         * @return the unit
         */
        public Unit unit() {
            return unit;
        }

        /**
         * Returns the name that files use.
         *
         * @return lower case with hyphens
         */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}

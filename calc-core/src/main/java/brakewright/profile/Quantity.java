package brakewright.profile;

import brakewright.limit.Severity;
import brakewright.spec.Unit;

/** What profiles are compared by. */
public enum Quantity {
    /** Setting: drive current per motor. */
    MOTOR_DRIVE_CURRENT("motor-drive-current", Unit.AMPERE, Sense.NONE),
    /** Setting: brake current per motor. */
    MOTOR_BRAKE_CURRENT("motor-brake-current", Unit.AMPERE, Sense.NONE),
    /** Setting: discharge current per controller. */
    PACK_DISCHARGE_CURRENT("pack-discharge-current", Unit.AMPERE, Sense.NONE),
    /** Setting: regen current per controller. */
    PACK_REGEN_CURRENT("pack-regen-current", Unit.AMPERE, Sense.NONE),
    /** Setting: where the low-voltage taper begins. */
    LOW_TAPER_BEGINS("low-voltage-taper-begins", Unit.VOLT, Sense.NONE),
    /** Setting: where the low-voltage taper ends. */
    LOW_TAPER_ENDS("low-voltage-taper-ends", Unit.VOLT, Sense.NONE),
    /** Setting: where the high-voltage taper begins. */
    HIGH_TAPER_BEGINS("high-voltage-taper-begins", Unit.VOLT, Sense.NONE),
    /** Setting: where the high-voltage taper ends. */
    HIGH_TAPER_ENDS("high-voltage-taper-ends", Unit.VOLT, Sense.NONE),
    /** Setting: the speed cap. */
    SPEED_CAP("speed-cap", Unit.METRE_PER_SECOND, Sense.NONE),
    /** The verdict, as the place of its word: 0 within limits, 1 conditional, 2 outside. */
    VERDICT("verdict", Unit.RATIO, Sense.LOWER),
    /** How far the worst check is from its limit; positive where it is exceeded. */
    SEVERITY("severity", Unit.RATIO, Sense.LOWER),
    /** Up to which charge state braking is safe for the packs. */
    SAFE_CHARGE("safe-charge", Unit.RATIO, Sense.HIGHER),
    /** The deceleration that all brakes reach where they are weakest, and the verdict on that. */
    BRAKE_WEAKEST("brake-weakest", Unit.METRE_PER_SECOND_SQUARED, Sense.HIGHER),
    /** The same on a wet road. */
    BRAKE_WEAKEST_WET("brake-weakest-wet", Unit.METRE_PER_SECOND_SQUARED, Sense.HIGHER),
    /** The highest current into the packs that the settings lead to. */
    GREATEST_RETURN("greatest-return", Unit.AMPERE, Sense.NONE),
    /** The highest current out of the packs that the settings lead to. */
    GREATEST_DRAW("greatest-draw", Unit.AMPERE, Sense.NONE),
    /** Stopping distance on dry level road, reaction left out. */
    STOP_DRY("stop-dry", Unit.METRE, Sense.LOWER),
    /** Stopping distance on wet level road, reaction left out. */
    STOP_WET("stop-wet", Unit.METRE, Sense.LOWER),
    /** Top speed on level road for a pull of 10 s, the speed cap left out. */
    TOP_SPEED("top-speed", Unit.METRE_PER_SECOND, Sense.HIGHER),
    /** Top speed on level road that is held for any time, the speed cap left out. */
    TOP_SPEED_LASTING("top-speed-lasting", Unit.METRE_PER_SECOND, Sense.HIGHER),
    /** Acceleration from standstill. */
    LAUNCH("launch", Unit.METRE_PER_SECOND_SQUARED, Sense.HIGHER),
    /** Time to the cruise speed of the first profile. */
    TIME_TO_CRUISE("time-to-cruise", Unit.SECOND, Sense.LOWER),
    /** Steepest slope held at a crawl. */
    CLIMB("climb", Unit.RATIO, Sense.HIGHER),
    /** The hottest winding after a hard pull and ten stops in a row. */
    HOTTEST_WINDING("hottest-winding", Unit.CELSIUS, Sense.LOWER),
    /** Range at a steady speed. */
    RANGE("range", Unit.METRE, Sense.HIGHER);

    /** Which way is better. */
    public enum Sense {
        /** More is better. */
        HIGHER,
        /** Less is better. */
        LOWER,
        /** Neither by itself. */
        NONE
    }

    private final String key;
    private final Unit unit;
    private final Sense sense;

    Quantity(String key, Unit unit, Sense sense) {
        this.key = key;
        this.unit = unit;
        this.sense = sense;
    }

    /**
     * Returns the name that comparisons use.
     *
     * @return lower case with hyphens
     */
    public String key() {
        return key;
    }

    /**
     * Returns the unit.
     *
     * @return the unit; 1 for a ratio
     */
    public Unit unit() {
        return unit;
    }

    /**
     * Returns which way is better.
     *
     * @return the sense
     */
    public Sense sense() {
        return sense;
    }

    /**
     * Returns whether this is told at a speed.
     *
     * @return true for stops, ranges and what else a speed is needed for
     */
    public boolean belongsToASpeed() {
        return switch (this) {
            case STOP_DRY, STOP_WET, TIME_TO_CRUISE, HOTTEST_WINDING, RANGE -> true;
            default -> false;
        };
    }

    /**
     * Returns a value as a person reads it: a severity as a share of the limit, by how much that is
     * exceeded.
     *
     * @param value of this
     * @return any other value as it is
     */
    public double read(double value) {
        return this == SEVERITY ? Severity.shareOfLimit(value) : value;
    }

    /**
     * Returns whether this is a setting and not a result.
     *
     * @return true for what a person enters
     */
    public boolean isSetting() {
        return compareTo(SPEED_CAP) <= 0;
    }
}

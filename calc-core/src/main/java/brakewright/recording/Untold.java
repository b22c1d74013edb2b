package brakewright.recording;

import java.util.Locale;

/** What a ride could not be told for want of something in its recording. */
public enum Untold {
    /** No current. */
    ENERGY("energy, charge and pack currents: no pack current was recorded"),
    /** A current without a voltage. */
    POWER("energy and idle power: no pack voltage was recorded"),
    /** No position beside a speed. */
    WHEEL_CHECK("whether the speed is right: there are no positions to hold it against"),
    /** No charge. */
    CHARGE("how the top speed fell with the charge: no charge was recorded"),
    /** Rows too far apart. */
    HARD_CHANGES("hard stops and pulls: no rows are within 3 s of each other"),
    /** No piece as long as a speed must be held. */
    HELD_SPEED("the speed that was held: no piece lasts that long");

    private final String meaning;

    Untold(String meaning) {
        this.meaning = meaning;
    }

    /**
     * Returns the name that files use.
     *
     * @return lower case with hyphens
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Returns what cannot be told, and why.
     *
     * @return a clause
     */
    public String meaning() {
        return meaning;
    }
}

package brakewright.recording;

import java.util.Locale;

/** What the speed of a ride was taken from. */
public enum SpeedSource {
    /** A column of the wheels' speed. */
    WHEELS("the wheels"),
    /** A column of the satellites' speed. */
    SATELLITES("satellites"),
    /** Worked out from positions. */
    POSITIONS("positions"),
    /** Worked out from a counter of distance. */
    COUNTER("the counter of distance");

    private final String words;

    SpeedSource(String words) {
        this.words = words;
    }

    /**
     * Returns the name that files use.
     *
     * @return lower case
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Returns what it is called in a sentence.
     *
     * @return a few words
     */
    public String words() {
        return words;
    }
}

package brakewright.limit;

/**
 * How grave it is to exceed a bound, or what was found, gravest first.
 *
 * <p>Source: the order and sense of signal words in ANSI Z535.6 and ISO 3864-2.
 */
public enum Signal {
    /** Braking may vanish, or life is at risk otherwise. */
    DANGER("danger"),
    /** A rating is exceeded. */
    WARNING("warning"),
    /** The margin is thin, or a fact is missing. */
    CAUTION("caution"),
    /** Good to know. */
    NOTICE("notice");

    private final String key;

    Signal(String key) {
        this.key = key;
    }

    /**
     * Returns the word in lower case.
     *
     * @return the signal word
     */
    public String key() {
        return key;
    }
}

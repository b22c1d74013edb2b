package brakewright.spec;

/** How several packs are joined. */
public enum Joining {
    /** Side by side: they share one voltage and divide the current. */
    PARALLEL("parallel"),
    /** End to end: they share one current and add their voltages. */
    SERIES("series");

    private final String key;

    Joining(String key) {
        this.key = key;
    }

    /**
     * Returns the word that build files use.
     *
     * @return lower case
     */
    public String key() {
        return key;
    }
}

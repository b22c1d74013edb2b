package brakewright.spec;

/** How the rider is carried, which decides what braking they bear. */
public enum Stance {
    /** On a deck, feet apart across the direction of travel. */
    STANDING_SIDEWAYS("standing-sideways"),
    /** On a deck, facing forward, hands on a bar. */
    STANDING_FORWARD("standing-forward"),
    /** On a seat. */
    SEATED("seated");

    private final String key;

    Stance(String key) {
        this.key = key;
    }

    /**
     * Returns the word a build file uses.
     *
     * @return the key
     */
    public String key() {
        return key;
    }

    /**
     * Returns whether the rider stands.
     *
     * @return true for both standing stances
     */
    public boolean isStanding() {
        return this != SEATED;
    }
}

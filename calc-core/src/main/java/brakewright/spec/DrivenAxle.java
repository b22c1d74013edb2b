package brakewright.spec;

/** Which axle the motors drive and brake. */
public enum DrivenAxle {
    /** The front axle alone. */
    FRONT("front"),
    /** The rear axle alone. */
    REAR("rear"),
    /** Both axles. */
    BOTH("both");

    private final String key;

    DrivenAxle(String key) {
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
}

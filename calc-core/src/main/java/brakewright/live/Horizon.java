package brakewright.live;

/** For how long a current shall flow. The longer, the more resistance it meets. */
public enum Horizon {
    /** A jerk. */
    SECOND(1.0),
    /** A hard pull or a stop. */
    TEN_SECONDS(10.0),
    /** A long ramp. */
    HALF_A_MINUTE(30.0);

    private final double seconds;

    Horizon(double seconds) {
        this.seconds = seconds;
    }

    /**
     * Returns how long that is.
     *
     * @return [s]
     */
    public double seconds() {
        return seconds;
    }
}

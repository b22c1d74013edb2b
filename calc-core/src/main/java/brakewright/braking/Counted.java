package brakewright.braking;

/** What adds up over a stop, and at which rate it does. */
enum Counted {
    /** Which braking takes away [m/s]. */
    SPEED,
    /** [s]. */
    TIME,
    /** [m]. */
    DISTANCE,
    /** The charge state [1]. */
    CHARGE,
    /** The square of the motor current [A²·s]. */
    CURRENT_SQUARED,
    /** Into the pack, at its terminals [J]. */
    TERMINALS,
    /** Lost in the resistance of the pack [J]. */
    PACK,
    /** Lost in windings [J]. */
    COPPER,
    /** Lost in controllers [J]. */
    CONTROLLER,
    /** Lost to the motors' own drag [J]. */
    MOTOR_DRAG,
    /** Lost between motors and wheels [J]. */
    DRIVE,
    /** Lost to rolling [J]. */
    ROLLING,
    /** Lost to the air [J]. */
    AIR,
    /** Turned into heat by the friction brake [J]. */
    FRICTION,
    /** Left in a height that was climbed; negative downhill [J]. */
    CLIMBED;

    /** How many there are. */
    static final int COUNT = values().length;

    /** Reads it from a tally. */
    double in(double[] tally) {
        return tally[ordinal()];
    }

    /** Writes it to a tally. */
    void put(double[] tally, double value) {
        tally[ordinal()] = value;
    }
}

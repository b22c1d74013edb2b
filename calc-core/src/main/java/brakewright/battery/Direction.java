package brakewright.battery;

/** Which way a current flows. */
public enum Direction {
    /** Cells are drawn from. */
    OUT,
    /** Cells are charged. */
    INTO
}

package brakewright.operation;

/**
 * What a protection that has opened waits for before it closes again, as such devices do it.
 *
 * <p>None of it is computed with: what opens in a stop or in a pull is told as open to the end.
 * Boards that close sooner are known, and boards that must be switched off first.
 */
public enum Recovery {
    /** Nothing has opened. */
    NONE,
    /**
     * That the pack is drawn from, or that no charger is there.
     *
     * <p>Source: Texas Instruments BQ76952 technical reference SLUUBY2B, over-current in charge:
     * recovers after some time with a current out of the pack, or with the terminals below the
     * cells.
     */
    DRAWN_FROM,
    /**
     * That the pack is drawn from, or that its cells have fallen to a release voltage.
     *
     * <p>Source: ABLIC S-8254A data sheet rev. 5.2, page 14, overcharge status: released at the
     * release voltage, or below the detection voltage once a load draws through the body diode;
     * release 0 or 0.1 to 0.4 V below detection.
     */
    DRAWN_FROM_OR_LOWER,
    /**
     * That the load is taken off.
     *
     * <p>Source: ABLIC S-8204B data sheet rev. 3.9, page 16, discharge overcurrent status: released
     * when the terminal behind the switch has risen to within 1.2 V of the pack.
     */
    LOAD_OFF,
    /**
     * That a charger is connected.
     *
     * <p>Source: ABLIC S-8211C data sheet rev. 5.0, page 20, overdischarge and power-down status:
     * released when a charger is connected.
     */
    CHARGER
}

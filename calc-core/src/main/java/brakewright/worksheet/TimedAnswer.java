package brakewright.worksheet;

/** What the sheet tells of the packs, each with the horizon for which it holds. */
public enum TimedAnswer {
    /** What the packs may give. */
    MAY_GIVE(Horizon.PULSE),
    /** What they may take. */
    MAY_TAKE(Horizon.BRAKING),
    /** Their voltage while the set current is drawn, over the charge. */
    LOADED(Horizon.PULSE),
    /** The cells over speed and charge while the vehicle brakes. */
    BRAKE_MAP(Horizon.PULSE),
    /** The cells in the first stop after a full charge. */
    FIRST_STOP(Horizon.PULSE),
    /** A stop, whose brake fades with what the packs take. */
    STOP(Horizon.PULSE),
    /** Steady speed that is held for a few seconds. */
    TOP_SPEED(Horizon.PULSE),
    /** Steady speed that is held for ever. */
    TOP_SPEED_LASTING(Horizon.ENDLESS),
    /** Whether the protection opens before the low-voltage taper has faded the drive. */
    HARD_PULL(Horizon.HARD_PULL),
    /** How far the vehicle goes. */
    RANGE(Horizon.ENDLESS),
    /** How warm the cells get. */
    PACK_HEAT(Horizon.ENDLESS),
    /** What descent the brake holds. */
    DESCENT(Horizon.ENDLESS),
    /** What flows when packs are joined. */
    JOINING(Horizon.INSTANT),
    /** What a fuse must break. */
    FUSES(Horizon.INSTANT);

    private final Horizon horizon;

    TimedAnswer(Horizon horizon) {
        this.horizon = horizon;
    }

    /**
     * Returns for how long a current flows in it.
     *
     * @return the horizon
     */
    public Horizon horizon() {
        return horizon;
    }
}

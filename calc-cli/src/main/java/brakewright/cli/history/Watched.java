package brakewright.cli.history;

/** What is followed from one worksheet to the next. */
public enum Watched {
    /** The motor drive current set, per motor. */
    MOTOR_DRIVE("limits/motor-drive-current/set", Kind.SETTING),
    /** The motor brake current set, per motor. */
    MOTOR_BRAKE("limits/motor-brake-current/set", Kind.SETTING),
    /** The pack discharge current set, of all controllers. */
    PACK_DISCHARGE("limits/pack-discharge-current/set", Kind.SETTING),
    /** The pack regen current set, of all controllers. */
    PACK_REGEN("limits/pack-regen-current/set", Kind.SETTING),
    /** Where the low-voltage taper begins. */
    LOW_TAPER_BEGINS("limits/low-voltage-taper/set/0", Kind.SETTING),
    /** Where the low-voltage taper ends. */
    LOW_TAPER_ENDS("limits/low-voltage-taper/set/1", Kind.SETTING),
    /** Where the high-voltage taper begins. */
    HIGH_TAPER_BEGINS("limits/high-voltage-taper/set/0", Kind.SETTING),
    /** Where the high-voltage taper ends. */
    HIGH_TAPER_ENDS("limits/high-voltage-taper/set/1", Kind.SETTING),
    /** The speed cap set. */
    SPEED_CAP("limits/speed-cap/set", Kind.SETTING),
    /** The verdict on pack and parts. */
    VERDICT("verdict", Kind.RESULT),
    /** The verdict on the brake. */
    BRAKE("brake_verdict/word", Kind.RESULT),
    /** The deceleration where the brake is weakest. */
    BRAKE_WEAKEST("brake_verdict/deceleration_m_per_s2", Kind.RESULT),
    /** The charge below which braking is safe as set. */
    SAFE_CHARGE("limits/pack-regen-current/set_holds_below_charge", Kind.RESULT),
    /** The first stop after a full charge, if nothing opens. */
    FIRST_STOP("first_stop/0/distance_m", Kind.RESULT),
    /** The first stop with the protection opened. */
    FIRST_STOP_OPENED("first_stop/0/opened/distance_m", Kind.RESULT),
    /** The top speed on level road, full. */
    TOP_SPEED("drive/top_speed_flat_m_per_s", Kind.RESULT),
    /** The steepest slope held. */
    CLIMB("drive/climb_slope_held", Kind.RESULT),
    /** How a full pack pulls away. */
    LAUNCH("drive/launch_m_per_s2", Kind.RESULT),
    /** What a motor bears for ever. */
    CONTINUOUS("heat/continuous_motor_current_A", Kind.RESULT);

    /** Whether it is put in or comes out. */
    public enum Kind {
        /** What a person enters into the controller. */
        SETTING,
        /** What follows. */
        RESULT
    }

    private final String path;
    private final Kind kind;

    Watched(String path, Kind kind) {
        this.path = path;
        this.kind = kind;
    }

    /**
     * Returns whether it is put in or comes out.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Returns where it stands in a worksheet.
     *
     * @return the names that lead to it, and places in lists, with strokes between them
     */
    public String path() {
        return path;
    }
}

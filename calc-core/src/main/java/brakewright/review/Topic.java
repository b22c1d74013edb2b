package brakewright.review;

/** What a finding is about. */
public enum Topic {
    /** The motor drive current set exceeds a constraint. */
    DRIVE_CURRENT_OVER("drive-current-over"),
    /** The motor brake current set exceeds a constraint. */
    BRAKE_CURRENT_OVER("brake-current-over"),
    /** The pack discharge current exceeds a constraint. */
    PACK_DRAW_OVER("pack-draw-over"),
    /** The pack regen current exceeds a constraint. */
    PACK_RETURN_OVER("pack-return-over"),
    /** The speed cap exceeds a constraint. */
    SPEED_CAP_OVER("speed-cap-over"),
    /** The resting pack exceeds the controller's voltage rating. */
    CONTROLLER_VOLTAGE_AT_REST("controller-voltage-at-rest"),
    /** A full pack has more volts than a fuse can break. */
    FUSE_VOLTAGE_OVER("fuse-voltage-over"),
    /** A short circuit drives more through a fuse than it can break. */
    FUSE_BREAKING_OVER("fuse-breaking-over"),
    /** What a fuse can break is not given. */
    FUSE_BREAKING_UNKNOWN("fuse-breaking-unknown"),
    /** Connected to empty capacitors, a plug without a resistor sparks. */
    PLUG_SPARKS("plug-sparks"),
    /** A taper leaves current beyond the voltage where it should have ended. */
    TAPER_ENDS_LATE("taper-ends-late"),
    /** A taper is narrower than its loop gain allows. */
    TAPER_SURGES("taper-surges"),
    /** A setting is not given, and is taken at its limit. */
    SETTING_NOT_GIVEN("setting-not-given"),
    /** In a state of the use the settings leave no brake. */
    BRAKE_TAKEN_AWAY("brake-taken-away"),
    /** In a hard pull the protection disconnects before the taper has faded the drive. */
    PROTECTION_BEFORE_TAPER("protection-before-taper"),
    /** Joined at their charge states, packs equalise with more than one of them bears. */
    JOINING_CURRENT("joining-current"),
    /** Up to which difference of voltage packs may be joined. */
    JOINING_DIFFERENCE("joining-difference"),
    /** Where one pack's protection opens, the others' follow. */
    PACK_LOSS_CASCADES("pack-loss-cascades"),
    /** The vehicle does not climb the slope that it is asked to. */
    CLIMB_SHORT("climb-short"),
    /** The winding reaches its limit before the top of the slope. */
    CLIMB_OVERHEATS("climb-overheats"),
    /** An ordinary ride warms the cells so far that they may not be charged any more. */
    RETURN_INTO_WARM_CELLS("return-into-warm-cells"),
    /** A full discharge at the set draw warms the cells beyond what they bear. */
    CELLS_OVERHEAT("cells-overheat"),
    /** Riding in town warms the cells so far, where an even ride would not. */
    TOWN_WARMS_CELLS("town-warms-cells"),
    /** The range falls short of what is asked. */
    RANGE_SHORT("range-short"),
    /** No figure tells at which speed a vehicle begins to weave. */
    SPEED_STABILITY("speed-stability"),
    /** A setting lies close below its limit. */
    THIN_MARGIN("thin-margin"),
    /** The electric brake fades above a speed. */
    BRAKE_FADES("brake-fades"),
    /** Below a speed the electric brake draws power. */
    BRAKE_DRAWS_POWER("brake-draws-power"),
    /**
     * Until the regen limiter acts, a hard grab sends more than a trip of the protection permits.
     */
    REGEN_OVERSHOOT("regen-overshoot"),
    /** Below a speed the controllers do not brake electrically. */
    BRAKE_ENDS("brake-ends"),
    /** The brakes stay below the deceleration wanted. */
    BRAKE_WEAK("brake-weak"),
    /** Both brakes together reach more than rider or vehicle bear. */
    BOTH_BRAKES_HARD("both-brakes-hard"),
    /** On a wet road the wheels slide below the motor brake current that is set. */
    WET_GRIP("wet-grip"),
    /** With equal motors on both axles the lighter axle slides before the limit is reached. */
    LIGHTER_AXLE_SLIDES("lighter-axle-slides"),
    /** The electric brake does not hold the steepest slope. */
    SLOPE_NOT_HELD("slope-not-held"),
    /** The electric brake is the only brake. */
    ONLY_BRAKE("only-brake"),
    /** How soon the bus voltage exceeds the rating if the pack is cut off. */
    BUS_RISE("bus-rise"),
    /** The bus capacitance is not given. */
    BUS_CAPACITANCE_UNKNOWN("bus-capacitance-unknown"),
    /** Above a speed the motors charge an emptier pack whatever is set. */
    FORCED_RETURN("forced-return"),
    /** At the set current the winding has no steady temperature. */
    WINDING_RUNS_AWAY("winding-runs-away"),
    /** How long the set current may flow. */
    WINDING_TIME("winding-time"),
    /** The motor's thermal figures are not given. */
    MOTOR_HEAT_UNKNOWN("motor-heat-unknown"),
    /** The protection sits on the charge lead alone, and guards against nothing while riding. */
    PROTECTION_BYPASSED("protection-bypassed"),
    /** Trips of the protection are not given. */
    PROTECTION_UNKNOWN("protection-unknown"),
    /** A part of the wiring is not given. */
    WIRING_UNKNOWN("wiring-unknown"),
    /** The cells' own temperature lies beyond those in use. */
    CELLS_BEYOND_USE("cells-beyond-use");

    private final String key;

    Topic(String key) {
        this.key = key;
    }

    /**
     * Returns the name that worksheets use.
     *
     * @return the name, lower case with hyphens
     */
    public String key() {
        return key;
    }
}

package brakewright.limit;

/** What can hold a limit down. */
public enum ConstraintId {
    /** The maker's charge current, divided among unequal cells. */
    CELL_CHARGE_RATING(
            "cell-charge-rating", "the maker's charge current, divided among unequal cells"),
    /** A charged cell must stay below its charging limit voltage. */
    VOLTAGE_CEILING("voltage-ceiling", "a charged cell must stay below its charging limit voltage"),
    /** A charged cell must stay below the protection's over-voltage trip. */
    PROTECTION_OVERVOLTAGE_TRIP(
            "protection-overvoltage-trip",
            "a charged cell must stay below the protection's over-voltage trip"),
    /** The charge current must stay below the protection's trip. */
    PROTECTION_CHARGE_TRIP(
            "protection-charge-trip", "the charge current must stay below the protection's trip"),
    /** The charged pack must stay below the controller's voltage rating. */
    CONTROLLER_VOLTAGE_RATING(
            "controller-voltage-rating",
            "the charged pack must stay below the controller's voltage rating"),
    /** The maker's discharge current, divided among unequal cells. */
    CELL_DISCHARGE_RATING(
            "cell-discharge-rating", "the maker's discharge current, divided among unequal cells"),
    /** A loaded cell must stay above its cut-off voltage. */
    VOLTAGE_FLOOR("voltage-floor", "a loaded cell must stay above its cut-off voltage"),
    /** A loaded cell must stay above the protection's under-voltage trip. */
    PROTECTION_UNDERVOLTAGE_TRIP(
            "protection-undervoltage-trip",
            "a loaded cell must stay above the protection's under-voltage trip"),
    /** The discharge current must stay below the protection's trip. */
    PROTECTION_DISCHARGE_TRIP(
            "protection-discharge-trip",
            "the discharge current must stay below the protection's trip"),
    /** The controllers' pack-current ratings together. */
    CONTROLLER_PACK_RATING(
            "controller-pack-rating", "the controllers' pack-current ratings together"),
    /** The main fuse must carry the current for long. */
    MAIN_FUSE("main-fuse", "the main fuse must carry the current for long"),
    /** The main conductors' ampacity. */
    MAIN_WIRE("main-wire", "the main conductors' ampacity"),
    /** The main plug's continuous rating. */
    MAIN_PLUG("main-plug", "the main plug's continuous rating"),
    /** The cell temperatures at which the current is permitted. */
    TEMPERATURE_WINDOW(
            "temperature-window", "the cell temperatures at which the current is permitted"),
    /** The maker's motor current. */
    MOTOR_CURRENT_RATING("motor-current-rating", "the maker's motor current"),
    /** The controller's motor-current rating. */
    CONTROLLER_MOTOR_RATING("controller-motor-rating", "the controller's motor-current rating"),
    /** The winding must stay within its limit for the time in use. */
    WINDING_HEAT("winding-heat", "the winding must stay within its limit for the time in use"),
    /** The driven wheels must not slide or spin. */
    GRIP("grip", "the driven wheels must not slide or spin"),
    /** No wheel may lift. */
    TIPPING("tipping", "no wheel may lift"),
    /** A standing rider must not tip over their feet. */
    RIDER_BALANCE("rider-balance", "a standing rider must not tip over their feet"),
    /** The deceleration that the rider bears. */
    RIDER_TOLERANCE("rider-tolerance", "the deceleration that the rider bears"),
    /** Where the only brake is electric, the high-voltage taper must leave some of it. */
    REMAINING_BRAKE(
            "remaining-brake",
            "where the only brake is electric, the high-voltage taper must leave some of it"),
    /** The motor's back-EMF must stay below the controller's voltage rating. */
    CONTROLLER_BACK_EMF(
            "controller-back-emf",
            "the motor's back-EMF must stay below the controller's voltage rating"),
    /** The motor's back-EMF must stay below the voltage of the pack. */
    PACK_BACK_EMF(
            "pack-back-emf",
            "the motor's back-EMF must stay below the voltage of the emptiest pack in use"),
    /** The taper must be wide enough not to surge. */
    LOOP_GAIN("loop-gain", "the taper must be wide enough not to surge");

    private final String key;
    private final String meaning;

    ConstraintId(String key, String meaning) {
        this.key = key;
        this.meaning = meaning;
    }

    /**
     * Returns the name that worksheets use.
     *
     * @return the name, lower case with hyphens
     */
    public String key() {
        return key;
    }

    /**
     * Returns what the constraint demands.
     *
     * @return a clause without a full stop
     */
    public String meaning() {
        return meaning;
    }

    /**
     * Returns whether the limit that this constraint forms lies below the bare rating by a margin.
     *
     * @return false for the cells' own ratings and voltages, heat, and what the rider bears
     */
    public boolean keepsMargin() {
        return switch (this) {
            case CELL_CHARGE_RATING,
                    CELL_DISCHARGE_RATING,
                    VOLTAGE_CEILING,
                    VOLTAGE_FLOOR,
                    TEMPERATURE_WINDOW,
                    WINDING_HEAT,
                    TIPPING,
                    RIDER_BALANCE,
                    RIDER_TOLERANCE,
                    REMAINING_BRAKE,
                    LOOP_GAIN ->
                    false;
            default -> true;
        };
    }
}

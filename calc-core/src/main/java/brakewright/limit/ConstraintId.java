package brakewright.limit;

/** What can hold a limit down. */
public enum ConstraintId {
    /** The maker's charge current less a margin, divided among unequal cells. */
    CELL_CHARGE_RATING(
            "cell-charge-rating",
            "the maker's charge current less a margin, divided among unequal cells",
            Signal.WARNING,
            Margin.KEPT),
    /** The maker's charge current at that charge less a margin, divided among unequal cells. */
    CELL_CHARGE_RATING_AT_CHARGE(
            "cell-charge-rating-at-charge",
            "the maker's charge current at that charge less a margin, divided among unequal cells",
            Signal.WARNING,
            Margin.KEPT),
    /** A charged cell must stay below its charging limit voltage. */
    VOLTAGE_CEILING(
            "voltage-ceiling",
            "a charged cell must stay below its charging limit voltage",
            Signal.WARNING,
            Margin.NONE),
    /** A charged cell must stay below the protection's over-voltage trip. */
    PROTECTION_OVERVOLTAGE_TRIP(
            "protection-overvoltage-trip",
            "a charged cell must stay below the protection's over-voltage trip",
            Signal.DANGER,
            Margin.KEPT),
    /** The charge current must stay below the protection's trip. */
    PROTECTION_CHARGE_TRIP(
            "protection-charge-trip",
            "the charge current must stay below the protection's trip",
            Signal.DANGER,
            Margin.KEPT),
    /** The charged pack must stay below the controller's voltage rating. */
    CONTROLLER_VOLTAGE_RATING(
            "controller-voltage-rating",
            "the charged pack must stay below the controller's voltage rating",
            Signal.DANGER,
            Margin.KEPT),
    /** The maker's discharge current less a margin, divided among unequal cells. */
    CELL_DISCHARGE_RATING(
            "cell-discharge-rating",
            "the maker's discharge current less a margin, divided among unequal cells",
            Signal.WARNING,
            Margin.KEPT),
    /** A loaded cell must stay above its cut-off voltage. */
    VOLTAGE_FLOOR(
            "voltage-floor",
            "a loaded cell must stay above its cut-off voltage",
            Signal.WARNING,
            Margin.NONE),
    /** A loaded cell must stay above the protection's under-voltage trip. */
    PROTECTION_UNDERVOLTAGE_TRIP(
            "protection-undervoltage-trip",
            "a loaded cell must stay above the protection's under-voltage trip",
            Signal.DANGER,
            Margin.KEPT),
    /** The discharge current must stay below the protection's trip. */
    PROTECTION_DISCHARGE_TRIP(
            "protection-discharge-trip",
            "the discharge current must stay below the protection's trip",
            Signal.DANGER,
            Margin.KEPT),
    /** The controllers' pack-current ratings together. */
    CONTROLLER_PACK_RATING(
            "controller-pack-rating",
            "the controllers' pack-current ratings together",
            Signal.WARNING,
            Margin.KEPT),
    /** The main fuse must carry the current for long. */
    MAIN_FUSE(
            "main-fuse",
            "the main fuse must carry the current for long",
            Signal.WARNING,
            Margin.KEPT),
    /** The main fuse must be able to break the voltage of a full pack. */
    FUSE_VOLTAGE_RATING(
            "fuse-voltage-rating",
            "the main fuse must be able to break the voltage of a full pack",
            Signal.DANGER,
            Margin.NONE),
    /** The main conductors' ampacity in the air of the deck. */
    MAIN_WIRE(
            "main-wire",
            "the main conductors' ampacity in the air of the deck",
            Signal.WARNING,
            Margin.KEPT),
    /** The main plug's continuous rating. */
    MAIN_PLUG("main-plug", "the main plug's continuous rating", Signal.WARNING, Margin.KEPT),
    /** The cell temperatures at which the current is permitted. */
    TEMPERATURE_WINDOW(
            "temperature-window",
            "the cell temperatures at which the current is permitted",
            Signal.WARNING,
            Margin.NONE),
    /** The maker's motor current. */
    MOTOR_CURRENT_RATING(
            "motor-current-rating", "the maker's motor current", Signal.WARNING, Margin.KEPT),
    /** The controller's motor-current rating. */
    CONTROLLER_MOTOR_RATING(
            "controller-motor-rating",
            "the controller's motor-current rating",
            Signal.WARNING,
            Margin.KEPT),
    /** The winding must stay within its limit for the time in use. */
    WINDING_HEAT(
            "winding-heat",
            "the winding must stay within its limit for the time in use",
            Signal.WARNING,
            Margin.NONE),
    /** The driven wheels must not slide or spin. */
    GRIP("grip", "the driven wheels must not slide or spin", Signal.DANGER, Margin.KEPT),
    /** What braking returns before the regen limiter acts must not open the protection. */
    REGEN_OVERSHOOT(
            "regen-overshoot",
            "what braking returns before the regen limiter acts must stay below the trips",
            Signal.DANGER,
            Margin.KEPT),
    /** No wheel may lift. */
    TIPPING("tipping", "no wheel may lift", Signal.DANGER, Margin.NONE),
    /** A standing rider must not tip over their feet. */
    RIDER_BALANCE(
            "rider-balance",
            "a standing rider must not tip over their feet",
            Signal.DANGER,
            Margin.NONE),
    /** The deceleration that the rider bears. */
    RIDER_TOLERANCE(
            "rider-tolerance",
            "the deceleration that the rider bears",
            Signal.WARNING,
            Margin.NONE),
    /** The settings must leave a brake in every state of the use. */
    REMAINING_BRAKE(
            "remaining-brake",
            "the settings must leave a brake in every state of the use",
            Signal.DANGER,
            Margin.NONE),
    /** The motor's back-EMF must stay below the controller's voltage rating. */
    CONTROLLER_BACK_EMF(
            "controller-back-emf",
            "the motor's back-EMF must stay below the controller's voltage rating",
            Signal.DANGER,
            Margin.KEPT),
    /** The motor's back-EMF must stay below the voltage of the pack. */
    PACK_BACK_EMF(
            "pack-back-emf",
            "the motor's back-EMF must stay below the voltage of the emptiest pack in use",
            Signal.CAUTION,
            Margin.KEPT),
    /** The taper must be wide enough not to surge. */
    LOOP_GAIN(
            "loop-gain", "the taper must be wide enough not to surge", Signal.WARNING, Margin.NONE),
    /** All brakes together must reach the deceleration wanted. */
    WANTED_DECELERATION(
            "wanted-deceleration",
            "all brakes together must reach the deceleration wanted",
            Signal.WARNING,
            Margin.NONE);

    /** Whether a limit lies below the bare rating. */
    private enum Margin {
        KEPT,
        NONE
    }

    private final String key;
    private final String meaning;
    private final Signal signal;
    private final Margin margin;

    ConstraintId(String key, String meaning, Signal signal, Margin margin) {
        this.key = key;
        this.meaning = meaning;
        this.signal = signal;
        this.margin = margin;
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
     * @return false for the cells' own voltages, heat, and what the rider bears
     */
    public boolean keepsMargin() {
        return margin == Margin.KEPT;
    }

    /**
     * Returns how grave it is to exceed this constraint: a danger where the brake may vanish, the
     * wheels slide or the rider falls, a warning where a rating is exceeded. A caution bears on no
     * verdict.
     *
     * @return the signal word
     */
    public Signal signal() {
        return signal;
    }
}

package brakewright.spec;

/**
 * The units in which calculations take their quantities, each with its two spellings: as pages
 * write it, and in plain letters as keys and build files do.
 */
public enum Unit {
    /** No quantity: a word, or something without a number. */
    NONE("", ""),
    /** A ratio or a count; pages write nothing behind it. */
    RATIO("", "1"),
    /** [A]. */
    AMPERE("A"),
    /** [C]. */
    COULOMB("C"),
    /** [Ah]. */
    AMPERE_HOUR("Ah"),
    /** [V]. */
    VOLT("V"),
    /** [Ω]. */
    OHM("Ω", "ohm"),
    /** [Ω²]. */
    OHM_SQUARED("Ω²", "ohm2"),
    /** [V·Ω]. */
    VOLT_OHM("V·Ω", "V*ohm"),
    /** [H]. */
    HENRY("H"),
    /** [F]. */
    FARAD("F"),
    /** [W]. */
    WATT("W"),
    /** [J]. */
    JOULE("J"),
    /** [J/m]. */
    JOULE_PER_METRE("J/m"),
    /** [Wh/km]. */
    WATT_HOUR_PER_KILOMETRE("Wh/km"),
    /** [kg]. */
    KILOGRAM("kg"),
    /** [kg/m³]. */
    KILOGRAM_PER_CUBIC_METRE("kg/m³", "kg/m3"),
    /** [m]. */
    METRE("m"),
    /** [m²]. */
    SQUARE_METRE("m²", "m2"),
    /** [1/m]. */
    PER_METRE("1/m"),
    /** [1/km]. */
    PER_KILOMETRE("1/km"),
    /** [s]. */
    SECOND("s"),
    /** [1/s]. */
    PER_SECOND("1/s"),
    /** [m/s]. */
    METRE_PER_SECOND("m/s"),
    /** [m/s²]. */
    METRE_PER_SECOND_SQUARED("m/s²", "m/s2"),
    /** [rad/s]. */
    RADIAN_PER_SECOND("rad/s"),
    /** [N]. */
    NEWTON("N"),
    /** [N·m]. */
    NEWTON_METRE("N·m", "N*m"),
    /** [N·m/A]. */
    NEWTON_METRE_PER_AMPERE("N·m/A", "N*m/A"),
    /** [A/N]. */
    AMPERE_PER_NEWTON("A/N"),
    /** [N·m·s/rad]. */
    NEWTON_METRE_SECOND_PER_RADIAN("N·m·s/rad", "N*m*s/rad"),
    /** [V·s/rad]. */
    VOLT_SECOND_PER_RADIAN("V·s/rad", "V*s/rad"),
    /** Turns in a minute per volt [rpm/V]. */
    RPM_PER_VOLT("rpm/V"),
    /** A temperature [°C]. */
    CELSIUS("°C", "degC"),
    /** A difference of temperatures [K]. */
    KELVIN("K"),
    /** [K/W]. */
    KELVIN_PER_WATT("K/W"),
    /** [W/K]. */
    WATT_PER_KELVIN("W/K"),
    /** [J/K]. */
    JOULE_PER_KELVIN("J/K"),
    /** [J/(kg·K)]. */
    JOULE_PER_KILOGRAM_KELVIN("J/(kg·K)", "J/(kg*K)");

    private final String text;
    private final String plain;

    Unit(String spelling) {
        this(spelling, spelling);
    }

    Unit(String text, String plain) {
        this.text = text;
        this.plain = plain;
    }

    /**
     * Returns how pages and messages write it.
     *
     * @return with its signs; empty for a ratio and for what is no quantity
     */
    public String text() {
        return text;
    }

    /**
     * Returns how keys, build files and JSON write it.
     *
     * @return in plain letters; "1" for a ratio or a count, empty for what is no quantity
     */
    public String plain() {
        return plain;
    }

    /**
     * Writes a number with its unit.
     *
     * @param number in the wording of the page
     * @return the number, and the unit behind it where there is one
     */
    public String behind(String number) {
        return text.isEmpty() ? number : number + " " + text;
    }
}

package brakewright.tables;

import java.util.Optional;

/** What the tables tell about a cell, each with the unit its figures stand in. */
public enum CellQuantity {
    /** Least capacity of a new cell [Ah]. */
    CAPACITY("capacity", "Ah", true),
    /** Largest continuous discharge current [A]. */
    DISCHARGE_CURRENT("discharge_current", "A", true),
    /** Largest charge current [A]. */
    CHARGE_CURRENT("charge_current", "A", true),
    /** Charge current its maker recommends [A]. */
    STANDARD_CHARGE_CURRENT("standard_charge_current", "A", false),
    /** Discharge current borne for the pulse time [A]. */
    DISCHARGE_PULSE("discharge_pulse", "A", false),
    /** Charge current borne for the pulse time [A]. */
    CHARGE_PULSE("charge_pulse", "A", false),
    /** How long the pulse currents are borne [s]. */
    PULSE_TIME("pulse_time", "s", false),
    /** Limit voltage of charging [V]. */
    VOLTAGE_MAX("voltage_max", "V", true),
    /** Cut-off voltage of discharging [V]. */
    VOLTAGE_MIN("voltage_min", "V", true),
    /** Resistance after a pulse of about 10 s at mid charge and 25 °C [Ω]. */
    RESISTANCE("resistance", "ohm", true),
    /** By what share an endless pull exceeds that resistance [1]. */
    SUSTAINED_RISE("sustained_rise", "1", false),
    /** Lowest temperature at which it may be charged [°C]. */
    CHARGE_TEMPERATURE_LOW("charge_temperature_low", "degC", true),
    /** Highest temperature at which it may be charged [°C]. */
    CHARGE_TEMPERATURE_HIGH("charge_temperature_high", "degC", true),
    /** Lowest temperature at which it may be discharged [°C]. */
    DISCHARGE_TEMPERATURE_LOW("discharge_temperature_low", "degC", true),
    /** Highest temperature at which it may be discharged [°C]. */
    DISCHARGE_TEMPERATURE_HIGH("discharge_temperature_high", "degC", true),
    /** Mass of one cell [kg]. */
    MASS("mass", "kg", false);

    private final String key;
    private final String unit;
    private final boolean required;

    CellQuantity(String key, String unit, boolean required) {
        this.key = key;
        this.unit = unit;
        this.required = required;
    }

    /**
     * Returns the word used for this quantity in the table of cell figures.
     *
     * @return the key
     */
    public String key() {
        return key;
    }

    /**
     * Returns the unit in which the table holds it.
     *
     * @return the unit, as the table spells it
     */
    public String unit() {
        return unit;
    }

    /**
     * Returns whether every cell of the table has this figure.
     *
     * @return false for figures that makers often leave out
     */
    public boolean isRequired() {
        return required;
    }

    boolean mustBePositive() {
        return !"degC".equals(unit);
    }

    static Optional<CellQuantity> parse(String text) {
        for (CellQuantity quantity : values()) {
            if (quantity.key.equals(text)) {
                return Optional.of(quantity);
            }
        }
        return Optional.empty();
    }
}

package brakewright.tables;

import java.util.Optional;

/** What a curve of the tables tells about a cell. */
public enum CurveQuantity {
    /** Rest voltage of a cell [V] over charge fraction [1]. */
    OPEN_CIRCUIT_VOLTAGE("open-circuit-voltage"),
    /** Factor of the mid-charge resistance [1] over charge fraction [1]. */
    RESISTANCE_BY_CHARGE("resistance-by-charge"),
    /** Further share of the mid-charge resistance into a cell [1] over charge fraction [1]. */
    RESISTANCE_INTO_BY_CHARGE("resistance-into-by-charge"),
    /** Further share of the mid-charge resistance at 10 °C [1] over charge fraction [1]. */
    RESISTANCE_COLD_BY_CHARGE("resistance-cold-by-charge"),
    /** Factor of the rise of resistance in a long pull [1] over charge fraction [1]. */
    SUSTAINED_RISE_BY_CHARGE("sustained-rise-by-charge"),
    /** Share of the charge current [1] over charge fraction [1]. */
    CHARGE_CURRENT_BY_CHARGE("charge-current-by-charge"),
    /** Factor of the resistance at 25 °C [1] over cell temperature [°C]. */
    RESISTANCE_BY_TEMPERATURE("resistance-by-temperature");

    private final String text;

    CurveQuantity(String text) {
        this.text = text;
    }

    /**
     * Returns the word used for this quantity in the curve table.
     *
     * @return the word
     */
    public String text() {
        return text;
    }

    boolean isOverCharge() {
        return this != RESISTANCE_BY_TEMPERATURE;
    }

    /** Whether it tells how much more there is, which may be nothing. */
    boolean isFurtherShare() {
        return this == RESISTANCE_INTO_BY_CHARGE || this == RESISTANCE_COLD_BY_CHARGE;
    }

    static Optional<CurveQuantity> parse(String text) {
        for (CurveQuantity quantity : values()) {
            if (quantity.text.equals(text)) {
                return Optional.of(quantity);
            }
        }
        return Optional.empty();
    }
}

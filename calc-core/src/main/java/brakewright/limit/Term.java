package brakewright.limit;

import brakewright.spec.Input;
import java.util.Optional;

/**
 * One number that goes into a formula.
 *
 * @param symbol as the formula writes it
 * @param meaning what it is
 * @param value the number
 * @param unit its unit; empty for a ratio
 * @param input where it was given; empty where it was computed
 */
public record Term(
        String symbol, String meaning, double value, String unit, Optional<Input> input) {

    /**
     * Makes a term from an input.
     *
     * @param symbol as the formula writes it
     * @param meaning what it is
     * @param value the number
     * @param unit its unit
     * @param input where it was given
     * @return the term
     */
    public static Term given(
            String symbol, String meaning, double value, String unit, Input input) {
        return new Term(symbol, meaning, value, unit, Optional.of(input));
    }

    /**
     * Makes a term from a calculation.
     *
     * @param symbol as the formula writes it
     * @param meaning what it is
     * @param value the number
     * @param unit its unit
     * @return the term
     */
    public static Term computed(String symbol, String meaning, double value, String unit) {
        return new Term(symbol, meaning, value, unit, Optional.empty());
    }
}

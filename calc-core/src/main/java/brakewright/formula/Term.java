package brakewright.formula;

import brakewright.spec.Input;
import brakewright.spec.Unit;

/**
 * One number that goes into a formula.
 *
 * @param symbol as the formula writes it
 * @param meaning what it is
 * @param value the number
 * @param unit its unit; empty for a ratio
 * @param origin where it comes from
 */
public record Term(String symbol, String meaning, double value, Unit unit, Origin origin) {

    /**
     * Makes a term from an input, written as {@link Notation} has it.
     *
     * @param input where it was given
     * @param value the number
     * @return the term
     * @throws IllegalArgumentException if no formula names the input
     */
    public static Term given(Input input, double value) {
        return given(Notation.of(input), value, input);
    }

    static Term given(Notation notation, double value, Input input) {
        return new Term(
                notation.symbol(),
                notation.meaning(),
                value,
                notation.unit(),
                new Origin.Given(input));
    }

    /**
     * Makes the result of a step.
     *
     * @param symbol as the formula writes it
     * @param meaning what it is
     * @param value the number
     * @param unit its unit
     * @return the term
     */
    public static Term computed(String symbol, String meaning, double value, Unit unit) {
        return new Term(symbol, meaning, value, unit, Origin.Found.WORKED_OUT);
    }

    /**
     * Makes a term that holds for every vehicle.
     *
     * @param symbol as the formula writes it
     * @param meaning what it is
     * @param value the number
     * @param unit its unit
     * @return the term
     */
    public static Term constant(String symbol, String meaning, double value, Unit unit) {
        return new Term(symbol, meaning, value, unit, Origin.Found.CONSTANT);
    }

    /**
     * Makes a term that was searched for.
     *
     * @param symbol as the formula writes it
     * @param meaning what it is
     * @param value the number
     * @param unit its unit
     * @return the term
     */
    public static Term searched(String symbol, String meaning, double value, Unit unit) {
        return new Term(symbol, meaning, value, unit, Origin.Found.SEARCHED);
    }

    /**
     * Makes a term from a model whose steps are not told.
     *
     * @param symbol as the formula writes it
     * @param meaning what it is
     * @param value the number
     * @param unit its unit
     * @return the term
     */
    public static Term modelled(String symbol, String meaning, double value, Unit unit) {
        return new Term(symbol, meaning, value, unit, Origin.Found.MODELLED);
    }
}

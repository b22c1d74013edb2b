package brakewright.formula;

import java.util.List;

/**
 * How a value was found.
 *
 * @param formula with the symbols of the terms
 * @param source where the formula is from
 * @param terms the numbers put in, in the order of the formula
 */
public record Derivation(String formula, String source, List<Term> terms) {

    /** Copies the terms. */
    public Derivation {
        terms = List.copyOf(terms);
    }

    /**
     * Says how a value was found.
     *
     * @param formula with the symbols of the terms
     * @param source where the formula is from
     * @param terms the numbers put in, in the order of the formula
     */
    public Derivation(String formula, String source, Term... terms) {
        this(formula, source, List.of(terms));
    }
}

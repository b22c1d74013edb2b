package brakewright.formula;

import brakewright.spec.WhichPack;

/**
 * One step on the way to a limit or a result. Formula and terms give what is found: a test
 * evaluates the formula as it is written.
 *
 * @param result the quantity that is found, to be put into later steps
 * @param derivation formula, source and the numbers put in
 * @param note how a search or an integration was done; empty where there is none
 * @param pack which of several packs it is about; the whole also where what it leads to says which
 */
public record Step(Term result, Derivation derivation, String note, WhichPack pack) {

    /**
     * Makes a step about what it leads to.
     *
     * @param result the quantity that is found
     * @param formula with the symbols of the terms
     * @param source where the formula is from
     * @param terms the numbers put in, in the order of the formula
     */
    public Step(Term result, String formula, String source, Term... terms) {
        this(result, new Derivation(formula, source, terms), "", WhichPack.WHOLE);
    }

    /** With a word on how it was searched or integrated. */
    Step noting(String word) {
        return new Step(result, derivation, word, pack);
    }
}

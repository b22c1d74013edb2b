package brakewright.limit;

/**
 * One step on the way to a limit. Formula and terms give the result: a test evaluates the formula
 * as it is written.
 *
 * @param result the quantity that is found, to be put into later steps
 * @param derivation formula, source and the numbers put in
 * @param pack which of several packs it is about, from 1; 0 where the constraint itself says so, or
 *     it is about the whole
 */
public record Step(Term result, Derivation derivation, int pack) {

    /** A step about what the constraint is about. */
    Step(Term result, Derivation derivation) {
        this(result, derivation, 0);
    }
}

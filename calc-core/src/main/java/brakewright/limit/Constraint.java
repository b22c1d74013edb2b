package brakewright.limit;

import brakewright.spec.Input;

/**
 * One constraint, evaluated.
 *
 * @param id which one
 * @param limit the highest value that satisfies it, never negative; infinite where it permits any
 * @param decisive the input whose origin speaks for the limit
 * @param derivation how it was found
 * @param pack which of several packs it is about, from 1; 0 where it is about the whole
 */
public record Constraint(
        ConstraintId id, double limit, Input decisive, Derivation derivation, int pack) {

    /** A constraint on the whole. */
    Constraint(ConstraintId id, double limit, Input decisive, Derivation derivation) {
        this(id, limit, decisive, derivation, 0);
    }
}

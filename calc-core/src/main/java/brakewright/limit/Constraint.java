package brakewright.limit;

import brakewright.spec.Input;

/**
 * One constraint, evaluated.
 *
 * @param id which one
 * @param limit the highest value that satisfies it, never negative; infinite where it permits any
 * @param decisive the input whose origin speaks for the limit
 * @param derivation how it was found
 */
public record Constraint(ConstraintId id, double limit, Input decisive, Derivation derivation) {}

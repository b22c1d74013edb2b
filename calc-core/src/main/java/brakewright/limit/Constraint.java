package brakewright.limit;

import brakewright.formula.Derivation;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import java.util.List;
import java.util.stream.Stream;

/**
 * One constraint, evaluated.
 *
 * @param id which one
 * @param limit the highest value that satisfies it [A], of a speed [m/s], never negative; infinite
 *     where it permits any
 * @param decisive the input whose origin speaks for the limit
 * @param conditions at which it was evaluated, where its limit does not name them itself: a charge
 *     state, a temperature at the start
 * @param steps that lead to it, in order; empty where the derivation says all
 * @param derivation how the limit follows from the results of the steps and from inputs; where the
 *     limit is infinite its formula is {@code no bound, since} and an inequality that holds
 * @param pack which of several packs it is about, or the whole
 */
public record Constraint(
        ConstraintId id,
        double limit,
        Input decisive,
        List<Term> conditions,
        List<Step> steps,
        Derivation derivation,
        WhichPack pack) {

    /** How the formula of a constraint begins that permits any value. */
    static final String NO_BOUND = "no bound, since ";

    /** Copies the conditions and steps. */
    public Constraint {
        conditions = List.copyOf(conditions);
        steps = List.copyOf(steps);
    }

    /** A constraint on the whole that one formula gives. */
    Constraint(ConstraintId id, double limit, Input decisive, Derivation derivation) {
        this(id, limit, decisive, List.of(), derivation);
    }

    /** A constraint on the whole that several steps give. */
    Constraint(
            ConstraintId id,
            double limit,
            Input decisive,
            List<Step> steps,
            Derivation derivation) {
        this(id, limit, decisive, List.of(), steps, derivation, WhichPack.WHOLE);
    }

    /** The same, evaluated at further conditions. */
    Constraint under(Term... further) {
        return new Constraint(
                id,
                limit,
                decisive,
                Stream.concat(conditions.stream(), Stream.of(further)).toList(),
                steps,
                derivation,
                pack);
    }
}

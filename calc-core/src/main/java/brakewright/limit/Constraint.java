package brakewright.limit;

import brakewright.formula.Derivation;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * One constraint, evaluated. How its limit follows from inputs is put into words when it is read.
 */
public final class Constraint {

    /** How the formula of a constraint begins that permits any value. */
    static final String NO_BOUND = "no bound, since ";

    private final ConstraintId id;
    private final double limit;
    private final Input decisive;
    private final List<Term> conditions;
    private final Working working;
    private final WhichPack pack;

    /** A constraint whose working is told when it is read, see the accessors. */
    Constraint(
            ConstraintId id,
            double limit,
            Input decisive,
            List<Term> conditions,
            Working working,
            WhichPack pack) {
        this.id = id;
        this.limit = limit;
        this.decisive = decisive;
        this.conditions = List.copyOf(conditions);
        this.working = working;
        this.pack = pack;
    }

    /** A constraint in words, see the accessors. */
    Constraint(
            ConstraintId id,
            double limit,
            Input decisive,
            List<Term> conditions,
            List<Step> steps,
            Derivation derivation,
            WhichPack pack) {
        this(id, limit, decisive, conditions, Working.of(steps, derivation), pack);
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

    /** A constraint on the whole whose working is told when it is read. */
    Constraint(ConstraintId id, double limit, Input decisive, Working working) {
        this(id, limit, decisive, List.of(), working, WhichPack.WHOLE);
    }

    /**
     * Returns which one it is.
     *
     * @return its identity
     */
    public ConstraintId id() {
        return id;
    }

    /**
     * Returns the highest value that satisfies it.
     *
     * @return [A], of a speed [m/s]; never negative, infinite where it permits any
     */
    public double limit() {
        return limit;
    }

    /**
     * Returns the input whose origin speaks for the limit.
     *
     * @return the input
     */
    public Input decisive() {
        return decisive;
    }

    /**
     * Returns at which conditions it was evaluated, where its limit does not name them itself.
     *
     * @return a charge state, a temperature at the start
     */
    public List<Term> conditions() {
        return conditions;
    }

    /**
     * Returns the steps that lead to it.
     *
     * @return in order; empty where the derivation says all
     */
    public List<Step> steps() {
        return working.words().steps();
    }

    /**
     * Returns how the limit follows from the results of the steps and from inputs.
     *
     * @return the derivation; where the limit is infinite its formula is {@code no bound, since}
     *     and an inequality that holds
     */
    public Derivation derivation() {
        return working.words().derivation();
    }

    /**
     * Returns which of several packs it is about.
     *
     * @return the pack, or the whole
     */
    public WhichPack pack() {
        return pack;
    }

    /** The same, evaluated at further conditions. */
    Constraint under(Term... further) {
        return new Constraint(
                id,
                limit,
                decisive,
                Stream.concat(conditions.stream(), Stream.of(further)).toList(),
                working,
                pack);
    }

    /** The same, one more step told behind the others. */
    Constraint after(Step step) {
        return new Constraint(id, limit, decisive, conditions, working.and(step), pack);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Constraint constraint
                && id == constraint.id
                && Double.compare(limit, constraint.limit) == 0
                && decisive == constraint.decisive
                && conditions.equals(constraint.conditions)
                && working.equals(constraint.working)
                && pack.equals(constraint.pack);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, limit, decisive, pack);
    }

    @Override
    public String toString() {
        return id + " " + limit + " " + pack + " " + conditions + " " + working;
    }
}

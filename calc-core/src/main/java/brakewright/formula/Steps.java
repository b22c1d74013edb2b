package brakewright.formula;

import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the steps that lead to a limit or a result. */
public final class Steps {

    private final List<Step> all = new ArrayList<>();

    /** Begins without any. */
    public Steps() {}

    /**
     * Adds a step.
     *
     * @param result what it finds
     * @param formula with the symbols of the terms
     * @param source where the formula is from
     * @param terms the numbers put in, in the order of the formula; each counts once
     * @return the result, to be put into later steps
     */
    public Term add(Term result, String formula, String source, Term... terms) {
        return add(WhichPack.WHOLE, result, formula, source, List.of(terms));
    }

    /**
     * Adds a step about one of several packs.
     *
     * @param pack which, or the whole
     * @param result what it finds
     * @param formula with the symbols of the terms
     * @param source where the formula is from
     * @param terms the numbers put in, in the order of the formula; each counts once
     * @return the result, to be put into later steps
     */
    public Term add(WhichPack pack, Term result, String formula, String source, List<Term> terms) {
        List<Term> once = new ArrayList<>(terms.size());
        for (Term term : terms) {
            if (!once.contains(term)) {
                once.add(term);
            }
        }
        all.add(new Step(result, new Derivation(formula, source, once), "", pack));
        return result;
    }

    /**
     * Adds a step that is there already.
     *
     * @param step the step
     * @return its result
     */
    public Term add(Step step) {
        all.add(step);
        return step.result();
    }

    /**
     * Adds steps that are there already.
     *
     * @param shared the steps
     * @return these steps
     */
    public Steps with(List<Step> shared) {
        all.addAll(shared);
        return this;
    }

    /**
     * Says how the last step was searched or integrated.
     *
     * @param note one or more sentences
     */
    public void note(String note) {
        all.add(all.remove(all.size() - 1).noting(note));
    }

    /**
     * Finds the result of a step that is there already.
     *
     * @param symbol of the result
     * @return the first of that name; empty if there is none
     */
    public Optional<Term> found(String symbol) {
        return all.stream()
                .map(Step::result)
                .filter(result -> result.symbol().equals(symbol))
                .findFirst();
    }

    /**
     * Returns all steps.
     *
     * @return in the order in which they were added
     */
    public List<Step> all() {
        return List.copyOf(all);
    }
}

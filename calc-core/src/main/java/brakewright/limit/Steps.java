package brakewright.limit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects the steps that lead to a limit. */
final class Steps {

    private final List<Step> all = new ArrayList<>();

    /** Adds a step and returns its result, to be put into later ones. */
    Term add(Term result, String formula, String source, Term... terms) {
        return add(0, result, formula, source, List.of(terms));
    }

    /** Likewise, about one of several packs, from 1. */
    Term add(int pack, Term result, String formula, String source, List<Term> terms) {
        all.add(new Step(result, new Derivation(formula, source, terms), pack));
        return result;
    }

    /** Adds steps that several limits share. */
    Steps with(List<Step> shared) {
        all.addAll(shared);
        return this;
    }

    /** The result of a step that is there already. */
    Optional<Term> found(String symbol) {
        return all.stream()
                .map(Step::result)
                .filter(result -> result.symbol().equals(symbol))
                .findFirst();
    }

    List<Step> all() {
        return List.copyOf(all);
    }
}

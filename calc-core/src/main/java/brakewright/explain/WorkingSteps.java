package brakewright.explain;

import brakewright.limit.Derivation;
import brakewright.limit.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Collects the steps of a working. */
final class WorkingSteps {

    private final List<WorkingStep> all = new ArrayList<>();

    List<WorkingStep> all() {
        return List.copyOf(all);
    }

    /** Adds a step and returns its result, to be put into later ones. */
    Term add(Term result, String formula, String source, Term... terms) {
        return add(0, result, formula, source, terms);
    }

    /** Likewise, about one of several packs, from 1. */
    Term add(int pack, Term result, String formula, String source, Term... terms) {
        all.add(
                new WorkingStep(
                        result.meaning(),
                        result.symbol(),
                        result.value(),
                        result.unit(),
                        new Derivation(formula, source, Stream.of(terms).distinct().toList()),
                        "",
                        pack));
        return result;
    }

    /** Says how the last step was searched or integrated. */
    void note(String note) {
        WorkingStep last = all.remove(all.size() - 1);
        all.add(
                new WorkingStep(
                        last.what(),
                        last.symbol(),
                        last.value(),
                        last.unit(),
                        last.derivation(),
                        note,
                        last.pack()));
    }
}

package brakewright.explain;

import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Unit;
import java.util.List;

/**
 * How one result came about, step by step. The last step gives the result itself.
 *
 * @param id which result
 * @param value the result, as the worksheet has it
 * @param unit of the result; empty for a ratio
 * @param meaning what the result tells
 * @param conditions for what it holds
 * @param steps in the order of the derivation
 */
public record Working(
        ResultId id,
        double value,
        Unit unit,
        String meaning,
        List<Term> conditions,
        List<Step> steps)
        implements WorkingOutcome {

    /** Copies the lists. */
    public Working {
        conditions = List.copyOf(conditions);
        steps = List.copyOf(steps);
    }

    static Working of(ResultId id, String meaning, List<Term> conditions, Steps steps) {
        Step last = steps.all().get(steps.all().size() - 1);
        return new Working(
                id, last.result().value(), last.result().unit(), meaning, conditions, steps.all());
    }
}

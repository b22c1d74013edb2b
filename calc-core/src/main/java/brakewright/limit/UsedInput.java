package brakewright.limit;

import brakewright.formula.Origin;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * An input that limits rest on: whoever doubts a verdict asks how well these are known.
 *
 * @param input which one
 * @param pack of which of several packs, or of the whole
 */
public record UsedInput(Input input, WhichPack pack) {

    /**
     * Collects what the working of all limits names, at both ends of the charge in use.
     *
     * @param build the vehicle
     * @param limits its limits
     * @return each once, in the order in which they are met
     */
    public static Set<UsedInput> of(Build build, Limits limits) {
        Set<UsedInput> all = new LinkedHashSet<>();
        double cellsC = build.battery().temperatureC();
        for (double charge : List.of(build.use().chargeFrom(), build.use().chargeTo())) {
            addAll(all, limits.packRegen().at(charge, cellsC).constraints());
            addAll(all, limits.packDischarge().at(charge, cellsC).constraints());
        }
        addAll(all, limits.motorDrive().constraints());
        addAll(all, limits.motorBrake().constraints());
        for (TaperLimit taper : List.of(limits.lowVoltageTaper(), limits.highVoltageTaper())) {
            addAll(all, taper.ends());
            addAll(all, List.of(taper.band()));
        }
        addAll(all, limits.speedCap().constraints());
        return all;
    }

    private static void addAll(Set<UsedInput> all, List<Constraint> constraints) {
        for (Constraint constraint : constraints) {
            for (Step step : constraint.steps()) {
                WhichPack pack = step.pack().or(constraint.pack());
                addAll(all, step.derivation().terms(), pack);
            }
            addAll(all, constraint.derivation().terms(), constraint.pack());
            addAll(all, constraint.conditions(), constraint.pack());
        }
    }

    private static void addAll(Set<UsedInput> all, List<Term> terms, WhichPack pack) {
        for (Term term : terms) {
            if (term.origin() instanceof Origin.Given given) {
                all.add(new UsedInput(given.input(), pack));
            }
        }
    }
}

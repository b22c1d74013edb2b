package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;

/** Terms that several pack constraints share. */
final class PackTerms {

    private PackTerms() {}

    static Term parallel(PackModel model) {
        return Term.given(
                "P", "cells in parallel", model.pack().parallel(), "", Input.PACK_PARALLEL);
    }

    /** The margin per cell; a maker's own voltage limit has none. */
    static Term margin(double margin) {
        return margin == 0.0
                ? Term.computed("m", "no margin on a maker's limit", margin, "V")
                : Term.given("m", "margin per cell", margin, "V", Input.MARGINS_OVERVOLTAGE);
    }

    static Term openCircuitVoltage(PackModel model, double charge) {
        return Term.computed(
                "u(s)", "cell open-circuit voltage", model.cellOpenCircuitVoltage(charge), "V");
    }

    static Term cellResistance(PackModel model, double charge, double temperatureC) {
        return Term.computed(
                "r(s,T)", "cell pulse resistance", model.cellResistance(charge, temperatureC), "Ω");
    }

    /** What one of several packs bears, told as the current of all. */
    static Constraint shared(Constraint own, double limit, double share, int pack) {
        List<Term> terms = new ArrayList<>(own.derivation().terms());
        terms.add(Term.computed("w", "share of the whole current", share, ""));
        return new Constraint(
                own.id(),
                limit,
                own.decisive(),
                new Derivation(
                        "[" + own.derivation().formula() + "]/w",
                        own.derivation().source() + "; Kirchhoff's laws for packs joined",
                        terms),
                pack);
    }
}

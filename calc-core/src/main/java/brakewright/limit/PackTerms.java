package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.formula.Derivation;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Cell;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.List;

/** Terms that several pack constraints share. */
public final class PackTerms {

    /** Where the pulse-power method is from. */
    static final String PULSE_POWER =
            "pulse-power method, DOE/ID-11069 (2003); INL/EXT-14-32849 rev. 3 (2014)";

    /** A source. */
    public static final String KIRCHHOFF = "Kirchhoff's laws";

    private PackTerms() {}

    /**
     * Returns the cells in parallel.
     *
     * @param model the pack
     * @return P
     */
    public static Term parallel(PackModel model) {
        return Term.given(Input.PACK_PARALLEL, model.pack().parallel());
    }

    /**
     * Returns the cells in series.
     *
     * @param model the pack
     * @return S
     */
    public static Term series(PackModel model) {
        return Term.given(Input.PACK_SERIES, model.pack().series());
    }

    /** The margin per cell. */
    static Term margin(double margin) {
        return Term.given(Input.MARGINS_OVERVOLTAGE, margin);
    }

    /** The margin of a cell's current rating. */
    static Term cellMargin(double margin) {
        return Term.given(Input.MARGINS_CELL, margin);
    }

    static Term openCircuitVoltage(PackModel model, double charge) {
        return Term.given(Input.CELL_OPEN_CIRCUIT_VOLTAGE, model.cellOpenCircuitVoltage(charge));
    }

    /** What makes up the resistance of a cell, see {@link #resistanceFormula}. */
    static List<Term> cellResistance(
            PackModel model, double factorByCharge, double moreInTheCold, double temperatureC) {
        Cell cell = model.pack().cell();
        List<Term> terms = new ArrayList<>();
        terms.add(Term.given(Input.CELL_RESISTANCE, cell.resistance()));
        terms.add(Term.given(Input.CELL_RESISTANCE_BY_CHARGE, factorByCharge));
        if (moreInTheCold > 0.0) {
            terms.add(Term.given(Input.CELL_RESISTANCE_COLD_BY_CHARGE, moreInTheCold));
        }
        terms.add(
                Term.given(
                        Input.CELL_RESISTANCE_BY_TEMPERATURE,
                        cell.resistanceByTemperature().at(temperatureC)));
        return terms;
    }

    /** How formulas write it. */
    static String resistanceFormula(double moreInTheCold) {
        return moreInTheCold > 0.0 ? "r·(f_s + c_s)·f_T" : "r·f_s·f_T";
    }

    /** The share of the strongest of unequal cells. */
    static Step strongestShare(PackModel model) {
        return new Step(
                Term.computed(
                        "k", "share of the strongest cell", model.strongestShare(), Unit.RATIO),
                "P/(1 + (P − 1)·(1 − σ))",
                KIRCHHOFF + " for unequal cells in parallel",
                parallel(model),
                Term.given(Input.PACK_RESISTANCE_SPREAD, model.pack().resistanceSpread()));
    }

    /** What one of several packs bears, told as the current of all. */
    static Constraint shared(Constraint own, double limit, Term share, WhichPack pack) {
        if (Double.isInfinite(own.limit())) {
            return new Constraint(
                    own.id(),
                    limit,
                    own.decisive(),
                    own.conditions(),
                    own.steps(),
                    own.derivation(),
                    pack);
        }
        Term alone =
                Term.computed("I_p", "what the pack bears by itself", own.limit(), Unit.AMPERE);
        List<Step> steps = new ArrayList<>(own.steps());
        steps.add(new Step(alone, own.derivation(), "", WhichPack.WHOLE));
        return new Constraint(
                own.id(),
                limit,
                own.decisive(),
                own.conditions(),
                steps,
                new Derivation("I_p/w", KIRCHHOFF + " for packs joined", alone, share),
                pack);
    }
}

package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.battery.WorstGroup;
import brakewright.formula.Reading;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.GroupSpread;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;

/** How the cells of a pack's worst group come by their voltage and resistance. */
public final class GroupTerms {

    private static final String CONSERVED = "Kirchhoff's current law; charge is conserved";

    private final PackModel model;
    private final WorstGroup.End end;
    private final WorstGroup group;
    private final GroupSpread spread;

    /**
     * Makes the terms of a pack.
     *
     * @param model the pack
     * @param end which of its groups
     */
    public GroupTerms(PackModel model, WorstGroup.End end) {
        this.model = model;
        this.end = end;
        this.group = model.worst(end);
        this.spread = model.pack().groupSpread();
    }

    /** The constraint with the step to the charge state at which its curves are read. */
    Constraint at(Constraint constraint, double charge) {
        if (group.isMean()) {
            return constraint;
        }
        return read(
                constraint,
                chargeAt(Term.modelled("s", "charge state of the pack", charge, Unit.RATIO)));
    }

    /**
     * Returns the step to the charge state of the group.
     *
     * @param pack charge state of the pack
     * @return the step
     */
    public Step chargeAt(Term pack) {
        return step(
                Term.computed(
                        "s_g", "charge of its " + word(), group.chargeAt(pack.value()), Unit.RATIO),
                end == WorstGroup.End.FULLEST
                        ? pack.symbol() + " + d"
                        : "1 − d − (1 − " + pack.symbol() + ")/(1 − κ)",
                pack);
    }

    /** The constraint with the step to the charge state of the pack where the group has another. */
    Constraint where(Constraint constraint, double cellVoltage) {
        if (group.isMean()) {
            return constraint;
        }
        double own = group.chargeWhere(cellVoltage);
        return read(
                constraint,
                step(
                        Term.computed(
                                "s_m",
                                "charge of the pack then",
                                group.packChargeWhere(own),
                                Unit.RATIO),
                        end == WorstGroup.End.FULLEST ? "s_g − d" : "1 − (1 − d − s_g)·(1 − κ)",
                        (end == WorstGroup.End.FULLEST
                                        ? Reading.FULLEST_CHARGE
                                        : Reading.EMPTIEST_CHARGE)
                                .of(own)));
    }

    private Step step(Term where, String formula, Term from) {
        List<Term> terms = new ArrayList<>(List.of(from, shift()));
        if (end == WorstGroup.End.EMPTIEST) {
            terms.add(capacity());
        }
        return new Step(where, formula, CONSERVED, terms.toArray(Term[]::new));
    }

    /** With the step to where its curves are read. */
    private static Constraint read(Constraint constraint, Step where) {
        return constraint.after(where).under(where.result());
    }

    /**
     * Returns the voltage of its cells at rest.
     *
     * @param charge of the pack [1]
     * @return u of its cells, which are the pack's where it does not depart from that
     */
    public Term openCircuitVoltage(double charge) {
        double voltage = group.openCircuitVoltage(charge);
        return group.isMean()
                ? Term.given(Input.CELL_OPEN_CIRCUIT_VOLTAGE, voltage)
                : Reading.GROUP_AT_REST.of(voltage);
    }

    /**
     * Returns what makes up the resistance of its cells, see {@link #resistanceFormula}.
     *
     * @param charge of the pack [1]
     * @param temperatureC of the cells [°C]
     * @return the factors
     */
    public List<Term> resistance(double charge, double temperatureC) {
        List<Term> terms =
                new ArrayList<>(
                        PackTerms.cellResistance(
                                model,
                                factor(charge),
                                moreInTheCold(charge, temperatureC),
                                temperatureC));
        if (spread.resistance() > 0.0) {
            terms.add(Term.given(Input.PACK_GROUP_RESISTANCE, spread.resistance()));
        }
        return terms;
    }

    /**
     * Returns by what share an endless current exceeds the pulse resistance of its cells.
     *
     * @param charge of the pack [1]
     * @param temperatureC of the cells [°C]
     * @return x_r [1]
     */
    public double rise(double charge, double temperatureC) {
        return model.rise(
                group.chargeAt(charge), factor(charge) + moreInTheCold(charge, temperatureC));
    }

    private double moreInTheCold(double charge, double temperatureC) {
        return model.moreInTheCold(group.chargeAt(charge), temperatureC);
    }

    private double factor(double charge) {
        return model.factorByCharge(end, group.chargeAt(charge));
    }

    /**
     * Returns the resistance of its cells as formulas write it.
     *
     * @param charge of the pack [1]
     * @param temperatureC of the cells [°C]
     * @param lasting what follows for a current that lasts; empty for a pulse
     * @return the formula, in brackets
     */
    public String resistanceFormula(double charge, double temperatureC, String lasting) {
        return "("
                + PackTerms.resistanceFormula(moreInTheCold(charge, temperatureC))
                + (spread.resistance() > 0.0 ? "·(1 + x_g)" : "")
                + lasting
                + ")";
    }

    private String word() {
        return end == WorstGroup.End.FULLEST ? "fullest group" : "emptiest group";
    }

    private Term shift() {
        return Term.given(Input.PACK_GROUP_CHARGE, spread.charge());
    }

    private Term capacity() {
        return Term.given(Input.PACK_GROUP_CAPACITY, spread.capacity());
    }
}

package brakewright.limit;

import brakewright.battery.AlongCharge;
import brakewright.battery.PackModel;
import brakewright.battery.WorstGroup;
import brakewright.formula.Derivation;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;

/**
 * A charged cell must stay below a voltage: {@code P·(u_max − m − u(sg))/(r(sg,T,t)·(1 + x_g))}.
 *
 * <p>Source: pulse-power method, DOE/ID-11069 (2003); INL/EXT-14-32849 rev. 3 (2014).
 *
 * <p>It is the cells of the fullest group that meet it first, see {@link WorstGroup}.
 *
 * @param id the charging limit or the protection's trip
 * @param model the pack
 * @param voltage the voltage of one cell [V]
 * @param margin kept free below it [V]
 * @param input where the voltage was given
 * @param lasting how long the current flows
 */
record CellCeiling(
        ConstraintId id,
        PackModel model,
        double voltage,
        double margin,
        Input input,
        Lasting lasting)
        implements VoltageConstraint {

    @Override
    public double rest(double charge) {
        return model.worst(WorstGroup.End.FULLEST).openCircuitVoltage(charge);
    }

    @Override
    public double[] rests(AlongCharge along, int place) {
        return along.pack(place).group(WorstGroup.End.FULLEST).voltages();
    }

    @Override
    public double left(double rest) {
        return voltage - margin - rest;
    }

    @Override
    public double resistance(double charge, double temperatureC) {
        return model.groupResistance(
                model.worst(WorstGroup.End.FULLEST), charge, temperatureC, lasting.seconds());
    }

    @Override
    public double[] resistances(AlongCharge along, int place, double temperatureC) {
        return along.pack(place)
                .group(WorstGroup.End.FULLEST)
                .resistances(temperatureC, lasting.seconds());
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        GroupTerms group = new GroupTerms(model, WorstGroup.End.FULLEST);
        List<Term> terms = new ArrayList<>();
        terms.add(PackTerms.parallel(model));
        Term ceiling = Term.given(input, voltage);
        Term rest = group.openCircuitVoltage(charge);
        terms.add(ceiling);
        if (margin != 0.0) {
            terms.add(PackTerms.margin(margin));
        }
        terms.add(rest);
        Steps steps = new Steps();
        terms.addAll(group.resistance(charge, temperatureC));
        terms.addAll(lasting.terms(steps, model.pack().cell(), group.rise(charge, temperatureC)));
        Constraint constraint =
                new Constraint(
                        id,
                        limitAt(charge, temperatureC),
                        input,
                        steps.all(),
                        new Derivation(
                                "max(0, P·("
                                        + ceiling.symbol()
                                        + (margin == 0.0 ? "" : " − m")
                                        + " − "
                                        + rest.symbol()
                                        + ")/"
                                        + group.resistanceFormula(
                                                charge,
                                                temperatureC,
                                                lasting.formula(model.pack().cell()))
                                        + ")",
                                PackTerms.PULSE_POWER,
                                terms));
        return group.at(constraint, charge);
    }
}

package brakewright.limit;

import brakewright.battery.AlongCharge;
import brakewright.battery.PackModel;
import brakewright.battery.WorstGroup;
import brakewright.formula.Derivation;
import brakewright.formula.Term;
import brakewright.spec.Cell;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;

/**
 * A loaded cell must stay above a voltage: {@code P·(u(sg) − m − u_min)/(r(sg,T)·(1 + x_g))}.
 *
 * <p>Source: pulse-power method, DOE/ID-11069 (2003); INL/EXT-14-32849 rev. 3 (2014).
 *
 * <p>It is the cells of the emptiest group that meet it first, see {@link WorstGroup}.
 *
 * @param id the cut-off voltage or the protection's trip
 * @param model the pack
 * @param voltage the voltage of one cell [V]
 * @param margin kept free above it [V]
 * @param input where the voltage was given
 */
record CellFloor(ConstraintId id, PackModel model, double voltage, double margin, Input input)
        implements VoltageConstraint {

    @Override
    public double rest(double charge) {
        return model.worst(WorstGroup.End.EMPTIEST).openCircuitVoltage(charge);
    }

    @Override
    public double[] rests(AlongCharge along, int place) {
        return along.pack(place).group(WorstGroup.End.EMPTIEST).voltages();
    }

    @Override
    public double left(double rest) {
        return rest - margin - voltage;
    }

    @Override
    public double resistance(double charge, double temperatureC) {
        return model.groupResistance(
                model.worst(WorstGroup.End.EMPTIEST), charge, temperatureC, Cell.PULSE);
    }

    @Override
    public double[] resistances(AlongCharge along, int place, double temperatureC) {
        return along.pack(place)
                .group(WorstGroup.End.EMPTIEST)
                .resistances(temperatureC, Cell.PULSE);
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        GroupTerms group = new GroupTerms(model, WorstGroup.End.EMPTIEST);
        List<Term> terms = new ArrayList<>();
        terms.add(PackTerms.parallel(model));
        Term rest = group.openCircuitVoltage(charge);
        terms.add(rest);
        if (margin != 0.0) {
            terms.add(PackTerms.margin(margin));
        }
        Term floor = Term.given(input, voltage);
        terms.add(floor);
        terms.addAll(group.resistance(charge, temperatureC));
        Constraint constraint =
                new Constraint(
                        id,
                        limitAt(charge, temperatureC),
                        input,
                        new Derivation(
                                "max(0, P·("
                                        + rest.symbol()
                                        + (margin == 0.0 ? "" : " − m")
                                        + " − "
                                        + floor.symbol()
                                        + ")/"
                                        + group.resistanceFormula(charge, temperatureC, "")
                                        + ")",
                                PackTerms.PULSE_POWER,
                                terms));
        return group.at(constraint, charge);
    }
}

package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;

/**
 * A charged cell must stay below a voltage: {@code P·(u_lim − m − u(s))/r(s,T)}.
 *
 * <p>Source: pulse-power method, DOE/ID-11069 (2003); INL/EXT-14-32849 rev. 3 (2014).
 *
 * <p>Assumption: all groups in series stand at the same voltage, perfectly balanced; the highest of
 * unbalanced ones meets the bound earlier. How much earlier is not known without measuring each.
 *
 * @param id the charging limit or the protection's trip
 * @param model the pack
 * @param voltage the voltage of one cell [V]
 * @param margin kept free below it [V]
 * @param input where the voltage was given
 */
record CellCeiling(ConstraintId id, PackModel model, double voltage, double margin, Input input)
        implements VoltageConstraint {

    @Override
    public double headroom(double charge) {
        return voltage - margin - model.cellOpenCircuitVoltage(charge);
    }

    @Override
    public double resistance(double charge, double temperatureC) {
        return model.cellResistance(charge, temperatureC) / model.pack().parallel();
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        List<Term> terms = new ArrayList<>();
        terms.add(PackTerms.parallel(model));
        terms.add(Term.given("u_lim", "highest cell voltage", voltage, "V", input));
        if (margin != 0.0) {
            terms.add(PackTerms.margin(margin));
        }
        terms.add(PackTerms.openCircuitVoltage(model, charge));
        terms.addAll(PackTerms.cellResistance(model, charge, temperatureC));
        return new Constraint(
                id,
                limitAt(charge, temperatureC),
                input,
                new Derivation(
                        "max(0, P·(u_lim"
                                + (margin == 0.0 ? "" : " − m")
                                + " − u)/"
                                + PackTerms.CELL_RESISTANCE
                                + ")",
                        PackTerms.PULSE_POWER,
                        terms));
    }
}

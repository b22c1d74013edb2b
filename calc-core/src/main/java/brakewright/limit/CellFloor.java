package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;

/**
 * A loaded cell must stay above a voltage: {@code P·(u(s) − m − u_lim)/r(s,T)}.
 *
 * <p>Source: pulse-power method, DOE/ID-11069 (2003); INL/EXT-14-32849 rev. 3 (2014).
 *
 * <p>Assumption: all groups in series stand at the same voltage, perfectly balanced; the lowest of
 * unbalanced ones meets the bound earlier. How much earlier is not known without measuring each.
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
    public double headroom(double charge) {
        return model.cellOpenCircuitVoltage(charge) - margin - voltage;
    }

    @Override
    public double resistance(double charge, double temperatureC) {
        return model.cellResistance(charge, temperatureC) / model.pack().parallel();
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        List<Term> terms = new ArrayList<>();
        terms.add(PackTerms.parallel(model));
        terms.add(PackTerms.openCircuitVoltage(model, charge));
        if (margin != 0.0) {
            terms.add(PackTerms.margin(margin));
        }
        terms.add(Term.given("u_lim", "lowest cell voltage", voltage, "V", input));
        terms.addAll(PackTerms.cellResistance(model, charge, temperatureC));
        return new Constraint(
                id,
                limitAt(charge, temperatureC),
                input,
                new Derivation(
                        "max(0, P·(u"
                                + (margin == 0.0 ? "" : " − m")
                                + " − u_lim)/"
                                + PackTerms.CELL_RESISTANCE
                                + ")",
                        PackTerms.PULSE_POWER,
                        terms));
    }
}

package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Input;
import java.util.List;

/**
 * A loaded cell must stay above a voltage: {@code P·(u(s) − m − u_lim)/r(s,T)}.
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
        return new Constraint(
                id,
                limitAt(charge, temperatureC),
                input,
                new Derivation(
                        "P·(u(s) − m − u_lim)/r(s,T)",
                        "pulse-power method, DOE/ID-11069 (2003); INL/EXT-14-32849 rev. 3 (2014)",
                        List.of(
                                PackTerms.parallel(model),
                                PackTerms.openCircuitVoltage(model, charge),
                                PackTerms.margin(margin),
                                Term.given("u_lim", "lowest cell voltage", voltage, "V", input),
                                PackTerms.cellResistance(model, charge, temperatureC))));
    }
}

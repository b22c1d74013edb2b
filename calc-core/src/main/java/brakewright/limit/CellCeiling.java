package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Input;
import java.util.List;

/**
 * A charged cell must stay below a voltage: {@code P·(u_lim − m − u(s))/r(s,T)}.
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
        return new Constraint(
                id,
                limitAt(charge, temperatureC),
                input,
                new Derivation(
                        "P·(u_lim − m − u(s))/r(s,T)",
                        "pulse-power method, DOE/ID-11069 (2003); INL/EXT-14-32849 rev. 3 (2014)",
                        List.of(
                                PackTerms.parallel(model),
                                Term.given("u_lim", "highest cell voltage", voltage, "V", input),
                                PackTerms.margin(margin),
                                PackTerms.openCircuitVoltage(model, charge),
                                PackTerms.cellResistance(model, charge, temperatureC))));
    }
}

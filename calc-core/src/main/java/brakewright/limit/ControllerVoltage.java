package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.spec.Input;
import java.util.List;

/**
 * The charged pack must stay below the controllers' voltage rating: {@code ((1 − m)·V_rated −
 * U(s))/R(s,T)}.
 *
 * @param model the pack
 * @param rating of a controller [V]
 * @param margin share of the rating kept free [1]
 */
record ControllerVoltage(BatteryModel model, double rating, double margin)
        implements VoltageConstraint {

    @Override
    public ConstraintId id() {
        return ConstraintId.CONTROLLER_VOLTAGE_RATING;
    }

    @Override
    public double headroom(double charge) {
        return (1.0 - margin) * rating - model.openCircuitVoltage(charge);
    }

    @Override
    public double resistance(double charge, double temperatureC) {
        return model.resistance(charge, temperatureC);
    }

    @Override
    public double exhausted(double current, double inner, double outer, double temperatureC) {
        return model.isEven()
                ? VoltageConstraint.super.exhausted(current, inner, outer, temperatureC)
                : Bend.exhausted(this, current, inner, outer, temperatureC);
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        return new Constraint(
                id(),
                limitAt(charge, temperatureC),
                Input.CONTROLLER_VOLTAGE_RATING,
                new Derivation(
                        "((1 − m)·V_rated − U(s))/R(s,T)",
                        "Ohm's law",
                        List.of(
                                Term.given(
                                        "m",
                                        "margin",
                                        margin,
                                        "",
                                        Input.MARGINS_CONTROLLER_VOLTAGE),
                                Term.given(
                                        "V_rated",
                                        "controller voltage rating",
                                        rating,
                                        "V",
                                        Input.CONTROLLER_VOLTAGE_RATING),
                                Term.computed(
                                        "U(s)",
                                        "pack open-circuit voltage",
                                        model.openCircuitVoltage(charge),
                                        "V"),
                                Term.computed(
                                        "R(s,T)",
                                        "pack resistance",
                                        model.resistance(charge, temperatureC),
                                        "Ω"))));
    }
}

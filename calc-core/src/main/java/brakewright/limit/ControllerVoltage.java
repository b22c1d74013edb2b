package brakewright.limit;

import brakewright.battery.AlongCharge;
import brakewright.battery.BatteryModel;
import brakewright.formula.Derivation;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Battery;
import brakewright.spec.Cell;
import brakewright.spec.Input;

/**
 * The charged pack must stay below the controllers' voltage rating: {@code ((1 − m)·V_rated −
 * U(s))/R(s,T,t)}.
 *
 * @param battery all packs
 * @param model of them
 * @param rating of a controller [V]
 * @param margin share of the rating kept free [1]
 * @param lasting how long the current flows
 */
record ControllerVoltage(
        Battery battery, BatteryModel model, double rating, double margin, Lasting lasting)
        implements VoltageConstraint {

    @Override
    public ConstraintId id() {
        return ConstraintId.CONTROLLER_VOLTAGE_RATING;
    }

    @Override
    public double rest(double charge) {
        return model.openCircuitVoltage(charge);
    }

    @Override
    public double[] rests(AlongCharge along, int place) {
        return along.voltages();
    }

    @Override
    public double left(double rest) {
        return (1.0 - margin) * rating - rest;
    }

    @Override
    public double resistance(double charge, double temperatureC) {
        return model.resistance(charge, temperatureC, lasting.seconds());
    }

    @Override
    public double[] resistances(AlongCharge along, int place, double temperatureC) {
        return along.resistances(temperatureC, lasting.seconds());
    }

    @Override
    public boolean isStraight() {
        return model.isEven();
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        Steps steps = new Steps();
        BatterySteps packs = new BatterySteps(battery, model);
        Term voltage = packs.voltage(steps, "U", "packs at rest", charge);
        Term resistance =
                packs.resistance(
                        steps,
                        lasting.seconds() > Cell.PULSE
                                ? "resistance, lasting braking"
                                : "resistance, 10 s pulse",
                        charge,
                        temperatureC,
                        lasting);
        return new Constraint(
                id(),
                limitAt(charge, temperatureC),
                Input.CONTROLLER_VOLTAGE_RATING,
                steps.all(),
                new Derivation(
                        "max(0, ((1 − m)·V_r − U)/R)",
                        "Ohm's law; own choice, the rating less a margin",
                        Term.given(Input.MARGINS_CONTROLLER_VOLTAGE, margin),
                        Term.given(Input.CONTROLLER_VOLTAGE_RATING, rating),
                        voltage,
                        resistance));
    }
}

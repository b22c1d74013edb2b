package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Input;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Outside the temperatures its maker permits a cell takes or gives nothing; in the cold band of
 * charging only a share of its rating: {@code x(T)·P·i/k}, and no bound at all where x is 1.
 *
 * @param rating the cell rating that is shared
 * @param share x, from 0 to 1, over the cell temperature [°C]
 * @param window where the temperatures were given
 */
record TemperatureWindow(CellRating rating, DoubleUnaryOperator share, Input window)
        implements PackConstraint {

    @Override
    public ConstraintId id() {
        return ConstraintId.TEMPERATURE_WINDOW;
    }

    @Override
    public boolean variesWithCharge() {
        return false;
    }

    @Override
    public double limitAt(double charge, double temperatureC) {
        double permitted = share.applyAsDouble(temperatureC);
        return permitted >= 1.0
                ? Double.POSITIVE_INFINITY
                : permitted * rating.limitAt(charge, temperatureC);
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        PackModel model = rating.model();
        return new Constraint(
                id(),
                limitAt(charge, temperatureC),
                window,
                new Derivation(
                        "x(T)·P·i/k; no bound where x(T) = 1",
                        "the cell maker's temperature window; the cold band as given",
                        List.of(
                                Term.computed(
                                        "x(T)",
                                        "share permitted at this temperature",
                                        share.applyAsDouble(temperatureC),
                                        ""),
                                Term.computed("T", "cell temperature", temperatureC, "°C"),
                                PackTerms.parallel(model),
                                Term.given(
                                        "i",
                                        "rating of one cell",
                                        rating.rating(),
                                        "A",
                                        rating.input()),
                                Term.computed(
                                        "k",
                                        "share of the strongest cell",
                                        model.strongestShare(),
                                        ""))));
    }
}

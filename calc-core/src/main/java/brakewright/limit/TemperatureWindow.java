package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.formula.Derivation;
import brakewright.formula.Origin;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Outside the temperatures its maker permits a cell takes or gives nothing; in the cold band of
 * charging only a share of its rating: {@code x(T)·(1 − m)·P·i/k}, and no bound at all where x is
 * 1.
 *
 * @param rating the cell rating that is shared
 * @param share x, from 0 to 1, over the cell temperature [°C]
 * @param window where the temperatures were given
 */
record TemperatureWindow(CellRating rating, DoubleUnaryOperator share, Input window)
        implements RatingConstraint {

    private static final String MAKER =
            "the cell maker's temperatures; a part of the rating in the cold band";

    @Override
    public ConstraintId id() {
        return ConstraintId.TEMPERATURE_WINDOW;
    }

    @Override
    public double limitAt(double temperatureC) {
        double permitted = share.applyAsDouble(temperatureC);
        return permitted >= 1.0 ? Double.POSITIVE_INFINITY : permitted * rating.current();
    }

    @Override
    public Constraint at(double temperatureC) {
        PackModel model = rating.model();
        Step strongest = PackTerms.strongestShare(model);
        double limit = limitAt(temperatureC);
        boolean isFree = Double.isInfinite(limit);
        Term permitted = Term.given(window, share.applyAsDouble(temperatureC));
        Derivation derivation =
                isFree
                        ? new Derivation(Constraint.NO_BOUND + "x ≥ 1", MAKER, permitted)
                        : new Derivation(
                                "x·(1 − m)·P·i/k",
                                MAKER,
                                permitted,
                                PackTerms.cellMargin(rating.margin()),
                                PackTerms.parallel(model),
                                Term.given(rating.input(), rating.rating()),
                                strongest.result());
        return new Constraint(
                        id(), limit, window, isFree ? List.of() : List.of(strongest), derivation)
                .under(
                        new Term(
                                "T",
                                "temperature of the cells",
                                temperatureC,
                                Unit.CELSIUS,
                                Origin.Found.ASKED));
    }
}

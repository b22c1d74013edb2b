package brakewright.limit;

import brakewright.battery.AlongCharge;
import brakewright.battery.PackModel;
import brakewright.formula.Derivation;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Curve;
import brakewright.spec.Input;
import java.util.Arrays;
import java.util.List;

/**
 * A charge rating that holds only up to a charge, as of a fast charge to 80 %: {@code f(s)·(1 −
 * m)·P·i/k}. Told in the form of a voltage condition, whose straight lines it shares: what the
 * rating permits stands for the voltage, and 1 for the resistance.
 *
 * <p>In the cold the lower of this and {@link TemperatureWindow} counts, not their product.
 *
 * @param rating at the charge states where all of it is permitted
 * @param share f, from 0 to 1, over the charge state
 */
record CellChargeCurve(CellRating rating, Curve share) implements VoltageConstraint {

    @Override
    public ConstraintId id() {
        return ConstraintId.CELL_CHARGE_RATING_AT_CHARGE;
    }

    @Override
    public double rest(double charge) {
        return share.at(charge);
    }

    @Override
    public double[] rests(AlongCharge along, int place) {
        return along.pack(place).read(share);
    }

    @Override
    public double left(double rest) {
        return rest * rating.current();
    }

    @Override
    public double headroomAt(double charge) {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double resistance(double charge, double temperatureC) {
        return 1.0;
    }

    @Override
    public double[] resistances(AlongCharge along, int place, double temperatureC) {
        double[] ones = new double[along.charges().length];
        Arrays.fill(ones, 1.0);
        return ones;
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        PackModel model = rating.model();
        Step strongest = PackTerms.strongestShare(model);
        return new Constraint(
                id(),
                limitAt(charge, temperatureC),
                Input.CELL_CHARGE_CURRENT_BY_CHARGE,
                List.of(strongest),
                new Derivation(
                        "f·(1 − m)·P·i/k",
                        "the cell maker's rating at that charge, less a margin; the strongest of P"
                                + " cells carries k",
                        Term.given(Input.CELL_CHARGE_CURRENT_BY_CHARGE, share.at(charge)),
                        PackTerms.cellMargin(rating.margin()),
                        PackTerms.parallel(model),
                        Term.given(rating.input(), rating.rating()),
                        strongest.result()));
    }
}

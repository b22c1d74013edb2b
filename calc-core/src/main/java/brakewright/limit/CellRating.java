package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.formula.Derivation;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Input;
import java.util.List;

/**
 * The strongest cell of a group may carry its maker's rating less a margin: {@code (1 − m)·P·i/k}.
 *
 * <p>Makers rate single cells in open air; in a closed deck less heat leaves. The margin is kept
 * from pulse ratings, too: a pulse in a ride finds cells that are warm already.
 *
 * @param id charge or discharge
 * @param model the pack
 * @param rating of one cell [A]
 * @param margin share of the rating kept free [1]
 * @param input where the rating was given
 */
record CellRating(ConstraintId id, PackModel model, double rating, double margin, Input input)
        implements RatingConstraint {

    /** However warm the cells are [A]. */
    double current() {
        return (1.0 - margin) * model.pack().parallel() * rating / model.strongestShare();
    }

    @Override
    public double limitAt(double temperatureC) {
        return current();
    }

    @Override
    public Constraint at(double temperatureC) {
        Step share = PackTerms.strongestShare(model);
        return new Constraint(
                id,
                current(),
                input,
                List.of(share),
                new Derivation(
                        "(1 − m)·P·i/k",
                        "the cell maker's rating for each of P cells, less a margin; the strongest"
                                + " carries k",
                        PackTerms.cellMargin(margin),
                        PackTerms.parallel(model),
                        Term.given(input, rating),
                        share.result()));
    }
}

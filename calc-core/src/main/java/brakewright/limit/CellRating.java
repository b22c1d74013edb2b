package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Input;
import java.util.List;

/**
 * The strongest cell of a group may carry its maker's rating: {@code P·i/k}.
 *
 * @param id charge or discharge
 * @param model the pack
 * @param rating of one cell [A]
 * @param input where the rating was given
 */
record CellRating(ConstraintId id, PackModel model, double rating, Input input)
        implements PackConstraint {

    @Override
    public boolean variesWithCharge() {
        return false;
    }

    @Override
    public double limitAt(double charge, double temperatureC) {
        return model.pack().parallel() * rating / model.strongestShare();
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        Step share = PackTerms.strongestShare(model);
        return new Constraint(
                id,
                limitAt(charge, temperatureC),
                input,
                List.of(share),
                new Derivation(
                        "P·i/k",
                        "the cell maker's rating for each of P cells; the strongest carries k",
                        List.of(
                                PackTerms.parallel(model),
                                Term.given("i", "rating of one cell", rating, "A", input),
                                share.result())));
    }
}

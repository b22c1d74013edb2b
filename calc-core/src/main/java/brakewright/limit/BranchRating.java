package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.formula.Term;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;

/**
 * A rating of one of several packs, told as the current of all: {@code I_k,max/w_k}, with the
 * greatest share w that the pack carries at any charge state.
 *
 * @param own the rating, told as the current of the pack
 * @param model all packs
 * @param place of the pack, from 0
 */
record BranchRating(RatingConstraint own, BatteryModel model, int place)
        implements RatingConstraint {

    @Override
    public ConstraintId id() {
        return own.id();
    }

    @Override
    public WhichPack pack() {
        return WhichPack.of(place + 1);
    }

    @Override
    public double limitAt(double temperatureC) {
        return own.limitAt(temperatureC) / share(temperatureC);
    }

    @Override
    public Constraint at(double temperatureC) {
        return PackTerms.shared(
                own.at(temperatureC),
                limitAt(temperatureC),
                Term.modelled(
                        "w", "greatest share of all current", share(temperatureC), Unit.RATIO),
                pack());
    }

    private double share(double temperatureC) {
        return model.greatestShare(place, temperatureC);
    }
}

package brakewright.limit;

import brakewright.battery.AlongCharge;
import brakewright.battery.BatteryModel;
import brakewright.formula.Term;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;

/**
 * A voltage condition on one of several packs, told as the current of all: the pack carries {@code
 * w_k·I}, and stands at its own charge state.
 *
 * @param own the condition, told as the current of the pack
 * @param model all packs
 * @param place of the pack, from 0
 */
record BranchVoltage(VoltageConstraint own, BatteryModel model, int place)
        implements VoltageConstraint {

    @Override
    public ConstraintId id() {
        return own.id();
    }

    @Override
    public WhichPack pack() {
        return WhichPack.of(place + 1);
    }

    @Override
    public double rest(double charge) {
        return own.rest(model.chargeOf(place, charge));
    }

    @Override
    public double[] rests(AlongCharge along, int whole) {
        return own.rests(along, place);
    }

    @Override
    public double left(double rest) {
        return own.left(rest);
    }

    @Override
    public double headroomAt(double charge) {
        return own.headroomAt(model.chargeOf(place, charge));
    }

    @Override
    public double resistance(double charge, double temperatureC) {
        return model.share(place, charge, temperatureC)
                * own.resistance(model.chargeOf(place, charge), temperatureC);
    }

    @Override
    public double[] resistances(AlongCharge along, int whole, double temperatureC) {
        double[] ofAll = own.resistances(along, place, temperatureC).clone();
        double[] shares = along.shares(place, temperatureC);
        for (int i = 0; i < ofAll.length; i++) {
            ofAll[i] *= shares[i];
        }
        return ofAll;
    }

    @Override
    public boolean isStraight() {
        return model.isEven();
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        double ownCharge = model.chargeOf(place, charge);
        return PackTerms.shared(
                own.at(ownCharge, temperatureC)
                        .under(
                                Term.modelled(
                                        "s_p", "charge state of this pack", ownCharge, Unit.RATIO)),
                limitAt(charge, temperatureC),
                Term.modelled(
                        "w",
                        "its share of the whole current",
                        model.share(place, charge, temperatureC),
                        Unit.RATIO),
                pack());
    }
}

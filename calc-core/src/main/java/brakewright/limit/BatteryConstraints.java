package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.battery.SustainedBattery;
import brakewright.battery.WorstGroup;
import brakewright.spec.Build;
import brakewright.spec.Controllers;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;

/**
 * Collects what limits the current of all packs together: what each pack bears, told as the current
 * of all; then what the controllers and the common wiring bear.
 */
final class BatteryConstraints {

    private final Build build;
    private final BatteryModel model;

    BatteryConstraints(Build build, BatteryModel model) {
        this.build = build;
        this.model = model;
    }

    /**
     * What all packs may take.
     *
     * @param current that is set, of all controllers [A]
     */
    PackLimit taking(double current) {
        return taking(Lasting.of(build, model, current))
                .passing(() -> taking(Lasting.pulse(build, model)))
                .lasting(() -> sustained().taking(current));
    }

    private PackLimit taking(Lasting lasting) {
        List<PackConstraint> all =
                ofPacks(
                        (pack, place) ->
                                pack.taking(lasting, own -> seconds(own / greatestShare(place))));
        all.add(
                new ControllerVoltage(
                        build.battery(),
                        model,
                        build.controllers().voltageRating(),
                        build.margins().controllerVoltage(),
                        lasting));
        all.addAll(common());
        return PackLimit.taking(all, model.points(WorstGroup.End.FULLEST));
    }

    private double greatestShare(int place) {
        return model.greatestShare(place, build.battery().temperatureC());
    }

    /** How long braking at a current of all packs lasts. */
    private double seconds(double current) {
        return BrakingTime.of(build, model, current).seconds();
    }

    PackLimit giving() {
        List<PackConstraint> all = ofPacks((pack, place) -> pack.giving());
        all.addAll(common());
        return PackLimit.giving(all, model.points(WorstGroup.End.EMPTIEST))
                .lasting(() -> sustained().giving());
    }

    /** The same for a current that flows for many minutes. */
    private BatteryConstraints sustained() {
        Build sustained = SustainedBattery.in(build);
        return new BatteryConstraints(sustained, model.sameWay(sustained.battery()));
    }

    private interface Which {
        List<PackConstraint> of(PackConstraints pack, int place);
    }

    private List<PackConstraint> ofPacks(Which which) {
        List<PackConstraint> all = new ArrayList<>();
        for (int k = 0; k < model.packs().size(); k++) {
            PackModel pack = model.packs().get(k);
            List<PackConstraint> own =
                    which.of(new PackConstraints(pack, build.use(), build.margins()), k);
            for (PackConstraint constraint : own) {
                all.add(build.battery().isOnePack() ? constraint : ofBranch(constraint, k));
            }
        }
        return all;
    }

    private PackConstraint ofBranch(PackConstraint own, int place) {
        return own instanceof RatingConstraint rating
                ? new BranchRating(rating, model, place)
                : new BranchVoltage((VoltageConstraint) own, model, place);
    }

    private List<PackConstraint> common() {
        Controllers controllers = build.controllers();
        List<PackConstraint> all = new ArrayList<>();
        all.add(
                new PartRating(
                        ConstraintId.CONTROLLER_PACK_RATING,
                        controllers.packCurrentRating(),
                        controllers.count(),
                        build.margins().rating(),
                        Input.CONTROLLER_PACK_CURRENT_RATING,
                        Input.MARGINS_RATING));
        all.addAll(
                PartRating.wiring(
                        build.battery().trunk(),
                        build.use().climate().deckC(),
                        build.margins(),
                        WiringInputs.OF_TRUNK));
        return all;
    }
}

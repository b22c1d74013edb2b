package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.battery.SustainedBattery;
import brakewright.battery.WorstGroup;
import brakewright.spec.Battery;
import brakewright.spec.Build;

/** What one of several packs may give and take by itself. */
public final class OnePack {

    private OnePack() {}

    /**
     * Returns what a pack may give, told as its own current at its own charge state.
     *
     * @param build the vehicle
     * @param place of the pack, from 0
     * @return the limit
     */
    public static PackLimit giving(Build build, int place) {
        BatteryModel alone = alone(build, place);
        return PackLimit.giving(
                        constraints(build, alone).giving(), alone.points(WorstGroup.End.EMPTIEST))
                .lasting(() -> giving(SustainedBattery.in(build), place));
    }

    /**
     * Returns what a pack may take, told as its own current at its own charge state.
     *
     * @param build the vehicle
     * @param place of the pack, from 0
     * @return the limit
     */
    public static PackLimit taking(Build build, int place) {
        BatteryModel alone = alone(build, place).into();
        return PackLimit.taking(
                        constraints(build, alone)
                                .taking(
                                        Lasting.pulse(build, alone),
                                        own -> BrakingTime.of(build, alone, own).seconds()),
                        alone.points(WorstGroup.End.FULLEST))
                .lasting(() -> taking(SustainedBattery.in(build), place));
    }

    private static BatteryModel alone(Build build, int place) {
        return new BatteryModel(Battery.of(build.battery().packs().get(place)));
    }

    private static PackConstraints constraints(Build build, BatteryModel alone) {
        return new PackConstraints(alone.packs().get(0), build.use(), build.margins());
    }
}

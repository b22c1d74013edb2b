package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.battery.SustainedBattery;
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
        return PackLimit.giving(constraints(build, alone).giving(), alone.knots())
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
        BatteryModel alone = alone(build, place);
        return PackLimit.taking(constraints(build, alone).taking(), alone.knots())
                .lasting(() -> taking(SustainedBattery.in(build), place));
    }

    private static BatteryModel alone(Build build, int place) {
        return new BatteryModel(Battery.of(build.battery().packs().get(place)));
    }

    private static PackConstraints constraints(Build build, BatteryModel alone) {
        return new PackConstraints(alone.packs().get(0), build.use().effort(), build.margins());
    }
}

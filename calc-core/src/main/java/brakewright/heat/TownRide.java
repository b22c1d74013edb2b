package brakewright.heat;

import brakewright.battery.BatteryModel;
import brakewright.driving.StopAndGo;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.spec.Build;
import brakewright.spec.Riding;
import java.util.Optional;

/**
 * How warm the cells are to be expected after a ride in town that begins with the warmest pack in
 * use: pulling away with all that is permitted and stopping with the electric brake, as often as is
 * told, down to the lowest charge in use. Such a ride heats more than a steady one that takes as
 * much, as heat goes with the square of the current.
 *
 * <p>The heat is {@code I²·R + (J² − I²)·r}: the mean current I meets the resistance R of an
 * endless one, what the effective current J is more the resistance r of a pulse; both as at mid
 * charge.
 *
 * <p>The temperature is predicted, not stated (see {@link PackHeat}).
 *
 * @param speed asked for [m/s]
 * @param heat of the pack that passes its charging window by most, or comes nearest to it
 */
public record TownRide(double speed, PackHeat heat) {

    /**
     * Predicts the temperature.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @param brake its electric brake as it is set
     * @return the ride; empty where there are no stops, no leg can be ridden at mid charge, nothing
     *     is drawn on it in all, or the heat capacity of no pack is known
     */
    public static Optional<TownRide> of(Build build, ElectricDrive drive, ElectricBrake brake) {
        BatteryModel model = new BatteryModel(build.battery());
        Riding riding = build.use().riding();
        if (riding.stopsPerMetre() == 0.0) {
            return Optional.empty();
        }
        double middle = 0.5 * (build.use().chargeFrom() + build.use().chargeTo());
        double cellsC = build.battery().temperatureC();
        double pulse = model.resistance(middle, cellsC);
        double endless = model.resistance(middle, cellsC, Double.POSITIVE_INFINITY);
        return StopAndGo.leg(
                        build, drive, brake, riding.cruiseSpeed(), riding.stopsPerMetre(), middle)
                .filter(leg -> leg.netCharge() > 0.0)
                .flatMap(
                        leg -> {
                            double mean = leg.meanCurrent();
                            double ratio = leg.effectiveCurrent(pulse) / mean;
                            double times = 1.0 + (ratio * ratio - 1.0) * pulse / endless;
                            return warmest(build, model, mean, times);
                        })
                .map(heat -> new TownRide(riding.cruiseSpeed(), heat));
    }

    private static Optional<PackHeat> warmest(
            Build build, BatteryModel model, double mean, double times) {
        Optional<PackHeat> nearest = Optional.empty();
        double start = WarmRide.startC(build);
        for (int place = 0; place < model.packs().size(); place++) {
            Optional<PackHeat> own =
                    PackHeat.atUnevenCurrent(build, model, mean, times, start, place);
            if (nearest.isEmpty()
                    || (own.isPresent() && nearest.get().isBetterToCharge(own.get()))) {
                nearest = own.isPresent() ? own : nearest;
            }
        }
        return nearest;
    }
}

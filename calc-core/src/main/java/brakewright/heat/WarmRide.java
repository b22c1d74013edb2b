package brakewright.heat;

import brakewright.battery.BatteryModel;
import brakewright.driving.Cruise;
import brakewright.driving.Road;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.Powertrain;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * How warm the cells are to be expected after an ordinary ride that begins with the warmest pack in
 * use: at the cruise speed against the headwind in use, down to the lowest charge in use. Of
 * several packs the one is told that passes its charging window by most, or comes nearest to it.
 *
 * <p>The temperature is predicted, not stated (see {@link PackHeat}).
 *
 * @param speed of the ride [m/s]
 * @param heat how the cells warm
 */
public record WarmRide(double speed, PackHeat heat) {

    /**
     * Predicts the temperature.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @return the ride; empty where the settings do not reach the cruise speed with the fullest
     *     pack, the heat capacity of no pack is known, or the power cannot be drawn throughout
     */
    public static Optional<WarmRide> of(Build build, ElectricDrive drive) {
        return ofEach(build, new BatteryModel(build.battery()), drive).stream()
                .reduce((nearest, own) -> nearest.heat.isBetterToCharge(own.heat) ? own : nearest);
    }

    /**
     * Predicts the temperature of every pack.
     *
     * @param build the vehicle
     * @param model its packs
     * @param drive its drive as it is set
     * @return the same ride for each pack whose heat capacity is known, in their order; none where
     *     the settings do not reach the cruise speed with the fullest pack, or the power cannot be
     *     drawn throughout
     */
    public static List<WarmRide> ofEach(Build build, BatteryModel model, ElectricDrive drive) {
        double speed = build.use().riding().cruiseSpeed();
        Road road = Road.ofUse(build);
        double power = power(build, drive.powertrain());
        if (power <= 0.0 || !Cruise.isHeldAtFirst(build, model, drive, road, speed)) {
            return List.of();
        }
        double start = startC(build);
        List<WarmRide> rides = new ArrayList<>();
        for (int place = 0; place < model.packs().size(); place++) {
            PackHeat.atPower(build, model, power, start, place)
                    .ifPresent(heat -> rides.add(new WarmRide(speed, heat)));
        }
        return rides;
    }

    /**
     * Returns what the cruise speed takes from the pack's terminals on level road against the
     * headwind in use.
     *
     * @param build the vehicle
     * @param powertrain its motors and controllers
     * @return the power, electronics included [W]
     */
    public static double power(Build build, Powertrain powertrain) {
        double speed = build.use().riding().cruiseSpeed();
        double wind = build.use().riding().headwind();
        double holding =
                powertrain.thrustCurrent(
                        Math.max(0.0, RoadLoad.of(build).force(speed, 0.0, wind)), speed);
        return powertrain.drawnPower(holding, speed) + build.use().riding().idlePower();
    }

    /**
     * Returns the warmest pack in use, where it begins.
     *
     * @param build the vehicle
     * @return its temperature [°C]
     */
    public static double startC(Build build) {
        return Math.max(build.battery().temperatureC(), build.use().climate().warmestPackC());
    }

    /**
     * Returns the cell temperatures at which the brake is looked at.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @return those in use, and the highest predicted where it is warmer than they are [°C]
     */
    public static double[] temperatures(Build build, ElectricDrive drive) {
        double[] stated = build.cellTemperatures();
        double warmest = Arrays.stream(stated).max().orElseThrow();
        return DoubleStream.concat(
                        Arrays.stream(stated),
                        of(build, drive).stream()
                                .mapToDouble(ride -> ride.heat().highestC())
                                .filter(highest -> highest > warmest))
                .toArray();
    }
}

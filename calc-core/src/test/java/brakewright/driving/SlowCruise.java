package brakewright.driving;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/**
 * A steady ride computed another way: the charge in use in many equal steps, each ridden as at its
 * middle, at the speed asked for or the highest that is possible.
 *
 * @param distance [m]
 * @param distanceHeld at the speed asked for [m]
 * @param time [s]
 * @param fromCells energy that the cells gave, ∫U·I dt [J]
 * @param fromCellsHeld likewise at the speed asked for [J]
 */
record SlowCruise(
        double distance, double distanceHeld, double time, double fromCells, double fromCellsHeld) {

    private static final double STANDING = 0.05;

    static SlowCruise of(Build build, ElectricDrive drive, Road road, double speed, int steps) {
        BatteryModel model = new BatteryModel(build.battery());
        RoadLoad load = RoadLoad.of(build);
        double cells = build.battery().temperatureC();
        double from = build.use().chargeFrom();
        double width = (from - build.use().chargeTo()) / steps;
        double distance = 0.0;
        double held = 0.0;
        double time = 0.0;
        double given = 0.0;
        double givenHeld = 0.0;
        for (int step = 0; step < steps; step++) {
            double charge = from - (step + 0.5) * width;
            PackState pack = PackState.of(model, charge, cells, Double.POSITIVE_INFINITY);
            double possible = SlowTop.speed(build, drive, road, pack);
            if (possible < STANDING) {
                break;
            }
            double ridden = Math.min(speed, possible);
            double force = load.force(ridden, road.slope(), road.headwind());
            double current = force > 0.0 ? drive.powertrain().thrustCurrent(force, ridden) : 0.0;
            double power =
                    drive.powertrain().drawnPower(current, ridden)
                            + build.use().riding().idlePower();
            double packCurrent = -pack.currentInto(-power);
            double duration = width * 3600.0 * model.capacityAh() / packCurrent;
            time += duration;
            distance += ridden * duration;
            given += pack.voltage() * packCurrent * duration;
            if (possible >= speed) {
                held += ridden * duration;
                givenHeld += pack.voltage() * packCurrent * duration;
            }
        }
        return new SlowCruise(distance, held, time, given, givenHeld);
    }
}

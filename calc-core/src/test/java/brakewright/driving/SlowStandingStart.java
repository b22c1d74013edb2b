package brakewright.driving;

import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.WeakPack;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/**
 * Pulling away computed another way: the equation of motion on level road in many equal steps of
 * speed, each taken at its middle.
 *
 * @param time [s]
 * @param distance [m]
 * @param fromCells energy that the cells gave, ∫U·I dt [J]
 * @param coarse how much the time changes when the steps are twice as wide [1]
 */
record SlowStandingStart(double time, double distance, double fromCells, double coarse) {

    private static final int STEPS = 20_000;

    static SlowStandingStart to(double speed, Build build, ElectricDrive drive, PackState pack) {
        SlowStandingStart fine = to(speed, build, drive, pack, STEPS);
        double time = to(speed, build, drive, pack, STEPS / 2).time;
        return new SlowStandingStart(
                fine.time, fine.distance, fine.fromCells, Math.abs(time - fine.time) / fine.time);
    }

    private static SlowStandingStart to(
            double speed, Build build, ElectricDrive drive, PackState pack, int steps) {
        double time = 0.0;
        double distance = 0.0;
        double fromCells = 0.0;
        double width = speed / steps;
        for (int step = 0; step < steps; step++) {
            double here = (step + 0.5) * width;
            double thrust = thrust(here, build, drive, pack);
            double net = thrust - RoadLoad.of(build).force(here, 0.0, 0.0);
            double duration = width * build.mass() * (1.0 + build.vehicle().rotatingShare()) / net;
            double current = drive.powertrain().thrustCurrent(thrust, here);
            double power =
                    drive.powertrain().drawnPower(current, here) + build.use().riding().idlePower();
            time += duration;
            distance += here * duration;
            fromCells -= pack.voltage() * pack.currentInto(-power) * duration;
        }
        return new SlowStandingStart(time, distance, fromCells, 0.0);
    }

    /** What the drive gives, up to what wheels, vehicle and rider bear [N]. */
    static double thrust(double speed, Build build, ElectricDrive drive, PackState pack) {
        return Math.min(
                drive.powertrain().thrust(supplied(speed, build, drive, pack), speed),
                SlowTop.ground(build));
    }

    /** No more than the pack can give beside what electronics draw [A]. */
    private static double supplied(double speed, Build build, ElectricDrive drive, PackState pack) {
        return WeakPack.supplied(
                drive.at(speed, pack).motorCurrent(),
                WeakPack.greatestPower(pack) - build.use().riding().idlePower(),
                current -> drive.powertrain().drawnPower(current, speed));
    }
}

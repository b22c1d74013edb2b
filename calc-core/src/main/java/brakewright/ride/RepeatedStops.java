package brakewright.ride;

import brakewright.battery.PackModel;
import brakewright.limit.MotorHeatBalance;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.Optional;

/**
 * How hot the winding gets over stops in a row from the same speed, the speed being regained at the
 * drive current between them.
 *
 * @param stops how many
 * @param windingC the hottest winding [°C]
 * @param limitC what it bears [°C]
 */
public record RepeatedStops(int stops, double windingC, double limitC) {

    private static final int SPEED_STEPS = 60;

    /**
     * Assumption: our own choice; above this share of the thrust regaining speed takes for ever.
     */
    private static final double REACHED = 0.97;

    /**
     * Computes the heat of stops in a row, from a cold motor.
     *
     * @param build the vehicle
     * @param brake its electric brake
     * @param drive its drive
     * @param speed at the beginning of each stop [m/s]
     * @param charge the charge state [1]
     * @param stops how many, at least one
     * @return the result; empty where the motor's thermal figures are not known or the vehicle does
     *     not stop
     */
    public static Optional<RepeatedStops> of(
            Build build,
            ElectricBrake brake,
            ElectricDrive drive,
            double speed,
            double charge,
            int stops) {
        Optional<WindingHeat> heat = MotorHeatBalance.of(build);
        StopOutcome outcome = new Stop(build, brake, Surroundings.of(build)).from(speed, charge);
        if (heat.isEmpty() || !(outcome instanceof StopOutcome.Stopped stopped)) {
            return Optional.empty();
        }
        WindingHeat winding = heat.get();
        double regaining = regaining(build, drive, speed, charge);
        WindingHeat.Temperatures state = winding.cold();
        double hottest = state.windingC();
        for (int stop = 1; stop <= stops; stop++) {
            state = winding.after(state, stopped.effectiveMotorCurrent(), stopped.time());
            hottest = Math.max(hottest, state.windingC());
            if (stop < stops) {
                state = winding.after(state, drive.motorCurrent(), regaining);
                hottest = Math.max(hottest, state.windingC());
            }
        }
        return Optional.of(new RepeatedStops(stops, hottest, build.motor().windingLimitC()));
    }

    /** The time in which the drive current regains the speed, or as much of it as it can. */
    private static double regaining(Build build, ElectricDrive drive, double speed, double charge) {
        RoadLoad load = RoadLoad.of(build);
        PackState pack =
                PackState.of(new PackModel(build.pack()), charge, build.pack().temperatureC());
        double step = speed / SPEED_STEPS;
        double time = 0.0;
        for (int i = 0; i < SPEED_STEPS; i++) {
            double here = (i + 0.5) * step;
            double thrust = drive.powertrain().thrust(drive.motorCurrent(here, pack), here);
            double road = load.force(here, 0.0, 0.0);
            if (road > REACHED * thrust) {
                break;
            }
            time += step * build.inertia() / (thrust - road);
        }
        return time;
    }
}

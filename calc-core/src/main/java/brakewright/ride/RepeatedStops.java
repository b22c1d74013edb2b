package brakewright.ride;

import brakewright.battery.BatteryModel;
import brakewright.limit.MotorHeatBalance;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
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

    /** Assumption: our own choice; the last of the top speed takes for ever to regain. */
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

    /** The time in which the drive regains the speed, or as much of it as it can. */
    private static double regaining(Build build, ElectricDrive drive, double speed, double charge) {
        PackState pack =
                PackState.of(
                        new BatteryModel(build.battery()), charge, build.battery().temperatureC());
        double possible = TopSpeed.find(drive, RoadLoad.of(build), 0.0, 0.0, pack).speed();
        double regained = Math.min(speed, REACHED * possible);
        return regained > 0.0
                ? new PullAway(build, drive, Road.LEVEL)
                        .to(regained, pack)
                        .map(PullAway.Reached::time)
                        .orElse(0.0)
                : 0.0;
    }
}

package brakewright.heat;

import brakewright.battery.BatteryModel;
import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.driving.Road;
import brakewright.driving.StandingStart;
import brakewright.limit.MotorHeatBalance;
import brakewright.machine.Copper;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How hot the winding gets over stops in a row from the same speed, the speed being regained at the
 * drive current between them.
 *
 * <p>Assumption: over a stop the winding warms as by the root mean square of the brake current over
 * the time of the stop: it gets the same heat, spread evenly. A brake that the pack limit weakens
 * at speed is strongest last, so that less of its heat has left by the end: this reads a little
 * cool, less than 0.5 K and 1 % of the rise over five stops of the board in the tests.
 *
 * <p>Assumption: while the speed is regained the drive current flows all the time, also where the
 * pack limit leaves less of it; the drag loss is that of the highest speed in use. Both err on the
 * warm side.
 *
 * <p>Assumption: all stops begin at the same charge state; a few stops and pulls change it by less
 * than a per cent. A vehicle that no longer reaches the speed regains what it can, and the next
 * stop is taken from the whole speed all the same, which errs on the warm side too.
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
     * @return the result; empty where the motor's thermal figures are not known, the vehicle does
     *     not stop, or it does not move off again and there is more than one stop
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
        OptionalDouble regaining =
                stops > 1 ? regaining(build, drive, speed, charge) : OptionalDouble.of(0.0);
        if (regaining.isEmpty()) {
            return Optional.empty();
        }
        double hottest =
                hottest(heat.get(), stopped, drive.motorCurrent(), regaining.getAsDouble(), stops);
        return Optional.of(new RepeatedStops(stops, hottest, build.motor().windingLimitC()));
    }

    /**
     * Computes the heat of stops in a row, begun with the fullest pack in use, which may hold the
     * brake back, or half way through the charge in use, whichever is hotter.
     *
     * @param build the vehicle
     * @param brake its electric brake
     * @param drive its drive
     * @param speed at the beginning of each stop [m/s]
     * @param stops how many, at least one
     * @return the result; empty where one of both has none
     */
    public static Optional<RepeatedStops> hottest(
            Build build, ElectricBrake brake, ElectricDrive drive, double speed, int stops) {
        double full = build.use().chargeFrom();
        double half = 0.5 * (full + build.use().chargeTo());
        return of(build, brake, drive, speed, full, stops)
                .flatMap(
                        one ->
                                of(build, brake, drive, speed, half, stops)
                                        .map(
                                                other ->
                                                        one.windingC() > other.windingC()
                                                                ? one
                                                                : other));
    }

    private static double hottest(
            WindingHeat winding,
            StopOutcome.Stopped stopped,
            double driveCurrent,
            double regaining,
            int stops) {
        WindingHeat.Temperatures state = winding.cold();
        double hottest = state.windingC();
        for (int stop = 1; stop <= stops; stop++) {
            state = winding.after(state, stopped.effectiveMotorCurrent(), stopped.time());
            if (state.isMolten()) {
                return Copper.MELTING_C;
            }
            hottest = Math.max(hottest, state.windingC());
            if (stop < stops) {
                state = winding.after(state, driveCurrent, regaining);
                if (state.isMolten()) {
                    return Copper.MELTING_C;
                }
                hottest = Math.max(hottest, state.windingC());
            }
        }
        return hottest;
    }

    /** The time in which the drive regains the speed, or as much of it as it can [s]. */
    static OptionalDouble regaining(Build build, ElectricDrive drive, double speed, double charge) {
        PackState pack =
                PackState.of(
                        new BatteryModel(build.battery()), charge, build.battery().temperatureC());
        double possible = TopSpeed.find(drive, RoadLoad.of(build), 0.0, 0.0, pack).speed();
        double regained = Math.min(speed, REACHED * possible);
        if (!(regained > 0.0)) {
            return OptionalDouble.empty();
        }
        return new StandingStart(build, drive, Road.LEVEL)
                .to(regained, pack)
                .map(reached -> OptionalDouble.of(reached.time()))
                .orElse(OptionalDouble.empty());
    }
}

package brakewright.worksheet;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.numeric.Accuracy;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Stops on level dry road from several speeds, over the charge in use. */
public final class StopTable {

    private StopTable() {}

    /**
     * One stop.
     *
     * @param from speed [m/s]
     * @param charge the charge state [1]
     * @param reaction distance ridden in the reaction time [m]
     * @param outcome how it ends
     */
    public record Row(double from, double charge, double reaction, StopOutcome outcome) {}

    /**
     * Computes stops from 10 km/h to the highest speed, at every charge state of the brake map.
     *
     * @param build the vehicle
     * @param operation its settings in effect
     * @param charges the charge states [1]
     * @return the stops, by charge state, then speed
     */
    static List<Row> of(Build build, Operation operation, double[] charges) {
        Stop stop = new Stop(build, operation.brake(), Surroundings.of(build));
        List<Row> rows = new ArrayList<>();
        for (double charge : charges) {
            for (double speed : speeds(operation.topSpeed())) {
                rows.add(
                        new Row(
                                speed,
                                charge,
                                speed * build.use().effort().reaction(),
                                stop.from(speed, charge)));
            }
        }
        return rows;
    }

    /**
     * Computes stops with the fullest pack in use on another surface, from the same speeds.
     *
     * @param build the vehicle
     * @param operation its settings in effect
     * @param speeds at the beginning [m/s]
     * @param grip friction coefficient of tyre on road [1]
     * @return how each stop ends, in the order of the speeds
     */
    static List<StopOutcome> atFull(
            Build build, Operation operation, double[] speeds, double grip) {
        Stop stop = new Stop(build, operation.brake(), Surroundings.of(build).withGrip(grip));
        return Arrays.stream(speeds)
                .mapToObj(speed -> stop.from(speed, build.use().chargeFrom()))
                .toList();
    }

    /**
     * Returns the speeds of a table of stops: see {@link TableSpeeds}, and the highest.
     *
     * @param top the highest [m/s]
     * @return ascending [m/s]
     */
    static double[] speeds(double top) {
        List<Double> speeds = TableSpeeds.upTo(top - Accuracy.TOLD.size());
        speeds.add(top);
        return speeds.stream().mapToDouble(Double::doubleValue).toArray();
    }
}

package brakewright.replay;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A ride along a route, predicted: as fast as the route allows, with all that the settings permit.
 *
 * <p>Each step is made once and in two halves; where they differ by more than a tenth of {@link
 * #ACCURACY} in time, speed or charge, both are made again with shorter steps.
 *
 * <p>Assumption: wind and density of the air are those in use, all the way; the whole of the packs
 * has one temperature.
 *
 * @param route that is ridden
 * @param end how the ride ends
 * @param course moment by moment, the beginning first
 * @param totals what it adds up to
 * @param heldBack where something held it back or let it go too fast, in order
 * @param beyond where it went beyond what the packs may take or give, the taking first
 * @param windingLimitC the highest temperature that the windings bear [°C]
 * @param cellsLimitC the highest at which the cells may be discharged [°C]
 * @param isWindingHeatKnown whether the motor's thermal figures are; else its windings stay cold
 * @param isCellHeatKnown whether the cells' heat capacity is; else they stay as they are
 */
public record RouteRide(
        Route route,
        RouteEnd end,
        List<RidePoint> course,
        RideTotals totals,
        List<HeldBack> heldBack,
        List<BeyondLimit> beyond,
        double windingLimitC,
        double cellsLimitC,
        boolean isWindingHeatKnown,
        boolean isCellHeatKnown) {

    /**
     * By so much time, charge and energy of a ride may be off [1]. Motors that are hundreds of
     * times as stiff against a change of speed as those of boards and carts swing about what they
     * hold, and may be off by some per cent over a few metres.
     */
    public static final double ACCURACY = 2e-3;

    /** Copies the lists. */
    public RouteRide {
        course = List.copyOf(course);
        heldBack = List.copyOf(heldBack);
        beyond = List.copyOf(beyond);
    }

    /**
     * Rides a route from a standstill, rested, at the fullest charge in use.
     *
     * @param build the vehicle
     * @param route the road
     * @return the ride
     */
    public static RouteRide of(Build build, Route route) {
        return of(
                build,
                route,
                Underway.rested(
                        build.use().chargeFrom(),
                        build.battery().temperatureC(),
                        build.use().climate().ambientC()));
    }

    /**
     * Rides a route from any state.
     *
     * @param build the vehicle
     * @param route the road
     * @param start how it stands at its beginning
     * @return the ride
     */
    public static RouteRide of(Build build, Route route, Underway start) {
        return of(build, route, start, ACCURACY);
    }

    /** The same with other steps. */
    static RouteRide of(Build build, Route route, Underway start, double accuracy) {
        Operation operation = Operation.of(build, Limits.of(build));
        return new Rider(build, operation, route, accuracy).ride(start);
    }

    /**
     * Returns how it stands at the end.
     *
     * @return the last state
     */
    public Underway last() {
        return course.get(course.size() - 1).state();
    }

    /**
     * Returns how far it went.
     *
     * @return [m]
     */
    public double distance() {
        return last().distance() - course.get(0).state().distance();
    }

    /**
     * Returns how long it took, standing included.
     *
     * @return [s]
     */
    public double time() {
        return last().time() - course.get(0).state().time();
    }

    /**
     * Returns the mean speed, standing included.
     *
     * @return [m/s]; 0 where it does not set off
     */
    public double meanSpeed() {
        return time() > 0.0 ? distance() / time() : 0.0;
    }

    /**
     * Returns what it took at the terminals for its way.
     *
     * @return energy per distance [J/m]; NaN where it does not set off
     */
    public double consumption() {
        return totals.net() / distance();
    }

    /**
     * Returns the point of the highest speed.
     *
     * @return the first such
     */
    public RidePoint fastest() {
        return most(point -> point.state().speed());
    }

    /**
     * Returns the point of the lowest voltage.
     *
     * @return the first such
     */
    public RidePoint lowestVoltage() {
        return most(point -> -point.packVoltage());
    }

    /**
     * Returns the point of the highest current out of the packs.
     *
     * @return the first such
     */
    public RidePoint highestDraw() {
        return most(RidePoint::packCurrent);
    }

    /**
     * Returns the point of the highest current into the packs.
     *
     * @return the first such; its current is not negative where none flowed
     */
    public RidePoint highestReturn() {
        return most(point -> -point.packCurrent());
    }

    /**
     * Returns the point of the warmest winding.
     *
     * @return the first such
     */
    public RidePoint warmestWinding() {
        return most(point -> point.state().windingC());
    }

    /**
     * Returns the point of the warmest cells.
     *
     * @return the first such
     */
    public RidePoint warmestCells() {
        return most(point -> point.state().cellsC());
    }

    /**
     * Returns where the winding passed its limit.
     *
     * @return the first point; empty where it did not
     */
    public Optional<RidePoint> windingTooHot() {
        return course.stream()
                .filter(point -> point.state().windingC() > windingLimitC)
                .findFirst();
    }

    /**
     * Returns where the cells became too warm to be discharged.
     *
     * @return the first point; empty where they did not
     */
    public Optional<RidePoint> cellsTooWarm() {
        return course.stream().filter(point -> point.state().cellsC() > cellsLimitC).findFirst();
    }

    /** The first point has no flow yet, but where there is no other it stands for all. */
    private RidePoint most(ToDoubleFunction<RidePoint> value) {
        RidePoint most = course.get(Math.min(1, course.size() - 1));
        for (RidePoint each : course.subList(Math.min(1, course.size() - 1), course.size())) {
            if (value.applyAsDouble(each) > value.applyAsDouble(most)) {
                most = each;
            }
        }
        return most;
    }
}

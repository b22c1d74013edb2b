package brakewright.worksheet;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.road.FrictionBrake;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What is left of all braking from the highest speed on level dry road where the pack refuses
 * current: it is full, it is cold, or its protection has opened.
 *
 * <p>A full or a cold pack is sent no more than it may take; below the speed at which braking draws
 * from the pack the electric brake then still acts in full. Once the protection has opened, nothing
 * is left of the electric brake but the motors' own drag.
 *
 * @param refusal why the pack refuses
 * @param charge the charge state [1]
 * @param cellsC cell temperature [°C]
 * @param mayTake what the pack may take then [A]
 * @param outcome how the stop ends
 */
public record LeftBraking(
        Refusal refusal, double charge, double cellsC, double mayTake, StopOutcome outcome) {

    /** Below the window by this much a cell is surely outside it [K]. */
    private static final double OUTSIDE = 1.0;

    /** Why a pack refuses current. */
    public enum Refusal {
        /** It is the fullest in use. */
        FULL("full"),
        /** It is the coldest in use, or colder than its cells may be charged. */
        COLD("cold"),
        /** Its protection has opened. */
        TRIPPED("tripped");

        private final String key;

        Refusal(String key) {
            this.key = key;
        }

        /**
         * Returns the word that JSON uses.
         *
         * @return lower case
         */
        public String key() {
            return key;
        }
    }

    /**
     * Computes what is left.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return in the order of the refusals
     */
    public static List<LeftBraking> all(Build build, Limits limits, Operation operation) {
        double own = build.battery().temperatureC();
        double full = build.use().chargeFrom();
        double coldest = Arrays.stream(build.cellTemperatures()).min().orElseThrow();
        double cold = coldest < own ? coldest : Math.min(own, lowestChargingC(build) - OUTSIDE);
        List<LeftBraking> all = new ArrayList<>();
        all.add(held(Refusal.FULL, build, limits, operation, full, own));
        all.add(held(Refusal.COLD, build, limits, operation, build.use().middleCharge(), cold));
        if (build.battery().isGuarded()) {
            all.add(
                    new LeftBraking(
                            Refusal.TRIPPED,
                            full,
                            own,
                            0.0,
                            stop(build, with(operation.brake(), 0.0, 0.0), operation, full, own)));
        }
        return all;
    }

    /**
     * Returns how hard road and friction brake slow a vehicle on a descent without the electric
     * brake.
     *
     * @param build the vehicle
     * @param speed [m/s]
     * @param slope of the descent, as a positive rise over run [1]
     * @return the deceleration; negative where the vehicle gains speed [m/s²]
     */
    public static double downhill(Build build, double speed, double slope) {
        double road = RoadLoad.of(build).force(speed, -slope, 0.0);
        double friction = FrictionBrake.force(build, build.vehicle().grip(), slope);
        return (road + friction) / build.inertia();
    }

    private static double lowestChargingC(Build build) {
        return build.battery().packs().stream()
                .mapToDouble(pack -> pack.cell().charging().lowestC())
                .max()
                .orElseThrow();
    }

    private static LeftBraking held(
            Refusal refusal,
            Build build,
            Limits limits,
            Operation operation,
            double charge,
            double cellsC) {
        PackState pack = PackState.of(limits.battery(), charge, cellsC);
        double mayTake = limits.packRegen().valueAt(charge, cellsC);
        ElectricBrake brake = operation.brake();
        double let = Math.min(mayTake, brake.settledPackLimit(pack));
        return new LeftBraking(
                refusal,
                charge,
                cellsC,
                mayTake,
                stop(build, with(brake, brake.motorCurrent(), let), operation, charge, cellsC));
    }

    private static ElectricBrake with(ElectricBrake brake, double motor, double pack) {
        return new ElectricBrake(
                brake.powertrain(), motor, pack, Optional.empty(), brake.endsBelow());
    }

    private static StopOutcome stop(
            Build build, ElectricBrake brake, Operation operation, double charge, double cellsC) {
        return new Stop(build, brake, Surroundings.of(build).withCells(cellsC))
                .from(operation.topSpeed(), charge);
    }
}

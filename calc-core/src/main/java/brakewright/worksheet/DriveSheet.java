package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.driving.Climb;
import brakewright.driving.Road;
import brakewright.driving.StandingStart;
import brakewright.limit.ConstraintId;
import brakewright.numeric.Rounding;
import brakewright.operation.Operation;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.Optional;

/**
 * What the drive achieves at one charge state, the pack at its own temperature.
 *
 * @param charge the charge state [1]
 * @param topSpeedFlat on level road in calm air, the speed cap left out; for as long as the pulse
 *     lasts for which cell resistances are given, 10 s
 * @param topSpeedWind on level road against the headwind in use, likewise
 * @param lastingFlat the top speed in calm air that is held for any time: the resistance of the
 *     pack is that of an endless pull
 * @param lastingWind likewise against the headwind in use
 * @param climb the slopes that are climbed
 * @param launch acceleration from standstill on level road, no more than wheels and rider bear
 *     [m/s²]
 * @param launchThrust of all driven wheels at the start, no more than wheels and rider bear and
 *     than the pack gives beside what electronics draw [N]
 * @param launchBoundBy what holds the launch down
 * @param toCruise pulling away to the cruise speed; empty where it is not reached
 */
public record DriveSheet(
        double charge,
        TopSpeed.Result topSpeedFlat,
        TopSpeed.Result topSpeedWind,
        TopSpeed.Result lastingFlat,
        TopSpeed.Result lastingWind,
        Climb climb,
        double launch,
        double launchThrust,
        HeldBy launchBoundBy,
        Optional<StandingStart.Reached> toCruise) {

    /**
     * Computes what the drive achieves.
     *
     * @param build the vehicle
     * @param operation its settings in effect
     * @param charge the charge state [1]
     * @return the sheet
     */
    public static DriveSheet of(Build build, Operation operation, double charge) {
        BatteryModel model = new BatteryModel(build.battery());
        ElectricDrive drive = operation.drive();
        RoadLoad load = RoadLoad.of(build);
        PackState pack = PackState.of(model, charge, build.battery().temperatureC());
        PackState lasting =
                PackState.of(
                        model, charge, build.battery().temperatureC(), Double.POSITIVE_INFINITY);
        double wind = build.use().riding().headwind();
        DriveState standing = drive.at(0.0, pack);
        double weight = build.mass() * Gravity.STANDARD;
        LoadTransfer transfer = new LoadTransfer(build.vehicle().axles());
        Bound launch =
                new Bound(standing.thrust() / weight, new HeldBy.TheDrive(standing.holder()))
                        .orLess(transfer.drivingGrip(build.vehicle().grip()), ConstraintId.GRIP)
                        .orLess(transfer.drivingTip(), ConstraintId.TIPPING)
                        .orLess(RiderBalance.tip(build.rider()), ConstraintId.RIDER_BALANCE);
        StandingStart start = new StandingStart(build, drive, Road.LEVEL);
        double beside = start.thrust(0.0, pack) / weight;
        if (beside < launch.multiple() * (1.0 - Rounding.OF_A_RESULT)) {
            launch = new Bound(beside, new HeldBy.TheDrive(TopSpeed.Holder.PACK_CURRENT));
        }
        double thrust = launch.multiple() * weight;
        double resisting = load.force(0.0, 0.0, 0.0);
        return new DriveSheet(
                charge,
                TopSpeed.find(drive, load, 0.0, 0.0, pack),
                TopSpeed.find(drive, load, 0.0, wind, pack),
                TopSpeed.find(drive, load, 0.0, 0.0, lasting),
                TopSpeed.find(drive, load, 0.0, wind, lasting),
                Climb.of(build, drive, pack),
                Math.max(0.0, (thrust - resisting) / build.inertia()),
                thrust,
                launch.by(),
                start.to(build.use().riding().cruiseSpeed(), pack));
    }

    /**
     * Returns whether the cruise speed in use is held for any time against the headwind in use.
     *
     * @param build the vehicle of this sheet
     * @return true if a long ride is one at that speed
     */
    public boolean isCruiseHeld(Build build) {
        return lastingWind.speed() >= build.use().riding().cruiseSpeed();
    }

    /**
     * Returns whether the settings ask for more than wheels, vehicle or rider bear at the start.
     *
     * @return true where a wheel spins, the vehicle tips or the rider is thrown before the thrust
     *     is exhausted
     */
    public boolean isLaunchHeldByGround() {
        return launchBoundBy instanceof HeldBy.AConstraint;
    }

    /**
     * Returns whether what electronics draw leaves the pack less power for the start than the drive
     * as it is set would take.
     *
     * @param driven the thrust of the drive alone [N]
     * @return true only near the greatest power of the pack
     */
    public boolean isLaunchHeldByElectronics(double driven) {
        return !isLaunchHeldByGround() && launchThrust < driven * (1.0 - Rounding.OF_A_RESULT);
    }

    /** A thrust as a multiple of the weight, and what holds it down. */
    private record Bound(double multiple, HeldBy by) {

        Bound orLess(double other, ConstraintId id) {
            return other < multiple ? new Bound(other, new HeldBy.AConstraint(id)) : this;
        }
    }
}

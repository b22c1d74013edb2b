package brakewright.worksheet;

import brakewright.battery.PackModel;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
import brakewright.review.Operation;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/**
 * What the drive achieves with the fullest pack in use.
 *
 * @param topSpeedFlat on level road, the speed cap left out
 * @param climbSlope the steepest slope held at a crawl, rise over run [1]
 * @param launch acceleration from standstill on level road [m/s²]
 * @param launchBoundBy the setting or constraint that holds the launch down, by name
 */
public record DriveSheet(
        TopSpeed.Result topSpeedFlat, double climbSlope, double launch, String launchBoundBy) {

    static DriveSheet of(Build build, PackModel model, Operation operation) {
        ElectricDrive drive = operation.drive();
        RoadLoad load = RoadLoad.of(build);
        PackState full = PackState.of(model, build.use().chargeFrom(), build.pack().temperatureC());
        TopSpeed.Result top =
                TopSpeed.find(
                        drive.powertrain(),
                        load,
                        0.0,
                        drive.motorCurrent(),
                        drive.packCurrent(),
                        full);
        double current = drive.motorCurrent(0.0, full);
        double thrust = drive.powertrain().thrust(current, 0.0);
        Bound bound =
                new Bound(
                        thrust / (build.mass() * Gravity.STANDARD),
                        current < drive.motorCurrent()
                                ? LimitId.PACK_DISCHARGE_CURRENT.key()
                                : LimitId.MOTOR_DRIVE_CURRENT.key());
        LoadTransfer transfer = new LoadTransfer(build.vehicle().axles());
        Bound launch =
                bound.orLess(transfer.drivingGrip(build.vehicle().grip()), ConstraintId.GRIP)
                        .orLess(transfer.drivingTip(), ConstraintId.TIPPING)
                        .orLess(RiderBalance.tip(build.rider()), ConstraintId.RIDER_BALANCE);
        double climb =
                Math.min(
                        slopeHeld(bound.multiple(), load.rollingResistance()),
                        Math.min(
                                transfer.climbingGrip(
                                        build.vehicle().grip(), load.rollingResistance()),
                                transfer.drivingTip()));
        double resisting = load.force(0.0, 0.0, 0.0);
        double acceleration =
                (launch.multiple() * build.mass() * Gravity.STANDARD - resisting) / build.inertia();
        return new DriveSheet(
                top, Math.max(0.0, climb), Math.max(0.0, acceleration), launch.name());
    }

    /** {@code F/(m·g) = crr·cosθ + sinθ}, solved for tanθ. */
    private static double slopeHeld(double multiple, double rollingResistance) {
        double reach = Math.hypot(1.0, rollingResistance);
        if (multiple >= reach) {
            return Double.POSITIVE_INFINITY;
        }
        double angle = Math.asin(multiple / reach) - Math.atan(rollingResistance);
        return Math.max(0.0, Math.tan(angle));
    }

    /** A thrust as a multiple of the weight, and what holds it down. */
    private record Bound(double multiple, String name) {

        Bound orLess(double other, ConstraintId id) {
            return other < multiple ? new Bound(other, id.key()) : this;
        }
    }
}

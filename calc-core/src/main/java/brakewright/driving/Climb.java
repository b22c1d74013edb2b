package brakewright.driving;

import brakewright.battery.BatteryModel;
import brakewright.battery.SustainedBattery;
import brakewright.limit.Limits;
import brakewright.limit.MotorHeatBalance;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.TopSpeed;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RoadLoad;
import brakewright.road.Slope;
import brakewright.spec.Build;
import java.util.OptionalDouble;

/**
 * Climbing: the steepest slope that is held at a crawl, and how the slope in use goes.
 *
 * <p>{@code F = m·g·(crr·cosθ + sinθ)}, at most what the driven wheels grip on the slope and up to
 * where the vehicle tips backwards.
 *
 * <p>Source: equilibrium on a slope.
 *
 * <p>Assumption: the speed is steady, and the motors turn fast enough to warm all their windings
 * alike. A motor that stands while it holds warms one winding more than the others.
 *
 * <p>Assumption: windings have the resistance that they have in the air at the beginning, as far as
 * the power from the packs is concerned; in the time to the winding limit they warm.
 *
 * @param steepest held at a crawl, rise over run [1]; infinite where any is
 * @param heldByThrust what the thrust alone holds at a crawl, rise over run [1]; infinite where any
 * @param steepestSustained as the steepest, for any time: the winding stays within its limit, where
 *     its heat is known, and the packs bear the draw at this charge state without their pulse
 *     ratings, rise over run [1]; at most {@code steepest}
 * @param current that the steepest takes, per motor [A]
 * @param heldFor until the winding limit, from cold, the motor turning too slowly for any drag loss
 *     [s]; empty where for ever or not known
 * @param speedUp at which the slope in use is climbed with full thrust [m/s]; 0 where it is not
 * @param currentUp that this takes, per motor [A]
 * @param timeUp to the top of the slope in use [s]; infinite where it is not climbed
 * @param lastsUp until the winding limit on it, from cold, the drag loss taken at {@code speedUp}
 *     [s]; empty where for ever or not known
 */
public record Climb(
        double steepest,
        double heldByThrust,
        double steepestSustained,
        double current,
        OptionalDouble heldFor,
        double speedUp,
        double currentUp,
        double timeUp,
        OptionalDouble lastsUp) {

    /**
     * Works out the climbing of a vehicle.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @param pack the pack
     * @return the climb
     */
    public static Climb of(Build build, ElectricDrive drive, PackState pack) {
        Powertrain powertrain = drive.powertrain();
        RoadLoad load = RoadLoad.of(build);
        double weight = build.mass() * Gravity.STANDARD;
        double crr = load.rollingResistance();
        LoadTransfer transfer = new LoadTransfer(build.vehicle().axles());
        double thrust = drive.at(0.0, pack).thrust();
        double held = slopeHeld(thrust / weight, crr);
        double steepest =
                Math.max(
                        0.0,
                        Math.min(
                                held,
                                Math.min(
                                        transfer.climbingGrip(build.vehicle().grip(), crr),
                                        transfer.drivingTip())));
        double needed =
                Double.isInfinite(steepest)
                        ? thrust
                        : Math.min(thrust, load.force(0.0, steepest, 0.0));
        double current =
                Math.min(
                        drive.motorCurrent(), powertrain.thrustCurrent(Math.max(0.0, needed), 0.0));
        double slope = build.use().slope();
        boolean bears =
                slope
                        <= Math.min(
                                transfer.climbingGrip(build.vehicle().grip(), crr),
                                transfer.drivingTip());
        double up = bears ? TopSpeed.find(drive, load, slope, 0.0, pack).speed() : 0.0;
        double currentUp =
                up > 0.0 ? powertrain.thrustCurrent(load.force(up, slope, 0.0), up) : 0.0;
        double lasting = powertrain.thrust(lastingCurrent(build, drive, pack), 0.0) / weight;
        return new Climb(
                steepest,
                held,
                Math.min(steepest, slopeHeld(lasting, crr)),
                current,
                MotorHeatBalance.timeToLimit(build, 0.0, current),
                up,
                currentUp,
                up > 0.0 ? build.use().slopeLength() / up : Double.POSITIVE_INFINITY,
                up > 0.0
                        ? MotorHeatBalance.timeToLimit(build, up, currentUp)
                        : OptionalDouble.empty());
    }

    /** The highest drive current at a crawl that may flow for any time, per motor [A]. */
    private static double lastingCurrent(Build build, ElectricDrive drive, PackState pack) {
        PackState lasting =
                PackState.of(
                        new BatteryModel(SustainedBattery.of(build.battery())),
                        pack.charge(),
                        pack.temperatureC());
        double given =
                Limits.of(build)
                        .packDischarge()
                        .sustained()
                        .valueAt(pack.charge(), pack.temperatureC());
        double borne =
                MotorHeatBalance.at(build, 0.0)
                        .map(WindingHeat::continuousCurrent)
                        .orElse(Double.POSITIVE_INFINITY);
        return drive.powertrain()
                .limitedDriveCurrent(
                        Math.min(borne, drive.at(0.0, lasting).motorCurrent()),
                        0.0,
                        lasting.powerDrawnBy(given));
    }

    private static double slopeHeld(double multiple, double rollingResistance) {
        return Math.max(0.0, Slope.held(multiple, rollingResistance));
    }
}

package brakewright.operation;

import brakewright.charge.ChargeSearch;
import brakewright.limit.Limits;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Settings;

/**
 * The settings in effect: those given, and for each current that is not given its limit. Pack
 * currents are of all controllers together.
 *
 * @param brake the electric brake
 * @param drive the drive
 * @param topSpeed the highest speed that will be met: the speed cap or the highest speed in use,
 *     whichever is greater [m/s]
 */
public record Operation(ElectricBrake brake, ElectricDrive drive, double topSpeed) {

    /**
     * Returns the charge states in use at which what flows may turn: both ends, every 5 %, the
     * points of the packs' curves and wherever a taper or another bound bends it.
     *
     * @param build the vehicle
     * @param limits its limits
     * @return ascending [1]
     */
    public double[] bends(Build build, Limits limits) {
        return flows(build, limits).charges();
    }

    /**
     * Returns what flows at these charge states, at each temperature that the cells may have.
     *
     * @param build the vehicle
     * @param limits its limits
     * @return the currents into and out of the packs
     */
    public Flows flows(Build build, Limits limits) {
        return Flows.of(
                build, limits, this, ChargeSearch.over(build.use(), limits.battery()).charges());
    }

    /**
     * Returns the settings to judge by: without a taper so narrow that the power surges in it. What
     * such a taper lets through lies anywhere between nothing and all, so it protects nothing.
     *
     * @param limits of the vehicle
     * @return these settings, the tapers that hold
     */
    public Operation trusted(Limits limits) {
        return new Operation(
                brake.withTaper(brake.taper().filter(limits.highVoltageTaper()::isWideEnough)),
                new ElectricDrive(
                        drive.powertrain(),
                        drive.motorCurrent(),
                        drive.packCurrent(),
                        drive.taper().filter(limits.lowVoltageTaper()::isWideEnough)),
                topSpeed);
    }

    /**
     * Resolves the settings of a vehicle.
     *
     * @param build the vehicle
     * @param limits its own, with these settings
     * @return the settings in effect
     */
    public static Operation of(Build build, Limits limits) {
        Settings settings = build.settings();
        Powertrain powertrain = Powertrain.of(build);
        ElectricBrake brake =
                new ElectricBrake(
                        powertrain,
                        settings.motorBrakeCurrent().orElseGet(() -> limits.motorBrake().value()),
                        limits.packRegenInEffect(),
                        settings.highVoltageTaper(),
                        build.controllers().brakeEndsBelow());
        ElectricDrive drive =
                new ElectricDrive(
                        powertrain,
                        settings.motorDriveCurrent().orElseGet(() -> limits.motorDrive().value()),
                        limits.packDischargeInEffect(),
                        settings.lowVoltageTaper());
        return new Operation(brake, drive, build.highestSpeed());
    }
}

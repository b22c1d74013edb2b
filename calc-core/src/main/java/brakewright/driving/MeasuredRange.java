package brakewright.driving;

import brakewright.battery.BatteryModel;
import brakewright.charge.ChargeIntegral;
import brakewright.charge.ReserveWalk;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Riding;

/**
 * The range from a consumption that was measured at the pack's terminals: the pack is emptied at
 * the mean power {@code e·v}, its loss at that power taken off.
 *
 * @param measured the measurement
 * @param distance [m]
 * @param downTo the charge state at which the settings no longer give that power [1]
 */
public record MeasuredRange(Riding.Measured measured, double distance, double downTo) {

    /**
     * Works out the range.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @param measured what was measured
     * @return the range
     */
    public static MeasuredRange of(Build build, ElectricDrive drive, Riding.Measured measured) {
        BatteryModel model = new BatteryModel(build.battery());
        double cellsC = build.battery().temperatureC();
        double power = measured.energyPerMetre() * measured.speed();
        double end =
                new ReserveWalk(model.knots())
                        .whereGone(
                                build.use().chargeFrom(),
                                build.use().chargeTo(),
                                charge -> {
                                    PackState pack = state(model, charge, cellsC);
                                    return pack.powerDrawnBy(drive.settledPackLimit(pack)) - power;
                                });
        ChargeIntegral.Sum sum =
                new ChargeIntegral(model)
                        .over(
                                build.use().chargeFrom(),
                                end,
                                charge ->
                                        new ChargeIntegral.Moment(
                                                -state(model, charge, cellsC).currentInto(-power),
                                                measured.speed()));
        return new MeasuredRange(measured, sum.distance(), end);
    }

    private static PackState state(BatteryModel model, double charge, double cellsC) {
        return PackState.of(model, charge, cellsC, Double.POSITIVE_INFINITY);
    }
}

package brakewright.worksheet;

import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.spec.Build;

/**
 * Which deceleration tyres, vehicle and rider bear, as multiples of the weight and without the
 * margins of the limits; infinite where nothing bounds it.
 *
 * @param tyresDry the braked axle on dry road, of the brake force alone [1]
 * @param tyresWet the same on wet road [1]
 * @param tipping before a wheel lifts [1]
 * @param riderBalance of a standing rider without a hold [1]
 * @param rider what a rider is taken to bear [1]
 */
public record Bearing(
        double tyresDry, double tyresWet, double tipping, double riderBalance, double rider) {

    static Bearing of(Build build) {
        LoadTransfer transfer = new LoadTransfer(build.vehicle().axles());
        return new Bearing(
                transfer.brakingGrip(build.vehicle().grip()),
                transfer.brakingGrip(build.vehicle().gripWet()),
                transfer.brakingTip(),
                RiderBalance.tip(build.rider()),
                build.criteria().riderDecelerationMax() / Gravity.STANDARD);
    }
}

package brakewright.driving;

import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/** The highest steady speed, which the ground must bear too, found by halving. */
final class SlowTop {

    private static final int HALVINGS = 60;

    private SlowTop() {}

    static double speed(Build build, ElectricDrive drive, Road road, PackState pack) {
        RoadLoad load = RoadLoad.of(build);
        double top = TopSpeed.find(drive, load, road.slope(), road.headwind(), pack).speed();
        double ground = ground(build);
        if (load.force(top, road.slope(), road.headwind()) <= ground) {
            return top;
        }
        double low = 0.0;
        double high = top;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (load.force(middle, road.slope(), road.headwind()) <= ground) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The thrust that neither slips nor tips [N]. */
    static double ground(Build build) {
        LoadTransfer transfer = new LoadTransfer(build.vehicle().axles());
        return RoadLoad.of(build).mass()
                * Gravity.STANDARD
                * Math.min(
                        transfer.drivingGrip(build.vehicle().grip()),
                        Math.min(transfer.drivingTip(), RiderBalance.tip(build.rider())));
    }
}

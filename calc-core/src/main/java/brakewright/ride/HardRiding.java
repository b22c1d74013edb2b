package brakewright.ride;

import brakewright.limit.MotorHeatBalance;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.spec.Build;
import java.util.OptionalDouble;

/** How hot a winding gets when a vehicle is ridden as hard as it is set. */
public final class HardRiding {

    private static final int STOPS = 10;

    private HardRiding() {}

    /**
     * Returns the hottest winding after a hard pull of the length in use, or over ten stops in a
     * row with the speed regained between them, whichever is hotter; both from cold.
     *
     * @param build the vehicle
     * @param brake its electric brake as it is set
     * @param drive its drive as it is set
     * @param speed from which it stops [m/s], positive
     * @return the temperature [°C]; empty where the motor's thermal figures are not known
     */
    public static OptionalDouble hottest(
            Build build, ElectricBrake brake, ElectricDrive drive, double speed) {
        return MotorHeatBalance.of(build)
                .map(
                        heat -> {
                            double pulled =
                                    heat.after(
                                                    heat.cold(),
                                                    drive.motorCurrent(),
                                                    build.use().effort().hardPull())
                                            .windingC();
                            double stopped =
                                    RepeatedStops.of(
                                                    build,
                                                    brake,
                                                    drive,
                                                    speed,
                                                    build.use().chargeFrom(),
                                                    STOPS)
                                            .map(RepeatedStops::windingC)
                                            .orElse(pulled);
                            return OptionalDouble.of(Math.max(pulled, stopped));
                        })
                .orElse(OptionalDouble.empty());
    }
}

package brakewright.heat;

import brakewright.limit.MotorHeatBalance;
import brakewright.machine.Copper;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.spec.Build;
import java.util.Optional;
import java.util.OptionalDouble;

/** How hot a winding gets when a vehicle is ridden as hard as it is set. */
public final class HardRiding {

    private static final int STOPS = 10;

    private HardRiding() {}

    /**
     * Returns the hottest winding after a hard pull of the length in use, or over ten stops in a
     * row with the speed regained between them, whichever is hotter; both from cold.
     *
     * <p>Assumption: the drive current flows for the whole pull, also where the pack limit leaves
     * less of it; ten stops are our own choice of hard riding.
     *
     * @param build the vehicle
     * @param brake its electric brake as it is set
     * @param drive its drive as it is set
     * @param speed from which it stops [m/s], positive
     * @return the temperature [°C]; empty where the motor's thermal figures are not known, the
     *     vehicle does not stop or does not move off again: what cannot be ridden is not told as
     *     cool
     */
    public static OptionalDouble hottest(
            Build build, ElectricBrake brake, ElectricDrive drive, double speed) {
        Optional<WindingHeat> heat = MotorHeatBalance.of(build);
        Optional<RepeatedStops> stopped = RepeatedStops.hottest(build, brake, drive, speed, STOPS);
        return heat.isPresent() && stopped.isPresent()
                ? OptionalDouble.of(
                        Math.max(
                                pulled(heat.get(), drive, build.use().effort().hardPull()),
                                stopped.get().windingC()))
                : OptionalDouble.empty();
    }

    private static double pulled(WindingHeat heat, ElectricDrive drive, double time) {
        WindingHeat.Temperatures then = heat.after(heat.cold(), drive.motorCurrent(), time);
        return then.isMolten() ? Copper.MELTING_C : then.windingC();
    }
}

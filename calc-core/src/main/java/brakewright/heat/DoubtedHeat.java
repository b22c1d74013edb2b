package brakewright.heat;

import brakewright.battery.BatteryModel;
import brakewright.spec.Build;
import brakewright.spec.Relaxation;
import java.util.Optional;

/**
 * How far the temperature at the end of a ride may lie from what is to be expected, as the
 * resistance of the cells, its rise in a long pull and the way to the air are known. What the
 * spreads move to one side, each by itself, is added up by squares, as they have nothing to do with
 * each other.
 *
 * @param lowC where it may be as cool [°C]
 * @param highC where it may be as warm; no warmer than where the ride is stopped [°C]
 */
public record DoubtedHeat(double lowC, double highC) {

    /**
     * By what share of itself each usually misses, either way.
     *
     * @param resistance of the cells [1]
     * @param sustainedRise of it in a long pull [1]
     * @param toAir from the cells to the air [1]
     */
    public record Spreads(double resistance, double sustainedRise, double toAir) {}

    /**
     * Returns how far apart both ends are.
     *
     * @return the width of the range [K]
     */
    public double widthK() {
        return highC - lowC;
    }

    /**
     * Works out the range for the pack that warms most.
     *
     * @param build the vehicle
     * @param power drawn at the terminals [W], positive
     * @param expected what is to be expected at that power
     * @param spreads how well it is known
     * @return the range
     */
    public static DoubtedHeat atPower(
            Build build, double power, PackHeat expected, Spreads spreads) {
        BatteryModel model = new BatteryModel(build.battery());
        Relaxation relaxation = model.packs().get(expected.pack() - 1).pack().cell().relaxation();
        double rise = relaxation.rise() / (1.0 + relaxation.rise()) * spreads.sustainedRise();
        double[][] sides = {
            {1.0 - spreads.resistance(), 1.0},
            {1.0 + spreads.resistance(), 1.0},
            {1.0 - rise, 1.0},
            {1.0 + rise, 1.0},
            {1.0, 1.0 - spreads.toAir()},
            {1.0, 1.0 + spreads.toAir()},
        };
        double below = 0.0;
        double above = 0.0;
        for (double[] side : sides) {
            Optional<PackHeat> heat = PackHeat.doubted(build, model, power, expected, side);
            double off = heat.map(PackHeat::endC).orElse(expected.endC()) - expected.endC();
            below = Math.hypot(below, Math.min(0.0, off));
            above = Math.hypot(above, Math.max(0.0, off));
        }
        return new DoubtedHeat(
                expected.endC() - below,
                Math.min(
                        expected.endC() + above,
                        Math.max(expected.endC(), expected.dischargeLimitC())));
    }
}

package brakewright.profile;

import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Standing;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The greatest value of each current and of the speed cap by itself, with all else as it is set:
 * the least within the tolerances.
 *
 * @param values per motor, for pack currents of all controllers together [A]; of the cap [m/s]
 */
public record SingleLimits(Map<LimitId, Double> values) {

    /** Copies the values. */
    public SingleLimits {
        values = Map.copyOf(values);
    }

    /**
     * Finds them.
     *
     * @param situation the vehicle in its use
     * @param settings that are set
     * @return the values; tapers have none
     */
    public static SingleLimits of(Situation situation, Settings settings) {
        Map<LimitId, Double> values = new EnumMap<>(LimitId.class);
        for (LimitId id : LimitId.values()) {
            if (id != LimitId.LOW_VOLTAGE_TAPER && id != LimitId.HIGH_VOLTAGE_TAPER) {
                values.put(id, situation.least(settings, build -> nominal(id, build)));
            }
        }
        return new SingleLimits(values);
    }

    /**
     * Returns one of them.
     *
     * @param id which; no taper
     * @return the value
     */
    public double of(LimitId id) {
        return values.getOrDefault(id, Double.POSITIVE_INFINITY);
    }

    /**
     * Returns how a setting stands to the greatest value of it by itself.
     *
     * @param id which; no taper
     * @param set as {@link #values} tells it: pack currents of all controllers together
     * @return how it stands
     */
    public Standing standing(LimitId id, OptionalDouble set) {
        return Standing.of(set, of(id));
    }

    private static double nominal(LimitId id, Build build) {
        Limits limits = Limits.of(build);
        double cellsC = build.battery().temperatureC();
        return switch (id) {
            case MOTOR_DRIVE_CURRENT -> limits.motorDrive().value();
            case MOTOR_BRAKE_CURRENT -> limits.motorBrake().value();
            case PACK_DISCHARGE_CURRENT -> limits.packDischarge().staticPart(cellsC).value();
            case PACK_REGEN_CURRENT -> limits.packRegen().staticPart(cellsC).value();
            case SPEED_CAP -> limits.speedCap().value();
            case LOW_VOLTAGE_TAPER, HIGH_VOLTAGE_TAPER -> Double.POSITIVE_INFINITY;
        };
    }
}

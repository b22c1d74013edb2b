package brakewright.replay;

import java.util.Optional;

/**
 * A moment of a ride, and what flowed since the one before.
 *
 * @param state how it stands
 * @param height above the beginning of the ride [m]
 * @param allowed the highest speed that route, cap and what comes ahead permit there [m/s]
 * @param motorCurrent since the point before, per motor; negative while braking [A]
 * @param packCurrent out of the packs; negative into them [A]
 * @param packVoltage at the terminals [V]
 * @param holder what held it back since the point before; empty where nothing did
 */
public record RidePoint(
        Underway state,
        double height,
        double allowed,
        double motorCurrent,
        double packCurrent,
        double packVoltage,
        Optional<Holder> holder) {}

package brakewright.live;

import brakewright.spec.Require;
import brakewright.spec.Unit;

/**
 * How far measurements, and what is known of the pack, may be off.
 *
 * @param voltage of the terminals, to either side [V]
 * @param current of the pack, to either side [A]
 * @param resistance of the pack, a share of it to either side, below 1 [1]
 */
public record MeasuringDoubt(double voltage, double current, double resistance) {

    /** Nothing is in doubt. */
    public static final MeasuringDoubt NONE = new MeasuringDoubt(0.0, 0.0, 0.0);

    /**
     * Validates the doubt.
     *
     * @throws IllegalArgumentException if one is negative or not finite, or a share of 1 or more
     */
    public MeasuringDoubt {
        Require.notNegative("doubt of the voltage", voltage, Unit.VOLT);
        Require.notNegative("doubt of the current", current, Unit.AMPERE);
        Require.within("doubt of the resistance", resistance, 0.0, Math.nextDown(1.0), Unit.RATIO);
    }
}

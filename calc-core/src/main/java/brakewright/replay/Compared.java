package brakewright.replay;

import java.util.OptionalDouble;

/**
 * A figure of a recorded ride beside what the model says of it.
 *
 * @param figure which
 * @param measured as recorded; empty where it was not
 * @param predicted by the vehicle as it is described
 * @param low the least that the stated tolerances make of it, not above {@code predicted}
 * @param high the most likewise, not below {@code predicted}
 */
public record Compared(
        Figure figure, OptionalDouble measured, double predicted, double low, double high) {

    /**
     * Returns how much more was measured.
     *
     * @return measured less predicted; empty where it was not recorded
     */
    public OptionalDouble difference() {
        return measured.isPresent()
                ? OptionalDouble.of(measured.getAsDouble() - predicted)
                : OptionalDouble.empty();
    }

    /**
     * Returns the part of the difference that the stated tolerances explain.
     *
     * @return to the same side as the difference; empty where it was not recorded
     */
    public OptionalDouble explained() {
        return measured.isPresent()
                ? OptionalDouble.of(
                        Math.max(low, Math.min(high, measured.getAsDouble())) - predicted)
                : OptionalDouble.empty();
    }

    /**
     * Returns what they leave.
     *
     * @return 0 where they explain all of it; empty where it was not recorded
     */
    public OptionalDouble unexplained() {
        return measured.isPresent()
                ? OptionalDouble.of(difference().orElseThrow() - explained().orElseThrow())
                : OptionalDouble.empty();
    }
}

package brakewright.recording;

import java.util.OptionalDouble;

/**
 * Where nothing was recorded between two pieces.
 *
 * @param after the last row before it
 * @param before the first row behind it
 * @param seconds how long it lasted [s]; empty where the clock began anew
 * @param leastDistance straight from the last position to the next [m]; empty where there are none
 * @param voltageStep the pack's voltage behind it less that before it [V]; empty where the vehicle
 *     did not rest on both sides, or there is no voltage
 */
public record Gap(
        Place after,
        Place before,
        OptionalDouble seconds,
        OptionalDouble leastDistance,
        OptionalDouble voltageStep) {}

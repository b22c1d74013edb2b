/**
 * What a ride really was: recorded series, their faults and their arithmetic.
 *
 * <p>A {@link brakewright.recording.Recording} is rows of time and some quantities, in pieces; it
 * is never integrated across a gap between them. {@link brakewright.recording.Cleaning} makes it of
 * what was read, and tells each {@link brakewright.recording.Repair}; {@link
 * brakewright.recording.Ride} tells what it was, {@link brakewright.recording.HeldLimits} where it
 * came over the limits of a vehicle.
 *
 * <pre>{@code
 * Piece piece = Piece.of(
 *         "log",
 *         new int[] {2, 3, 4},
 *         Map.of(
 *                 Quantity.TIME, new double[] {0.0, 1.0, 2.0},      // s
 *                 Quantity.WHEEL_SPEED, new double[] {0.0, 2.0, 4.0}));   // m/s
 * Recording ride = new Recording(List.of(piece), List.of(), 1.5);  // no step longer than 1.5 s
 * }</pre>
 */
@NullMarked
package brakewright.recording;

import org.jspecify.annotations.NullMarked;

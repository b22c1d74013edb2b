/**
 * What a ride really was: recorded series, their faults and their arithmetic.
 *
 * <p>The entry class is {@link brakewright.recording.RecordedRows}, in which a program puts what it
 * measured. A {@link brakewright.recording.Recording} is made of them, rows of time and some
 * quantities, in pieces; it is never integrated across a gap between them. {@link
 * brakewright.recording.Cleaning} tells each {@link brakewright.recording.Repair}; {@link
 * brakewright.recording.Joining} puts several sources together. {@link brakewright.recording.Ride}
 * tells what it was, {@link brakewright.recording.HeldLimits} where it came over the limits of a
 * vehicle.
 *
 * <pre>{@code
 * RecordedRows rows = RecordedRows.of("log", new double[] {0.0, 1.0, 2.0})   // s
 *         .with(Quantity.WHEEL_SPEED, new double[] {0.0, 2.0, 4.0});         // m/s
 * Repairs repairs = new Repairs();
 * Optional<Ride> ride = Ride.of(rows.recorded(repairs), 1.0, 0.0, repairs);  // s, m
 * }</pre>
 */
@NullMarked
package brakewright.recording;

import org.jspecify.annotations.NullMarked;

/**
 * What a ride really was: recorded series, their faults and their arithmetic.
 *
 * <p>A {@link brakewright.recording.Recording} is rows of time and some quantities, in pieces; it
 * is never integrated across a gap between them. {@link brakewright.recording.Cleaning} makes it of
 * what was read, and tells each {@link brakewright.recording.Repair}; {@link
 * brakewright.recording.Ride} tells what it was, {@link brakewright.recording.HeldLimits} where it
 * came over the limits of a vehicle.
 */
@NullMarked
package brakewright.recording;

import org.jspecify.annotations.NullMarked;

/**
 * How far the vehicle needs to stop, what that sends into the pack, and which descent the electric
 * brake holds, for how long.
 *
 * <p>The entry classes are {@link brakewright.braking.Stop} and {@link
 * brakewright.braking.Descent}. Brakes are as they really are: the pack limit makes the electric
 * brake fade, the grip of the tyres caps it, the charge state climbs with what is returned.
 * Windings stay at the temperature they are given. A stop is integrated over speed by adaptive
 * quadrature between the speeds at which something changes; while the brakes build up, over time.
 *
 * <pre>{@code
 * Stop stop = new Stop(board, Operation.of(board, Limits.of(board)).brake(), Surroundings.of(board));
 * if (stop.from(8.0, 0.9) instanceof StopOutcome.Stopped stopped) { // m/s, 90 % charge
 *     double distance = stopped.distance();                          // m
 * }
 * }</pre>
 */
@NullMarked
package brakewright.braking;

import org.jspecify.annotations.NullMarked;

/**
 * The vehicle in motion: how far it needs to stop, what that sends into the pack, and how steep and
 * how long a descent the electric brake holds.
 *
 * <p>The entry classes are {@link brakewright.ride.Stop} and {@link brakewright.ride.Descent}.
 * Brakes are as they really are: the pack limit makes the electric brake fade, the grip of the
 * tyres caps it, the charge state climbs with what is returned. Windings stay at the temperature
 * they are given. A stop is integrated over speed by adaptive quadrature between the speeds at
 * which something changes; while the brakes build up, over time.
 */
@NullMarked
package brakewright.ride;

import org.jspecify.annotations.NullMarked;

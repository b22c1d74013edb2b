/**
 * What the road and the rider put in the way: air, rolling and slope; grip, tipping, and what a
 * standing rider can bear.
 *
 * <p>The entry classes are {@link brakewright.road.RoadLoad} and {@link
 * brakewright.road.LoadTransfer}. The vehicle is a rigid body on two axles, straight ahead; wheels
 * grip up to a friction coefficient and not beyond. Decelerations are compared as multiples of
 * standard gravity.
 */
@NullMarked
package brakewright.road;

import org.jspecify.annotations.NullMarked;

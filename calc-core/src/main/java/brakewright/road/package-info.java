/**
 * What the road and the rider put in the way: air, rolling and slope; grip, tipping, and what a
 * standing rider can bear.
 *
 * <p>The entry classes are {@link brakewright.road.RoadLoad} and {@link
 * brakewright.road.LoadTransfer}. The vehicle is a rigid body on two axles, straight ahead; wheels
 * grip up to a friction coefficient and not beyond. Decelerations are compared as multiples of
 * standard gravity.
 *
 * <pre>{@code
 * double force = RoadLoad.of(board).force(8.0, 0.05, 2.0);  // N, 8 m/s, 5 % up, 2 m/s headwind
 * LoadTransfer transfer = new LoadTransfer(board.vehicle().axles());
 * double most = transfer.brakingGrip(board.vehicle().grip()); // of g, by the driven axle
 * double tips = RiderBalance.tip(board.rider());              // of g
 * }</pre>
 */
@NullMarked
package brakewright.road;

import org.jspecify.annotations.NullMarked;

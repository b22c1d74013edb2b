/**
 * What a ride along a known road will be: how long it takes, what it draws and returns, how warm it
 * makes cells and windings, and where something holds it back.
 *
 * <p>The entry class is {@link brakewright.replay.RouteRide}. A {@link brakewright.replay.Route} is
 * ridden as fast as it allows with all that the settings permit; the vehicle slows in time for what
 * comes, with its electric brake first. Steps over the distance are halved until they agree within
 * {@link brakewright.replay.RouteRide#ACCURACY}; in each all that the cells give is spent, to
 * rounding.
 *
 * <p>{@link brakewright.replay.AgainstModel} drives a recorded ride through the same steps, as it
 * was ridden, and tells what was measured beside what the model says.
 *
 * <p>Nothing opens: where a protection would, the ride goes on.
 *
 * <pre>{@code
 * Route route = new Route(
 *         List.of(new Leg(400.0, 0.0, 6.0, 0.0), new Leg(300.0, -12.0, 5.0, 0.0)), 0.0); // m, m, m/s, s
 * RouteRide ride = RouteRide.of(board, route);
 * double seconds = ride.time();
 * double into = ride.highestReturn().packCurrent(); // A, negative into the packs
 * }</pre>
 */
@NullMarked
package brakewright.replay;

import org.jspecify.annotations.NullMarked;

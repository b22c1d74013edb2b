/**
 * How the vehicle pulls away and climbs, and how far it goes, at a steady speed or with stops.
 *
 * <p>The entry classes are {@link brakewright.driving.StandingStart}, {@link
 * brakewright.driving.Climb}, {@link brakewright.driving.Cruise} and {@link
 * brakewright.driving.StopAndGo}. The thrust is what motor current, pack current and sagged voltage
 * leave, and no more than the ground bears. How fast the vehicle goes is told by {@link
 * brakewright.powertrain.TopSpeed}.
 */
@NullMarked
package brakewright.driving;

import org.jspecify.annotations.NullMarked;

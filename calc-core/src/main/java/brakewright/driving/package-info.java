/**
 * How the vehicle pulls away and climbs, and how far it goes, at a steady speed or with stops.
 *
 * <p>The entry classes are {@link brakewright.driving.StandingStart}, {@link
 * brakewright.driving.Climb}, {@link brakewright.driving.Cruise} and {@link
 * brakewright.driving.StopAndGo}. The thrust is what motor current, pack current and sagged voltage
 * leave, and no more than the ground bears. How fast the vehicle goes is told by {@link
 * brakewright.powertrain.TopSpeed}.
 *
 * <pre>{@code
 * ElectricDrive drive = Operation.of(board, Limits.of(board)).drive();
 * Cruise cruise = Cruise.of(board, drive, Road.LEVEL, 5.0);  // m/s
 * double far = cruise.distance();                            // m, over the charge in use
 * PackState full = PackState.of(new BatteryModel(board.battery()), 0.9, 20.0);
 * double slope = Climb.of(board, drive, full).steepest();    // 1
 * }</pre>
 */
@NullMarked
package brakewright.driving;

import org.jspecify.annotations.NullMarked;

/**
 * The power balance that ties the current in a motor to the current in the pack at a speed, driving
 * and braking, and what follows from it: the speed above which a pack limit makes the electric
 * brake fade, the speed below which it draws instead of returning, the top speed, and how fast the
 * bus voltage rises if the pack is cut off while braking.
 *
 * <p>The entry class is {@link brakewright.powertrain.Powertrain}. Speeds are of the vehicle [m/s],
 * motor currents are per motor in the controllers' current basis, powers and pack currents are
 * totals. All of it holds for steady currents at speeds from standstill upward.
 *
 * <pre>{@code
 * Powertrain powertrain = Powertrain.of(board);
 * double brake = powertrain.brakeForce(30.0, 8.0);           // N, 30 A per motor at 8 m/s
 * double into = powertrain.returnedPower(30.0, 8.0);         // W, all motors, into the pack
 * double fades = powertrain.fadeSpeed(30.0, 300.0);          // m/s, where the pack takes 300 W
 * }</pre>
 */
@NullMarked
package brakewright.powertrain;

import org.jspecify.annotations.NullMarked;

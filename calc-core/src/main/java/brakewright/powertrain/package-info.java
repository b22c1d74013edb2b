/**
 * The power balance that ties the current in a motor to the current in the pack at a speed, driving
 * and braking, and what follows from it: the speed above which a pack limit makes the electric
 * brake fade, the speed below which it draws instead of returning, the top speed, and how fast the
 * bus voltage rises if the pack is cut off while braking.
 *
 * <p>The entry class is {@link brakewright.powertrain.Powertrain}. Speeds are of the vehicle [m/s],
 * motor currents are per motor in the controllers' current basis, powers and pack currents are
 * totals. All of it holds for steady currents at speeds from standstill upward.
 */
@NullMarked
package brakewright.powertrain;

import org.jspecify.annotations.NullMarked;

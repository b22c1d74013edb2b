/**
 * How warm cells and windings get on the way, from one end of the charge in use to the other and
 * when ridden hard.
 *
 * <p>The entry classes are {@link brakewright.heat.PackHeat} and {@link
 * brakewright.heat.RepeatedStops}; {@link brakewright.heat.WarmRide} asks at which cell temperature
 * the brake is to be looked at. What is told of the cells is to be expected, not the worst; {@link
 * brakewright.heat.DoubtedHeat} tells how far it may be off.
 *
 * <pre>{@code
 * Optional<PackHeat> hot = PackHeat.atCurrent(board, 20.0);  // A; empty where no mass is known
 * double warmer = hot.map(PackHeat::warmerByK).orElse(Double.NaN); // K, at the end of the charge
 * }</pre>
 */
@NullMarked
package brakewright.heat;

import org.jspecify.annotations.NullMarked;

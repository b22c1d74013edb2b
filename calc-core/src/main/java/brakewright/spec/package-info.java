/**
 * The vehicle as it is built and the settings its controllers hold: what every calculation starts
 * from.
 *
 * <p>All records are immutable and validate themselves once, when they are made: a value outside
 * what is physically possible throws {@link java.lang.IllegalArgumentException} with the name of
 * the quantity, its unit, the permitted range and the value given. Later packages trust what they
 * receive.
 *
 * <p>Quantities are coherent SI ({@code double}), temperatures are in °C, charge states are
 * fractions from 0 (empty) to 1 (full); where another unit is customary it stands in the name
 * ({@code capacityAh}, {@code kvRpmPerVolt}). All currents are magnitudes.
 *
 * <pre>{@code
 * Build firmer = board.withSettings(board.settings().withMotorBrakeCurrent(38.0)); // A per motor
 * double moved = firmer.inertia();                                                 // kg
 * }</pre>
 */
@NullMarked
package brakewright.spec;

import org.jspecify.annotations.NullMarked;

/**
 * How a vehicle is made from what is known of it: what must be told, what is taken where nothing is
 * told, and where each value is from.
 *
 * <p>A program begins with {@link brakewright.assembly.BuildSteps}, which asks for what must be
 * known, step by step, and takes the rest from {@link brakewright.assembly.Defaults}; the reference
 * tables are such. A build file goes the same way, so both make the same vehicle of the same
 * numbers. The other types are the parts of that way: {@link brakewright.assembly.InputSet} keeps
 * each value with its origin, {@link brakewright.assembly.Completion} has the rules for what is
 * left out, {@link brakewright.assembly.BuildAssembler} makes the records. Values are in
 * calculation units, those of {@link brakewright.spec.Input#unit}. Nothing is calculated from the
 * vehicle here.
 *
 * <pre>{@code
 * Build cart = BuildSteps.titled("Cart")
 *         .rider(80.0, Stance.SEATED)                             // kg
 *         .vehicle(45.0, 0.26)                                    // kg, wheel diameter in m
 *         .drive(1, 4.0)                                          // motors, motor turns per wheel turn
 *         .motor(95.0, 0.05)                                      // rpm/V, ohm between two leads
 *         .controller(CurrentBasis.PHASE_PEAK, 80.0, 50.0, 60.0)  // A per motor, A, V
 *         .pack("samsung-30q", 10, 6)                             // cell, in series, in parallel
 *         .with(Input.USE_SPEED_MAX, 7.0)                         // m/s
 *         .build(defaults);
 * }</pre>
 */
@NullMarked
package brakewright.assembly;

import org.jspecify.annotations.NullMarked;

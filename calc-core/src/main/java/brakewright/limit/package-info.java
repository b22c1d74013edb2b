/**
 * How much current is permitted, and what holds it down: every limit is the least of named
 * constraints.
 *
 * <p>The entry class is {@link brakewright.limit.Limits}. A constraint states one condition (a
 * cell's rating, a fuse, the grip of a tyre) and does not know which will turn out to bind. Each
 * can tell its formula, the numbers put in and the inputs they came from. Constraints that do not
 * apply, because the part is not described, are left out; nothing is assumed in their place.
 *
 * <pre>{@code
 * Limits limits = Limits.of(board);
 * Limit brake = limits.motorBrake();                          // per motor
 * ConstraintId heldBy = brake.binding().id();
 * double regen = limits.packRegen().valueAt(0.93, 11.0);      // A, all controllers together
 * }</pre>
 */
@NullMarked
package brakewright.limit;

import org.jspecify.annotations.NullMarked;

/**
 * Profiles side by side, uncertain inputs, and working backwards: which of several ways of setting
 * a vehicle up is better, how sure that is, and which value would just do.
 *
 * <p>The entry classes are {@link brakewright.profile.Comparison}, {@link
 * brakewright.profile.Tolerances} and {@link brakewright.profile.Solver}. A profile is a vehicle
 * with its settings under a name. Nothing here knows how a vehicle is made from numbers: where
 * inputs vary, the caller hands in a function that makes one.
 *
 * <pre>{@code
 * Settings now = board.settings();
 * Solution highest = Solver.highest(
 *         current -> Evaluation.of(board.withSettings(now.withMotorBrakeCurrent(current))), 0.0, 100.0);
 * Comparison both = Comparison.of(
 *         new Profile("now", board),
 *         new Profile("firmer", board.withSettings(now.withMotorBrakeCurrent(38.0))));
 * }</pre>
 */
@NullMarked
package brakewright.profile;

import org.jspecify.annotations.NullMarked;

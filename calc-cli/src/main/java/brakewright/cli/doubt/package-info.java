/**
 * What is not known exactly of the vehicle of a build file, and what that does to the verdict.
 *
 * <p>{@link brakewright.cli.doubt.Vehicles} makes the vehicle at any values within the tolerances
 * that the file states, under any settings. {@link brakewright.cli.doubt.Tolerated} tells what
 * those tolerances do, {@link brakewright.cli.doubt.Judged} both verdicts at their unfavourable
 * side, and {@link brakewright.cli.doubt.Unmeasured} what the values would do that the file does
 * not give.
 */
@NullMarked
package brakewright.cli.doubt;

import org.jspecify.annotations.NullMarked;

/**
 * What is permitted now, asked many times a second while riding.
 *
 * <p>{@link brakewright.live.LiveLimits} is made of a vehicle once and then only reads tables: no
 * call allocates, waits or changes anything, so any number of threads may ask the same one. The
 * limits are those of {@link brakewright.limit}, told for all controllers together.
 *
 * <pre>{@code
 * LiveLimits live = LiveLimits.of(board);
 * double regen = live.permittedRegenOrZeroA(0.93, 21.5);
 * double brake = live.permittedBrakeOrZeroA(8.0, 0.93, 21.5);
 * }</pre>
 */
@NullMarked
package brakewright.live;

import org.jspecify.annotations.NullMarked;

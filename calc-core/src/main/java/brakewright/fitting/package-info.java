/**
 * What the build file should say from now on, by a recorded ride.
 *
 * <p>The entry class is {@link brakewright.fitting.Fits}. Each value stands with its doubt and the
 * number of events that it rests on, or it is refused with the reason. What is not fitted is taken
 * as the vehicle is described: a wrong mass or efficiency ends in rolling resistance and drag.
 */
@NullMarked
package brakewright.fitting;

import org.jspecify.annotations.NullMarked;

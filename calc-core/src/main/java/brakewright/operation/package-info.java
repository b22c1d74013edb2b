/**
 * What the settings in effect make of the vehicle: how its voltage sags, how its packs share a
 * current, what its first stop and a hard grab of the brake send back.
 *
 * <p>The entry class is {@link brakewright.operation.Operation}: the settings that are given, and
 * for each current that is not given its limit. The results beside it are facts, each with what is
 * permitted where something is; {@code brakewright.review} judges them.
 *
 * <pre>{@code
 * Operation now = Operation.of(board, Limits.of(board));
 * PackState cold = PackState.of(new BatteryModel(board.battery()), 0.9, 5.0);
 * double fades = now.brake().fadeSpeed(cold);                 // m/s
 * double top = now.topSpeed();                                // m/s
 * }</pre>
 */
@NullMarked
package brakewright.operation;

import org.jspecify.annotations.NullMarked;

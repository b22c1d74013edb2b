/**
 * What the settings in effect make of the vehicle: how its voltage sags, how its packs share a
 * current, what its first stop and a hard grab of the brake send back.
 *
 * <p>The entry class is {@link brakewright.operation.Operation}: the settings that are given, and
 * for each current that is not given its limit. The results beside it are facts, each with what is
 * permitted where something is; {@code brakewright.review} judges them.
 */
@NullMarked
package brakewright.operation;

import org.jspecify.annotations.NullMarked;

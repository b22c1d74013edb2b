package brakewright.tables;

import java.util.OptionalDouble;

/**
 * A plug of the main current path.
 *
 * @param id short name used in build files
 * @param name type
 * @param current continuous [A]
 * @param peakCurrent for a short time [A]; empty if not known
 * @param voltage rating [V]; empty if not known
 * @param resistance of one contact pair [Ω]; empty if not known
 * @param isAntiSpark whether it connects through a resistor first
 * @param source id of the {@link Source}
 * @param kind how well these figures are known
 * @param note their conditions and doubts
 */
public record PlugEntry(
        String id,
        String name,
        double current,
        OptionalDouble peakCurrent,
        OptionalDouble voltage,
        OptionalDouble resistance,
        boolean isAntiSpark,
        String source,
        SourceKind kind,
        String note) {}

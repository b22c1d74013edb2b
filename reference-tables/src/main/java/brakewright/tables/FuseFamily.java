package brakewright.tables;

/**
 * A family of fuses and what it can interrupt.
 *
 * @param id short name
 * @param voltageRating highest voltage it can interrupt [V]
 * @param largestRating rating of the largest fuse of the family [A]
 * @param breakingCapacity largest fault current it can interrupt [A]
 * @param continuousShare part of its rating that may flow continuously [1]
 * @param source id of the {@link Source}
 * @param kind how well these figures are known
 * @param note their conditions and doubts
 */
public record FuseFamily(
        String id,
        double voltageRating,
        double largestRating,
        double breakingCapacity,
        double continuousShare,
        String source,
        SourceKind kind,
        String note) {}

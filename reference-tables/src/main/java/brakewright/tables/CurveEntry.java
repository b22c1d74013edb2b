package brakewright.tables;

import brakewright.spec.Curve;
import java.util.List;

/**
 * A curve of the tables.
 *
 * @param id short name used by cells and build files
 * @param quantity what it tells
 * @param curve the points, read by straight lines and constant beyond the ends; over temperature by
 *     the rule of Arrhenius
 * @param sources ids of the {@link Source}s of its points, without repetition, never empty
 * @param kind how well its least known point is known
 */
public record CurveEntry(
        String id, CurveQuantity quantity, Curve curve, List<String> sources, SourceKind kind) {

    /**
     * Returns the source of its first point.
     *
     * @return id of the {@link Source}
     */
    public String source() {
        return sources.get(0);
    }
}

package brakewright.tables;

import java.util.Map;
import java.util.Optional;

/**
 * A cell of the tables: what its maker rates it for and which curves stand for it.
 *
 * @param id short name used in build files
 * @param name maker and type
 * @param chemistry id of the {@link ChemistryEntry}
 * @param openCircuitVoltage id of its curve
 * @param resistanceByCharge id of its curve
 * @param resistanceByTemperature id of its curve
 * @param chargeCurrentByCharge id of its curve; empty where the charge current is one up to full
 * @param figures by the key of the {@link CellQuantity}, in the order of the table
 */
public record CellEntry(
        String id,
        String name,
        String chemistry,
        String openCircuitVoltage,
        String resistanceByCharge,
        String resistanceByTemperature,
        Optional<String> chargeCurrentByCharge,
        Map<String, Figure> figures) {

    /**
     * Returns a figure that every cell has.
     *
     * @param quantity key of a {@link CellQuantity}
     * @return the figure
     * @throws IllegalArgumentException if this cell has no such figure
     */
    public Figure figure(String quantity) {
        return figureIfGiven(quantity)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "cell " + id + " has no figure for " + quantity));
    }

    /**
     * Returns how well the least known of its figures is known.
     *
     * @return the worst of their kinds
     */
    public SourceKind worstKind() {
        return figures.values().stream()
                .map(Figure::kind)
                .reduce(SourceKind.PUBLISHED, SourceKind::weaker);
    }

    /**
     * Returns a figure if this cell has it.
     *
     * @param quantity key of a {@link CellQuantity}
     * @return the figure; empty if the table gives none
     */
    public Optional<Figure> figureIfGiven(String quantity) {
        return Optional.ofNullable(figures.get(quantity));
    }
}

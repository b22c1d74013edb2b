package brakewright.tables;

/**
 * A cell chemistry and the curves that stand for it where a build gives none.
 *
 * @param id short name used in build files
 * @param name in words
 * @param openCircuitVoltage id of its curve
 * @param resistanceByCharge id of its curve
 * @param resistanceIntoByCharge id of its curve
 * @param resistanceColdByCharge id of its curve
 * @param sustainedRiseByCharge id of its curve
 * @param resistanceByTemperature id of its curve
 * @param source id of the {@link Source} of this choice
 * @param kind how well the choice is founded
 * @param note why these curves
 */
public record ChemistryEntry(
        String id,
        String name,
        String openCircuitVoltage,
        String resistanceByCharge,
        String resistanceIntoByCharge,
        String resistanceColdByCharge,
        String sustainedRiseByCharge,
        String resistanceByTemperature,
        String source,
        SourceKind kind,
        String note) {}

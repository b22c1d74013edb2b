package brakewright.explain;

/**
 * There is no such result for this vehicle.
 *
 * @param id which result
 * @param reason why there is none, a sentence
 */
public record WorkingMissing(ResultId id, String reason) implements WorkingOutcome {}

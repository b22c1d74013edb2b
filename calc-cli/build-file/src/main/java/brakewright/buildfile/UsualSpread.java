package brakewright.buildfile;

/**
 * How far a number usually lies off that the file does not give.
 *
 * @param spread the number, where it would stand, and its range
 * @param kind how well it is known
 */
public record UsualSpread(Spread spread, String kind) {}

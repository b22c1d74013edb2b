package brakewright.worksheet;

import brakewright.spec.Cell;

/**
 * For how long a current is taken to flow where the sheet tells what it does to the packs, as cells
 * resist the more the longer it does.
 */
public enum Horizon {
    /** Its first instant, in which the ohmic share of the resistance is there alone. */
    INSTANT,
    /** A pulse of 10 s, for which resistances of cells are told. */
    PULSE,
    /** As long as braking lasts, and at least the pulse. */
    BRAKING,
    /** The longest hard pull in use. */
    HARD_PULL,
    /** For ever. */
    ENDLESS;

    /**
     * Returns how long that is.
     *
     * @param sheet of a vehicle
     * @return the time [s]; 0 for the first instant, infinite for ever
     */
    public double seconds(Worksheet sheet) {
        return switch (this) {
            case INSTANT -> 0.0;
            case PULSE -> Cell.PULSE;
            case BRAKING -> Math.max(Cell.PULSE, sheet.permitted().brakingTime().seconds());
            case HARD_PULL -> sheet.build().use().effort().hardPull();
            case ENDLESS -> Double.POSITIVE_INFINITY;
        };
    }
}

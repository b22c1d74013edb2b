package brakewright.replay;

import brakewright.spec.Unit;
import java.util.Locale;

/** What is measured on a ride and what the model says of it, side by side. */
public enum Figure {
    /** Out of the packs, where voltage and current were recorded. */
    ENERGY_OUT(Unit.JOULE),
    /** Into them, likewise. */
    ENERGY_BACK(Unit.JOULE),
    /** Out less back over the way ridden meanwhile. */
    CONSUMPTION(Unit.JOULE_PER_METRE),
    /** Out of the packs. */
    CHARGE_OUT(Unit.COULOMB),
    /** Into them. */
    CHARGE_BACK(Unit.COULOMB),
    /** Share of the whole charge that the ride used, within pieces. */
    CHARGE_USED(Unit.RATIO),
    /** The highest mean of a second. */
    CURRENT_OUT(Unit.AMPERE),
    /** Likewise into the packs. */
    CURRENT_BACK(Unit.AMPERE),
    /** The lowest mean of a second. */
    LOWEST_VOLTAGE(Unit.VOLT),
    /** The warmest that the cells became. */
    WARMEST_CELLS(Unit.CELSIUS),
    /** The highest that was held; on the level at that charge, as the model has it. */
    TOP_SPEED(Unit.METRE_PER_SECOND),
    /** Mean deceleration of the hardest stop; with all brakes in full, as the model has it. */
    HARDEST_STOP(Unit.METRE_PER_SECOND_SQUARED),
    /** How far the charge in use goes where a ride goes on like this one. */
    RANGE(Unit.METRE);

    private final Unit unit;

    Figure(Unit unit) {
        this.unit = unit;
    }

    /**
     * Returns its unit.
     *
     * @return of every value of it
     */
    public Unit unit() {
        return unit;
    }

    /**
     * Returns the name that files use.
     *
     * @return lower case with hyphens
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

package brakewright.fitting;

import brakewright.spec.Unit;
import java.util.Locale;

/** What a recorded ride may tell of its vehicle. */
public enum Fitted {
    /** Resistance of the pack by changes of current within a second. */
    INSTANT_RESISTANCE(Unit.OHM),
    /** Resistance of the pack by changes of current over ten seconds. */
    PULL_RESISTANCE(Unit.OHM),
    /** What of it lies outside the cells: the rest behind the cells as they are described. */
    JOINT_RESISTANCE(Unit.OHM),
    /** What a whole charge holds. */
    CAPACITY(Unit.AMPERE_HOUR),
    /** What electronics draw while the vehicle stands. */
    IDLE_POWER(Unit.WATT),
    /** Diameter of the wheels, by the positions. */
    WHEEL_DIAMETER(Unit.METRE),
    /** Coefficient of rolling resistance. */
    ROLLING_RESISTANCE(Unit.RATIO),
    /** Drag coefficient times frontal area. */
    DRAG_AREA(Unit.SQUARE_METRE),
    /** Coefficient of rolling resistance, by rolls without drive and brake alone. */
    COASTING_ROLLING(Unit.RATIO),
    /** Drag coefficient times frontal area, likewise. */
    COASTING_DRAG(Unit.SQUARE_METRE),
    /** Speed of the motors per volt. */
    SPEED_CONSTANT(Unit.RPM_PER_VOLT),
    /** The current into the packs at which the controllers hold, all together. */
    REGEN_PLATEAU(Unit.AMPERE);

    private final Unit unit;

    Fitted(Unit unit) {
        this.unit = unit;
    }

    /**
     * Returns its unit.
     *
     * @return of value and doubt
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

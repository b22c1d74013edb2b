package brakewright.recording;

import brakewright.spec.Unit;
import java.util.Locale;

/**
 * What a recording may hold of each moment, each with the range that a field may have.
 *
 * <p>Assumption: the ranges are our own choice, wider than any vehicle of this class needs.
 */
public enum Quantity {
    /** Time, from any beginning [s]. */
    TIME(Unit.SECOND, -Double.MAX_VALUE, Double.MAX_VALUE),
    /** Speed as the wheels tell it [m/s]. */
    WHEEL_SPEED(Unit.METRE_PER_SECOND, -10.0, 100.0),
    /** Speed as satellites tell it [m/s]. */
    SATELLITE_SPEED(Unit.METRE_PER_SECOND, -10.0, 100.0),
    /** Latitude, north positive [°]. */
    LATITUDE(Unit.NONE, -90.0, 90.0),
    /** Longitude, east positive [°]. */
    LONGITUDE(Unit.NONE, -180.0, 180.0),
    /** Distance since some beginning [m]. */
    DISTANCE(Unit.METRE, -1.0, 1e9),
    /** Height above the sea [m]. */
    ALTITUDE(Unit.METRE, -500.0, 9000.0),
    /** Voltage at the terminals of the pack [V]. */
    PACK_VOLTAGE(Unit.VOLT, 1.0, 1000.0),
    /** Current of the pack, positive out of it [A]. */
    PACK_CURRENT(Unit.AMPERE, -5000.0, 5000.0),
    /** Current of a motor [A]. */
    MOTOR_CURRENT(Unit.AMPERE, -5000.0, 5000.0),
    /** Charge state [1]. */
    CHARGE(Unit.RATIO, -0.001, 1.05),
    /** Temperature of the cells [°C]. */
    PACK_TEMPERATURE(Unit.CELSIUS, -60.0, 150.0),
    /** Temperature of a motor [°C]. */
    MOTOR_TEMPERATURE(Unit.CELSIUS, -60.0, 300.0),
    /** Speed of the wind [m/s]. */
    WIND_SPEED(Unit.METRE_PER_SECOND, 0.0, 100.0);

    private final Unit unit;
    private final double low;
    private final double high;

    Quantity(Unit unit, double low, double high) {
        this.unit = unit;
        this.low = low;
        this.high = high;
    }

    /**
     * Returns the name that files and options use.
     *
     * @return lower case with underscores
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Returns the unit of its values.
     *
     * @return none for latitude and longitude, which are in degrees
     */
    public Unit unit() {
        return unit;
    }

    /**
     * Returns whether a vehicle of this class can have had a value.
     *
     * <p>Assumption: the bounds are our own choice, far beyond what is ridden; they find fields
     * that are broken, not rides that were hard.
     *
     * @param value in the unit of the quantity
     * @return false beyond the range, and for NaN
     */
    public boolean isPossible(double value) {
        return value >= low && value <= high;
    }
}

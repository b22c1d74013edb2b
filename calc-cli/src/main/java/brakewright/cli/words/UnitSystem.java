package brakewright.cli.words;

import brakewright.profile.Entry;

/** In which units speeds and distances are shown. */
public enum UnitSystem {
    /** Kilometres. */
    SI("km/h", 3.6, "m", 1.0, "km", 1e-3),
    /** Miles and feet. */
    IMPERIAL("mi/h", 1.0 / 0.44704, "ft", 1.0 / 0.3048, "mi", 1.0 / 1609.344);

    private final String speedUnit;
    private final double speedFactor;
    private final String lengthUnit;
    private final double lengthFactor;
    private final String distanceUnit;
    private final double distanceFactor;

    UnitSystem(
            String speedUnit,
            double speedFactor,
            String lengthUnit,
            double lengthFactor,
            String distanceUnit,
            double distanceFactor) {
        this.speedUnit = speedUnit;
        this.speedFactor = speedFactor;
        this.lengthUnit = lengthUnit;
        this.lengthFactor = lengthFactor;
        this.distanceUnit = distanceUnit;
        this.distanceFactor = distanceFactor;
    }

    /**
     * Returns the unit of speed.
     *
     * @return its symbol
     */
    public String speedUnit() {
        return speedUnit;
    }

    /**
     * Converts a speed.
     *
     * @param metresPerSecond [m/s]
     * @return the speed in the unit of this system
     */
    public double speed(double metresPerSecond) {
        return metresPerSecond * speedFactor;
    }

    /**
     * Converts a speed of this system.
     *
     * @param shown in the unit of this system
     * @return the speed [m/s]
     */
    public double metresPerSecond(double shown) {
        return shown / speedFactor;
    }

    /**
     * Writes a speed with its unit.
     *
     * @param metresPerSecond [m/s]
     * @return the text
     */
    public String speedText(double metresPerSecond) {
        return Numbers.nearest(speed(metresPerSecond), 1) + " " + speedUnit;
    }

    /**
     * Writes a speed that must not be exceeded, rounded down.
     *
     * @param metresPerSecond [m/s]
     * @return the text
     */
    public String speedDown(double metresPerSecond) {
        return Numbers.down(speed(metresPerSecond), 1) + " " + speedUnit;
    }

    /**
     * Writes a ride's distance with its unit, rounded up.
     *
     * @param metres [m]
     * @return the text
     */
    public String distanceText(double metres) {
        return Numbers.up(metres * distanceFactor, 1) + " " + distanceUnit;
    }

    /**
     * Writes a distance that is not exceeded, rounded down.
     *
     * @param metres [m]
     * @return the text
     */
    public String distanceDown(double metres) {
        return Numbers.down(metres * distanceFactor, 1) + " " + distanceUnit;
    }

    /**
     * Writes a distance that is estimated.
     *
     * @param metres [m]
     * @return the text, to the nearest tenth
     */
    public String distanceNearest(double metres) {
        return Numbers.nearest(metres * distanceFactor, 1) + " " + distanceUnit;
    }

    /**
     * Writes a distance that was measured.
     *
     * @param metres [m]
     * @return the text, to the nearest thousandth
     */
    public String distanceMeasured(double metres) {
        return Numbers.nearest(metres * distanceFactor, 3) + " " + distanceUnit;
    }

    /**
     * Writes a length with its unit.
     *
     * @param metres [m]
     * @return the text
     */
    public String lengthText(double metres) {
        return Numbers.nearest(metres * lengthFactor, 1) + " " + lengthUnit;
    }

    /**
     * Returns the unit of a length on the road.
     *
     * @return its symbol
     */
    public String lengthUnit() {
        return lengthUnit;
    }

    /**
     * Converts a length on the road.
     *
     * @param metres [m]
     * @return the length in the unit of this system
     */
    public double length(double metres) {
        return metres * lengthFactor;
    }

    /**
     * Returns how finely settings are entered in these units.
     *
     * @return speeds to a whole unit
     */
    public Entry entry() {
        return this == SI ? Entry.METRIC : Entry.IMPERIAL;
    }
}

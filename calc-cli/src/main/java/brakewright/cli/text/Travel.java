package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;

/** Writes how far a ride goes and what it takes. */
final class Travel {

    private static final double METRES_PER_MILE = 1609.344;
    private static final double JOULES_PER_WATT_HOUR = 3600.0;

    private Travel() {}

    /**
     * Writes a distance to the nearest tenth.
     *
     * @param units the units
     * @param metres [m], finite
     * @return the number and its unit
     */
    static String distance(UnitSystem units, double metres) {
        return units.distanceNearest(metres);
    }

    /**
     * Writes how far two places are apart.
     *
     * @param units the units
     * @param metres [m], finite
     * @return whole metres from ten on, or miles to two digits
     */
    static String apart(UnitSystem units, double metres) {
        double miles = metres / METRES_PER_MILE;
        return units == UnitSystem.IMPERIAL
                ? Numbers.nearest(miles, miles < 1.0 ? 2 : 1) + " mi"
                : Numbers.nearest(metres, metres < 10.0 ? 1 : 0) + " m";
    }

    /**
     * Writes a distance in the other unit.
     *
     * @param units the units that are not wanted
     * @param metres [m], finite
     * @return the number and its unit
     */
    static String otherDistance(UnitSystem units, double metres) {
        return units == UnitSystem.IMPERIAL ? kilometres(metres) : miles(metres);
    }

    /**
     * Writes a consumption in both units, that of the worksheet first.
     *
     * @param units the units
     * @param joulesPerMetre [J/m], finite
     * @return both numbers and their units
     */
    static String consumption(UnitSystem units, double joulesPerMetre) {
        String kilometre = Numbers.nearest(perKilometre(joulesPerMetre), 1) + " Wh/km";
        String mile = Numbers.nearest(perMile(joulesPerMetre), 1) + " Wh/mi";
        return units == UnitSystem.IMPERIAL
                ? mile + " (" + kilometre + ")"
                : kilometre + " (" + mile + ")";
    }

    /**
     * Converts a consumption.
     *
     * @param joulesPerMetre [J/m]
     * @return Wh/km
     */
    static double perKilometre(double joulesPerMetre) {
        return joulesPerMetre * 1000.0 / JOULES_PER_WATT_HOUR;
    }

    /**
     * Converts a consumption.
     *
     * @param joulesPerMetre [J/m]
     * @return Wh/mi
     */
    static double perMile(double joulesPerMetre) {
        return joulesPerMetre * METRES_PER_MILE / JOULES_PER_WATT_HOUR;
    }

    private static String kilometres(double metres) {
        return Numbers.nearest(metres / 1000.0, 1) + " km";
    }

    private static String miles(double metres) {
        return Numbers.nearest(metres / METRES_PER_MILE, 1) + " mi";
    }
}

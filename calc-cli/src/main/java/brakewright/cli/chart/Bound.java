package brakewright.cli.chart;

/**
 * One value that crosses the whole chart. What lies beyond it is hatched along its edge.
 *
 * @param label what it is, in few words
 * @param role how it is drawn
 * @param isUpright whether it is a value of the quantity at the foot of the chart
 * @param at the value
 * @param beyond on which side it may not be
 */
public record Bound(String label, Role role, boolean isUpright, double at, Beyond beyond) {

    /** The side of a bound that is not permitted. */
    public enum Beyond {
        /** More than the bound. */
        MORE,
        /** Less than the bound. */
        LESS,
        /** Both sides are permitted. */
        NEITHER
    }

    /**
     * Crosses the chart from left to right.
     *
     * @param label what it is, in few words
     * @param role how it is drawn
     * @param at the value
     * @param beyond on which side it may not be
     * @return the bound
     */
    public static Bound level(String label, Role role, double at, Beyond beyond) {
        return new Bound(label, role, false, at, beyond);
    }

    /**
     * Crosses the chart from foot to head, and forbids nothing.
     *
     * @param label what it is, in few words
     * @param role how it is drawn
     * @param at the value
     * @return the bound
     */
    public static Bound upright(String label, Role role, double at) {
        return new Bound(label, role, true, at, Beyond.NEITHER);
    }
}

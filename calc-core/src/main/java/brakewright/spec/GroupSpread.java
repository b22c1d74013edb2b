package brakewright.spec;

/**
 * How far the worst of the groups in series departs from the mean of them.
 *
 * @param charge by how much its charge state lies above, or another's below, when the pack is full
 *     [1], from 0 to 0.3
 * @param capacity how much less than the mean it holds [1], from 0 to 0.5
 * @param resistance how much more resistance than the mean it has [1], from 0 to 2
 */
public record GroupSpread(double charge, double capacity, double resistance) {

    /** Groups that are all alike. */
    public static final GroupSpread NONE = new GroupSpread(0.0, 0.0, 0.0);

    /**
     * Validates the spread.
     *
     * @throws IllegalArgumentException if a share is outside its range
     */
    public GroupSpread {
        Require.within("charge among groups", charge, 0.0, 0.3, Unit.RATIO);
        Require.within("capacity among groups", capacity, 0.0, 0.5, Unit.RATIO);
        Require.within("resistance among groups", resistance, 0.0, 2.0, Unit.RATIO);
    }
}

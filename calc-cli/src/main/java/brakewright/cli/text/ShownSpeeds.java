package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;

/** Chooses the speeds that head a table. */
final class ShownSpeeds {

    /** The last round speed is left out where the highest lies so little above it [steps]. */
    private static final double NEAR = 0.3;

    /** Below that, whole units do not tell the columns apart. */
    private static final double SLOW = 10.0;

    private ShownSpeeds() {}

    /**
     * Returns round speeds in the units shown, up to the highest.
     *
     * @param units in which they are shown
     * @param top the highest [m/s]
     * @param columns how many there may be
     * @return the speeds, ascending, the highest last [m/s]
     */
    static double[] upTo(UnitSystem units, double top, int columns) {
        double shownTop = units.speed(top);
        double step = Math.max(1.0, Math.ceil(shownTop / columns));
        int count = (int) Math.max(1.0, Math.ceil(shownTop / step - NEAR));
        double[] speeds = new double[count];
        for (int i = 0; i < count; i++) {
            speeds[i] =
                    units.metresPerSecond(
                            i == count - 1 ? shownTop : Math.min(shownTop, step * (i + 1)));
        }
        return speeds;
    }

    /**
     * Writes a speed at the head of a column.
     *
     * @param units in which it is shown
     * @param speed [m/s]
     * @param top the highest of the table [m/s]
     * @return whole units, or one decimal where the table is slow
     */
    static String head(UnitSystem units, double speed, double top) {
        return Numbers.nearest(units.speed(speed), units.speed(top) < SLOW ? 1 : 0);
    }
}

package brakewright.cli.text;

import brakewright.cli.words.UnitSystem;

/** Chooses the speeds that head a table. */
final class ShownSpeeds {

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
        int count = (int) Math.ceil(shownTop / step - 1e-9);
        double[] speeds = new double[count];
        for (int i = 0; i < count; i++) {
            speeds[i] = units.metresPerSecond(Math.min(shownTop, step * (i + 1)));
        }
        return speeds;
    }
}

package brakewright.spec;

import java.util.Arrays;

/**
 * What a pack may stand beside another as. In parallel its cells are changed so that both have a
 * range of voltage in common.
 *
 * @param pack as it would be alone
 * @param likeness how much of the other it has
 * @param seriesMore cells in series more than the other has, in parallel
 * @param lower how far it is empty above the other's emptiest voltage [1], as a share of the
 *     other's range; below 0.7
 * @param upper how far it is full above the other's fullest voltage [1], as a share; above −0.4
 */
record Companion(Pack pack, Likeness likeness, int seriesMore, double lower, double upper) {

    enum Likeness {
        /** The very pack. */
        THE_SAME,
        /** Another pack of the same cells, as many in series. */
        SAME_CELLS,
        /** Other cells. */
        OTHER
    }

    private static final double NARROWEST = 0.05;

    /** Whether a pack has a range of voltages that others could have in common with it. */
    static boolean fits(Pack pack) {
        Curve voltage = pack.cell().openCircuitVoltage();
        return voltage.at(1.0) - voltage.at(0.0) > NARROWEST;
    }

    Pack of(Pack other, Joining joining) {
        return switch (likeness) {
            case THE_SAME -> other;
            case SAME_CELLS -> pack(other.cell(), other.series(), other.temperatureC());
            case OTHER ->
                    joining == Joining.SERIES
                            ? pack(pack.cell(), pack.series(), other.temperatureC())
                            : beside(other);
        };
    }

    private Pack beside(Pack other) {
        int series = other.series() + seriesMore;
        Curve voltage = pack.cell().openCircuitVoltage();
        double empty = other.series() * other.cell().openCircuitVoltage().at(0.0);
        double full = other.series() * other.cell().openCircuitVoltage().at(1.0);
        double low = (empty + lower * (full - empty)) / series;
        double high = (full + upper * (full - empty)) / series;
        double range = voltage.at(1.0) - voltage.at(0.0);
        double[] voltages =
                Arrays.stream(voltage.ordinates())
                        .map(
                                each ->
                                        range == 0.0
                                                ? high
                                                : low
                                                        + (high - low)
                                                                * ((each - voltage.at(0.0))
                                                                        / range))
                        .toArray();
        voltages[0] = low;
        return pack(
                Builds.withVoltage(pack.cell(), Curve.of(voltage.abscissas(), voltages)),
                series,
                other.temperatureC());
    }

    private Pack pack(Cell cell, int series, double temperatureC) {
        return pack.withCell(cell).withSeries(series).at(temperatureC);
    }
}

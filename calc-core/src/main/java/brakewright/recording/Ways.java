package brakewright.recording;

import java.util.OptionalDouble;

/**
 * How far it went, by all that tells it.
 *
 * @param source what the speed came from
 * @param bySpeed the speed added up over the recorded time [m]
 * @param speedDoubt how far that may be off if the speed never changed faster between rows than it
 *     did over a second [m]; empty where no rows are near enough to tell
 * @param byPosition from position to position while it moved, within pieces [m]; empty where there
 *     are none
 * @param byCounter what the counter of distance ran on, within pieces [m]; empty where there is
 *     none
 * @param positionsOverWheels distance by position over distance by the wheels, where both were
 *     recorded [1]; empty where the speed is not of the wheels, or there are too few positions
 * @param acrossGaps straight across the gaps from position to position, the least that was ridden
 *     there [m]; 0 where unknown
 * @param unrecorded of pieces of which only the distance is known [m]
 */
public record Ways(
        SpeedSource source,
        double bySpeed,
        OptionalDouble speedDoubt,
        OptionalDouble byPosition,
        OptionalDouble byCounter,
        OptionalDouble positionsOverWheels,
        double acrossGaps,
        double unrecorded) {

    static Ways of(Speeds.Settled settled, double unrecorded) {
        Recording recording = settled.recording();
        Quantity speed = settled.quantity();
        Integral way = Integral.of(recording, (piece, row) -> Math.abs(piece.value(speed, row)));
        double fastest = fastestChange(recording, speed);
        return new Ways(
                settled.source(),
                way.above(),
                fastest > 0.0
                        ? OptionalDouble.of(doubt(recording, speed, fastest))
                        : OptionalDouble.empty(),
                byPosition(recording, speed),
                byCounter(recording),
                settled.source() == SpeedSource.WHEELS
                        ? Speeds.positionsOver(recording.pieces(), recording.longestStep(), speed)
                        : OptionalDouble.empty(),
                recording.gaps().stream().mapToDouble(gap -> gap.leastDistance().orElse(0.0)).sum(),
                unrecorded);
    }

    /**
     * Returns what was measured, by what is surest: the speed, or positions where the speed was
     * worked out from them.
     *
     * @return [m]
     */
    public double measured() {
        return source == SpeedSource.POSITIONS ? byPosition.orElse(bySpeed) : bySpeed;
    }

    /**
     * Returns the least that was ridden in all.
     *
     * @return what was measured, across gaps, and what is known of pieces not recorded [m]
     */
    public double atLeast() {
        return measured() + acrossGaps + unrecorded;
    }

    /** The greatest rate over a second; 0 where none can be told. */
    private static double fastestChange(Recording recording, Quantity speed) {
        double fastest = 0.0;
        for (Piece piece : recording.pieces()) {
            HardChange.Rates rates = new HardChange.Rates(piece, speed);
            for (int i = 0; i < rates.count(); i++) {
                double rate = Math.abs(rates.at(i));
                fastest = rate > fastest ? rate : fastest;
            }
        }
        return fastest;
    }

    /**
     * How far the sum may be off. Where the speed never changes faster than a, between two rows a
     * time t apart it may run off the straight line between them and back by an area of at most
     * (a·t² − Δv²/a)/4.
     */
    static double doubt(Recording recording, Quantity speed, double fastest) {
        double doubt = 0.0;
        for (Piece piece : recording.pieces()) {
            doubt =
                    Neighbours.sum(
                            doubt,
                            piece,
                            recording.longestStep(),
                            row -> !Double.isNaN(piece.value(speed, row)),
                            (before, row, step) -> {
                                double change =
                                        Math.abs(piece.value(speed, row))
                                                - Math.abs(piece.value(speed, before));
                                return Math.max(
                                                0.0,
                                                fastest * step * step - change * change / fastest)
                                        / 4.0;
                            });
        }
        return doubt;
    }

    /** Positions scatter while the vehicle stands, which is no way. */
    private static OptionalDouble byPosition(Recording recording, Quantity speed) {
        if (!recording.has(Quantity.LATITUDE) || !recording.has(Quantity.LONGITUDE)) {
            return OptionalDouble.empty();
        }
        double way = 0.0;
        for (Piece piece : recording.pieces()) {
            way =
                    Neighbours.sum(
                            way,
                            piece,
                            recording.longestStep(),
                            row -> !Double.isNaN(piece.value(Quantity.LATITUDE, row)),
                            (before, row, step) ->
                                    isStanding(piece, speed, before)
                                                    && isStanding(piece, speed, row)
                                            ? 0.0
                                            : Earth.distance(piece, before, piece, row));
        }
        return OptionalDouble.of(way);
    }

    private static boolean isStanding(Piece piece, Quantity speed, int row) {
        return Math.abs(piece.value(speed, row)) < Joining.STANDING;
    }

    /** A counter that falls was set back: nothing is taken from there to the next row. */
    private static OptionalDouble byCounter(Recording recording) {
        if (!recording.has(Quantity.DISTANCE)) {
            return OptionalDouble.empty();
        }
        double way = 0.0;
        for (Piece piece : recording.pieces()) {
            double last = Double.NaN;
            for (int row = 0; row < piece.rows(); row++) {
                double own = piece.value(Quantity.DISTANCE, row);
                if (!Double.isNaN(own)) {
                    way += own > last ? own - last : 0.0;
                    last = own;
                }
            }
        }
        return OptionalDouble.of(way);
    }
}

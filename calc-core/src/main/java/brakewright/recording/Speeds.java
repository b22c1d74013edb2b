package brakewright.recording;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Settles which speed a ride had: as recorded, or worked out where it was not. */
public final class Speeds {

    /**
     * Assumption: our own choice; positions scatter and cut corners, tyres are worn: farther apart
     * than a quarter, one of the two is wrong.
     */
    private static final double AGREEMENT = 1.25;

    /** Assumption: our own choice; over less the scatter of positions counts too much [m]. */
    private static final double LEAST_DISTANCE = 200.0;

    /**
     * A recording and the quantity that is its speed.
     *
     * @param recording with that column
     * @param quantity which
     * @param source what it came from
     */
    record Settled(Recording recording, Quantity quantity, SpeedSource source) {}

    private Speeds() {}

    /**
     * Holds a column of speeds against the positions.
     *
     * @param pieces with both
     * @param longestStep between rows that are neighbours [s]
     * @param speed the column
     * @return distance by position over distance by speed [1]; empty where there are none, or too
     *     little was ridden
     */
    public static OptionalDouble positionsOver(
            List<Piece> pieces, double longestStep, Quantity speed) {
        double[] sums = new double[2];
        for (Piece piece : pieces) {
            Neighbours.each(
                    piece,
                    longestStep,
                    row ->
                            !Double.isNaN(piece.value(Quantity.LATITUDE, row))
                                    && !Double.isNaN(piece.value(speed, row)),
                    (before, row, step) -> {
                        double mean =
                                0.5
                                        * Math.abs(
                                                piece.value(speed, row)
                                                        + piece.value(speed, before));
                        if (mean > 0.0) {
                            sums[0] += Earth.distance(piece, before, piece, row);
                            sums[1] += mean * step;
                        }
                    });
        }
        double walked = sums[0];
        double told = sums[1];
        return walked >= LEAST_DISTANCE && told > 0.0
                ? OptionalDouble.of(walked / told)
                : OptionalDouble.empty();
    }

    /** Empty where there is neither a speed nor a position nor a distance. */
    static Optional<Settled> of(Recording recording, Repairs repairs) {
        boolean hasPositions =
                recording.has(Quantity.LATITUDE) && recording.has(Quantity.LONGITUDE);
        if (recording.has(Quantity.WHEEL_SPEED)) {
            OptionalDouble ratio =
                    positionsOver(
                            recording.pieces(), recording.longestStep(), Quantity.WHEEL_SPEED);
            if (ratio.isPresent() && !agrees(ratio.getAsDouble())) {
                contradicted(recording, repairs);
                return Optional.of(byPosition(recording));
            }
            return Optional.of(new Settled(recording, Quantity.WHEEL_SPEED, SpeedSource.WHEELS));
        }
        if (recording.has(Quantity.SATELLITE_SPEED)) {
            return Optional.of(
                    new Settled(recording, Quantity.SATELLITE_SPEED, SpeedSource.SATELLITES));
        }
        if (hasPositions) {
            return Optional.of(byPosition(recording));
        }
        return recording.has(Quantity.DISTANCE)
                ? Optional.of(byCounter(recording))
                : Optional.empty();
    }

    /**
     * Tells whether two distances agree.
     *
     * @param ratio of one to the other [1]
     * @return true within a quarter
     */
    public static boolean agrees(double ratio) {
        return ratio < AGREEMENT && ratio > 1.0 / AGREEMENT;
    }

    private static void contradicted(Recording recording, Repairs repairs) {
        for (Piece piece : recording.pieces()) {
            for (int row = 0; row < piece.rows(); row++) {
                if (!Double.isNaN(piece.value(Quantity.WHEEL_SPEED, row))) {
                    repairs.field(
                            Repair.Rule.SPEED_CONTRADICTED, Quantity.WHEEL_SPEED, piece.place(row));
                }
            }
        }
    }

    private static Settled byPosition(Recording recording) {
        Recording changed =
                recording.each(
                        piece ->
                                derived(
                                        piece,
                                        Quantity.LATITUDE,
                                        Quantity.SATELLITE_SPEED,
                                        (from, to) -> Earth.distance(piece, from, piece, to)));
        return new Settled(changed, Quantity.SATELLITE_SPEED, SpeedSource.POSITIONS);
    }

    private static Settled byCounter(Recording recording) {
        Recording changed =
                recording.each(
                        piece ->
                                derived(
                                        piece,
                                        Quantity.DISTANCE,
                                        Quantity.WHEEL_SPEED,
                                        (from, to) ->
                                                piece.value(Quantity.DISTANCE, to)
                                                        - piece.value(Quantity.DISTANCE, from)));
        return new Settled(changed, Quantity.WHEEL_SPEED, SpeedSource.COUNTER);
    }

    private interface Between {
        double distance(int from, int to);
    }

    /** The way from the last row that has it to the next, over the time. */
    private static Piece derived(Piece piece, Quantity known, Quantity speed, Between between) {
        int[] rows = new int[piece.rows()];
        int count = 0;
        for (int row = 0; row < piece.rows(); row++) {
            if (!Double.isNaN(piece.value(known, row))) {
                rows[count++] = row;
            }
        }
        double[] speeds = new double[piece.rows()];
        Arrays.fill(speeds, Double.NaN);
        for (int i = 0; i < count && count > 1; i++) {
            int before = rows[Math.max(0, i - 1)];
            int behind = rows[Math.min(count - 1, i + 1)];
            double way =
                    (before == rows[i] ? 0.0 : between.distance(before, rows[i]))
                            + (behind == rows[i] ? 0.0 : between.distance(rows[i], behind));
            speeds[rows[i]] = way / (piece.time(behind) - piece.time(before));
        }
        return piece.with(speed, speeds);
    }
}

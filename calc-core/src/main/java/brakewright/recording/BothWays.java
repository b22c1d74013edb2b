package brakewright.recording;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The highest speeds that were held on one stretch in both directions. Their mean is freer of slope
 * and wind than either.
 *
 * <p>Assumption: our own choice; both were held within 100 m of each other, in directions that are
 * opposite to within 30°, and the slower is at least 0.7 of the faster: else it was not ridden in
 * full.
 *
 * @param faster where it was faster [m/s]
 * @param slower in the other direction [m/s]
 */
public record BothWays(Moment faster, Moment slower) {

    private static final double NEAR = 100.0;
    private static final double CELL = 50.0;
    private static final int CELLS_NEAR = 2;
    private static final int DIRECTIONS = 24;
    private static final double ALIKE = 0.7;

    /** Assumption: our own choice; slower, positions tell no direction [m/s]. */
    private static final double LEAST_SPEED = 2.0;

    /** Assumption: our own choice; a window goes straight where its ends lie so far apart [1]. */
    private static final double STRAIGHT = 0.9;

    /** A field of the ground and one of 24 directions. */
    private record Cell(long east, long north, int direction) {}

    private record Window(Moment moment, Track.Spot middle) {}

    static Optional<BothWays> of(Recording recording, Quantity speed, double hold) {
        if (!recording.has(Quantity.LATITUDE) || !recording.has(Quantity.LONGITUDE)) {
            return Optional.empty();
        }
        Map<Cell, Window> fastest = new LinkedHashMap<>();
        for (Piece piece : recording.pieces()) {
            Track begins = Track.of(recording, piece);
            Track ends = Track.of(recording, piece);
            Held.each(
                    piece,
                    speed,
                    recording.longestStep(),
                    hold,
                    (same, row, held) -> {
                        if (held >= LEAST_SPEED) {
                            double begin = piece.time(row);
                            add(
                                    fastest,
                                    begins.at(begin),
                                    ends.at(begin + hold),
                                    held * hold,
                                    Moment.of(held, piece, row, speed));
                        }
                    });
        }
        return best(fastest);
    }

    private static void add(
            Map<Cell, Window> fastest,
            Track.Spot begin,
            Track.Spot end,
            double least,
            Moment moment) {
        double east = end.east() - begin.east();
        double north = end.north() - begin.north();
        if (!(Math.hypot(east, north) >= STRAIGHT * least)) {
            return;
        }
        Track.Spot middle =
                new Track.Spot(
                        0.5 * (begin.east() + end.east()), 0.5 * (begin.north() + end.north()));
        double turn = Math.atan2(north, east) / (2.0 * Math.PI);
        Cell cell =
                new Cell(
                        (long) Math.floor(middle.east() / CELL),
                        (long) Math.floor(middle.north() / CELL),
                        Math.floorMod((int) Math.floor(turn * DIRECTIONS), DIRECTIONS));
        Window known = fastest.get(cell);
        if (known == null || moment.value() > known.moment().value()) {
            fastest.put(cell, new Window(moment, middle));
        }
    }

    private static Optional<BothWays> best(Map<Cell, Window> fastest) {
        @Nullable BothWays best = null;
        for (Map.Entry<Cell, Window> each : fastest.entrySet()) {
            for (long east = -CELLS_NEAR; east <= CELLS_NEAR; east++) {
                for (long north = -CELLS_NEAR; north <= CELLS_NEAR; north++) {
                    for (int aside = -1; aside <= 1; aside++) {
                        Window other = fastest.get(against(each.getKey(), east, north, aside));
                        if (other != null && isBetter(each.getValue(), other, best)) {
                            best = new BothWays(each.getValue().moment(), other.moment());
                        }
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static Cell against(Cell cell, long east, long north, int aside) {
        return new Cell(
                cell.east() + east,
                cell.north() + north,
                Math.floorMod(cell.direction() + DIRECTIONS / 2 + aside, DIRECTIONS));
    }

    private static boolean isBetter(Window faster, Window slower, @Nullable BothWays best) {
        double high = faster.moment().value();
        double low = slower.moment().value();
        return low <= high
                && low >= ALIKE * high
                && faster.middle().distance(slower.middle()) <= NEAR
                && (best == null || 0.5 * (high + low) > best.mean());
    }

    /**
     * Returns the mean of both.
     *
     * @return [m/s]
     */
    public double mean() {
        return 0.5 * (faster.value() + slower.value());
    }
}

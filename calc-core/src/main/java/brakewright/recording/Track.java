package brakewright.recording;

/**
 * Where a piece went, in metres east and north of a first position, straight between its rows.
 *
 * <p>Source: equirectangular projection about that position, on the sphere of {@link Earth}; over a
 * few kilometres it is off by less than positions scatter.
 */
final class Track {

    /**
     * A place.
     *
     * @param east of the first position [m]; NaN where unknown
     * @param north of it [m]; NaN likewise
     */
    record Spot(double east, double north) {

        static final Spot UNKNOWN = new Spot(Double.NaN, Double.NaN);

        double distance(Spot other) {
            return Math.hypot(east - other.east, north - other.north);
        }
    }

    private final Piece piece;
    private final double longestStep;
    private final double latitude;
    private final double longitude;

    /** The next row, and of those before it the last with a position. */
    private int next;

    private int known = -1;

    private Track(Piece piece, double longestStep, double latitude, double longitude) {
        this.piece = piece;
        this.longestStep = longestStep;
        this.latitude = latitude;
        this.longitude = longitude;
    }

    /** Of a piece of a recording, whose first position is that of all its pieces. */
    static Track of(Recording recording, Piece piece) {
        for (Piece each : recording.pieces()) {
            for (int row = 0; row < each.rows(); row++) {
                double latitude = each.value(Quantity.LATITUDE, row);
                double longitude = each.value(Quantity.LONGITUDE, row);
                if (!Double.isNaN(latitude + longitude)) {
                    return new Track(piece, recording.longestStep(), latitude, longitude);
                }
            }
        }
        return new Track(piece, recording.longestStep(), Double.NaN, Double.NaN);
    }

    /**
     * Returns where it was at a moment, none before one that was asked for; unknown where no two
     * positions lie near about it.
     */
    Spot at(double time) {
        while (next < piece.rows() && piece.time(next) <= time) {
            known = isKnown(next) ? next : known;
            next++;
        }
        if (known < 0 || time - piece.time(known) > longestStep) {
            return Spot.UNKNOWN;
        }
        Spot here = spot(known);
        if (piece.time(known) == time) {
            return here;
        }
        int behind = next;
        while (behind < piece.rows()
                && !isKnown(behind)
                && piece.time(behind) - piece.time(known) <= longestStep) {
            behind++;
        }
        if (behind == piece.rows() || piece.time(behind) - piece.time(known) > longestStep) {
            return Spot.UNKNOWN;
        }
        Spot there = spot(behind);
        double share = (time - piece.time(known)) / (piece.time(behind) - piece.time(known));
        return new Spot(
                here.east() + share * (there.east() - here.east()),
                here.north() + share * (there.north() - here.north()));
    }

    private boolean isKnown(int index) {
        return !Double.isNaN(piece.value(Quantity.LATITUDE, index));
    }

    private Spot spot(int index) {
        return Earth.spot(
                latitude,
                longitude,
                piece.value(Quantity.LATITUDE, index),
                piece.value(Quantity.LONGITUDE, index));
    }
}

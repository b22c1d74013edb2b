package brakewright.recording;

/**
 * Distances between positions.
 *
 * <p>Source: haversine formula; mean radius of the Earth 6371.0088 km, International Union of
 * Geodesy and Geophysics (Moritz, Geodetic Reference System 1980). It takes the Earth for a sphere:
 * up to 0.5 % off on the ellipsoid.
 */
final class Earth {

    private static final double RADIUS = 6_371_008.8;

    private Earth() {}

    /** Returns how far a row is from another [m]; NaN where one has no position. */
    static double distance(Piece from, int fromRow, Piece to, int toRow) {
        double south = Math.toRadians(from.value(Quantity.LATITUDE, fromRow));
        double north = Math.toRadians(to.value(Quantity.LATITUDE, toRow));
        double across =
                Math.toRadians(
                        to.value(Quantity.LONGITUDE, toRow)
                                - from.value(Quantity.LONGITUDE, fromRow));
        double halfUp = Math.sin((north - south) / 2.0);
        double halfAcross = Math.sin(across / 2.0);
        double share =
                halfUp * halfUp + Math.cos(south) * Math.cos(north) * halfAcross * halfAcross;
        return 2.0 * RADIUS * Math.asin(Math.min(1.0, Math.sqrt(share)));
    }

    /** Returns where a position lies from another, both in degrees. */
    static Track.Spot spot(
            double fromLatitude, double fromLongitude, double latitude, double longitude) {
        double turn = Math.IEEEremainder(longitude - fromLongitude, 360.0);
        return new Track.Spot(
                RADIUS * Math.toRadians(turn) * Math.cos(Math.toRadians(fromLatitude)),
                RADIUS * Math.toRadians(latitude - fromLatitude));
    }
}

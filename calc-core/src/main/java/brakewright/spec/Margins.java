package brakewright.spec;

/**
 * How far below a rating or trip a limit stays.
 *
 * @param trip share of a protection trip current [1], from 0 to below 1
 * @param rating share of a part's current rating [1], from 0 to below 1
 * @param fuse share of a fuse's rating [1], from 0 to below 1
 * @param overvoltage below a cell-voltage trip [V], not negative
 * @param controllerVoltage share of the controller's voltage rating [1], from 0 to below 1
 * @param grip share of the grip [1], from 0 to below 1
 * @param cell share of the cells' current ratings, which are found in open air [1], from 0 to below
 *     1
 */
public record Margins(
        double trip,
        double rating,
        double fuse,
        double overvoltage,
        double controllerVoltage,
        double grip,
        double cell) {

    /**
     * Validates the margins.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Margins {
        Require.within("trip margin", trip, 0.0, 0.9, Unit.RATIO);
        Require.within("rating margin", rating, 0.0, 0.9, Unit.RATIO);
        Require.within("fuse margin", fuse, 0.0, 0.9, Unit.RATIO);
        Require.within("over-voltage margin", overvoltage, 0.0, 1.0, Unit.VOLT);
        Require.within("controller-voltage margin", controllerVoltage, 0.0, 0.9, Unit.RATIO);
        Require.within("grip margin", grip, 0.0, 0.9, Unit.RATIO);
        Require.within("cell margin", cell, 0.0, 0.9, Unit.RATIO);
    }

    /**
     * Returns these margins with another margin of fuses.
     *
     * @param replacement of the rating [1], from 0 to below 1
     * @return a changed copy
     */
    public Margins withFuse(double replacement) {
        Copy copy = new Copy(this);
        copy.fuse = replacement;
        return copy.made();
    }

    /**
     * Returns these margins with another margin of voltages.
     *
     * @param replacement per cell [V], not negative
     * @return a changed copy
     */
    public Margins withOvervoltage(double replacement) {
        Copy copy = new Copy(this);
        copy.overvoltage = replacement;
        return copy.made();
    }

    /**
     * Returns these margins with another margin of cells.
     *
     * @param replacement of their ratings [1], from 0 to below 1
     * @return a changed copy
     */
    public Margins withCell(double replacement) {
        Copy copy = new Copy(this);
        copy.cell = replacement;
        return copy.made();
    }

    /** What a changed copy is made of: the one place that lists all components. */
    private static final class Copy {

        private final double trip;
        private final double rating;
        private double fuse;
        private double overvoltage;
        private final double controllerVoltage;
        private final double grip;
        private double cell;

        Copy(Margins from) {
            this.trip = from.trip;
            this.rating = from.rating;
            this.fuse = from.fuse;
            this.overvoltage = from.overvoltage;
            this.controllerVoltage = from.controllerVoltage;
            this.grip = from.grip;
            this.cell = from.cell;
        }

        Margins made() {
            return new Margins(trip, rating, fuse, overvoltage, controllerVoltage, grip, cell);
        }
    }
}

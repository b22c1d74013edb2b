package brakewright.spec;

import java.util.OptionalDouble;

/**
 * The battery pack.
 *
 * @param cell the cell it is made of
 * @param series groups in series, at least one
 * @param parallel cells in each group, at least one
 * @param jointResistance of all joints and leads together [Ω], not negative
 * @param resistanceSpread how far the best cell of a group may lie below the others in resistance
 *     [1], from 0 to below 1
 * @param groupSpread how far the worst group in series departs from the mean
 * @param temperatureC of the cells [°C], from −60 to 100
 * @param toAir thermal resistance from all its cells to the air [K/W], positive; empty where
 *     unknown
 * @param joinedAt the charge state at which it is joined to others [1], from 0 to 1; empty where
 *     not told
 * @param protection when it disconnects itself
 * @param wiring what carries its current
 */
public record Pack(
        Cell cell,
        int series,
        int parallel,
        double jointResistance,
        double resistanceSpread,
        GroupSpread groupSpread,
        double temperatureC,
        OptionalDouble toAir,
        OptionalDouble joinedAt,
        Protection protection,
        Wiring wiring) {

    /**
     * Validates the pack.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Pack {
        Require.atLeastOne("cells in series", series);
        Require.atLeastOne("cells in parallel", parallel);
        Require.notNegative("joint resistance", jointResistance, Unit.OHM);
        Require.within("resistance spread", resistanceSpread, 0.0, 0.9, Unit.RATIO);
        Require.within("pack temperature", temperatureC, -60.0, 100.0, Unit.CELSIUS);
        Require.positive("pack to air", toAir, Unit.KELVIN_PER_WATT);
        joinedAt.ifPresent(
                value -> Require.within("charge at joining", value, 0.0, 1.0, Unit.RATIO));
    }

    /**
     * Makes a pack whose groups in series are all alike.
     *
     * @param cell the cell it is made of
     * @param series groups in series
     * @param parallel cells in each group
     * @param jointResistance of all joints and leads together [Ω]
     * @param resistanceSpread how far the best cell of a group may lie below the others [1]
     * @param temperatureC of the cells [°C]
     * @param toAir thermal resistance from all its cells to the air [K/W]
     * @param joinedAt the charge state at which it is joined to others [1]
     * @param protection when it disconnects itself
     * @param wiring what carries its current
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Pack(
            Cell cell,
            int series,
            int parallel,
            double jointResistance,
            double resistanceSpread,
            double temperatureC,
            OptionalDouble toAir,
            OptionalDouble joinedAt,
            Protection protection,
            Wiring wiring) {
        this(
                cell,
                series,
                parallel,
                jointResistance,
                resistanceSpread,
                GroupSpread.NONE,
                temperatureC,
                toAir,
                joinedAt,
                protection,
                wiring);
    }

    /**
     * Returns the charge that the pack holds.
     *
     * @return cell capacity times cells in parallel [Ah]
     */
    public double capacityAh() {
        return parallel * cell.capacityAh();
    }

    /**
     * Returns this pack at another temperature.
     *
     * @param cellsC of its cells [°C]
     * @return a changed copy
     */
    public Pack at(double cellsC) {
        Copy copy = new Copy(this);
        copy.temperatureC = cellsC;
        return copy.made();
    }

    /**
     * Returns this pack with other cells.
     *
     * @param replacement the cell it is made of
     * @return a changed copy
     */
    public Pack withCell(Cell replacement) {
        Copy copy = new Copy(this);
        copy.cell = replacement;
        return copy.made();
    }

    /**
     * Returns this pack with more or fewer groups in series.
     *
     * @param replacement groups, at least one
     * @return a changed copy
     */
    public Pack withSeries(int replacement) {
        Copy copy = new Copy(this);
        copy.series = replacement;
        return copy.made();
    }

    /**
     * Returns this pack with more or fewer cells in each group.
     *
     * @param replacement cells, at least one
     * @return a changed copy
     */
    public Pack withParallel(int replacement) {
        Copy copy = new Copy(this);
        copy.parallel = replacement;
        return copy.made();
    }

    /**
     * Returns this pack with other joints and leads.
     *
     * @param replacement resistance of all of them together [Ω], not negative
     * @return a changed copy
     */
    public Pack withJointResistance(double replacement) {
        Copy copy = new Copy(this);
        copy.jointResistance = replacement;
        return copy.made();
    }

    /**
     * Returns this pack with cells that differ otherwise.
     *
     * @param replacement [1], from 0 to below 1
     * @return a changed copy
     */
    public Pack withResistanceSpread(double replacement) {
        Copy copy = new Copy(this);
        copy.resistanceSpread = replacement;
        return copy.made();
    }

    /**
     * Returns this pack with other groups.
     *
     * @param replacement how far the worst group in series departs from the mean
     * @return a changed copy
     */
    public Pack withGroupSpread(GroupSpread replacement) {
        Copy copy = new Copy(this);
        copy.groupSpread = replacement;
        return copy.made();
    }

    /**
     * Returns this pack with another way of its heat to the air.
     *
     * @param replacement [K/W], positive; empty where unknown
     * @return a changed copy
     */
    public Pack withToAir(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.toAir = replacement;
        return copy.made();
    }

    /**
     * Returns this pack with another charge at which it is joined.
     *
     * @param replacement [1], from 0 to 1; empty where not told
     * @return a changed copy
     */
    public Pack withJoinedAt(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.joinedAt = replacement;
        return copy.made();
    }

    /**
     * Returns this pack with another protection.
     *
     * @param replacement when it disconnects itself
     * @return a changed copy
     */
    public Pack withProtection(Protection replacement) {
        Copy copy = new Copy(this);
        copy.protection = replacement;
        return copy.made();
    }

    /**
     * Returns this pack with another wiring.
     *
     * @param replacement what carries its current
     * @return a changed copy
     */
    public Pack withWiring(Wiring replacement) {
        Copy copy = new Copy(this);
        copy.wiring = replacement;
        return copy.made();
    }

    /** What a changed copy is made of: the one place that lists all components. */
    private static final class Copy {

        private Cell cell;
        private int series;
        private int parallel;
        private double jointResistance;
        private double resistanceSpread;
        private GroupSpread groupSpread;
        private double temperatureC;
        private OptionalDouble toAir;
        private OptionalDouble joinedAt;
        private Protection protection;
        private Wiring wiring;

        Copy(Pack from) {
            this.cell = from.cell;
            this.series = from.series;
            this.parallel = from.parallel;
            this.jointResistance = from.jointResistance;
            this.resistanceSpread = from.resistanceSpread;
            this.groupSpread = from.groupSpread;
            this.temperatureC = from.temperatureC;
            this.toAir = from.toAir;
            this.joinedAt = from.joinedAt;
            this.protection = from.protection;
            this.wiring = from.wiring;
        }

        Pack made() {
            return new Pack(
                    cell,
                    series,
                    parallel,
                    jointResistance,
                    resistanceSpread,
                    groupSpread,
                    temperatureC,
                    toAir,
                    joinedAt,
                    protection,
                    wiring);
        }
    }
}

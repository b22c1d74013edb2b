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
     * Returns this pack with other groups.
     *
     * @param spread how far the worst group in series departs from the mean
     * @return a changed copy
     */
    public Pack withGroupSpread(GroupSpread spread) {
        return new Pack(
                cell,
                series,
                parallel,
                jointResistance,
                resistanceSpread,
                spread,
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
        return new Pack(
                cell,
                series,
                parallel,
                jointResistance,
                resistanceSpread,
                groupSpread,
                cellsC,
                toAir,
                joinedAt,
                protection,
                wiring);
    }
}

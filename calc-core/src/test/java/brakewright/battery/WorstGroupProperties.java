package brakewright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.WorstGroup.End;
import brakewright.spec.AnyBattery;
import brakewright.spec.Battery;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.GroupSpread;
import brakewright.spec.Pack;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBattery.class)
@Domain(DomainContext.Global.class)
class WorstGroupProperties {

    private static final double ROUNDING = 1e-9;

    @Property
    void noGroupIsMilderThanTheMean(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 200.0) double current) {
        PackModel model = new PackModel(pack);
        PackModel alike = new PackModel(pack.withGroupSpread(GroupSpread.NONE));
        double temperature = pack.temperatureC();
        assertThat(model.worst(End.FULLEST).openCircuitVoltage(charge))
                .isGreaterThanOrEqualTo(model.cellOpenCircuitVoltage(charge));
        assertThat(model.worst(End.EMPTIEST).openCircuitVoltage(charge))
                .isLessThanOrEqualTo(model.cellOpenCircuitVoltage(charge) + ROUNDING);
        assertThat(model.lowestCellVoltage(current, charge, temperature, Cell.PULSE))
                .as("an emptier cell has no less resistance where its curve falls with charge")
                .isLessThanOrEqualTo(
                        alike.lowestCellVoltage(current, charge, temperature, Cell.PULSE)
                                + resistanceLost(pack, charge, current)
                                + ROUNDING);
    }

    /** By how much less the group may fall where its own charge meets a lower resistance [V]. */
    private static double resistanceLost(Pack pack, double charge, double current) {
        PackModel model = new PackModel(pack);
        double own = model.worst(End.EMPTIEST).chargeAt(charge);
        return current
                / pack.parallel()
                * Math.max(
                        0.0,
                        model.cellResistance(charge, pack.temperatureC())
                                - model.cellResistance(own, pack.temperatureC()));
    }

    @Property
    void thePackIsAgainWhereItsGroupSaysItIs(
            @ForAll Pack pack,
            @ForAll End end,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        WorstGroup group = new PackModel(pack).worst(end);
        assertThat(group.packChargeWhere(group.chargeAt(charge)))
                .isCloseTo(charge, within(ROUNDING));
    }

    /** Between its points everything about the group is a straight line. */
    @Property
    void runsStraightBetweenItsPoints(
            @ForAll Pack pack,
            @ForAll End end,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double weight) {
        BatteryModel model = new BatteryModel(Battery.of(pack));
        PackModel own = model.packs().get(0);
        WorstGroup group = own.worst(end);
        double[] points = model.points(end);
        for (int i = 0; i + 1 < points.length; i++) {
            double between = points[i] + weight * (points[i + 1] - points[i]);
            assertThat(group.openCircuitVoltage(between))
                    .isCloseTo(
                            (1.0 - weight) * group.openCircuitVoltage(points[i])
                                    + weight * group.openCircuitVoltage(points[i + 1]),
                            within(ROUNDING));
            double low = own.groupResistance(group, points[i], 25.0, Cell.PULSE);
            double high = own.groupResistance(group, points[i + 1], 25.0, Cell.PULSE);
            assertThat(own.groupResistance(group, between, 25.0, Cell.PULSE))
                    .isCloseTo((1.0 - weight) * low + weight * high, within(ROUNDING));
        }
    }

    /** Where the mean cell is told to be, the group's cells have the voltage asked about. */
    @Property
    void theMeanIsToldWhereTheGroupStandsOnAVoltage(
            @ForAll Pack pack,
            @ForAll End end,
            @ForAll @Scale(6) @DoubleRange(min = 2.5, max = 4.2) double asked) {
        Curve curve = pack.cell().openCircuitVoltage();
        WorstGroup group = new PackModel(pack).worst(end);
        double own = group.chargeWhere(asked);
        if (curve.extended(own) == curve.at(own) && Math.abs(curve.at(own) - asked) > ROUNDING) {
            return; // a level end of the curve never reaches the voltage
        }
        assertThat(curve.extended(own)).isCloseTo(asked, within(ROUNDING));
        double mean = curve.extended(group.packChargeWhere(own));
        assertThat(group.meanVoltageWhere(asked))
                .as("told of the voltage itself, which the curve at the charge meets to a rounding")
                .isCloseTo(
                        end == End.FULLEST ? Math.min(asked, mean) : Math.max(asked, mean),
                        within(ROUNDING));
    }

    /** 3 V + 1 V·s: 2 % above 80 % is 3.82 V; 5 % less capacity leaves 1 − 0.5/0.95 of a half. */
    @Example
    void roundFigures() {
        Pack pack =
                Builds.barePack(
                                Builds.withVoltage(
                                        Builds.flatCell(3.5, 0.01, 2.5, 4.2),
                                        Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 4.0})),
                                10,
                                2,
                                0.0)
                        .withGroupSpread(new GroupSpread(0.02, 0.05, 0.1));
        PackModel model = new PackModel(pack);
        assertThat(model.worst(End.FULLEST).openCircuitVoltage(0.8))
                .isCloseTo(3.82, within(ROUNDING));
        assertThat(model.highestCellVoltage(20.0, 0.8, 25.0, Cell.PULSE))
                .isCloseTo(3.82 + 10.0 * 0.011, within(ROUNDING));
        assertThat(model.worst(End.EMPTIEST).openCircuitVoltage(0.5))
                .isCloseTo(3.0 + 0.98 - 0.5 / 0.95, within(ROUNDING));
        assertThat(model.worst(End.FULLEST).openCircuitVoltage(1.0))
                .as("overcharged, on the last line")
                .isCloseTo(4.02, within(ROUNDING));
        assertThat(model.worst(End.FULLEST).meanVoltageWhere(4.0))
                .isCloseTo(3.98, within(ROUNDING));
        assertThat(model.worst(End.EMPTIEST).meanVoltageWhere(3.1))
                .isCloseTo(4.0 - 0.88 * 0.95, within(ROUNDING));
    }

    /** Level from 30 to 60 %: while it is charged it is there from the beginning on. */
    @Example
    void onALevelStretchTheEndThatIsMetFirstIsTold() {
        Curve level =
                Curve.of(new double[] {0.0, 0.3, 0.6, 1.0}, new double[] {3.0, 3.3, 3.3, 3.5});
        PackModel model =
                new PackModel(
                        Builds.barePack(
                                Builds.withVoltage(Builds.flatCell(3.3, 0.01, 2.5, 3.6), level),
                                10,
                                1,
                                0.0));
        assertThat(model.worst(End.FULLEST).chargeWhere(3.3)).isCloseTo(0.3, within(ROUNDING));
        assertThat(model.worst(End.EMPTIEST).chargeWhere(3.3)).isCloseTo(0.6, within(ROUNDING));
    }

    /** With a tenth less capacity, balanced full, it is at 4/9 where the pack is half full. */
    @Example
    void lessCapacityAloneDepartsFromTheMeanWhereThePackIsDrawnFrom() {
        Pack pack =
                Builds.barePack(Builds.flatCell(3.5, 0.01, 2.5, 4.2), 10, 1, 0.0)
                        .withGroupSpread(new GroupSpread(0.0, 0.1, 0.0));
        PackModel model = new PackModel(pack);
        assertThat(model.worst(End.FULLEST).isMean()).isTrue();
        assertThat(model.worst(End.EMPTIEST).isMean()).isFalse();
        assertThat(model.worst(End.EMPTIEST).chargeAt(0.5)).isCloseTo(4.0 / 9.0, within(ROUNDING));
    }
}

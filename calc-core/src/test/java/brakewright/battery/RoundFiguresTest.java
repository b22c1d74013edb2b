package brakewright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.ArrheniusCurve;
import brakewright.spec.Battery;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.DischargingWindow;
import brakewright.spec.GroupSpread;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.PulseRating;
import brakewright.spec.Relaxation;
import brakewright.spec.ResistanceByCharge;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Batteries whose figures can be worked out on paper. */
@Tag("law")
class RoundFiguresTest {

    private static final Offset<Double> ROUNDING = within(1e-12);

    private static final double ROOM_C = 25.0;

    /** 10S2P of 10 mΩ are 0.05 Ω, 10S1P of 20 mΩ are 0.2 Ω: they carry 4/5 and 1/5. */
    @Test
    void theCellsOfTheStifferPackCarryMost() {
        Pack stiff = Builds.barePack(sloping(0.01), 10, 2, 0.0);
        Pack soft = Builds.barePack(sloping(0.02), 10, 1, 0.0);
        for (List<Pack> order : List.of(List.of(stiff, soft), List.of(soft, stiff))) {
            BatteryModel model = new BatteryModel(Builds.joined(Joining.PARALLEL, order));
            assertThat(model.cellCurrent(30.0, 0.5, ROOM_C)).isCloseTo(12.0, ROUNDING);
        }
    }

    /**
     * 10S2P of 20 mΩ, nine tenths of it half charged and four fifths at 45 °C, of which three
     * fifths are there at once: {@code 10/2·0.02·0.9·0.8·0.6}. Joints do not count.
     */
    @Test
    void theFirstInstantMeetsTheLeastOfEverything() {
        Cell cell = sloping(0.02);
        Cell warmest =
                cell.withResistanceByCharge(
                                ResistanceByCharge.alike(
                                        Curve.of(
                                                new double[] {0.0, 0.5, 1.0},
                                                new double[] {1.2, 0.9, 1.0})))
                        .withResistanceByTemperature(
                                ArrheniusCurve.through(
                                        Curve.of(
                                                new double[] {25.0, 45.0},
                                                new double[] {1.0, 0.8})))
                        .withDischarging(new DischargingWindow(-20.0, 45.0));
        assertThat(new PackModel(Builds.barePack(warmest, 10, 2, 0.1)).leastResistance())
                .isCloseTo(0.0432, ROUNDING);
    }

    /** Its resistance, alone 0.1 Ω, halves in the middle, where it carries most: 2/3. */
    @Test
    void thePackThatStiffensInTheMiddleCarriesMostThere() {
        Curve dip = Curve.of(new double[] {0.0, 0.5, 1.0}, new double[] {1.0, 0.5, 1.0});
        Pack dipping =
                Builds.barePack(Builds.withResistanceByCharge(sloping(0.01), dip), 10, 1, 0.0);
        Pack even = Builds.barePack(sloping(0.01), 10, 1, 0.0);
        BatteryModel model =
                new BatteryModel(Builds.joined(Joining.PARALLEL, List.of(dipping, even)));
        assertThat(model.greatestShare(0, ROOM_C)).isCloseTo(2.0 / 3.0, ROUNDING);
        assertThat(model.greatestShare(1, ROOM_C)).isCloseTo(0.5, ROUNDING);
    }

    /**
     * Of three packs the first keeps 0.1 Ω, the others go from 0.1 to 0.2 Ω and from 0.4 to 0.2 Ω.
     * With u = 1 + s and v = 2 − s their conductances are 10/u and 5/v, least where u = √2·v: (1 +
     * 1/√2)²/3 of the first's, at a charge of 0.757 between two points.
     */
    @Test
    void oneOfThreePacksCarriesMostBetweenThePoints() {
        Pack even = ofResistances(1.0, 1.0);
        Pack softening = ofResistances(1.0, 2.0);
        Pack stiffening = ofResistances(4.0, 2.0);
        BatteryModel model =
                new BatteryModel(
                        Builds.joined(Joining.PARALLEL, List.of(even, softening, stiffening)));
        double others = Math.pow(1.0 + Math.sqrt(0.5), 2.0) / 3.0;
        assertThat(model.greatestShare(0, ROOM_C)).isCloseTo(1.0 / (1.0 + others), ROUNDING);
        assertThat(model.share(0, 0.75, ROOM_C)).isLessThan(1.0 / (1.0 + others) - 1e-6);
    }

    /** From 0.2 to 0.1 Ω beside 0.1 Ω: the stiffening one carries 1/2 full, the other 2/3 empty. */
    @Test
    void theGreatestShareMayLieAtEitherEnd() {
        List<Pack> packs = List.of(ofResistances(2.0, 1.0), ofResistances(1.0, 1.0));
        BatteryModel model = new BatteryModel(Builds.joined(Joining.PARALLEL, packs));
        assertThat(model.greatestShare(0, ROOM_C)).isCloseTo(0.5, ROUNDING);
        assertThat(model.greatestShare(1, ROOM_C)).isCloseTo(2.0 / 3.0, ROUNDING);
    }

    /** At 0 °C the trail board's cell has 2.4 times its 16 mΩ, full 1.25 times as much again. */
    @Test
    void aColdFullCellIsStifferByBothFactors() {
        PackModel model = new PackModel(Builds.pack(Builds.trailBoard()));
        assertThat(model.cellResistance(1.0, 0.0)).isCloseTo(0.016 * 2.4 * 1.25, ROUNDING);
        assertThat(model.resistance(1.0, 0.0))
                .isCloseTo(12.0 / 4.0 * 0.016 * 2.4 * 1.25 + 0.012, ROUNDING);
    }

    /** 100 V behind 0.1 Ω give 25 kW, however it was rounded, and not 25 kW and a trifle more. */
    @Test
    void theGreatestPowerIsDrawnAndLittleMoreIsNot() {
        double greatest = TerminalPower.greatestDrawnPower(100.0, 0.1);
        assertThat(greatest).isCloseTo(25_000.0, within(1e-8));
        assertThat(TerminalPower.drawnCurrent(100.0, 0.1, greatest * (1.0 + 1e-13)))
                .isCloseTo(500.0, within(1e-8));
        assertThat(TerminalPower.drawnCurrent(100.0, 0.1, greatest * (1.0 + 1e-11))).isInfinite();
    }

    /** 3.5 V are half charge, where the other has 4·3.5 V: 35 V and 14 V. */
    @Test
    void theVoltageInSeriesCountsTheOtherAtItsOwnCharge() {
        Pack ten = Builds.barePack(sloping(0.01), 10, 1, 0.0);
        Pack four = Builds.barePack(sloping(0.01), 4, 1, 0.0);
        BatteryModel series = new BatteryModel(Builds.joined(Joining.SERIES, List.of(ten, four)));
        assertThat(series.voltageWhere(0, WorstGroup.End.FULLEST, 3.5)).isCloseTo(49.0, ROUNDING);
        assertThat(series.voltageWhere(1, WorstGroup.End.FULLEST, 3.25))
                .isCloseTo(13.0 + 32.5, ROUNDING);
        BatteryModel parallel =
                new BatteryModel(Builds.joined(Joining.PARALLEL, List.of(ten, ten)));
        assertThat(parallel.voltageWhere(1, WorstGroup.End.EMPTIEST, 3.5))
                .isCloseTo(35.0, ROUNDING);
    }

    /** −20 A of two in parallel are −10 A, over 0.01 Ω doubled for ever: 3.7 V − 0.2 V. */
    @Test
    void aLongPullSagsACellFurther() {
        Cell cell =
                Builds.relaxing(Builds.flatCell(3.7, 0.01, 2.5, 4.2), new Relaxation(1.0, 60.0));
        PackModel model = new PackModel(Builds.barePack(cell, 12, 2, 0.0));
        assertThat(model.lowestCellVoltage(20.0, 0.5, ROOM_C, Double.POSITIVE_INFINITY))
                .isCloseTo(3.5, ROUNDING);
        assertThat(model.lowestCellVoltage(20.0, 0.5, ROOM_C, 10.0)).isCloseTo(3.6, ROUNDING);
    }

    @Test
    void aLastingCurrentMeetsTheWholeRiseAndNoPulseRating() {
        Cell cell =
                Builds.pulsed(
                        Builds.relaxing(sloping(0.01), new Relaxation(0.5, 60.0)),
                        new PulseRating(OptionalDouble.of(50.0), OptionalDouble.of(20.0), 10.0));
        Battery lasting = SustainedBattery.of(Battery.of(Builds.barePack(cell, 10, 1, 0.02)));
        BatteryModel model = new BatteryModel(lasting);
        assertThat(model.resistance(0.5, ROOM_C)).isCloseTo(10 * 0.015 + 0.02, ROUNDING);
        assertThat(model.resistance(0.5, ROOM_C, Double.POSITIVE_INFINITY))
                .isCloseTo(10 * 0.015 + 0.02, ROUNDING);
        assertThat(lasting.packs().get(0).cell().pulse()).isEmpty();
    }

    @Test
    void onlyPacksThatAreAlikeInEverythingShareEvenly() {
        Pack one = Builds.barePack(sloping(0.01), 10, 2, 0.01);
        assertThat(areEven(one, one)).isTrue();
        assertThat(areEven(one, Builds.barePack(sloping(0.01), 10, 2, 0.01))).isTrue();
        assertThat(areEven(one, Builds.barePack(sloping(0.01), 11, 2, 0.01))).isFalse();
        assertThat(areEven(one, Builds.barePack(sloping(0.01), 10, 3, 0.01))).isFalse();
        assertThat(areEven(one, Builds.barePack(sloping(0.01), 10, 2, 0.02))).isFalse();
        assertThat(areEven(one, Builds.barePack(sloping(0.02), 10, 2, 0.01))).isFalse();
    }

    /**
     * Over a quarter of the charge the resistance is halved, which is more than eight twentieths;
     * over a quarter it rises by 12 %, three pieces of a twentieth; over the last half it stays.
     */
    @Test
    void theMorePiecesTheMoreAResistanceChangesBetweenTheKnotsOfUnlikePacks() {
        Cell bent =
                Builds.withResistanceByCharge(
                        sloping(0.01),
                        Curve.of(
                                new double[] {0.0, 0.25, 0.5, 1.0},
                                new double[] {2.0, 1.0, 1.12, 1.12}));
        Pack one = Builds.barePack(bent, 10, 1, 0.0);
        Pack other = Builds.barePack(bent, 10, 1, 0.1);
        double[] expected =
                DoubleStream.concat(
                                IntStream.range(0, 8).mapToDouble(i -> i / 32.0),
                                DoubleStream.of(
                                        0.25, 0.25 + 0.25 / 3.0, 0.5 - 0.25 / 3.0, 0.5, 1.0))
                        .toArray();
        assertThat(new BatteryModel(Builds.joined(Joining.PARALLEL, List.of(one, other))).points())
                .containsExactly(expected, ROUNDING);
        assertThat(new BatteryModel(Builds.joined(Joining.PARALLEL, List.of(one, one))).points())
                .containsExactly(new double[] {0.0, 0.25, 0.5, 1.0}, ROUNDING);
    }

    /**
     * The trail board's cell has 16 mΩ half full, 2.4 times as much at 0 °C: 0.16 Ω beside as much
     * again in joints carry 2/3, and 0.384 Ω beside 0.544 Ω carry 0.544/0.928.
     */
    @Test
    void jointsCountLessAmongColdCells() {
        Cell cell = Builds.pack(Builds.trailBoard()).cell();
        BatteryModel model =
                new BatteryModel(
                        Builds.joined(
                                Joining.PARALLEL,
                                List.of(
                                        Builds.barePack(cell, 10, 1, 0.0),
                                        Builds.barePack(cell, 10, 1, 0.16))));
        assertThat(model.share(0, 0.5, ROOM_C)).isCloseTo(2.0 / 3.0, ROUNDING);
        assertThat(model.share(0, 0.5, 0.0)).isCloseTo(0.544 / 0.928, ROUNDING);
    }

    /** A group a tenth fuller is at a bend of its curve a tenth earlier, an emptier one later. */
    @Test
    void eachWorstGroupHasItsOwnPoints() {
        Curve bent = Curve.of(new double[] {0.0, 0.5, 1.0}, new double[] {3.0, 3.8, 4.0});
        Pack pack =
                Builds.barePack(Builds.withVoltage(sloping(0.01), bent), 10, 1, 0.0)
                        .withGroupSpread(new GroupSpread(0.1, 0.0, 0.0));
        BatteryModel model = new BatteryModel(Battery.of(pack));
        for (int asked = 0; asked < 2; asked++) {
            assertThat(model.points(WorstGroup.End.FULLEST)).contains(0.4).doesNotContain(0.6);
            assertThat(model.points(WorstGroup.End.EMPTIEST)).contains(0.6).doesNotContain(0.4);
        }
    }

    /** What a current the other way meets is told of other packs, too: 10·12 mΩ and 10·24 mΩ. */
    @Test
    void otherPacksAreModelledForACurrentTheSameWay() {
        Battery one = Battery.of(charging(0.01));
        Battery other = Battery.of(charging(0.02));
        BatteryModel model = new BatteryModel(one);
        assertThat(model.sameWay(other).resistance(0.5, ROOM_C)).isCloseTo(0.2, ROUNDING);
        assertThat(model.into().sameWay(other).resistance(0.5, ROOM_C)).isCloseTo(0.24, ROUNDING);
    }

    /** The fullest group is charged, with a fifth more resistance, whatever the model is for. */
    @Test
    void aGroupIsToldTheFactorOfItsOwnWay() {
        PackModel model = new PackModel(charging(0.01));
        assertThat(model.factorByCharge(WorstGroup.End.FULLEST, 0.5)).isCloseTo(1.2, ROUNDING);
        assertThat(model.factorByCharge(WorstGroup.End.EMPTIEST, 0.5)).isEqualTo(1.0);
    }

    private static Pack charging(double resistance) {
        return Builds.barePack(
                Builds.resistingMoreWhileCharged(sloping(resistance), 0.2), 10, 1, 0.0);
    }

    private static boolean areEven(Pack one, Pack other) {
        return new BatteryModel(Builds.joined(Joining.PARALLEL, List.of(one, other))).isEven();
    }

    private static Pack ofResistances(double empty, double full) {
        Curve factor = Curve.of(new double[] {0.0, 1.0}, new double[] {empty, full});
        return Builds.barePack(Builds.withResistanceByCharge(sloping(0.01), factor), 10, 1, 0.0);
    }

    /** From 3 V empty to 4 V full in a straight line. */
    private static Cell sloping(double resistance) {
        return Builds.withVoltage(
                Builds.flatCell(3.5, resistance, 2.5, 4.2),
                Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 4.0}));
    }
}

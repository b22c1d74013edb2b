package brakewright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.powertrain.PackState;
import brakewright.spec.AnyBuild;
import brakewright.spec.Battery;
import brakewright.spec.Cell;
import brakewright.spec.GroupSpread;
import brakewright.spec.Pack;
import brakewright.spec.ResistanceByCharge;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class PackModelProperties {

    private static final double ROUNDING = 1e-12;

    @Property
    void theStrongestCellNeverCarriesLessThanItsShare(
            @ForAll @IntRange(min = 1, max = 40) int parallel,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 0.9) double spread) {
        assertThat(UnequalCells.strongestShare(parallel, spread))
                .isBetween(1.0 - ROUNDING, (double) parallel);
    }

    @Property
    void theStrongestCellCarriesMoreTheMoreTheCellsDiffer(
            @ForAll @IntRange(min = 2, max = 40) int parallel,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 0.9) double one,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 0.9) double other) {
        assertThat(UnequalCells.strongestShare(parallel, Math.max(one, other)))
                .isGreaterThanOrEqualTo(
                        UnequalCells.strongestShare(parallel, Math.min(one, other)));
    }

    /** The currents of all cells add up, and each has the same voltage drop. */
    @Property
    void theSharesObeyKirchhoff(
            @ForAll @IntRange(min = 1, max = 40) int parallel,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 0.9) double spread) {
        double strongest = UnequalCells.strongestShare(parallel, spread);
        double other = strongest * (1.0 - spread);
        assertThat(strongest + (parallel - 1) * other)
                .isCloseTo(parallel, within(ROUNDING * parallel));
    }

    @Property
    void moreDrawNeverRaisesTheVoltage(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 500.0) double one,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 500.0) double other) {
        PackState state =
                PackState.of(new BatteryModel(Battery.of(pack)), charge, pack.temperatureC());
        assertThat(state.terminalVoltage(-Math.max(one, other)))
                .isLessThanOrEqualTo(state.terminalVoltage(-Math.min(one, other)));
    }

    @Property
    void thePackIsItsCellsInSeriesWithTheJoints(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(9) @DoubleRange(min = -200.0, max = 200.0) double current) {
        PackState state =
                PackState.of(new BatteryModel(Battery.of(pack)), charge, pack.temperatureC());
        PackModel alike = new PackModel(pack.withGroupSpread(GroupSpread.NONE));
        double temperature = pack.temperatureC();
        double cells =
                pack.series()
                        * (current >= 0.0
                                ? alike.highestCellVoltage(current, charge, temperature, Cell.PULSE)
                                : alike.lowestCellVoltage(
                                        -current, charge, temperature, Cell.PULSE));
        double scale = state.voltage() + Math.abs(current) * state.resistance();
        assertThat(state.terminalVoltage(current))
                .isCloseTo(cells + current * pack.jointResistance(), within(ROUNDING * scale));
    }

    @Property
    void morePowerIntoThePackIsMoreCurrentIntoIt(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(9) @DoubleRange(min = -5000.0, max = 5000.0) double one,
            @ForAll @Scale(9) @DoubleRange(min = -5000.0, max = 5000.0) double other) {
        PackState state =
                PackState.of(new BatteryModel(Battery.of(pack)), charge, pack.temperatureC());
        assertThat(state.currentInto(Math.max(one, other)))
                .isGreaterThanOrEqualTo(state.currentInto(Math.min(one, other)));
    }

    @Property
    void noCurrentDrawsMoreThanTheGreatestPower(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 5000.0) double one,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 5000.0) double other) {
        PackState state =
                PackState.of(new BatteryModel(Battery.of(pack)), charge, pack.temperatureC());
        double greatest = TerminalPower.greatestDrawnPower(state.voltage(), state.resistance());
        assertThat(state.powerDrawnBy(Math.max(one, other)))
                .isGreaterThanOrEqualTo(state.powerDrawnBy(Math.min(one, other)) * (1.0 - ROUNDING))
                .isLessThanOrEqualTo(greatest * (1.0 + ROUNDING));
    }

    @Property
    void aLongerPullNeverMeetsLessResistance(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 5000.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 5000.0) double other) {
        PackModel model = new PackModel(pack);
        double temperature = pack.temperatureC();
        assertThat(model.resistance(charge, temperature, Math.max(one, other)))
                .isGreaterThanOrEqualTo(
                        model.resistance(charge, temperature, Math.min(one, other)));
    }

    /** And the cells the share of it that is there before, joints apart; the least is less. */
    @Property
    void aPullOfTenSecondsMeetsThePulseResistance(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 10.0) double seconds) {
        PackModel model = new PackModel(pack);
        double temperature = pack.temperatureC();
        double pulse = model.resistance(charge, temperature);
        assertThat(model.resistance(charge, temperature, Cell.PULSE)).isEqualTo(pulse);
        double there = pack.cell().relaxation().onset().after(seconds);
        double joints = pack.jointResistance();
        assertThat(model.resistance(charge, temperature, seconds) - joints)
                .isCloseTo(there * (pulse - joints), within(ROUNDING * pulse));
        assertThat(model.leastResistance())
                .isLessThanOrEqualTo(model.resistance(charge, temperature, 0.0));
    }

    /** More into a cell than out of it, by what its table says as far as it is there. */
    @Property
    void aPackResistsMoreWhileItIsCharged(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 5000.0) double seconds) {
        BatteryModel model = new BatteryModel(Battery.of(pack));
        double temperature = pack.temperatureC();
        double out = model.resistance(charge, temperature, seconds);
        double into = model.into().resistance(charge, temperature, seconds);
        double more =
                pack.cell().resistanceByCharge().moreCharged().at(charge)
                        * pack.cell().resistance()
                        * pack.cell().resistanceByTemperature().at(temperature)
                        * pack.cell().relaxation().onset().after(seconds)
                        * pack.series()
                        / pack.parallel();
        assertThat(into).isGreaterThanOrEqualTo(out);
        assertThat(into - out).isCloseTo(more, within(ROUNDING * into));
        assertThat(model.into().into()).isSameAs(model.into());
    }

    @Property
    void aColderPackNeverResistsLess(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = -60.0, max = 100.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = -60.0, max = 100.0) double other) {
        PackModel model = new PackModel(pack);
        double warm = model.resistance(charge, Math.max(one, other));
        assertThat(warm).isPositive();
        assertThat(model.resistance(charge, Math.min(one, other)))
                .isGreaterThanOrEqualTo(warm * (1.0 - ROUNDING));
    }

    /** By what its table says for 10 °C, straight over 1/T, beside one factor for all charges. */
    @Property
    void nearlyEmptyThePackResistsStillMoreInTheCold(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = -40.0, max = 60.0) double temperature) {
        PackModel model = new PackModel(pack);
        ResistanceByCharge byCharge = pack.cell().resistanceByCharge();
        double mild = model.cellResistance(charge, 25.0);
        double factor = pack.cell().resistanceByTemperature().at(temperature);
        double cold = model.cellResistance(charge, temperature);
        double atTen =
                model.cellResistance(charge, 10.0) / pack.cell().resistanceByTemperature().at(10.0);
        double share =
                Math.max(0.0, 1.0 / (temperature + 273.15) - 1.0 / 298.15)
                        / (1.0 / 283.15 - 1.0 / 298.15);
        assertThat(cold).isCloseTo(factor * (mild + share * (atTen - mild)), within(1e-10 * cold));
        assertThat(atTen - mild)
                .isCloseTo(
                        byCharge.moreInTheCold().at(charge) * pack.cell().resistance(),
                        within(ROUNDING * atTen));
        assertThat(model.moreInTheCold(charge, Math.max(25.0, temperature))).isZero();
    }

    /** Where the cells of a pack are charged or drawn from, its worst groups resist likewise. */
    @Property
    void theGroupsResistAsTheirCellsDo(
            @ForAll Pack pack,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 5000.0) double seconds) {
        Pack alike = pack.withGroupSpread(GroupSpread.NONE);
        BatteryModel model = new BatteryModel(Battery.of(alike));
        PackModel one = model.packs().get(0);
        double temperature = pack.temperatureC();
        for (WorstGroup.End end : WorstGroup.End.values()) {
            BatteryModel way = end == WorstGroup.End.FULLEST ? model.into() : model;
            double cells = way.resistance(charge, temperature, seconds) - pack.jointResistance();
            assertThat(
                            pack.series()
                                    * one.groupResistance(
                                            one.worst(end), charge, temperature, seconds))
                    .isCloseTo(cells, within(1e-9 * cells));
        }
    }

    /** Joints do not relax. */
    @Property
    void anEndlessPullMeetsTheWholeRise(
            @ForAll Pack pack, @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        PackModel model = new PackModel(pack);
        double temperature = pack.temperatureC();
        double rise =
                model.rise(
                        charge,
                        model.factorByCharge(charge) + model.moreInTheCold(charge, temperature));
        double cells = model.resistance(charge, temperature) - pack.jointResistance();
        double endless = model.resistance(charge, temperature, Double.POSITIVE_INFINITY);
        assertThat(endless - pack.jointResistance())
                .isCloseTo((1.0 + rise) * cells, within(ROUNDING * endless));
        double cell = model.cellResistance(charge, temperature);
        double lasting = model.cellResistance(charge, temperature, Double.POSITIVE_INFINITY);
        assertThat(lasting).isCloseTo((1.0 + rise) * cell, within(ROUNDING * lasting));
        assertThat(lasting - cell)
                .isCloseTo(
                        pack.cell().relaxation().rise()
                                * pack.cell().relaxation().byCharge().at(charge)
                                * pack.cell().resistance()
                                * pack.cell().resistanceByTemperature().at(temperature),
                        within(ROUNDING * lasting));
    }

    /** One time constant beyond the pulse, all but 1/e of the rise is there. */
    @Property
    void theRiseFollowsItsTimeConstant(@ForAll Pack pack) {
        PackModel model = new PackModel(pack);
        double temperature = pack.temperatureC();
        double pulse = model.cellResistance(0.5, temperature);
        double after =
                model.cellResistance(
                        0.5, temperature, 10.0 + pack.cell().relaxation().timeConstant());
        assertThat(after - pulse)
                .isCloseTo(
                        (1.0 - 1.0 / Math.E) * pack.cell().relaxation().rise() * pulse,
                        within(ROUNDING * after));
    }
}

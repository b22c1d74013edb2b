package brakewright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Climate;
import brakewright.spec.Curve;
import brakewright.spec.DischargingWindow;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Relaxation;
import brakewright.spec.Wiring;
import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Hand-worked: ten cells of 1 Ah, 0.1 Ω and 32.4 J/K in series give 5 A from full to a tenth. That
 * takes 648 s, and 25 W of heat warm their 324 J/K by 50 K, or, through 1 K/W, towards 25 K above
 * the air with a time constant of 324 s. They may be charged up to 45 °C.
 */
@Tag("law")
class RoundFiguresTest {

    private static final Offset<Double> ROUNDING = within(1e-9);

    private static final OptionalDouble NO_WAY = OptionalDouble.empty();
    private static final OptionalDouble ONE = OptionalDouble.of(1.0);

    private static final double CONSTANT = 324.0;

    /** Of a ride whose heat is doubted [W]. */
    private static final double POWER = 75.0;

    private static final Relaxation ONCE_MORE = new Relaxation(1.0, 60.0);

    @Test
    void withoutAWayToTheAirTheCellsKeepAllTheHeat() {
        PackHeat heat = PackHeat.atCurrent(board(pack(32.4, 100.0, NO_WAY)), 5.0).orElseThrow();
        assertThat(heat.time()).isCloseTo(648.0, ROUNDING);
        assertThat(heat.meanCurrent()).isCloseTo(5.0, ROUNDING);
        assertThat(heat.capacity()).isCloseTo(324.0, ROUNDING);
        assertThat(heat.heat()).isCloseTo(16_200.0, within(1e-6));
        assertThat(heat.riseK()).isCloseTo(50.0, ROUNDING);
        assertThat(heat.warmerByK()).isCloseTo(50.0, ROUNDING);
        assertThat(heat.endC()).isCloseTo(75.0, ROUNDING);
        assertThat(heat.highestC()).isCloseTo(75.0, ROUNDING);
        assertThat(heat.shed()).isCloseTo(0.0, within(1e-6));
        assertThat(heat.warmAfter().orElseThrow()).isCloseTo(648.0 * 20.0 / 50.0, ROUNDING);
        assertThat(heat.stoppedAfter()).isEmpty();
        assertThat(heat.chargeAfter()).isEmpty();
    }

    @Test
    void theRideIsStoppedAt60DegreesAndNothingWarmsAfterIt() {
        PackHeat heat = PackHeat.atCurrent(board(pack(32.4, 60.0, NO_WAY)), 5.0).orElseThrow();
        assertThat(heat.stoppedAfter().orElseThrow()).isCloseTo(648.0 * 35.0 / 50.0, ROUNDING);
        assertThat(heat.endC()).isEqualTo(60.0);
        assertThat(heat.heat()).isCloseTo(35.0 * 324.0, within(1e-6));
        assertThat(heat.time()).isCloseTo(648.0, ROUNDING);
    }

    /** The fifth part of 25 K is left after ln 5 time constants. */
    @Test
    void throughAWayToTheAirTheyGoForWhereTheySettle() {
        PackHeat heat = PackHeat.atCurrent(board(pack(32.4, 100.0, ONE)), 5.0).orElseThrow();
        double warmer = 25.0 * (1.0 - Math.exp(-2.0));
        assertThat(heat.warmerByK()).isCloseTo(warmer, ROUNDING);
        assertThat(heat.shed()).isCloseTo(16_200.0 - 324.0 * warmer, within(1e-6));
        assertThat(heat.warmAfter().orElseThrow()).isCloseTo(CONSTANT * Math.log(5.0), ROUNDING);
        assertThat(heat.chargeAfter().orElseThrow())
                .isCloseTo(CONSTANT * Math.log(warmer / 20.0), ROUNDING);
    }

    @Test
    void whatIsCoolEnoughMayBeChargedAtOnce() {
        PackHeat heat = PackHeat.atCurrent(board(pack(324.0, 100.0, ONE)), 5.0).orElseThrow();
        assertThat(heat.endC()).isLessThan(45.0);
        assertThat(heat.warmAfter()).isEmpty();
        assertThat(heat.chargeAfter()).hasValue(0.0);
    }

    /** Half the heat capacity, twice as warm; the same in either order, and of alike the first. */
    @Test
    void theHotterOfTwoPacksIsTold() {
        Pack cool = pack(64.8, 100.0, NO_WAY);
        Pack hot = pack(32.4, 100.0, NO_WAY);
        assertThat(told(cool, hot).pack()).isEqualTo(2);
        assertThat(told(hot, cool).pack()).isEqualTo(1);
        assertThat(told(hot, hot).pack()).isEqualTo(1);
        assertThat(told(cool, hot).endC()).isCloseTo(75.0, ROUNDING);
    }

    /** At 57 °C after 64 % of the ride, at 58 °C after all but 1 %. */
    @Test
    void ofTwoPacksThatAreStoppedTheOneStoppedSoonerIsTold() {
        Pack later = pack(48.6, 58.0, NO_WAY);
        Pack sooner = pack(32.4, 57.0, NO_WAY);
        assertThat(told(later, sooner).pack()).isEqualTo(2);
        assertThat(told(sooner, later).pack()).isEqualTo(1);
    }

    /** 40 V over 1 Ω give 400 W at most; 36 W take 20 A less the root of 400 − 36. */
    @Test
    void aPowerIsDrawnAtTheCurrentThatItTakes() {
        PackHeat heat = PackHeat.atPower(board(pack(32.4, 100.0, NO_WAY)), 36.0).orElseThrow();
        assertThat(heat.meanCurrent()).isCloseTo(20.0 - Math.sqrt(400.0 - 36.0), within(1e-9));
        assertThat(PackHeat.atPower(board(pack(32.4, 100.0, NO_WAY)), 399.0)).isPresent();
        assertThat(PackHeat.atPower(board(pack(32.4, 100.0, NO_WAY)), 401.0)).isEmpty();
    }

    /** Half way, at 35.5 V, 1 Ω gives 315 W at most, at the lowest charge in use, 31 V, 240 W. */
    @Test
    void aPowerThatFailsOnTheWayIsNotDrawn() {
        Curve falling = Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 4.0});
        Build board =
                Builds.withCells(
                        board(pack(3240.0, 100.0, NO_WAY)),
                        cell -> Builds.withVoltage(cell, falling));
        assertThat(PackHeat.atPower(board, 239.0)).isPresent();
        assertThat(PackHeat.atPower(board, 250.0)).isEmpty();
    }

    /** At half the voltage over the resistance the power is greatest; more is not drawn. */
    @Test
    void aCurrentBeyondTheGreatestPowerIsNotDrawn() {
        Build board = board(pack(3240.0, 1000.0, NO_WAY));
        assertThat(PackHeat.atCurrent(board, 19.99)).isPresent();
        assertThat(PackHeat.atCurrent(board, 20.01)).isEmpty();
    }

    /** The way to the air half as long and half as long again. */
    @Test
    void whatIsDoubtedIsTheRideWithMoreAndLess() {
        DoubtedHeat doubted = new DoubtedHeat(40.0, 47.0);
        assertThat(doubted.widthK()).isEqualTo(7.0);
        Build board = board(pack(32.4, 100.0, ONE));
        PackHeat ride = PackHeat.atPower(board, 175.0).orElseThrow();
        DoubtedHeat air =
                DoubtedHeat.atPower(board, 175.0, ride, new DoubtedHeat.Spreads(0.0, 0.0, 0.5));
        double power = ride.heat() / ride.time();
        assertThat(air.highC()).isCloseTo(25.0 + settling(power, 1.5, ride.time()), within(1e-6));
        assertThat(air.lowC()).isCloseTo(25.0 + settling(power, 0.5, ride.time()), within(1e-6));
    }

    /** A quarter more resistance is a quarter more heat; half of a rise of 1 is a quarter of 2. */
    @Test
    void aDoubtedResistanceIsDoubtedHeat() {
        Build board = board(pack(3240.0, 100.0, NO_WAY));
        PackHeat ride = PackHeat.atPower(board, POWER).orElseThrow();
        DoubtedHeat quarter = doubted(board, ride, new DoubtedHeat.Spreads(0.25, 0.0, 0.0));
        assertThat(quarter.highC()).isCloseTo(25.0 + 1.25 * ride.riseK(), ROUNDING);
        assertThat(quarter.lowC()).isCloseTo(25.0 + 0.75 * ride.riseK(), ROUNDING);
        Build rising = Builds.withCells(board, cell -> Builds.relaxing(cell, ONCE_MORE));
        PackHeat risen = PackHeat.atPower(rising, POWER).orElseThrow();
        DoubtedHeat half = doubted(rising, risen, new DoubtedHeat.Spreads(0.0, 0.5, 0.0));
        assertThat(half.highC()).isCloseTo(25.0 + 1.25 * risen.riseK(), ROUNDING);
        assertThat(half.lowC()).isCloseTo(25.0 + 0.75 * risen.riseK(), ROUNDING);
    }

    private static DoubtedHeat doubted(Build build, PackHeat ride, DoubtedHeat.Spreads spreads) {
        return DoubtedHeat.atPower(build, POWER, ride, spreads);
    }

    private static double settling(double power, double toAir, double time) {
        return power * toAir * (1.0 - Math.exp(-time / (toAir * 324.0)));
    }

    private static PackHeat told(Pack one, Pack other) {
        return PackHeat.atCurrent(
                        board(new Battery(List.of(one, other), Joining.SERIES, Wiring.NONE, 0.0)),
                        5.0)
                .orElseThrow();
    }

    private static Pack pack(double heatCapacity, double stopC, OptionalDouble toAir) {
        Cell flat = Builds.flatCell(4.0, 0.1, 3.0, 4.2);
        Cell cell =
                flat.withHeatCapacity(OptionalDouble.of(heatCapacity))
                        .withCharging(
                                new ChargingWindow(
                                        0.0, 45.0, 0.0, 0.0, ChargingWindow.WHATEVER_THE_CHARGE))
                        .withDischarging(new DischargingWindow(-20.0, stopC));
        return Builds.barePack(cell, 10, 1, 0.0).withToAir(toAir);
    }

    private static Build board(Pack pack) {
        return board(Battery.of(pack));
    }

    private static Build board(Battery battery) {
        Build board = Builds.trailBoard();
        return board.withBattery(battery)
                .withUse(board.use().withClimate(new Climate(25.0, 25.0, 25.0, 0.0, 25.0)));
    }
}

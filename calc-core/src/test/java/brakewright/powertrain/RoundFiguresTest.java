package brakewright.powertrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Controllers;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Drive;
import brakewright.spec.Motor;
import brakewright.spec.Taper;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A power train whose figures can be worked out on paper: kt = 0.1 N·m/A, Re = 0.2 Ω, ω = 100 rad/s
 * at 1 m/s, two motors, controllers of 90 %; a pack of 40 V behind 0.125 Ω.
 *
 * <p>Braking at 3 m/s the back-EMF is 30 V, and 50 A return 2·(30·50 − 0.2·50²)·0.9 = 1800 W, which
 * is 40 A at 45 V. Driving at 0.6 m/s it is 6 V, and 60 A draw 2·(6·60 + 0.2·60²)/0.9 = 2400 W,
 * which is 80 A at 30 V.
 */
@Tag("law")
class RoundFiguresTest {

    private static final double ROUNDING = 1e-12;

    private static final PackState PACK = new PackState(0.5, 20.0, 40.0, 0.125);

    @Test
    void brakesIntoThePackWithWhatTheMotorsReturn() {
        ElectricBrake brake = brake(50.0, 60.0, Optional.empty());
        assertThat(brake.askedPackCurrent(3.0, PACK)).isCloseTo(40.0, relative(40.0));
        assertThat(brake.packCurrent(3.0, PACK)).isCloseTo(40.0, relative(40.0));
        assertThat(brake.motorCurrent(3.0, PACK)).isEqualTo(50.0);
        assertThat(brake.greatestAsked(3.0, PACK)).isCloseTo(40.0, relative(40.0));
        assertThat(brake.greatestReturn(3.0, PACK)).isCloseTo(40.0, relative(40.0));
    }

    @Test
    void brakesIntoThePackWithNoMoreThanIsSet() {
        ElectricBrake brake = brake(50.0, 30.0, Optional.empty());
        assertThat(brake.askedPackCurrent(3.0, PACK)).isCloseTo(40.0, relative(40.0));
        assertThat(brake.packCurrent(3.0, PACK)).isCloseTo(30.0, relative(30.0));
        assertThat(brake.greatestReturn(3.0, PACK)).isEqualTo(30.0);
        assertThat(brake.settledPackLimit(PACK)).isEqualTo(30.0);
    }

    /** 75 A return 2·(30·75 − 0.2·75²)·0.9 = 2025 W, more than 100 A with its 1800 W. */
    @Test
    void countsThePartBrakingThatReturnsMost() {
        ElectricBrake brake = brake(100.0, 60.0, Optional.empty());
        double most = (Math.sqrt(40.0 * 40.0 + 4.0 * 0.125 * 2025.0) - 40.0) / 0.25;
        assertThat(most).isGreaterThan(44.0);
        assertThat(brake.askedPackCurrent(3.0, PACK)).isCloseTo(40.0, relative(40.0));
        assertThat(brake.greatestAsked(3.0, PACK)).isCloseTo(most, relative(most));
        assertThat(brake.greatestReturn(3.0, PACK)).isCloseTo(most, relative(most));
    }

    /** 24 A lift the pack to 43 V, where 32 A·(46 − 43)/(46 − 42) are left. */
    @Test
    void settlesWhereTheTaperMeetsTheVoltage() {
        ElectricBrake brake = brake(50.0, 32.0, Optional.of(new Taper(42.0, 46.0)));
        assertThat(brake.settledPackLimit(PACK)).isCloseTo(24.0, relative(24.0));
        assertThat(brake.greatestReturn(3.0, PACK)).isCloseTo(24.0, relative(24.0));
    }

    @Test
    void reachesACurrentAtTheSpeedThatReturnsIt() {
        ElectricBrake brake = brake(50.0, 60.0, Optional.empty());
        assertThat(brake.speedReturning(40.0, PACK)).isCloseTo(3.0, relative(3.0));
    }

    /** What is set lets 40 A in, and not a little more; without motor current nothing comes. */
    @Test
    void reachesNoCurrentThatTheSettingsKeepAway() {
        ElectricBrake brake = brake(50.0, 40.0, Optional.empty());
        assertThat(brake.speedReturning(40.0, PACK)).isCloseTo(3.0, relative(3.0));
        assertThat(brake.speedReturning(40.001, PACK)).isInfinite();
        assertThat(brake(0.0, 40.0, Optional.empty()).speedReturning(0.0, PACK)).isInfinite();
    }

    @Test
    void drawsFromThePackWhatTheMotorsNeed() {
        ElectricDrive drive = drive(60.0, 90.0);
        assertThat(drive.greatestAsked(0.6, PACK)).isCloseTo(80.0, relative(80.0));
        assertThat(drive.greatestDraw(0.6, PACK)).isCloseTo(80.0, relative(80.0));
        assertThat(drive(60.0, 50.0).greatestDraw(0.6, PACK)).isEqualTo(50.0);
    }

    @Test
    void drivesWithWhatAPowerLeaves() {
        assertThat(train().limitedDriveCurrent(100.0, 0.6, 2400.0)).isCloseTo(60.0, relative(60.0));
        assertThat(train().limitedDriveCurrent(50.0, 0.6, 2400.0)).isEqualTo(50.0);
        assertThat(train().limitedDriveCurrent(50.0, 0.0, 0.0)).isZero();
    }

    /** 100 A need 2·(6·100 + 0.2·100²)/0.9 = 5778 W, the pack gives 40²/(4·0.125) = 3200 W. */
    @Test
    void asksWithoutEndWhatThePackCannotGive() {
        assertThat(drive(100.0, 90.0).greatestAsked(0.6, PACK)).isInfinite().isPositive();
    }

    /** At 0.6 m/s 60 A of braking draw 2·(0.2·60² − 6·60)/0.9 = 800 W. */
    @Test
    void brakesNearStandstillWithWhatASourceCanSupply() {
        Powertrain train = train();
        assertThat(train.suppliedBrakeCurrent(100.0, 0.6, () -> 800.0))
                .isCloseTo(60.0, relative(60.0));
        assertThat(train.suppliedBrakeCurrent(50.0, 0.6, () -> 800.0)).isEqualTo(50.0);
    }

    /** 32 A are held at 24 A by a taper that ends at 46 V, and not by one that begins at 50 V. */
    @Test
    void aTaperHoldsABrakeOnlyWhereItLowersTheCurrent() {
        ElectricBrake held = brake(50.0, 32.0, Optional.of(new Taper(42.0, 46.0)));
        assertThat(held.isHeldByTaper(PACK)).isTrue();
        assertThat(held.settled(PACK).packCurrent()).isCloseTo(24.0, relative(24.0));
        assertThat(held.settled(PACK).taper()).isEmpty();
        ElectricBrake free = brake(50.0, 32.0, Optional.of(new Taper(50.0, 54.0)));
        assertThat(free.isHeldByTaper(PACK)).isFalse();
        assertThat(brake(50.0, 32.0, Optional.empty()).isHeldByTaper(PACK)).isFalse();
    }

    /** 24 A into 43 V are 1032 W: 2·(30·i − 0.2·i²)·0.9, a little less than 22 A. */
    @Test
    void aShareOfABrakeIsHeldByWhatThePackTakes() {
        ElectricBrake free = brake(50.0, 60.0, Optional.empty());
        assertThat(free.settledMotorCurrent(3.0, PACK, 1.0)).isEqualTo(50.0);
        assertThat(free.settledMotorCurrent(3.0, PACK, 0.5)).isEqualTo(25.0);
        double held = (30.0 - Math.sqrt(900.0 - 0.8 * 1032.0 / 1.8)) / 0.4;
        assertThat(
                        brake(50.0, 32.0, Optional.of(new Taper(42.0, 46.0)))
                                .settledMotorCurrent(3.0, PACK, 1.0))
                .isCloseTo(held, relative(held));
    }

    /** 2400 W are 80 A at 30 V. */
    @Test
    void aPackKnowsWhereItStandsAndHowFarALoadPullsItDown() {
        assertThat(PACK.charge()).isEqualTo(0.5);
        assertThat(PACK.temperatureC()).isEqualTo(20.0);
        assertThat(PACK.loadedVoltage(2400.0)).isCloseTo(30.0, relative(30.0));
    }

    /** 0.1 N·m/A at 1.5 A and 1 mN·m·s at 300 rad/s are 0.45 N·m of each of two motors. */
    @Test
    void frictionAndIronTakeTheirPower() {
        assertThat(train(1.5, 1e-3).dragLoss(3.0)).isCloseTo(270.0, relative(270.0));
    }

    /** 1.15 A of each of two motors, geared 100 rad/m at 90 %, push with 20.7 N. */
    @Test
    void aMotorCurrentHoldsTheSpeedWhereTheRoadTakesAllThatItPushes() {
        RoadLoad road = RoadLoad.of(Builds.trailBoard());
        TopSpeed.Result top = TopSpeed.find(drive(1.15, 90.0), road, 0.0, 0.0, PACK);
        assertThat(top.holder()).isEqualTo(TopSpeed.Holder.MOTOR_CURRENT);
        assertThat(top.speed()).isBetween(1.0, 3.0);
        assertThat(road.force(top.speed(), 0.0, 0.0)).isCloseTo(20.7, within(1e-8));
    }

    /** Worksheets carry these names, which are never changed. */
    @Test
    void holdersKeepTheirNames() {
        assertThat(TopSpeed.Holder.values())
                .extracting(TopSpeed.Holder::key)
                .containsExactly(
                        "motor-drive-current",
                        "pack-discharge-current",
                        "pack-voltage",
                        "standstill");
    }

    private static ElectricBrake brake(double motor, double pack, Optional<Taper> taper) {
        return new ElectricBrake(train(), motor, pack, taper);
    }

    private static ElectricDrive drive(double motor, double pack) {
        return new ElectricDrive(train(), motor, pack, Optional.empty());
    }

    private static Powertrain train() {
        return train(0.0, 0.0);
    }

    private static Powertrain train(double noLoadCurrent, double viscousDrag) {
        Motor motor =
                new Motor(
                        60.0 / (2.0 * Math.PI) / 0.1,
                        0.2,
                        7,
                        0.0,
                        noLoadCurrent,
                        viscousDrag,
                        OptionalDouble.empty(),
                        120.0,
                        Optional.empty());
        Controllers controllers =
                new Controllers(
                        2,
                        CurrentBasis.DC_EQUIVALENT,
                        200.0,
                        100.0,
                        60.0,
                        0.9,
                        OptionalDouble.empty());
        Build board = Builds.withMotor(Builds.trailBoard(), motor);
        return Powertrain.at(
                Builds.withDrive(
                        Builds.withControllers(board, controllers), new Drive(2, 10.0, 0.9), 0.2),
                20.0);
    }

    private static Offset<Double> relative(double value) {
        return within(ROUNDING * value);
    }
}

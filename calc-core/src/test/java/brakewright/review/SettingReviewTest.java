package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.spec.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Settings just inside, on and just outside what they are reviewed against; hand-worked. */
class SettingReviewTest {

    private static final double THIN = 0.95;

    private static final Build CART = Builds.dockCart().withSettings(Settings.NONE);

    /** Its cells may take 0.2 of their charge rating below 10 °C. */
    private static final Build COLD_BOARD =
            Builds.trailBoard().withBattery(Builds.trailBoard().battery().at(5.0));

    @Test
    void aSettingWithinATwentiethOfALimitWithoutMarginIsThin() {
        Limit drive = Limits.of(CART).motorDrive();
        assertThat(drive.binding().id()).isEqualTo(ConstraintId.WINDING_HEAT);
        double limit = drive.value();
        assertThat(thin(CART, Settings.NONE.withMotorDriveCurrent(THIN * limit))).isEmpty();
        assertThat(thin(CART, Settings.NONE.withMotorDriveCurrent(Math.nextUp(limit)))).isEmpty();
        for (double share : new double[] {0.951, 1.0}) {
            assertThat(thin(CART, Settings.NONE.withMotorDriveCurrent(share * limit)))
                    .singleElement()
                    .satisfies(
                            each -> {
                                assertThat(each.signal()).isEqualTo(Signal.CAUTION);
                                assertThat(each.subject()).contains(LimitId.MOTOR_DRIVE_CURRENT);
                                assertThat(each.constraint()).contains(ConstraintId.WINDING_HEAT);
                                assertThat(each.value()).hasValue(share * limit);
                                assertThat(each.limit()).hasValue(limit);
                                assertThat(each.unit()).isEqualTo(Unit.AMPERE);
                            });
        }
    }

    @Test
    void theBrakeIsHeldAgainstItsOwnLimit() {
        double limit = Limits.of(CART).motorBrake().value();
        assertThat(thin(CART, Settings.NONE.withMotorBrakeCurrent(0.96 * limit)))
                .extracting(Finding::subject)
                .containsExactly(Optional.of(LimitId.MOTOR_BRAKE_CURRENT));
    }

    /** What is permitted in the cold has no margin of its own. */
    @Test
    void twoControllersTakeTwiceWhatIsSet() {
        Limit cold = Limits.of(COLD_BOARD).packRegen().staticPart(5.0);
        assertThat(cold.binding().id()).isEqualTo(ConstraintId.TEMPERATURE_WINDOW);
        double limit = cold.value();
        assertThat(thin(COLD_BOARD, Settings.NONE.withPackRegenCurrent(0.96 * limit / 2.0)))
                .singleElement()
                .satisfies(
                        each ->
                                assertThat(each.value().orElseThrow())
                                        .isCloseTo(0.96 * limit, within(1e-12)));
        assertThat(thin(COLD_BOARD, Settings.NONE.withPackRegenCurrent(0.96 * limit))).isEmpty();
    }

    @Test
    void aSettingAtALimitThatKeepsAMarginIsNotThin() {
        Build board = Builds.trailBoard();
        Limits limits = Limits.of(board);
        assertThat(limits.motorDrive().binding().id()).isEqualTo(ConstraintId.MOTOR_CURRENT_RATING);
        assertThat(
                        thin(
                                board,
                                Settings.NONE
                                        .withMotorDriveCurrent(limits.motorDrive().value())
                                        .withMotorBrakeCurrent(limits.motorBrake().value())))
                .isEmpty();
    }

    /** 40.5 A and 19.98 A of the pack go through two controllers. */
    @Test
    void whatIsNotSetIsToldWithWhatIsAssumed() {
        List<Finding> told = told(Builds.trailBoard(), Settings.NONE, Topic.SETTING_NOT_GIVEN);
        Limits limits = Limits.of(Builds.trailBoard());
        assertThat(told)
                .extracting(each -> each.subject().orElseThrow(), Finding::signal)
                .containsExactly(
                        tuple(LimitId.PACK_REGEN_CURRENT, Signal.WARNING),
                        tuple(LimitId.MOTOR_BRAKE_CURRENT, Signal.WARNING),
                        tuple(LimitId.PACK_DISCHARGE_CURRENT, Signal.CAUTION),
                        tuple(LimitId.MOTOR_DRIVE_CURRENT, Signal.CAUTION));
        assertThat(told.get(0).value().orElseThrow()).isCloseTo(9.99, within(1e-12));
        assertThat(told.get(1).value()).hasValue(limits.motorBrake().value());
        assertThat(told.get(2).value().orElseThrow()).isCloseTo(20.25, within(1e-12));
        assertThat(told.get(3).value().orElseThrow()).isCloseTo(54.0, within(1e-12));
    }

    @Test
    void whatIsSetIsNotToldAsMissing() {
        Settings set =
                Settings.NONE
                        .withMotorDriveCurrent(10.0)
                        .withMotorBrakeCurrent(10.0)
                        .withPackDischargeCurrent(10.0)
                        .withPackRegenCurrent(1.0);
        assertThat(told(Builds.trailBoard(), set, Topic.SETTING_NOT_GIVEN)).isEmpty();
    }

    /** Twelve cells of 4.2 V each are full at 50.4 V, and open 0.03 V above 2.8 V at 33.96 V. */
    @Test
    void aTaperEndsInTimeOnTheSafeSideOfItsVoltage() {
        assertThat(ending(LimitId.HIGH_VOLTAGE_TAPER, new Taper(46.0, 50.4))).isEmpty();
        assertThat(ending(LimitId.LOW_VOLTAGE_TAPER, new Taper(40.0, 33.97))).isEmpty();
        assertThat(ending(LimitId.HIGH_VOLTAGE_TAPER, new Taper(46.0, 50.5)))
                .singleElement()
                .satisfies(
                        each -> {
                            assertThat(each.signal()).isEqualTo(Signal.CAUTION);
                            assertThat(each.constraint()).contains(ConstraintId.VOLTAGE_CEILING);
                            assertThat(each.value()).hasValue(50.5);
                            assertThat(each.limit().orElseThrow()).isCloseTo(50.4, within(1e-12));
                        });
        assertThat(ending(LimitId.LOW_VOLTAGE_TAPER, new Taper(40.0, 33.9)))
                .singleElement()
                .satisfies(
                        each -> {
                            assertThat(each.value()).hasValue(33.9);
                            assertThat(each.limit().orElseThrow()).isCloseTo(33.96, within(1e-12));
                        });
    }

    @Test
    void aTaperThatIsTooNarrowSurges() {
        Build board = Builds.trailBoard();
        double high = Limits.of(board).highVoltageTaper().band().limit();
        assertThat(high).isBetween(1.0, 4.0);
        assertThat(surging(LimitId.HIGH_VOLTAGE_TAPER, new Taper(46.4, 50.4))).isEmpty();
        assertThat(surging(LimitId.HIGH_VOLTAGE_TAPER, new Taper(49.4, 50.4)))
                .singleElement()
                .satisfies(
                        each -> {
                            assertThat(each.signal()).isEqualTo(Signal.WARNING);
                            assertThat(each.value().orElseThrow()).isCloseTo(1.0, within(1e-12));
                            assertThat(each.limit()).hasValue(high);
                        });
        assertThat(surging(LimitId.LOW_VOLTAGE_TAPER, new Taper(35.0, 34.0))).hasSize(1);
    }

    private static List<Finding> thin(Build build, Settings settings) {
        return told(build, settings, Topic.THIN_MARGIN);
    }

    private static List<Finding> ending(LimitId id, Taper taper) {
        return told(Builds.trailBoard(), with(id, taper), Topic.TAPER_ENDS_LATE);
    }

    private static List<Finding> surging(LimitId id, Taper taper) {
        return told(Builds.trailBoard(), with(id, taper), Topic.TAPER_SURGES);
    }

    private static Settings with(LimitId id, Taper taper) {
        return id == LimitId.LOW_VOLTAGE_TAPER
                ? Settings.NONE.withLowVoltageTaper(Optional.of(taper))
                : Settings.NONE.withHighVoltageTaper(Optional.of(taper));
    }

    /** Held against the limits of the vehicle as nothing is set. */
    private static List<Finding> told(Build build, Settings settings, Topic topic) {
        Limits limits = Limits.of(build);
        Build set = build.withSettings(settings);
        return new SettingReview(set, limits, Operation.of(set, limits))
                .findings().stream().filter(each -> each.topic() == topic).toList();
    }
}

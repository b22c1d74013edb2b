package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.BrakingTime;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.powertrain.Powertrain;
import brakewright.spec.ArrheniusCurve;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Climate;
import brakewright.spec.Controllers;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.Settings;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is held against the limits of a pack, of a ride and of a setting; hand-worked. */
class ChecksTest {

    private static final Offset<Double> ROUNDING = within(1e-9);

    private static final Build BOARD = Builds.trailBoard();

    /**
     * The board's pack may take 19.98 A from 10 °C to 45 °C, a fifth of it down to 0 °C; it may be
     * drawn from at −20 °C to 60 °C.
     */
    @ParameterizedTest(name = "{0} A back from {1} degC to {2} degC")
    @CsvSource({
        "10, 5, 30, FROM, 10",
        "10, -5, 30, FROM, 10",
        "3, -5, 30, FROM, 0",
        "3, 5, 50, UP_TO, 45",
    })
    void aReturnOutsideItsWindowAsksForOtherCells(
            double current, double coldest, double warmest, String side, double asked) {
        Settings set = gentle().withPackRegenCurrent(current / 2.0);
        List<Finding> told = windowed(between(BOARD, coldest, warmest).withSettings(set), true);
        boolean isCold = side.equals("FROM");
        Condition.Excess excess =
                new Condition.Excess(
                        true,
                        current,
                        coldest == 5.0 && isCold ? 3.996 : 0.0,
                        isCold ? coldest : warmest);
        assertThat(told).singleElement().satisfies(each -> assertAsks(each, isCold, asked, excess));
    }

    @Test
    void aDrawOutsideItsWindowAsksForOtherCells() {
        Settings set = gentle().withPackDischargeCurrent(2.0).withPackRegenCurrent(0.0);
        assertThat(windowed(between(BOARD, -25.0, 30.0).withSettings(set), false))
                .singleElement()
                .satisfies(
                        each ->
                                assertAsks(
                                        each,
                                        true,
                                        -20.0,
                                        new Condition.Excess(false, 4.0, 0.0, -25.0)));
        assertThat(windowed(between(BOARD, 20.0, 65.0).withSettings(set), false))
                .singleElement()
                .satisfies(
                        each ->
                                assertAsks(
                                        each,
                                        false,
                                        60.0,
                                        new Condition.Excess(false, 4.0, 0.0, 65.0)));
        assertThat(windowed(between(BOARD, 20.0, 30.0).withSettings(set), false)).isEmpty();
    }

    private static void assertAsks(
            Finding finding, boolean isCold, double asked, Condition.Excess excess) {
        Condition condition = finding.condition().orElseThrow();
        Condition.Excess told;
        if (isCold) {
            Condition.CellsFrom from = (Condition.CellsFrom) condition;
            assertThat(from.temperatureC()).isEqualTo(asked);
            told = from.excess();
        } else {
            Condition.CellsUpTo upTo = (Condition.CellsUpTo) condition;
            assertThat(upTo.temperatureC()).isEqualTo(asked);
            told = upTo.excess();
        }
        assertThat(told.isReturned()).isEqualTo(excess.isReturned());
        assertThat(told.current()).isCloseTo(excess.current(), ROUNDING);
        assertThat(told.permitted()).isCloseTo(excess.permitted(), ROUNDING);
        assertThat(told.temperatureC()).isEqualTo(excess.temperatureC());
    }

    /**
     * 40 V and 2 V below the ceiling or above the floor, 1 Ω at 25 °C and 4 Ω at 5 °C, where 1 A is
     * twice too much. It is borne at 2 Ω, halfway between both in 1/T: at 287.8 K.
     */
    @Test
    void whatColdCellsDoNotBearAtAnyChargeIsBorneByWarmerOnes() {
        double borne = 2.0 / (1.0 / 278.15 + 1.0 / 298.15) - 273.15;
        Build returning = flat(Curve.constant(4.0), 4.0).withSettings(sending(1.0, 0.01));
        Finding ceiling = only(returning, ConstraintId.VOLTAGE_CEILING);
        Condition.CellsFrom from = (Condition.CellsFrom) ceiling.condition().orElseThrow();
        assertThat(from.temperatureC()).isCloseTo(borne, within(2e-6));
        assertThat(ceiling.speed()).as("one brakes at a speed").isPresent();
        assertThat(from.excess().isReturned()).isTrue();
        assertThat(from.excess().current()).isCloseTo(1.0, ROUNDING);
        assertThat(from.excess().permitted()).isCloseTo(0.5, ROUNDING);
        assertThat(from.excess().temperatureC()).isEqualTo(5.0);
        Build drawing = flat(Curve.constant(4.0), 4.0).withSettings(sending(0.0, 1.0));
        Finding floor = only(drawing, ConstraintId.VOLTAGE_FLOOR);
        assertThat(floor.speed()).isEmpty();
        Condition.CellsFrom drawn = (Condition.CellsFrom) floor.condition().orElseThrow();
        assertThat(drawn.temperatureC()).isCloseTo(borne, within(2e-6));
        assertThat(drawn.excess().isReturned()).isFalse();
    }

    /**
     * From 31 V at the lowest charge in use 1 A reaches 42 V behind 11 Ω, from 40 V at the highest
     * it falls to 25 V behind 15 Ω; 16 Ω at 5 °C and 1 Ω at 25 °C.
     */
    @Test
    void warmthIsAskedForAtTheChargeThatBearsMost() {
        Curve rising = Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 4.0});
        Build board = flat(rising, 16.0);
        assertThat(asked(board.withSettings(sending(1.0, 0.01)), ConstraintId.VOLTAGE_CEILING))
                .isCloseTo(where(11.0), within(2e-6));
        assertThat(asked(board.withSettings(sending(0.0, 1.0)), ConstraintId.VOLTAGE_FLOOR))
                .isCloseTo(where(15.0), within(2e-6));
    }

    private static double where(double resistance) {
        double part = Math.log(resistance) / Math.log(16.0);
        return 1.0 / (part / 278.15 + (1.0 - part) / 298.15) - 273.15;
    }

    private static double asked(Build build, ConstraintId constraint) {
        return findings(build).stream()
                .filter(each -> each.constraint().equals(Optional.of(constraint)))
                .flatMap(each -> each.condition().stream())
                .filter(Condition.CellsFrom.class::isInstance)
                .mapToDouble(each -> ((Condition.CellsFrom) each).temperatureC())
                .max()
                .orElseThrow();
    }

    /** 3 A are beyond 2 A at 25 °C, too: once told, whatever the temperature. */
    @Test
    void whatIsTooMuchOfOrdinaryCellsIsToldOnce() {
        Build build = flat(Curve.constant(4.0), 4.0).withSettings(sending(3.0, 0.01));
        Finding ceiling = only(build, ConstraintId.VOLTAGE_CEILING);
        assertThat(ceiling.condition()).contains(new Condition.Never());
        assertThat(ceiling.temperatureC()).hasValue(25.0);
        assertThat(ceiling.value().orElseThrow()).isCloseTo(3.0, ROUNDING);
        assertThat(ceiling.limit().orElseThrow()).isCloseTo(2.0, ROUNDING);
    }

    /** 30 V at empty and 40 V at full, and 3 A: 42 V at 0.9 behind 1 Ω, at 0.6 behind 2 Ω. */
    @Test
    void coldCellsAreToldBesideOrdinaryOnesAsTheyBearItUpToALowerCharge() {
        Curve rising = Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 4.0});
        Build build = flat(rising, 2.0).withSettings(sending(3.0, 0.01));
        List<Finding> told = returned(build, ConstraintId.VOLTAGE_CEILING);
        assertThat(told).hasSize(2);
        assertBelow(told.get(0), 0.9, 25.0);
        assertBelow(told.get(1), 0.6, 5.0);
        assertThat(Evaluation.of(build).safeCharge()).isCloseTo(0.6, within(2e-9));
        Build even = flat(rising, 1.0).withSettings(sending(3.0, 0.01));
        assertThat(returned(even, ConstraintId.VOLTAGE_CEILING)).hasSize(1);
        assertThat(Evaluation.of(even).safeCharge()).isCloseTo(0.9, within(2e-9));
    }

    private static void assertBelow(Finding finding, double charge, double cellsC) {
        Condition.ChargeBelow below = (Condition.ChargeBelow) finding.condition().orElseThrow();
        assertThat(below.charge()).isCloseTo(charge, within(2e-9));
        assertThat(below.highestCharge()).isEqualTo(1.0);
        assertThat(below.temperatureC()).isEqualTo(cellsC);
    }

    /**
     * Where 42 V are just reached, the motors' P flows as P/42: 30 V + 10 V·s + P/42·1 Ω = 42 V.
     */
    @Test
    void aHardGrabIsBorneUpToTheChargeAtWhichItJustOpensNothing() {
        Build build = grabbing(5.0);
        double charge = (12.0 - power(build, 5.0) / 42.0) / 10.0;
        assertThat(charge).isBetween(0.3, 0.9);
        Evaluation grab = Evaluation.ofHardGrab(build);
        assertThat(grab.outcome()).isEqualTo(Verdict.Outcome.CONDITIONAL);
        assertThat(grab.worst()).isEqualTo(ConstraintId.PROTECTION_OVERVOLTAGE_TRIP);
        assertThat(grab.safeCharge()).isCloseTo(charge, within(2e-9));
        List<Finding> told = surging(build);
        assertThat(told)
                .singleElement()
                .satisfies(
                        each -> {
                            Condition.ChargeBelow below =
                                    (Condition.ChargeBelow) each.condition().orElseThrow();
                            assertThat(below.charge()).isCloseTo(charge, within(2e-9));
                            assertThat(below.temperatureC()).isEqualTo(25.0);
                            assertThat(each.worstCharge()).hasValue(1.0);
                            assertThat(each.limit().orElseThrow()).isCloseTo(2.0, ROUNDING);
                            assertThat(each.detail()).isPresent();
                        });
        assertThat(Evaluation.of(build).safeCharge()).isCloseTo(charge, within(2e-9));
    }

    /** 11 A at the lowest charge in use are 462 W. */
    @Test
    void aHardGrabMayBeTooMuchForAnyChargeOrForNone() {
        Build strong = grabbing(30.0);
        assertThat(power(strong, 30.0)).isGreaterThan(462.0);
        assertThat(Evaluation.ofHardGrab(strong).outcome())
                .isEqualTo(Verdict.Outcome.OUTSIDE_LIMITS);
        assertThat(Evaluation.ofHardGrab(strong).safeCharge()).isZero();
        assertThat(surging(strong))
                .extracting(Finding::condition)
                .containsExactly(Optional.of(new Condition.Never()));
        Evaluation none = Evaluation.ofHardGrab(grabbing(0.0));
        assertThat(none.outcome()).isEqualTo(Verdict.Outcome.WITHIN_LIMITS);
        assertThat(none.safeCharge()).isEqualTo(1.0);
    }

    @Test
    void aTripThatWaitsLongerThanTheLimiterAsksNothingOfAGrab() {
        Build slow = Builds.withLateLimiter(grabbing(30.0), 0.01, 0.1);
        Evaluation grab = Evaluation.ofHardGrab(slow);
        assertThat(grab.severity()).isEqualTo(-1.0);
        assertThat(grab.safeCharge()).isEqualTo(1.0);
        assertThat(Evaluation.ofHardGrab(BOARD).safeCharge()).isEqualTo(1.0);
    }

    /** 30 A are more than 19.98 A may be, but hardly any of it flows. */
    @Test
    void aSettingIsHeldOnlyWhereItIsAskedFor() {
        Build build =
                inSteadyCells(BOARD)
                        .withUse(inSteadyCells(BOARD).use().withChargeFrom(0.7))
                        .withSettings(gentle().withPackRegenCurrent(15.0));
        assertThat(about(build, LimitId.PACK_REGEN_CURRENT)).isPositive();
        assertThat(about(build, LimitId.MOTOR_BRAKE_CURRENT)).isNegative();
        assertThat(about(build, LimitId.PACK_DISCHARGE_CURRENT)).isNegative();
        Build drawing = build.withSettings(gentle().withPackDischargeCurrent(30.0));
        assertThat(about(drawing, LimitId.PACK_DISCHARGE_CURRENT)).isPositive();
        assertThat(about(drawing, LimitId.MOTOR_DRIVE_CURRENT)).isNegative();
        assertThat(about(drawing, LimitId.PACK_REGEN_CURRENT)).isNegative();
    }

    @Test
    void eachSettingIsHeldAgainstItsOwnLimit() {
        Build cool = inSteadyCells(BOARD).withUse(inSteadyCells(BOARD).use().withChargeFrom(0.7));
        Build driving = cool.withSettings(gentle().withMotorDriveCurrent(55.0));
        assertThat(about(driving, LimitId.MOTOR_DRIVE_CURRENT)).isPositive();
        assertThat(about(driving, LimitId.MOTOR_BRAKE_CURRENT)).isNegative();
        Build braking = cool.withSettings(gentle().withMotorBrakeCurrent(42.0));
        assertThat(about(braking, LimitId.MOTOR_BRAKE_CURRENT)).isPositive();
        assertThat(about(braking, LimitId.MOTOR_DRIVE_CURRENT)).isNegative();
        Build fast = cool.withSettings(gentle().withSpeedCap(OptionalDouble.of(18.0)));
        assertThat(about(fast, LimitId.SPEED_CAP)).isPositive();
        assertThat(about(fast, LimitId.MOTOR_DRIVE_CURRENT)).isNegative();
        assertThat(told(driving, Topic.DRIVE_CURRENT_OVER)).hasSize(1);
        assertThat(told(braking, Topic.BRAKE_CURRENT_OVER)).hasSize(1);
    }

    /** Above 17.6 m/s the motors turn faster than the empty pack, above 24 m/s than is borne. */
    @Test
    void aCapThatOnlyACautionBoundsBearsOnASearchAndNotOnTheVerdict() {
        Build cool = inSteadyCells(BOARD).withUse(inSteadyCells(BOARD).use().withChargeFrom(0.7));
        Build fast = cool.withSettings(gentle().withSpeedCap(OptionalDouble.of(18.0)));
        assertThat(told(fast, Topic.SPEED_CAP_OVER)).isEmpty();
        Build faster = cool.withSettings(gentle().withSpeedCap(OptionalDouble.of(25.0)));
        assertThat(told(faster, Topic.SPEED_CAP_OVER))
                .extracting(Finding::constraint)
                .containsExactly(Optional.of(ConstraintId.CONTROLLER_BACK_EMF));
    }

    /** Twelve full cells of 4.19 V on controllers that bear 60 V, or 50 V. */
    @Test
    void aFullPackMayBeMoreThanTheControllersBear() {
        assertThat(told(BOARD, Topic.CONTROLLER_VOLTAGE_AT_REST)).isEmpty();
        Controllers old = BOARD.controllers();
        Build low = Builds.withControllers(BOARD, old.withVoltageRating(50.0));
        assertThat(told(low, Topic.CONTROLLER_VOLTAGE_AT_REST))
                .singleElement()
                .satisfies(
                        each -> {
                            assertThat(each.value().orElseThrow()).isCloseTo(50.28, ROUNDING);
                            assertThat(each.limit()).hasValue(50.0);
                            assertThat(each.charge()).hasValue(1.0);
                            assertThat(each.condition()).contains(new Condition.Never());
                        });
    }

    /**
     * 2 A lift ten full cells of 4 V and 0.1 Ω to 4.2 V each, or half of it in two packs to 4.1.
     */
    @Test
    void aBypassedProtectionIsToldWithTheVoltageThatItsCellsReach() {
        Curve rising = Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 4.0});
        Pack pack = Builds.pack(flat(rising, 1.0));
        Pack bypassed =
                Builds.barePack(pack.cell(), 10, 1, 0.0).withProtection(Protection.BYPASSED);
        for (int count = 1; count <= 2; count++) {
            Build build =
                    flat(rising, 1.0)
                            .withBattery(
                                    Builds.joined(
                                            Joining.PARALLEL, Collections.nCopies(count, bypassed)))
                            .withSettings(sending(2.0, 0.01));
            List<Finding> told = told(build, Topic.PROTECTION_BYPASSED);
            assertThat(told).hasSize(2 * count);
            Finding charged = told.get(0);
            assertThat(charged.signal()).isEqualTo(Signal.DANGER);
            assertThat(charged.value().orElseThrow()).isCloseTo(4.0 + 0.2 / count, ROUNDING);
            assertThat(charged.limit()).hasValue(4.2);
            assertThat(charged.charge()).hasValue(1.0);
            Finding drawn = told.get(2 * count - 1);
            assertThat(drawn.signal()).isEqualTo(Signal.WARNING);
            assertThat(drawn.limit()).hasValue(2.5);
        }
    }

    @Test
    void onlyBrakingBeyondAPulseBoundsByItsLength() {
        Condition below = new Condition.ChargeBelow(0.9, 1.0, OptionalDouble.empty(), 25.0);
        Condition above = new Condition.ChargeAbove(0.2, 0.1, 25.0);
        assertThat(reviewed(below, 10.1).isBoundByLongBraking()).isTrue();
        assertThat(reviewed(below, 10.0).isBoundByLongBraking()).isFalse();
        assertThat(reviewed(above, 10.1).isBoundByLongBraking()).isFalse();
    }

    private static Review reviewed(Condition condition, double seconds) {
        return new Review(
                new Verdict(Verdict.Outcome.CONDITIONAL, List.of(condition)),
                BrakeVerdict.of(BOARD),
                List.of(),
                new BrakingTime(seconds, BrakingTime.Reason.HARD_BRAKE),
                0.9);
    }

    private static double power(Build build, double current) {
        Powertrain train = Powertrain.of(build);
        return train.returnedPower(train.mostReturningCurrent(current, 11.0), 11.0);
    }

    private static Build grabbing(double brake) {
        Curve rising = Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 4.0});
        return Builds.withLateLimiter(
                flat(rising, 1.0)
                        .withSettings(
                                Settings.NONE
                                        .withMotorDriveCurrent(1.0)
                                        .withMotorBrakeCurrent(brake)
                                        .withPackDischargeCurrent(0.01)
                                        .withPackRegenCurrent(0.001)),
                0.1,
                0.01);
    }

    private static Settings gentle() {
        return Settings.NONE
                .withMotorDriveCurrent(1.0)
                .withMotorBrakeCurrent(0.5)
                .withPackDischargeCurrent(1.0)
                .withPackRegenCurrent(0.5);
    }

    /** Motors that would send and draw much more. */
    private static Settings sending(double returned, double drawn) {
        return Settings.NONE
                .withMotorDriveCurrent(20.0)
                .withMotorBrakeCurrent(20.0)
                .withPackDischargeCurrent(drawn / 2.0)
                .withPackRegenCurrent(returned / 2.0);
    }

    private static double about(Build build, LimitId setting) {
        return Evaluation.of(build, Set.of(setting)).severity();
    }

    private static Finding only(Build build, ConstraintId constraint) {
        List<Finding> told =
                findings(build).stream()
                        .filter(each -> each.constraint().equals(Optional.of(constraint)))
                        .filter(each -> each.condition().isPresent())
                        .toList();
        assertThat(told).hasSize(1);
        return told.get(0);
    }

    private static List<Finding> returned(Build build, ConstraintId constraint) {
        return told(build, Topic.PACK_RETURN_OVER).stream()
                .filter(each -> each.constraint().equals(Optional.of(constraint)))
                .toList();
    }

    private static List<Finding> windowed(Build build, boolean isReturned) {
        return told(build, isReturned ? Topic.PACK_RETURN_OVER : Topic.PACK_DRAW_OVER).stream()
                .filter(
                        each ->
                                each.constraint()
                                        .equals(Optional.of(ConstraintId.TEMPERATURE_WINDOW)))
                .toList();
    }

    private static List<Finding> surging(Build build) {
        return told(build, Topic.REGEN_OVERSHOOT).stream()
                .filter(each -> each.condition().isPresent())
                .toList();
    }

    private static List<Finding> told(Build build, Topic topic) {
        return findings(build).stream().filter(each -> each.topic() == topic).toList();
    }

    private static List<Finding> findings(Build build) {
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits)).findings();
    }

    private static Build inSteadyCells(Build build) {
        return between(build, 25.0, 25.0);
    }

    private static Build between(Build build, double coldest, double warmest) {
        return build.withUse(
                build.use().withClimate(new Climate(20.0, coldest, warmest, 0.0, 20.0)));
    }

    /** Ten cells of 0.1 Ω at 25 °C in series, from 3 V or 3.8 V to 4.2 V. */
    private static Build flat(Curve voltage, double coldFactor) {
        Cell bare = Builds.flatCell(4.0, 0.1, voltage.at(0.0) < 3.5 ? 2.5 : 3.8, 4.2);
        Cell cell =
                bare.withOpenCircuitVoltage(voltage)
                        .withResistanceByTemperature(
                                ArrheniusCurve.through(
                                        Curve.of(
                                                new double[] {5.0, 25.0},
                                                new double[] {coldFactor, 1.0})));
        Pack pack =
                Builds.barePack(cell, 10, 1, 0.0)
                        .withProtection(
                                new Protection(
                                        OptionalDouble.empty(),
                                        OptionalDouble.empty(),
                                        OptionalDouble.of(4.2),
                                        OptionalDouble.empty()));
        return between(
                Builds.withMargins(Builds.withPack(BOARD, pack), Builds.NO_MARGINS), 5.0, 40.0);
    }
}

package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.formula.Derivation;
import brakewright.formula.Step;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Climate;
import brakewright.spec.Curve;
import brakewright.spec.Effort;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.PulseRating;
import brakewright.spec.Relaxation;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.spec.Use;
import brakewright.spec.WhichPack;
import brakewright.spec.Wiring;
import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits whose figures can be worked out on paper. */
@Tag("law")
class RoundFiguresTest {

    private static final Offset<Double> ROUNDING = within(1e-12);

    private static final double ROOM_C = 25.0;

    private static final TaperLimit LOW = taper(LimitId.LOW_VOLTAGE_TAPER, 36.0, 2.0);
    private static final TaperLimit HIGH = taper(LimitId.HIGH_VOLTAGE_TAPER, 50.0, 2.0);

    /** A cell may take 6 A and give 30 A for long, 10 A and 40 A for as long as 5 s. */
    @ParameterizedTest(name = "pulling {0} s and braking {1} s")
    @CsvSource({
        "20, 10, 30, 6",
        "20, 5, 30, 10",
        "5, 10, 40, 6",
        "5, 5, 40, 10",
        "5.01, 5.01, 30, 6",
        "4.99, 4.99, 40, 10"
    })
    void aPulseRatingCountsUpToItsTime(double pulling, double braking, double given, double taken) {
        Build build = Builds.withCellMargin(pulsed(pulling, braking), 0.0);
        assertThat(limitOf(Limits.of(build).packDischarge(), ConstraintId.CELL_DISCHARGE_RATING))
                .isCloseTo(given, ROUNDING);
        assertThat(limitOf(Limits.of(build).packRegen(), ConstraintId.CELL_CHARGE_RATING))
                .isCloseTo(taken, ROUNDING);
    }

    /** 94 kg from 3 m/s hold 436 J, at 3.75 V and 6 A 22.5 W: 19 s, and no pulse of 5 s. */
    @Test
    void aStopOrSlopeThatOutlastsThePulseHasNoPulseRating() {
        for (Build build :
                List.of(from(pulsed(5.0, 5.0), 3.0, 0.0), from(pulsed(5.0, 5.0), 0.5, 10.0))) {
            assertThat(
                            limitOf(
                                    Limits.of(Builds.withCellMargin(build, 0.0)).packRegen(),
                                    ConstraintId.CELL_CHARGE_RATING))
                    .isCloseTo(6.0, ROUNDING);
            assertThat(
                            limitOf(
                                    OnePack.taking(Builds.withCellMargin(build, 0.0), 0),
                                    ConstraintId.CELL_CHARGE_RATING))
                    .isCloseTo(6.0, ROUNDING);
        }
    }

    /**
     * At 1.9 m/s 94 kg and 3 % that turn hold 175 J. At the 3.55 V of a tenth of the charge 6 A
     * take them in 8.2 s, which is no pulse; two packs of 6 A do in 4.1 s, and so may take 10 A
     * each.
     */
    @Test
    void besideAnotherAPackTakesItsPulseForHalfAsLong() {
        Curve rising = Curve.of(new double[] {0.0, 1.0}, new double[] {3.5, 4.0});
        Build one =
                Builds.withCells(
                        Builds.withCellMargin(from(pulsed(5.0, 3.0), 1.9, 0.0), 0.0),
                        cell -> Builds.withVoltage(cell, rising));
        assertThat(limitOf(Limits.of(one).packRegen(), ConstraintId.CELL_CHARGE_RATING))
                .isCloseTo(6.0, ROUNDING);
        Pack pack = Builds.pack(one);
        Build two = one.withBattery(Builds.joined(Joining.PARALLEL, List.of(pack, pack)));
        assertThat(limitOf(Limits.of(two).packRegen(), ConstraintId.CELL_CHARGE_RATING))
                .isCloseTo(20.0, ROUNDING);
    }

    /** A fifth less of 30 A and 6 A, and of pulses of 40 A and 10 A. */
    @ParameterizedTest(name = "for {0} s")
    @CsvSource({"20, 24, 4.8", "5, 32, 8"})
    void aClosedDeckTakesAShareOfEveryRatingOfACell(double seconds, double given, double taken) {
        Limits limits = Limits.of(Builds.withCellMargin(pulsed(seconds, seconds), 0.2));
        assertThat(limitOf(limits.packDischarge(), ConstraintId.CELL_DISCHARGE_RATING))
                .isCloseTo(given, ROUNDING);
        assertThat(limitOf(limits.packRegen(), ConstraintId.CELL_CHARGE_RATING))
                .isCloseTo(taken, ROUNDING);
    }

    /** 6 A less a fifth up to 60 % charge, and half of it from 80 % on; the packs share evenly. */
    @ParameterizedTest(name = "at {0}")
    @CsvSource({"0, 4.8", "0.6, 4.8", "0.7, 3.6", "0.8, 2.4", "1, 2.4"})
    void aChargeRatingMayHoldOnlyUpToACharge(double charge, double permitted) {
        Cell cell = Builds.rated(Builds.flatCell(3.75, 0.001, 3.0, 4.25), 30.0, 6.0);
        Curve share = Curve.of(new double[] {0.6, 0.8}, new double[] {1.0, 0.5});
        Build build =
                Builds.withCellMargin(
                        fedBy(
                                Builds.charged(
                                        cell, new ChargingWindow(-60.0, 100.0, 0.0, 0.0, share))),
                        0.2);
        PackLimit taking = Limits.of(build).packRegen();
        assertThat(taking.valueAt(charge, ROOM_C)).isCloseTo(permitted, ROUNDING);
        assertThat(taking.staticPart(ROOM_C).value()).isCloseTo(4.8, ROUNDING);
        assertThat(of(taking, ConstraintId.CELL_CHARGE_RATING_AT_CHARGE).headroomAt(charge))
                .isInfinite();
        assertThat(taking.chargeBound(3.6, ROOM_C)).isCloseTo(0.7, within(1e-9));
        assertThat(taking.chargeBound(2.4, ROOM_C)).isEqualTo(1.0);
        assertThat(taking.chargeBound(4.8, ROOM_C)).isCloseTo(0.6, within(1e-9));
        Pack pack = build.battery().packs().get(0);
        Build joined =
                Builds.withBattery(
                        build, new Battery(List.of(pack, pack), Joining.SERIES, Wiring.NONE, 0.0));
        assertThat(Limits.of(joined).packRegen().valueAt(charge, ROOM_C))
                .isCloseTo(permitted, ROUNDING);
        assertThat(OnePack.taking(joined, 1).valueAt(charge, ROOM_C))
                .isCloseTo(permitted, ROUNDING);
    }

    /**
     * Twelve cells whose maker permits 2 V: the taper ends at 2.5 V each, unless a trip is told.
     */
    @Test
    void aTaperEndsAtTheUsualCutOffWhereNoProtectionOpensBefore() {
        Cell low = lowCell(2.0, 2.5);
        assertThat(lowEnd(low, Protection.UNKNOWN)).isCloseTo(30.0, ROUNDING);
        Protection opening = Protection.UNKNOWN.withCellUndervoltageTrip(OptionalDouble.of(2.1));
        double margin = Builds.trailBoard().margins().overvoltage();
        assertThat(lowEnd(low, opening)).isCloseTo(12.0 * (2.1 + margin), ROUNDING);
        assertThat(lowEnd(lowCell(3.0, 2.5), Protection.UNKNOWN)).isCloseTo(36.0, ROUNDING);
    }

    private static double lowEnd(Cell cell, Protection protection) {
        Pack bare = Builds.barePack(cell, 12, 4, 0.0);
        Pack pack = bare.withProtection(protection);
        return Limits.of(Builds.withBattery(Builds.trailBoard(), Battery.of(pack)))
                .lowVoltageTaper()
                .binding()
                .limit();
    }

    private static Cell lowCell(double lowest, double taperFloor) {
        Cell cell = Builds.flatCell(3.3, 0.01, lowest, 3.65);
        return cell.withTaperFloor(taperFloor);
    }

    @Test
    void aLastingCurrentHasNoPulseRating() {
        Limits limits = Limits.of(Builds.withCellMargin(pulsed(5.0, 5.0), 0.0));
        assertThat(limitOf(limits.packDischarge().sustained(), ConstraintId.CELL_DISCHARGE_RATING))
                .isCloseTo(30.0, ROUNDING);
        assertThat(limitOf(limits.packRegen().sustained(), ConstraintId.CELL_CHARGE_RATING))
                .isCloseTo(6.0, ROUNDING);
    }

    /** 0.5 V of room at 0.02 Ω are 25 A; at the 0.04 Ω of an endless current half of that. */
    @Test
    void aLastingCurrentShiftsTheVoltageFurther() {
        Cell cell =
                Builds.relaxing(Builds.flatCell(3.75, 0.02, 3.0, 4.25), new Relaxation(1.0, 60.0));
        PackLimit taking = Limits.of(fedBy(cell)).packRegen();
        assertThat(limitOf(taking, ConstraintId.VOLTAGE_CEILING)).isCloseTo(25.0, ROUNDING);
        assertThat(limitOf(taking.sustained(), ConstraintId.VOLTAGE_CEILING))
                .isCloseTo(12.5, ROUNDING);
    }

    /** After 10 s and 60 s·ln 2 half of a rise by as much again is there: 0.5 V at 0.03 Ω. */
    @Test
    void aCurrentThatIsOverWithinAPulseMeetsNoneOfTheRise() {
        Cell cell =
                Builds.relaxing(Builds.flatCell(3.75, 0.02, 3.0, 4.25), new Relaxation(1.0, 60.0));
        Build still = from(fedBy(cell), 0.01, 0.0);
        double half = 10.0 + 60.0 * Math.log(2.0);
        PackLimit taking =
                Limits.of(still.withUse(still.use().withEffort(new Effort(20.0, half, 1.0, 0.2))))
                        .packRegen();
        assertThat(limitOf(taking, ConstraintId.VOLTAGE_CEILING))
                .isCloseTo(0.5 / 0.03, within(1e-9));
        assertThat(limitOf(taking.brief(), ConstraintId.VOLTAGE_CEILING)).isCloseTo(25.0, ROUNDING);
    }

    /** Insulation for 105 °C: of 75 K to air of 30 °C there are 48 left at 57 °C, √0.64 of it. */
    @ParameterizedTest(name = "in air of {0} °C")
    @CsvSource({"30, 100", "57, 80", "86.25, 50", "105, 0", "110, 0", "-3, 120"})
    void aWireBearsLessInAWarmDeck(double deckC, double permitted) {
        Build build = fedBy(Builds.flatCell(3.75, 0.02, 3.0, 4.25));
        Climate climate = new Climate(20.0, 25.0, 25.0, 0.0, deckC);
        Wiring wire = Wiring.NONE.withWireAmpacity(OptionalDouble.of(100.0));
        Limits limits =
                Limits.of(
                        Builds.withMargins(
                                Builds.withUse(
                                        Builds.withBattery(build, wired(build, wire)),
                                        build.use().withClimate(climate)),
                                Builds.NO_MARGINS));
        assertThat(limitOf(limits.packDischarge(), ConstraintId.MAIN_WIRE))
                .isCloseTo(permitted, within(1e-9));
        assertThat(limitOf(limits.packRegen(), ConstraintId.MAIN_WIRE))
                .isCloseTo(permitted, within(1e-9));
    }

    private static Battery wired(Build build, Wiring wiring) {
        Pack pack = build.battery().packs().get(0);
        return Battery.of(pack.withWiring(wiring));
    }

    @Test
    void aLimitThatKnowsNoLastingCurrentIsItsOwn() {
        PackLimit bare = PackLimit.taking(List.of(), new double[] {0.0, 1.0});
        assertThat(bare.sustained()).isSameAs(bare);
    }

    /** The voltage left at rest: 4.25 V less 3.75 V, and 3.75 V less 3 V. */
    @Test
    void theHeadroomIsWhatIsLeftAtRest() {
        Limits limits = Limits.of(fedBy(Builds.flatCell(3.75, 0.02, 3.0, 4.25)));
        assertThat(of(limits.packRegen(), ConstraintId.VOLTAGE_CEILING).headroomAt(0.5))
                .isEqualTo(0.5);
        assertThat(of(limits.packDischarge(), ConstraintId.VOLTAGE_FLOOR).headroomAt(0.5))
                .isEqualTo(0.75);
        assertThat(of(limits.packRegen(), ConstraintId.CELL_CHARGE_RATING).headroomAt(0.5))
                .isInfinite()
                .isPositive();
    }

    /** 4 V and 1 A over 0.25 Ω are 4.25 V, 3.75 V when drawn, at every charge; all exact. */
    @Test
    void aCurrentThatJustUsesUpTheVoltageIsPermittedThroughout() {
        Limits limits = Limits.of(fedBy(Builds.flatCell(4.0, 0.25, 3.75, 4.25)));
        assertThat(limits.packRegen().chargeBound(1.0, ROOM_C)).isEqualTo(1.0);
        assertThat(limits.packDischarge().chargeBound(1.0, ROOM_C)).isEqualTo(0.0);
        assertThat(limits.packRegen().chargeBound(1.001, ROOM_C)).isEqualTo(0.0);
        assertThat(limits.packDischarge().chargeBound(1.001, ROOM_C)).isEqualTo(1.0);
    }

    @Test
    void aLowTaperBeginsAboveItsEndAndAHighOneBelow() {
        assertThat(LOW.value()).contains(new Taper(38.0, 36.0));
        assertThat(HIGH.value()).contains(new Taper(48.0, 50.0));
    }

    @Test
    void noTaperIsRecommendedThatHasNoBandOrNoVoltage() {
        assertThat(taper(LimitId.LOW_VOLTAGE_TAPER, 36.0, 0.0).value()).isEmpty();
        assertThat(taper(LimitId.HIGH_VOLTAGE_TAPER, 50.0, 0.0).value()).isEmpty();
        assertThat(taper(LimitId.HIGH_VOLTAGE_TAPER, 50.0, 50.0).value()).isEmpty();
        assertThat(taper(LimitId.HIGH_VOLTAGE_TAPER, 50.0, 49.0).value())
                .contains(new Taper(1.0, 50.0));
        assertThat(taper(LimitId.LOW_VOLTAGE_TAPER, 0.0, 2.0).value()).isEmpty();
        assertThat(taper(LimitId.LOW_VOLTAGE_TAPER, -1.0, 2.0).value()).isEmpty();
    }

    @Test
    void aTaperEndsInTimeOnItsSafeSideOnly() {
        assertThat(LOW.endsInTime(new Taper(40.0, 36.0))).isTrue();
        assertThat(LOW.endsInTime(new Taper(40.0, 36.1))).isTrue();
        assertThat(LOW.endsInTime(new Taper(40.0, 35.9))).isFalse();
        assertThat(HIGH.endsInTime(new Taper(45.0, 50.0))).isTrue();
        assertThat(HIGH.endsInTime(new Taper(45.0, 49.9))).isTrue();
        assertThat(HIGH.endsInTime(new Taper(45.0, 50.1))).isFalse();
    }

    @Test
    void aTaperIsWideEnoughFromTheNarrowestBandOn() {
        assertThat(LOW.isWideEnough(new Taper(38.0, 36.0))).isTrue();
        assertThat(LOW.isWideEnough(new Taper(39.0, 36.0))).isTrue();
        assertThat(LOW.isWideEnough(new Taper(37.9, 36.0))).isFalse();
    }

    /** What a person reads: U1 and U2, R1 and R2, of pack 1 and pack 2. */
    @Test
    void theWorkingOfSeveralPacksCountsThemFromOne() {
        Pack pack = Builds.pack(Builds.trailBoard());
        Build build =
                Builds.withBattery(
                        Builds.trailBoard(), Builds.joined(Joining.SERIES, List.of(pack, pack)));
        Limits limits = Limits.of(build);
        List<Step> steps =
                of(limits.packRegen(), ConstraintId.CONTROLLER_VOLTAGE_RATING)
                        .at(0.5, ROOM_C)
                        .steps();
        assertThat(steps)
                .extracting(
                        step ->
                                step.result().symbol()
                                        + step.pack()
                                                .map(number -> " of " + number)
                                                .orElse(" of all"))
                .contains("U1 of 1", "U2 of 2", "U of all", "R1 of 1", "R2 of 2", "R of all");
        assertThat(steps)
                .extracting(step -> step.result().meaning())
                .contains(
                        "voltage of pack 1",
                        "voltage of pack 2",
                        "resistance of pack 1",
                        "resistance of pack 2");
        assertThat(limits.lowVoltageTaper().ends())
                .extracting(Constraint::pack)
                .containsOnly(WhichPack.of(1), WhichPack.of(2));
    }

    @Test
    void theWorkingOfOnePackNamesItOnlyBesideATrunk() {
        Build board = Builds.trailBoard();
        Battery wired = new Battery(board.battery().packs(), Joining.PARALLEL, Wiring.NONE, 0.01);
        assertThat(resistances(board)).containsExactly("R");
        assertThat(resistances(Builds.withBattery(board, wired))).containsExactly("R1", "R");
    }

    private static List<String> resistances(Build build) {
        return of(Limits.of(build).packRegen(), ConstraintId.CONTROLLER_VOLTAGE_RATING)
                .at(0.5, ROOM_C)
                .steps()
                .stream()
                .map(step -> step.result().symbol())
                .filter(symbol -> symbol.startsWith("R"))
                .toList();
    }

    /** The trail board's pack has a protection that trips on currents and on both voltages. */
    @Test
    void everyTripThatIsDescribedIsAConstraint() {
        Limits limits = Limits.of(Builds.trailBoard());
        assertThat(limits.packRegen().constraints())
                .extracting(PackConstraint::id)
                .contains(
                        ConstraintId.PROTECTION_OVERVOLTAGE_TRIP,
                        ConstraintId.PROTECTION_CHARGE_TRIP);
        assertThat(limits.packDischarge().constraints())
                .extracting(PackConstraint::id)
                .contains(
                        ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP,
                        ConstraintId.PROTECTION_DISCHARGE_TRIP);
    }

    /** 0.05 V less 0.03 V of margin at 0.004 Ω are 5 A, less than the cell's ratings. */
    @Test
    void aTripBelowTheCeilingBinds() {
        Build build = tripping(3.80, 3.70);
        Limits limits = Limits.of(build);
        assertThat(limits.packRegen().at(0.5, ROOM_C).binding().id())
                .isEqualTo(ConstraintId.PROTECTION_OVERVOLTAGE_TRIP);
        assertThat(limits.packRegen().valueAt(0.5, ROOM_C)).isCloseTo(5.0, within(1e-9));
        assertThat(limits.packDischarge().at(0.5, ROOM_C).binding().id())
                .isEqualTo(ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP);
        assertThat(limits.packDischarge().valueAt(0.5, ROOM_C)).isCloseTo(5.0, within(1e-9));
    }

    /** No voltage is asked, even where one permits less: the trip's 5 A against 6 A and 30 A. */
    @Test
    void theStaticPartLeavesOutWhatDependsOnTheCharge() {
        Limits limits = Limits.of(Builds.withCellMargin(tripping(3.80, 3.70), 0.0));
        assertThat(limits.packRegen().staticPart(ROOM_C).value()).isCloseTo(6.0, ROUNDING);
        assertThat(limits.packDischarge().staticPart(ROOM_C).value()).isCloseTo(30.0, ROUNDING);
    }

    @Test
    void aWarmCellsTemperaturePermitsAnything() {
        Limits limits = Limits.of(Builds.trailBoard());
        assertThat(limitOf(limits.packRegen(), ConstraintId.TEMPERATURE_WINDOW)).isInfinite();
        assertThat(limitOf(limits.packDischarge(), ConstraintId.TEMPERATURE_WINDOW)).isInfinite();
    }

    /** The trail board's motor has a viscous drag and its current is a peak; the cart's not. */
    @Test
    void theWorkingSaysWhichCurrentAndWhichDragAreMeant() {
        MotorSteps board = new MotorSteps(Builds.trailBoard());
        assertThat(board.torqueConstant().derivation().source()).endsWith("peak of the phase");
        assertThat(board.dragAtRest().result().meaning()).isEqualTo("drag torque, hardly turning");
        MotorSteps cart = new MotorSteps(Builds.dockCart());
        assertThat(cart.torqueConstant().derivation().source()).endsWith("direct current");
        assertThat(cart.dragAtRest().result().meaning()).isEqualTo("drag torque of one motor");
    }

    /** A cell at 3.75 V and 4 mΩ that may give 30 A and take 6 A, and trips on its voltage. */
    private static Build tripping(double highest, double lowest) {
        Pack bare =
                Builds.barePack(
                        Builds.rated(Builds.flatCell(3.75, 0.004, 3.0, 4.25), 30.0, 6.0),
                        1,
                        1,
                        0.0);
        Protection protection =
                Protection.UNKNOWN
                        .withCellOvervoltageTrip(OptionalDouble.of(highest))
                        .withCellUndervoltageTrip(OptionalDouble.of(lowest));
        Pack pack = bare.withProtection(protection);
        return Builds.withPack(Builds.trailBoard(), pack);
    }

    /**
     * Every constraint of two vehicles with margins, held against the same without. The voltage of
     * the pack itself is no rating that a margin could keep away from. The pack regen current is
     * set, since what is sent back decides how long braking lasts.
     */
    @Test
    void aConstraintKeepsAMarginWhereMarginsLowerItsLimit() {
        for (Build each : List.of(Builds.trailBoard(), Builds.parcelTrike())) {
            Build build = each.withSettings(each.settings().withPackRegenCurrent(5.0));
            Limits with = Limits.of(build);
            Limits without = Limits.of(Builds.withMargins(build, Builds.NO_MARGINS));
            compare(with.motorDrive().constraints(), without.motorDrive().constraints());
            compare(with.motorBrake().constraints(), without.motorBrake().constraints());
            compare(with.speedCap().constraints(), without.speedCap().constraints());
            compare(
                    with.packDischarge().at(0.5, ROOM_C).constraints(),
                    without.packDischarge().at(0.5, ROOM_C).constraints());
            compare(
                    with.packRegen().at(0.5, ROOM_C).constraints(),
                    without.packRegen().at(0.5, ROOM_C).constraints());
        }
    }

    private static void compare(List<Constraint> with, List<Constraint> without) {
        assertThat(with).hasSameSizeAs(without);
        for (int i = 0; i < with.size(); i++) {
            assertThat(with.get(i).id()).isEqualTo(without.get(i).id());
            if (with.get(i).id() == ConstraintId.PACK_BACK_EMF) {
                continue;
            }
            assertThat(with.get(i).limit() < without.get(i).limit())
                    .as("%s is lowered by margins", with.get(i).id())
                    .isEqualTo(with.get(i).id().keepsMargin());
        }
    }

    private static double limitOf(PackLimit limit, ConstraintId id) {
        return of(limit, id).limitAt(0.5, ROOM_C);
    }

    private static PackConstraint of(PackLimit limit, ConstraintId id) {
        return limit.constraints().stream()
                .filter(each -> each.id() == id)
                .findFirst()
                .orElseThrow();
    }

    private static TaperLimit taper(LimitId id, double end, double band) {
        return new TaperLimit(
                id,
                List.of(constraint(ConstraintId.VOLTAGE_CEILING, end)),
                constraint(ConstraintId.LOOP_GAIN, band));
    }

    private static Constraint constraint(ConstraintId id, double limit) {
        return new Constraint(
                id, limit, Input.CELL_VOLTAGE_MAX, new Derivation("x", "given here", List.of()));
    }

    /** One cell that feeds the trail board, joined without loss. */
    /** So slow and level that no stop outlasts a pulse. */
    private static Build fedBy(Cell cell) {
        Build board =
                Builds.withBattery(
                        Builds.trailBoard().withSettings(Settings.NONE),
                        Battery.of(Builds.barePack(cell, 1, 1, 0.0)));
        return from(board, 0.5, 0.0);
    }

    private static Build from(Build build, double speed, double slopeLength) {
        Use use = build.use();
        return Builds.withUse(build, use.withSpeedMax(speed).withSlope(0.1, slopeLength));
    }

    private static Build pulsed(double pulling, double braking) {
        Cell cell = Builds.rated(Builds.flatCell(3.75, 0.001, 3.0, 4.25), 30.0, 6.0);
        Cell pulsed =
                Builds.pulsed(
                        cell,
                        new PulseRating(OptionalDouble.of(40.0), OptionalDouble.of(10.0), 5.0));
        Build build = fedBy(pulsed);
        Use use = build.use();
        return Builds.withUse(build, use.withEffort(new Effort(pulling, braking, 1.0, 0.2)));
    }
}

package brakewright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.review.BrakeVerdict;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Rider;
import brakewright.spec.Settings;
import brakewright.worksheet.HeldBy;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ComparisonTest {

    private static final Profile BOARD = new Profile("board", Builds.trailBoard());
    private static final Profile TRIKE = new Profile("trike", Builds.parcelTrike());
    private static final Profile CART = new Profile("cart", Builds.dockCart());

    static List<Named<Build>> vehicles() {
        return List.of(
                Named.of("board", BOARD.build()),
                Named.of("trike", TRIKE.build()),
                Named.of("cart", CART.build()));
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void aVehicleIsNoDifferentFromItself(Build build) {
        Comparison twice = Comparison.of(new Profile("one", build), new Profile("other", build));
        assertThat(twice.rows())
                .allSatisfy(
                        row -> {
                            assertThat(row.difference(0).orElse(0.0)).isZero();
                            assertThat(row.difference(1).orElse(0.0)).isZero();
                            assertThat(row.readings().get(1)).isEqualTo(row.readings().get(0));
                            assertThat(row.isBest(0)).isFalse();
                            assertThat(row.isBest(1)).isFalse();
                        });
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void readsWhatTheWorksheetSays(Build build) {
        Worksheet sheet = Worksheet.of(build);
        Comparison alone = Comparison.of(new Profile("alone", build));
        assertThat(value(alone, Quantity.TOP_SPEED)).hasValue(sheet.drive().topSpeedFlat().speed());
        assertThat(reading(alone, Quantity.TOP_SPEED).boundBy())
                .contains(new HeldBy.TheDrive(sheet.drive().topSpeedFlat().holder()));
        assertThat(value(alone, Quantity.LAUNCH)).hasValue(sheet.drive().launch());
        assertThat(reading(alone, Quantity.LAUNCH).boundBy())
                .contains(sheet.drive().launchBoundBy());
        assertThat(value(alone, Quantity.CLIMB)).hasValue(sheet.drive().climb().steepest());
        assertThat(value(alone, Quantity.RANGE)).hasValue(sheet.range().cruise().distance());
        sheet.drive()
                .toCruise()
                .ifPresentOrElse(
                        reached ->
                                assertThat(value(alone, Quantity.TIME_TO_CRUISE))
                                        .hasValue(reached.time()),
                        () -> assertThat(value(alone, Quantity.TIME_TO_CRUISE)).isEmpty());
        assertThat(value(alone, Quantity.VERDICT))
                .hasValue(sheet.review().verdict().outcome().ordinal());
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void readsWhatTheVerdictAndTheSettingsSay(Build build) {
        Comparison alone = Comparison.of(new Profile("alone", build));
        Evaluation evaluation = Evaluation.of(build);
        Settings settings = build.settings();
        assertThat(value(alone, Quantity.SEVERITY)).hasValue(evaluation.severity());
        assertThat(reading(alone, Quantity.SEVERITY).boundBy())
                .contains(new HeldBy.AConstraint(evaluation.worst()));
        assertThat(value(alone, Quantity.SAFE_CHARGE)).hasValue(evaluation.safeCharge());
        assertThat(value(alone, Quantity.MOTOR_DRIVE_CURRENT))
                .isEqualTo(settings.motorDriveCurrent());
        assertThat(value(alone, Quantity.MOTOR_BRAKE_CURRENT))
                .isEqualTo(settings.motorBrakeCurrent());
        assertThat(value(alone, Quantity.PACK_DISCHARGE_CURRENT))
                .isEqualTo(settings.packDischargeCurrent());
        assertThat(value(alone, Quantity.PACK_REGEN_CURRENT))
                .isEqualTo(settings.packRegenCurrent());
        assertThat(value(alone, Quantity.SPEED_CAP)).isEqualTo(settings.speedCap());
        assertThat(value(alone, Quantity.HIGH_TAPER_BEGINS).isPresent())
                .isEqualTo(settings.highVoltageTaper().isPresent());
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void readsTheBrakeWhereItIsWeakestOnBothRoads(Build build) {
        Comparison alone = Comparison.of(new Profile("alone", build));
        BrakeVerdict dry = BrakeVerdict.of(build);
        BrakeVerdict wet = BrakeVerdict.of(build.onWetRoad());
        assertThat(reading(alone, Quantity.BRAKE_WEAKEST)).isEqualTo(Reading.of(dry));
        assertThat(reading(alone, Quantity.BRAKE_WEAKEST_WET)).isEqualTo(Reading.of(wet));
        assertThat(reading(alone, Quantity.BRAKE_WEAKEST).brake()).contains(dry.word());
    }

    @Test
    void theBrakeIsToldAsItIsJudged() {
        Build heavy = heavier(BOARD).build();
        Situation doubted =
                Situation.of(List.of(), (values, settings) -> heavy.withSettings(settings));
        JudgedProfile judged = new JudgedProfile(BOARD, doubted, BOARD.build());
        Comparison told = Comparison.ofJudged(List.of(judged), OptionalDouble.empty(), List.of());
        assertThat(reading(told, Quantity.BRAKE_WEAKEST))
                .isEqualTo(Reading.of(BrakeVerdict.of(heavy)));
        assertThat(reading(told, Quantity.BRAKE_WEAKEST_WET))
                .isEqualTo(Reading.of(BrakeVerdict.of(heavy.onWetRoad())));
        assertThat(value(told, Quantity.STOP_DRY))
                .isEqualTo(value(Comparison.of(BOARD), Quantity.STOP_DRY));
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void stopsAreThoseOfTheFullestPackInUse(Build build) {
        Comparison alone = Comparison.of(new Profile("alone", build));
        Stop wet =
                new Stop(
                        build,
                        Worksheet.of(build).operation().brake(),
                        Surroundings.of(build).withGrip(build.vehicle().gripWet()));
        List<Comparison.Row> stops =
                alone.rows().stream()
                        .filter(row -> row.measure().quantity() == Quantity.STOP_WET)
                        .toList();
        assertThat(stops).isNotEmpty();
        for (Comparison.Row row : stops) {
            StopOutcome outcome =
                    wet.from(row.measure().speed().orElseThrow(), build.use().chargeFrom());
            if (outcome instanceof StopOutcome.Stopped stopped) {
                assertThat(row.readings().get(0).value()).hasValue(stopped.distance());
            } else {
                assertThat(row.readings().get(0).value()).isEmpty();
            }
        }
    }

    @Test
    void theBestOfARowIsItsExtreme() {
        Comparison comparison = Comparison.of(BOARD, TRIKE, CART, heavier(BOARD));
        int told = 0;
        for (Comparison.Row row : comparison.rows()) {
            Quantity.Sense sense = row.measure().quantity().sense();
            for (int column = 0; column < 4; column++) {
                OptionalDouble own = row.readings().get(column).value();
                if (sense == Quantity.Sense.NONE) {
                    assertThat(row.isBest(column)).isFalse();
                } else if (row.isBest(column)) {
                    told++;
                    double sign = sense == Quantity.Sense.HIGHER ? 1.0 : -1.0;
                    double best = sign * own.orElseThrow();
                    assertThat(row.readings())
                            .allSatisfy(
                                    each ->
                                            assertThat(sign * each.value().orElse(sign * best))
                                                    // alike to nine digits
                                                    .isLessThanOrEqualTo(
                                                            best + 1e-9 * Math.abs(best)));
                }
            }
        }
        assertThat(told).isGreaterThan(5);
    }

    @Test
    void allThatAreAsGoodAsTheBestAreBest() {
        Comparison comparison = Comparison.of(BOARD, heavier(BOARD), BOARD);
        Comparison.Row launch = row(comparison, Quantity.LAUNCH);
        assertThat(launch.isBest(0)).isTrue();
        assertThat(launch.isBest(1)).isFalse();
        assertThat(launch.isBest(2)).isTrue();
    }

    @Test
    void aColumnWithoutAValueIsNeitherBestNorDifferent() {
        Comparison comparison = Comparison.of(CART, BOARD);
        Comparison.Row cap = row(comparison, Quantity.SPEED_CAP);
        assertThat(cap.readings().get(0).value()).isPresent();
        assertThat(cap.readings().get(1).value()).isEmpty();
        assertThat(cap.difference(1)).isEmpty();
        Comparison.Row winding = row(Comparison.of(BOARD, TRIKE), Quantity.HOTTEST_WINDING);
        assertThat(winding.readings().get(1).value()).isEmpty();
        assertThat(winding.isBest(0)).isTrue();
        assertThat(winding.isBest(1)).isFalse();
    }

    @Test
    void sortingPutsTheBestFirstAndTheUnknownLast() {
        Comparison comparison = Comparison.of(TRIKE, CART, heavier(BOARD), BOARD);
        for (Comparison.Row row : comparison.rows()) {
            Comparison sorted = comparison.sortedBy(row.measure());
            assertThat(sorted.profiles())
                    .containsExactlyInAnyOrderElementsOf(comparison.profiles());
            Quantity.Sense sense = row.measure().quantity().sense();
            if (sense == Quantity.Sense.NONE) {
                assertThat(sorted).isEqualTo(comparison);
                continue;
            }
            double sign = sense == Quantity.Sense.HIGHER ? -1.0 : 1.0;
            Comparison.Row same =
                    sorted.rows().stream()
                            .filter(each -> each.measure().equals(row.measure()))
                            .findFirst()
                            .orElseThrow();
            assertThat(same.readings())
                    .extracting(
                            each ->
                                    each.value().isPresent()
                                            ? sign * each.value().getAsDouble()
                                            : Double.POSITIVE_INFINITY)
                    .isSorted();
        }
    }

    @Test
    void sortingMovesWholeColumns() {
        Comparison comparison = Comparison.of(heavier(BOARD), BOARD);
        Comparison sorted = comparison.sortedBy(row(comparison, Quantity.LAUNCH).measure());
        assertThat(sorted.profiles()).extracting(Profile::name).containsExactly("board", "heavier");
        for (int i = 0; i < comparison.rows().size(); i++) {
            Comparison.Row before = comparison.rows().get(i);
            Comparison.Row after = sorted.rows().get(i);
            assertThat(after.measure()).isEqualTo(before.measure());
            assertThat(after.readings())
                    .containsExactly(before.readings().get(1), before.readings().get(0));
        }
        assertThat(comparison.sortedBy(Measure.at(Quantity.STOP_DRY, 1.0))).isEqualTo(comparison);
    }

    /** Where profiles go at other speeds, each is told at its own besides; none is best there. */
    @Test
    void eachIsToldAtItsOwnSpeedWhereThatDiffers() {
        assertThat(Comparison.of(BOARD).rows()).noneMatch(row -> row.measure().isAtOwnSpeed());
        Comparison mixed = Comparison.of(BOARD, TRIKE);
        Comparison.Row own =
                mixed.rows().stream()
                        .filter(row -> row.measure().equals(Measure.of(Quantity.RANGE)))
                        .findFirst()
                        .orElseThrow();
        double cruise = TRIKE.build().use().riding().cruiseSpeed();
        assertThat(own.readings().get(1).speed()).hasValue(cruise);
        assertThat(own.readings().get(1).value())
                .isEqualTo(
                        new ProfileResults(TRIKE.build())
                                .read(Measure.at(Quantity.RANGE, cruise))
                                .value());
        assertThat(own.isBest(0) || own.isBest(1)).isFalse();
    }

    @Test
    void anotherVehicleIsToldAtTheSpeedsOfTheFirst() {
        Comparison mixed = Comparison.of(BOARD, TRIKE);
        Comparison board = Comparison.of(BOARD);
        List<Comparison.Row> common =
                mixed.rows().stream().filter(row -> !row.measure().isAtOwnSpeed()).toList();
        assertThat(common)
                .extracting(Comparison.Row::measure)
                .containsExactlyElementsOf(
                        board.rows().stream().map(Comparison.Row::measure).toList());
        assertThat(common)
                .extracting(row -> row.readings().get(0))
                .containsExactlyElementsOf(
                        board.rows().stream().map(row -> row.readings().get(0)).toList());
        assertThat(reading(mixed, Quantity.TOP_SPEED, 1).value())
                .hasValue(Worksheet.of(TRIKE.build()).drive().topSpeedFlat().speed());
        Comparison.Row top = row(mixed, Quantity.TOP_SPEED);
        assertThat(top.difference(1).orElseThrow())
                // one rounding
                .isCloseTo(
                        top.readings().get(1).value().orElseThrow()
                                - top.readings().get(0).value().orElseThrow(),
                        within(1e-15));
    }

    private static Profile heavier(Profile profile) {
        Rider rider = profile.build().rider();
        return new Profile(
                "heavier", profile.build().withRider(rider.withMass(rider.mass() + 20.0)));
    }

    private static Comparison.Row row(Comparison comparison, Quantity quantity) {
        Optional<Comparison.Row> found =
                comparison.rows().stream()
                        .filter(row -> row.measure().quantity() == quantity)
                        .findFirst();
        return found.orElseThrow();
    }

    private static Reading reading(Comparison comparison, Quantity quantity) {
        return reading(comparison, quantity, 0);
    }

    private static Reading reading(Comparison comparison, Quantity quantity, int column) {
        return row(comparison, quantity).readings().get(column);
    }

    private static OptionalDouble value(Comparison comparison, Quantity quantity) {
        return reading(comparison, quantity).value();
    }
}

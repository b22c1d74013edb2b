package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.FuseBreaking;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.WhichPack;
import brakewright.spec.Wiring;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A board of 12 cells in series: 50.4 V when full, 2540.9 A into a short circuit. */
class FuseReviewTest {

    private static final Build BOARD = Builds.trailBoard();

    private static Pack withFuse(FuseBreaking breaking) {
        Pack pack = BOARD.battery().packs().get(0);
        return pack.withWiring(wiring(breaking));
    }

    private static Wiring wiring(FuseBreaking breaking) {
        return new Wiring(
                OptionalDouble.of(80.0),
                breaking,
                OptionalDouble.of(90.0),
                OptionalDouble.of(45),
                true);
    }

    private static FuseBreaking breaking(double voltage, double capacity) {
        return new FuseBreaking(OptionalDouble.of(voltage), OptionalDouble.of(capacity));
    }

    private static Review review(Build build) {
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits));
    }

    private static Review with(FuseBreaking breaking) {
        return review(Builds.withPack(BOARD, withFuse(breaking)));
    }

    private static List<Finding> told(Review review) {
        return review.findings().stream()
                .filter(each -> each.topic().key().startsWith("fuse-"))
                .toList();
    }

    @Test
    void aFuseThatBreaksBothIsNotMentioned() {
        assertThat(told(with(breaking(50.4, 2541.0)))).isEmpty();
    }

    @Test
    void aFuseBelowTheVoltageOfAFullPackIsADangerAndOutsideTheLimits() {
        Review review = with(breaking(50.3, 5000.0));
        assertThat(review.verdict().outcome()).isEqualTo(Verdict.Outcome.OUTSIDE_LIMITS);
        assertThat(told(review))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.topic()).isEqualTo(Topic.FUSE_VOLTAGE_OVER);
                            assertThat(finding.signal()).isEqualTo(Signal.DANGER);
                            assertThat(finding.constraint())
                                    .isEqualTo(Optional.of(ConstraintId.FUSE_VOLTAGE_RATING));
                            assertThat(finding.value().orElseThrow()).isEqualTo(12 * 4.2);
                            assertThat(finding.limit().orElseThrow()).isEqualTo(50.3);
                        });
    }

    @Test
    void aFuseBelowTheFaultCurrentIsAWarningBesideTheVerdict() {
        Review review = with(breaking(80.0, 2540.0));
        assertThat(review.verdict()).isEqualTo(review(BOARD).verdict());
        assertThat(told(review))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.topic()).isEqualTo(Topic.FUSE_BREAKING_OVER);
                            assertThat(finding.signal()).isEqualTo(Signal.WARNING);
                        });
    }

    @Test
    void whatIsNotKnownOfAFuseIsAReasonForCaution() {
        List<FuseBreaking> halfKnown =
                List.of(
                        FuseBreaking.UNKNOWN,
                        new FuseBreaking(OptionalDouble.of(80.0), OptionalDouble.empty()),
                        new FuseBreaking(OptionalDouble.empty(), OptionalDouble.of(5000.0)));
        for (FuseBreaking breaking : halfKnown) {
            assertThat(told(with(breaking)))
                    .singleElement()
                    .satisfies(
                            finding -> {
                                assertThat(finding.topic()).isEqualTo(Topic.FUSE_BREAKING_UNKNOWN);
                                assertThat(finding.signal()).isEqualTo(Signal.CAUTION);
                                assertThat(finding.limit().orElseThrow()).isBetween(2540.0, 2541.0);
                            });
        }
    }

    @Test
    void withoutAFuseNothingIsSaidOfIt() {
        Pack bare = withFuse(FuseBreaking.UNKNOWN);
        Pack none = bare.withWiring(Wiring.NONE);
        assertThat(told(review(Builds.withPack(BOARD, none)))).isEmpty();
    }

    @Test
    void theFuseOfAPackInSeriesMustBreakTheVoltageOfAll() {
        Pack pack = withFuse(breaking(60.0, 5000.0));
        Battery series =
                new Battery(
                        List.of(pack, pack), Joining.SERIES, wiring(breaking(60.0, 5000.0)), 0.0);
        assertThat(told(review(Builds.withBattery(BOARD, series))))
                .filteredOn(each -> each.topic() == Topic.FUSE_VOLTAGE_OVER)
                .extracting(Finding::pack)
                .containsExactlyInAnyOrder(WhichPack.of(1), WhichPack.of(2), WhichPack.WHOLE);
    }

    @Test
    void aCommonFuseMeetsWhatAllPacksDrive() {
        Pack pack = withFuse(breaking(60.0, 2600.0));
        Battery parallel =
                new Battery(
                        List.of(pack, pack), Joining.PARALLEL, wiring(breaking(60.0, 5000.0)), 0.0);
        assertThat(told(review(Builds.withBattery(BOARD, parallel))))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.pack().isWhole()).isTrue();
                            assertThat(finding.value().orElseThrow()).isBetween(5081.8, 5082.0);
                        });
    }
}

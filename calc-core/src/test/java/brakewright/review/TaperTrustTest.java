package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.spec.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A taper protects only where it is wide enough, and must not take the only brake away. */
class TaperTrustTest {

    /** The board's pack rests at 12 times 4.19 V; its cells may be charged to 4.2 V. */
    private static final double FULL = 12 * 4.19;

    @Test
    void aTaperTooNarrowToBeStableDoesNotSaveTheFullPack() {
        Taper narrow = new Taper(FULL + 0.05, FULL + 0.1);
        Taper wide = new Taper(FULL - 2.0, FULL + 0.1);
        assertThat(Limits.of(board(wide)).highVoltageTaper().isWideEnough(wide)).isTrue();
        assertThat(Limits.of(board(narrow)).highVoltageTaper().isWideEnough(narrow)).isFalse();
        assertThat(outcome(board(wide))).isEqualTo(Verdict.Outcome.WITHIN_LIMITS);
        assertThat(outcome(board(narrow))).isEqualTo(Verdict.Outcome.CONDITIONAL);
        assertThat(findings(board(narrow), Topic.TAPER_SURGES))
                .extracting(Finding::signal)
                .containsExactly(Signal.WARNING);
    }

    /**
     * Both end far above the trip; the narrow one surges, and so may let through all that is set.
     */
    @Test
    void aTaperTooNarrowToBeStableHidesNoTripInAHardPull() {
        Taper narrow = new Taper(37.05, 37.0);
        Taper wide = new Taper(49.0, 37.0);
        assertThat(Limits.of(pulling(wide)).lowVoltageTaper().isWideEnough(wide)).isTrue();
        assertThat(Limits.of(pulling(narrow)).lowVoltageTaper().isWideEnough(narrow)).isFalse();
        assertThat(findings(pulling(wide), Topic.PROTECTION_BEFORE_TAPER)).isEmpty();
        assertThat(findings(pulling(narrow), Topic.PROTECTION_BEFORE_TAPER))
                .extracting(Finding::signal)
                .containsExactly(Signal.DANGER);
    }

    @Test
    void aTaperThatEndsBelowTheFullPackTakesTheOnlyBrakeAway() {
        Build board = board(new Taper(FULL - 3.0, FULL - 0.5));
        List<Finding> found = findings(board, Topic.BRAKE_TAKEN_AWAY);
        assertThat(found).extracting(Finding::signal).containsExactly(Signal.DANGER);
        // 12 cells at (FULL - 0.5)/12 V, on the line from 4.08 V at 90 % to 4.19 V at 100 %
        assertThat(found.get(0).charge().orElseThrow()).isBetween(0.96, 0.963);
        assertThat(found.get(0).value().orElseThrow()).isZero();
        BrakeVerdict brake = BrakeVerdict.of(board);
        assertThat(brake.word()).isEqualTo(BrakeVerdict.Word.NONE);
        assertThat(brake.left()).isZero();
        assertThat(Evaluation.of(board).outcome()).isEqualTo(Verdict.Outcome.WITHIN_LIMITS);
    }

    @Test
    void aFrictionBrakeRemainsWhateverTheTaperDoes() {
        Build trike = Builds.parcelTrike();
        Build tapered = trike.withSettings(settings(new Taper(40.0, 50.0)));
        assertThat(findings(tapered, Topic.BRAKE_TAKEN_AWAY)).isEmpty();
    }

    @Test
    void tellsWhereBothBrakesTogetherAreMoreThanARiderBears() {
        // a rider of the trike bears 5 m/s²
        assertThat(findings(trike(4.0), Topic.BOTH_BRAKES_HARD)).isEmpty();
        List<Finding> found = findings(trike(4.9), Topic.BOTH_BRAKES_HARD);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).value().orElseThrow()).isGreaterThan(5.0);
        assertThat(found.get(0).limit().orElseThrow()).isCloseTo(5.0, within(1e-9));
        assertThat(findings(Builds.trailBoard(), Topic.BOTH_BRAKES_HARD)).isEmpty();
    }

    private static Build board(Taper high) {
        return Builds.trailBoard().withSettings(settings(high));
    }

    private static Build pulling(Taper low) {
        return Builds.trailBoard()
                .withSettings(
                        new Settings(
                                OptionalDouble.of(60.0),
                                OptionalDouble.of(20.0),
                                OptionalDouble.of(40.0),
                                OptionalDouble.of(1.9),
                                Optional.of(low),
                                Optional.empty(),
                                OptionalDouble.empty()));
    }

    private static Settings settings(Taper high) {
        return new Settings(
                OptionalDouble.of(20.0),
                OptionalDouble.of(20.0),
                OptionalDouble.of(10.0),
                OptionalDouble.of(1.9),
                Optional.empty(),
                Optional.of(high),
                OptionalDouble.empty());
    }

    /** With an electric brake worth 0.5 to 1 m/s². */
    private static Build trike(double friction) {
        Build trike = Builds.parcelTrike();
        Vehicle old = trike.vehicle();
        Vehicle braked = old.withFrictionBrake(OptionalDouble.of(friction));
        return trike.withVehicle(braked)
                .withSettings(
                        new Settings(
                                OptionalDouble.empty(),
                                OptionalDouble.of(50.0),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                OptionalDouble.empty()));
    }

    private static Verdict.Outcome outcome(Build build) {
        assertThat(review(build).verdict().outcome()).isEqualTo(Evaluation.of(build).outcome());
        return Evaluation.of(build).outcome();
    }

    private static List<Finding> findings(Build build, Topic topic) {
        return review(build).findings().stream().filter(each -> each.topic() == topic).toList();
    }

    private static Review review(Build build) {
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits));
    }
}

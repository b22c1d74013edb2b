package brakewright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.operation.SetBuild;
import brakewright.review.Evaluation;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What a check says of how high a setting may be is what solving for it says. */
@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class HeadroomProperties {

    private static final double STEP = 1e-3;

    @Property(tries = 50)
    void theWholeUseIsAnsweredAsSolvingDoes(@ForAll Build build) {
        agrees(
                Headroom.ofMotorBrake(Situation.of(build), build.settings(), build.settings())
                        .throughout(),
                Solver.highest(
                        value ->
                                Evaluation.of(
                                        braking(build, value),
                                        EnumSet.of(LimitId.MOTOR_BRAKE_CURRENT)),
                        0.0,
                        5000.0));
        agrees(
                Headroom.ofPackRegen(Situation.of(build), build.settings(), build.settings())
                        .throughout(),
                Solver.highest(
                        value ->
                                Evaluation.of(
                                        returning(build, value),
                                        EnumSet.of(LimitId.PACK_REGEN_CURRENT)),
                        0.0,
                        5000.0));
    }

    private static void agrees(Solution one, Solution other) {
        assertThat(one.getClass()).isEqualTo(other.getClass());
        if (one instanceof Solution.Found found) {
            double value = ((Solution.Found) other).value();
            assertThat(found.value()).isCloseTo(value, within(1e-6 * value + 1e-6));
        }
    }

    @Property(tries = 100)
    void theHighestValueJustDoesWhereThePresentSettingsAreSafe(@ForAll Build build) {
        Headroom brake =
                Headroom.ofMotorBrake(Situation.of(build), build.settings(), build.settings());
        brake.there()
                .ifPresent(
                        there ->
                                justDoes(
                                        there,
                                        EnumSet.of(LimitId.MOTOR_BRAKE_CURRENT),
                                        value ->
                                                braking(
                                                        build.withUse(
                                                                brake.circumstances()
                                                                        .orElseThrow()),
                                                        value)));
        Headroom regen =
                Headroom.ofPackRegen(Situation.of(build), build.settings(), build.settings());
        regen.there()
                .ifPresent(
                        there ->
                                justDoes(
                                        there,
                                        EnumSet.of(LimitId.PACK_REGEN_CURRENT),
                                        value ->
                                                returning(
                                                        build.withUse(
                                                                regen.circumstances()
                                                                        .orElseThrow()),
                                                        value)));
    }

    private static void justDoes(
            Solution solution, Set<LimitId> about, DoubleFunction<Build> with) {
        if (solution instanceof Solution.Found found) {
            assertThat(Evaluation.of(with.apply(found.value()), about).severity()).isNotPositive();
            assertThat(Evaluation.of(with.apply(found.value() + 2e-3), about).severity())
                    .as("%s", found)
                    .isPositive();
        } else if (solution instanceof Solution.None) {
            assertThat(Evaluation.of(with.apply(0.0), about).severity()).isPositive();
        } else {
            throw new AssertionError("a setting above its own limit is exceeded");
        }
    }

    /** Tapers and the cap are left out, whose checks depend on the fullest charge in use. */
    @Property(tries = 100)
    void thePresentSettingsAreSafeWhereTheyAreSaidToBe(@ForAll Build any) {
        Build build = plain(any);
        if (Evaluation.of(build).outcome() == Verdict.Outcome.OUTSIDE_LIMITS) {
            return;
        }
        Headroom brake =
                Headroom.ofMotorBrake(Situation.of(build), build.settings(), build.settings());
        brake.circumstances()
                .ifPresent(
                        use -> {
                            assertThat(Evaluation.of(build.withUse(use)).severity())
                                    .isNotPositive();
                            isPartOf(use, build.use());
                            double limit = Limits.of(build.withUse(use)).motorBrake().value();
                            double set = build.settings().motorBrakeCurrent().orElse(limit);
                            assertThat(((Solution.Found) brake.there().orElseThrow()).value())
                                    .as("a root is told to 1e-9")
                                    .isGreaterThanOrEqualTo(set - 1e-8 * (1.0 + set));
                        });
    }

    private static void isPartOf(Use part, Use whole) {
        assertThat(part.chargeFrom()).isLessThanOrEqualTo(whole.chargeFrom());
        assertThat(part.chargeTo()).isGreaterThanOrEqualTo(whole.chargeTo());
        assertThat(part.climate().coldestPackC())
                .isGreaterThanOrEqualTo(whole.climate().coldestPackC());
    }

    @Property(tries = 50)
    void lessUseNeverPermitsLess(@ForAll Build any) {
        Build build = plain(any);
        Headroom brake =
                Headroom.ofMotorBrake(Situation.of(build), build.settings(), build.settings());
        if (brake.throughout() instanceof Solution.Found throughout && brake.there().isPresent()) {
            assertThat(((Solution.Found) brake.there().get()).value())
                    .isGreaterThanOrEqualTo(throughout.value() * (1.0 - STEP));
        }
    }

    private static Build plain(Build build) {
        Settings settings = build.settings();
        return build.withSettings(
                settings.withLowVoltageTaper(Optional.empty())
                        .withHighVoltageTaper(Optional.empty())
                        .withSpeedCap(OptionalDouble.empty()));
    }

    private static Build braking(Build build, double value) {
        return build.withSettings(build.settings().withMotorBrakeCurrent(value));
    }

    private static Build returning(Build build, double value) {
        return build.withSettings(build.settings().withPackRegenCurrent(value));
    }
}

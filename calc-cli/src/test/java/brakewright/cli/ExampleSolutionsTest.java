package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.profile.Solution;
import brakewright.profile.Solver;
import brakewright.review.Evaluation;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Pack;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Values that just keep the example vehicles within limits, put back in. */
class ExampleSolutionsTest {

    private static final double STEP = 1e-3;

    @ParameterizedTest
    @EnumSource
    void theHighestBrakeCurrentJustDoes(Example example) {
        Build build = build(example);
        justDoes(
                current -> with(build, OptionalDouble.of(current), OptionalDouble.empty()),
                0.0,
                300.0);
    }

    @ParameterizedTest
    @EnumSource
    void theHighestRegenCurrentJustDoes(Example example) {
        Build build = build(example);
        justDoes(
                current -> with(build, OptionalDouble.empty(), OptionalDouble.of(current)),
                0.0,
                100.0);
    }

    @ParameterizedTest
    @EnumSource
    void theHighestChargeJustDoes(Example example) {
        Build build = build(example);
        justDoes(charge -> chargedTo(build, charge), build.use().chargeTo() + 0.01, 1.0);
    }

    @ParameterizedTest
    @EnumSource
    void theSmallestPackJustDoes(Example example) {
        Build build = build(example);
        Solution solution =
                Solver.smallest(count -> Evaluation.of(inParallel(build, count)), 1, 30);
        if (solution instanceof Solution.Found found) {
            int count = (int) found.value();
            assertThat(Evaluation.of(inParallel(build, count)).severity()).isNotPositive();
            assertThat(Evaluation.of(inParallel(build, count - 1)).severity()).isPositive();
        } else if (solution instanceof Solution.None none) {
            assertThat(none.value()).isEqualTo(30.0);
            assertThat(Evaluation.of(inParallel(build, 30)).severity()).isPositive();
        } else {
            assertThat(Evaluation.of(inParallel(build, 1)).severity()).isNotPositive();
        }
    }

    private static void justDoes(DoubleFunction<Build> with, double low, double high) {
        DoubleFunction<Evaluation> verdict = value -> Evaluation.of(with.apply(value));
        Solution solution = Solver.highest(verdict, low, high);
        if (solution instanceof Solution.Found found) {
            double value = found.value();
            assertThat(found.there()).isEqualTo(verdict.apply(value));
            assertThat(found.there().severity()).isNotPositive();
            assertThat(found.beyond().severity()).isPositive();
            double more = value == 0.0 ? STEP * high : Math.min(high, (1.0 + STEP) * value);
            assertThat(verdict.apply(more).severity()).isPositive();
            assertThat(verdict.apply((1.0 - STEP) * value).severity()).isNotPositive();
        } else if (solution instanceof Solution.None none) {
            assertThat(none.value()).isEqualTo(low);
            assertThat(verdict.apply(low).severity()).isPositive();
            assertThat(none.there()).isEqualTo(verdict.apply(low));
            assertThat(verdict.apply(high).severity()).isPositive();
        } else {
            assertThat(verdict.apply(low).severity()).isNotPositive();
            assertThat(verdict.apply(high).severity()).isNotPositive();
        }
    }

    private static Build build(Example example) {
        return BuildArgument.read(Path.of(example.path())).build();
    }

    private static Build with(Build build, OptionalDouble brake, OptionalDouble regen) {
        return build.withSettings(
                build.settings()
                        .overlaidBy(
                                new Settings(
                                        OptionalDouble.empty(),
                                        brake,
                                        OptionalDouble.empty(),
                                        regen,
                                        Optional.empty(),
                                        Optional.empty(),
                                        OptionalDouble.empty())));
    }

    private static Build chargedTo(Build build, double charge) {
        Use use = build.use();
        return build.withUse(use.withChargeFrom(charge));
    }

    private static Build inParallel(Build build, int count) {
        Pack pack = build.battery().packs().get(0);
        return build.withBattery(Battery.of(pack.withParallel(count)));
    }
}

package brakewright.profile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.Limits;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import org.junit.jupiter.api.Test;

/** An over-voltage trip that opens before the regen limiter acts bounds what is recommended. */
class HardGrabTest {

    private static final double TRIP_DELAY = 0.001;
    private static final double REGEN_RESPONSE = 0.02;

    @Test
    void theBrakeCurrentThatIsRecommendedIsBorneByTheFullestPack() {
        Build late = Builds.withLateLimiter(Builds.trailBoard(), REGEN_RESPONSE, TRIP_DELAY);
        Recommendation bare = Recommendation.of(Situation.of(Builds.trailBoard()), Entry.METRIC);
        Build asBefore = late.withSettings(bare.settings());
        assertThat(Evaluation.ofHardGrab(asBefore).severity()).isPositive();
        Recommendation set = Recommendation.of(Situation.of(late), Entry.METRIC);
        assertThat(set.isWithinLimits()).isTrue();
        double current = set.settings().motorBrakeCurrent().orElseThrow();
        assertThat(current).isPositive().isLessThan(Limits.of(late).motorBrake().value());
        Build more = set.build().withSettings(set.settings().withMotorBrakeCurrent(current + 0.1));
        assertThat(Evaluation.ofHardGrab(more).severity()).isPositive();
    }
}

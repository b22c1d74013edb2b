package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Wiring;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PlugReviewTest {

    private static final Build BOARD = Builds.trailBoard();

    private static Pack plugged(int series, OptionalDouble rating, boolean isAntiSpark) {
        Pack pack = BOARD.battery().packs().get(0);
        return pack.withSeries(series)
                .withWiring(Wiring.NONE.withPlugRating(rating).withPlugIsAntiSpark(isAntiSpark));
    }

    private static List<Finding> told(Battery battery) {
        Build build = Builds.withBattery(BOARD, battery);
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits)).findings().stream()
                .filter(each -> each.topic() == Topic.PLUG_SPARKS)
                .toList();
    }

    @Test
    void aBarePlugSparksFromSixCellsInSeriesOn() {
        OptionalDouble rating = OptionalDouble.of(45.0);
        assertThat(told(Battery.of(plugged(6, rating, false))))
                .singleElement()
                .satisfies(
                        finding -> {
                            assertThat(finding.signal()).isEqualTo(Signal.NOTICE);
                            assertThat(finding.value().orElseThrow()).isEqualTo(6 * 4.2);
                            assertThat(finding.condition()).isEmpty();
                        });
        assertThat(told(Battery.of(plugged(5, rating, false)))).isEmpty();
        assertThat(told(Battery.of(plugged(12, rating, true)))).isEmpty();
        assertThat(told(Battery.of(plugged(12, OptionalDouble.empty(), false)))).isEmpty();
    }

    @Test
    void onePlugWithAResistorOnTheWayIsEnough() {
        OptionalDouble rating = OptionalDouble.of(45.0);
        Pack bare = plugged(12, rating, false);
        Wiring trunk = plugged(12, rating, true).wiring();
        assertThat(told(new Battery(List.of(bare, bare), Joining.PARALLEL, trunk, 0.0))).isEmpty();
        assertThat(told(new Battery(List.of(bare, bare), Joining.PARALLEL, bare.wiring(), 0.0)))
                .hasSize(1);
    }
}

package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Joining;
import brakewright.spec.Protection;
import brakewright.spec.RoundFigures;
import brakewright.spec.WhichPack;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two alike packs take 2 A each of 4 A, which raise full cells of 4 V by 0.1 V; hand-worked. */
class BypassReviewTest {

    @Test
    void nothingIsToldOfProtectionsThatAreInTheWay() {
        assertThat(told(Protection.UNKNOWN, Protection.UNKNOWN, 4.0)).isEmpty();
    }

    @Test
    void aPackThatIsBypassedIsToldHowFarBrakingMayChargeItAndDrivingEmptyIt() {
        List<Finding> told = told(Protection.UNKNOWN, Protection.BYPASSED, 4.0);
        assertThat(told)
                .hasSize(2)
                .allSatisfy(
                        each -> {
                            assertThat(each.topic()).isEqualTo(Topic.PROTECTION_BYPASSED);
                            assertThat(each.pack()).isEqualTo(WhichPack.of(2));
                        });
        Finding charged = told.get(0);
        assertThat(charged.signal()).isEqualTo(Signal.DANGER);
        assertThat(charged.subject()).contains(LimitId.PACK_REGEN_CURRENT);
        assertThat(charged.value().orElseThrow()).isCloseTo(4.1, within(1e-9));
        assertThat(charged.limit()).hasValue(5.0);
        assertThat(charged.charge()).hasValue(1.0);
        assertThat(charged.temperatureC()).hasValue(25.0);
        Finding emptied = told.get(1);
        assertThat(emptied.signal()).isEqualTo(Signal.WARNING);
        assertThat(emptied.subject()).contains(LimitId.PACK_DISCHARGE_CURRENT);
        assertThat(emptied.limit()).hasValue(2.0);
    }

    @Test
    void whatReturnsNothingChargesNothing() {
        assertThat(told(Protection.BYPASSED, Protection.UNKNOWN, 0.0))
                .singleElement()
                .satisfies(each -> assertThat(each.signal()).isEqualTo(Signal.WARNING));
    }

    private static List<Finding> told(Protection one, Protection other, double returned) {
        Build build =
                RoundFigures.vehicle()
                        .withBattery(
                                Builds.joined(
                                        Joining.PARALLEL,
                                        List.of(
                                                RoundFigures.pack(RoundFigures.CELL, one),
                                                RoundFigures.pack(RoundFigures.CELL, other))))
                        .withSettings(RoundFigures.set(30.0, 30.0, 10.0, returned));
        Limits limits = Limits.of(build);
        return new BypassReview(build, limits, Operation.of(build, limits)).findings();
    }
}

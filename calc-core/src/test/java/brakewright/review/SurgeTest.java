package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Protection;
import brakewright.spec.RoundFigures;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * At a charge of 0.8, the highest in use, 20 A of brake return 4 A at once, of which the limiter
 * leaves 2 A after half a second. 3 A pass a charge trip and, at 3.95 V, an over-voltage trip.
 */
class SurgeTest {

    private static final OptionalDouble QUICK = OptionalDouble.of(0.1);
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    /** The charge trip bounds the motor brake current; the other is passed from a charge on. */
    @Test
    void everyFindingOfAQuickTripTellsTheSurgeThatPassesIt() {
        List<Finding> findings = findings(QUICK, QUICK);
        assertThat(surges(findings, Topic.REGEN_OVERSHOOT))
                .isNotEmpty()
                .containsOnly(ConstraintId.PROTECTION_OVERVOLTAGE_TRIP);
        assertThat(
                        findings.stream()
                                .filter(each -> each.topic() == Topic.BRAKE_CURRENT_OVER)
                                .map(each -> each.constraint().orElseThrow()))
                .containsExactly(ConstraintId.REGEN_OVERSHOOT);
        assertThat(surges(findings, Topic.BRAKE_CURRENT_OVER))
                .containsExactly(ConstraintId.PROTECTION_CHARGE_TRIP);
    }

    @Test
    void aTripOfUnknownDelayIsACautionWithItsOwnSurge() {
        List<Finding> findings = findings(UNKNOWN, UNKNOWN);
        assertThat(findings)
                .filteredOn(each -> each.topic() == Topic.REGEN_OVERSHOOT)
                .extracting(each -> each.constraint().orElseThrow())
                .containsExactlyElementsOf(surges(findings, Topic.REGEN_OVERSHOOT))
                .containsExactlyInAnyOrder(
                        ConstraintId.PROTECTION_CHARGE_TRIP,
                        ConstraintId.PROTECTION_OVERVOLTAGE_TRIP);
    }

    private static List<ConstraintId> surges(List<Finding> findings, Topic topic) {
        return findings.stream()
                .filter(each -> each.topic() == topic)
                .flatMap(each -> each.detail().stream())
                .map(each -> ((FindingDetail.Surge) each).overshoot().trip())
                .toList();
    }

    private static List<Finding> findings(OptionalDouble chargeTrip, OptionalDouble overvoltage) {
        Protection protection =
                Protection.UNKNOWN
                        .withChargeTrip(OptionalDouble.of(3.0))
                        .withCellOvervoltageTrip(OptionalDouble.of(3.95))
                        .withChargeTripDelay(chargeTrip)
                        .withOvervoltageTripDelay(overvoltage);
        Build build =
                RoundFigures.limitedAfter(RoundFigures.fed(RoundFigures.CELL, protection), 0.5);
        Build used =
                build.withUse(build.use().withChargeTo(0.7).withChargeFrom(0.8))
                        .withSettings(RoundFigures.set(20.0, 20.0, 20.0, 2.0));
        Limits limits = Limits.of(used);
        return Review.of(used, limits, Operation.of(used, limits)).findings();
    }
}

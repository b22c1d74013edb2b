package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.spec.Build;
import brakewright.spec.Protection;
import brakewright.spec.RoundFigures;
import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * 20 A at 10 m/s return 160 W: 4 A at a charge of 0.8, the lowest in use, against 38 V and 2 V
 * more. The limiter is set to 2 A and half a second late; hand-worked.
 */
@Tag("law")
class RegenOvershootTest {

    private static final Offset<Double> ROUNDING = within(1e-9);
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    /** 3 A are 118.5 W: 20 A return them at a back-EMF of 5.925 V and 2 V more. */
    @Test
    void aGrabSendsInWhatTheMotorsReturnUntilTheLimiterActs() {
        assertThat(surges(0.5, current(3.0, UNKNOWN)))
                .singleElement()
                .satisfies(
                        surge -> {
                            assertThat(surge.trip()).isEqualTo(ConstraintId.PROTECTION_CHARGE_TRIP);
                            assertThat(surge.pack().isWhole()).isTrue();
                            assertThat(surge.current()).isCloseTo(4.0, ROUNDING);
                            assertThat(surge.let()).isCloseTo(2.0, ROUNDING);
                            assertThat(surge.surplus()).isCloseTo(2.0, ROUNDING);
                            assertThat(surge.permitted()).isCloseTo(3.0, ROUNDING);
                            assertThat(surge.speed()).isCloseTo(7.925, ROUNDING);
                            assertThat(surge.charge()).isCloseTo(0.8, ROUNDING);
                            assertThat(surge.cellsC()).isEqualTo(25.0);
                            assertThat(surge.response()).isEqualTo(0.5);
                            assertThat(surge.typicalDelay()).isEqualTo(9e-3);
                        });
    }

    /** With 0.8 as the highest charge in use 4 A raise cells to 4 V; 3 A reach 3.95 V. */
    @Test
    void anOvervoltageTripSeesTheSurgeToo() {
        Protection voltage = Protection.UNKNOWN.withCellOvervoltageTrip(OptionalDouble.of(3.95));
        Build build = grabbing(0.5, voltage);
        assertThat(surges(build.withUse(build.use().withChargeTo(0.7).withChargeFrom(0.8))))
                .singleElement()
                .satisfies(
                        surge -> {
                            assertThat(surge.trip())
                                    .isEqualTo(ConstraintId.PROTECTION_OVERVOLTAGE_TRIP);
                            assertThat(surge.current()).isCloseTo(4.0, ROUNDING);
                            assertThat(surge.permitted()).isCloseTo(3.0, ROUNDING);
                            assertThat(surge.charge()).isCloseTo(0.8, ROUNDING);
                            assertThat(surge.typicalDelay()).isEqualTo(1.2);
                        });
    }

    @Test
    void theTripOpensWhereTheSurgeOutlastsItsDelay() {
        assertThat(surges(0.5, current(3.0, OptionalDouble.of(0.4))).get(0).opens()).isTrue();
        assertThat(surges(0.5, current(3.0, OptionalDouble.of(0.5))).get(0).opens()).isFalse();
        assertThat(surges(0.5, current(3.0, UNKNOWN)).get(0).opens()).isFalse();
    }

    @Test
    void aLimiterThatActsAtOnceLetsNoSurgePass() {
        assertThat(surges(0.0, current(3.0, UNKNOWN))).isEmpty();
    }

    @Test
    void whatTheTripPermitsIsNoSurge() {
        assertThat(surges(0.5, current(4.0, UNKNOWN))).isEmpty();
    }

    /** What the limiter lets pass is another matter. */
    @Test
    void aTripBelowTheLimiterIsNotPassedByTheSurgeAlone() {
        assertThat(surges(0.5, current(1.9, UNKNOWN))).isEmpty();
    }

    private static Protection current(double trip, OptionalDouble waits) {
        return new Protection(
                UNKNOWN,
                OptionalDouble.of(trip),
                UNKNOWN,
                UNKNOWN,
                Protection.Path.BOTH,
                waits,
                UNKNOWN);
    }

    private static List<RegenOvershoot> surges(double response, Protection protection) {
        return surges(grabbing(response, protection));
    }

    private static Build grabbing(double response, Protection protection) {
        Build build = RoundFigures.fed(RoundFigures.CELL, protection);
        return RoundFigures.limitedAfter(build, response)
                .withUse(build.use().withChargeTo(0.8).withChargeFrom(1.0))
                .withSettings(RoundFigures.set(20.0, 20.0, 20.0, 2.0));
    }

    private static List<RegenOvershoot> surges(Build build) {
        Limits limits = Limits.of(build);
        return RegenOvershoot.of(build, limits, Operation.of(build, limits));
    }
}

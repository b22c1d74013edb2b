package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Climate;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.spec.Use;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * A high-voltage taper that ends above the cells' ceiling but below the full pack: just below full
 * the brake sends too much, at full it sends nothing.
 */
class FadedBrakeTest {

    @Test
    void aBrakeThatSendsTooMuchJustBelowFullIsNotWithinLimits() {
        Evaluation below = Evaluation.of(chargedTo(0.985));
        Evaluation full = Evaluation.of(chargedTo(1.0));
        assertThat(below.outcome()).isEqualTo(Verdict.Outcome.CONDITIONAL);
        assertThat(full.outcome()).isEqualTo(Verdict.Outcome.CONDITIONAL);
        // twice the accuracy to which charge states are sought
        assertThat(full.safeCharge()).isCloseTo(below.safeCharge(), within(2e-9));
    }

    private static Build chargedTo(double charge) {
        Build any = Builds.trailBoard();
        Pack pack = Builds.pack(any);
        Build board =
                Builds.withPack(
                        any,
                        pack.withProtection(
                                Protection.UNKNOWN.withCellOvervoltageTrip(
                                        OptionalDouble.of(4.18))));
        Use use = board.use();
        return board.withUse(
                        use.withChargeFrom(charge)
                                .withClimate(new Climate(20.0, 25.0, 25.0, 300.0, 30.0)))
                .withSettings(
                        new Settings(
                                OptionalDouble.of(20.0),
                                OptionalDouble.of(20.0),
                                OptionalDouble.of(10.0),
                                OptionalDouble.of(1.0),
                                Optional.empty(),
                                Optional.of(new Taper(49.9, 50.2)),
                                OptionalDouble.empty()));
    }
}

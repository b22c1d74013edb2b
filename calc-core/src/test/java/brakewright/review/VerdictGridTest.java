package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.Build;
import brakewright.spec.Protection;
import brakewright.spec.RoundFigures;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * At 10 m/s 30 A return 210 W, more than the 4 A that are set; at 2 m/s 10 A return most, 10 W. A
 * charge trip permits 2 A; hand-worked.
 */
class VerdictGridTest {

    private static final Offset<Double> ROUNDING = within(1e-9);
    private static final Build BUILD = build();

    private final VerdictGrid grid = VerdictGrid.of(BUILD);

    private static Build build() {
        Build fed =
                RoundFigures.fed(
                                RoundFigures.CELL,
                                Protection.UNKNOWN.withChargeTrip(OptionalDouble.of(2.0)))
                        .withSettings(RoundFigures.set(30.0, 30.0, 10.0, 4.0));
        return fed.withUse(fed.use().withChargeTo(0.2));
    }

    @Test
    void itReachesOverTheChargeInUseAndUpToTheHighestSpeed() {
        assertThat(grid.charges()).hasSize(21).startsWith(0.2).endsWith(1.0);
        assertThat(grid.charges()[5]).isCloseTo(0.4, ROUNDING);
        assertThat(grid.speeds()).hasSize(41).startsWith(0.0).endsWith(10.0);
        assertThat(grid.speeds()[8]).isCloseTo(2.0, ROUNDING);
    }

    /** Twice too much is a severity of a half, nothing at all one of −1. */
    @Test
    void everyChargeAndSpeedIsHeldAgainstWhatThePackMayTake() {
        for (double[] row : grid.severities()) {
            assertThat(row[0]).isCloseTo(-1.0, ROUNDING);
            assertThat(row[40]).isCloseTo(0.5, ROUNDING);
        }
        double empty = 2.0 * 10.0 / (32.0 + Math.sqrt(32.0 * 32.0 + 2.0 * 10.0));
        double full = 2.0 * 10.0 / (40.0 + Math.sqrt(40.0 * 40.0 + 2.0 * 10.0));
        assertThat(grid.severities()[0][8]).isCloseTo(empty / 2.0 - 1.0, ROUNDING);
        assertThat(grid.severities()[20][8]).isCloseTo(full / 2.0 - 1.0, ROUNDING);
    }

    @Test
    void theVerdictIsThatOnTheWhole() {
        assertThat(grid.evaluation().outcome()).isEqualTo(Evaluation.of(BUILD).outcome());
    }
}

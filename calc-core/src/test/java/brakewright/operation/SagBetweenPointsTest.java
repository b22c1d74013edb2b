package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.Limits;
import brakewright.review.Finding;
import brakewright.review.Review;
import brakewright.review.Topic;
import brakewright.spec.*;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SagBetweenPointsTest {

    /** Between 8.7 % and 9.3 % the cells lie below the trip; at 10 % not yet, at 5 % no draw. */
    @Test
    void findsATripBetweenTwoPointsOfTheSearch() {
        Build board = Builds.trailBoard();
        Pack old = Builds.pack(board);
        Pack pack =
                old.withSeries(12)
                        .withParallel(4)
                        .at(25.0)
                        .withProtection(
                                Protection.UNKNOWN.withCellUndervoltageTrip(
                                        OptionalDouble.of(3.25)));
        Use use = board.use();
        Build build =
                board.withBattery(Battery.of(pack))
                        .withUse(
                                use.withChargeTo(0.0)
                                        .withChargeFrom(1.0)
                                        .withClimate(new Climate(20.0, 25.0, 40.0, 300.0, 30.0)))
                        .withSettings(
                                new Settings(
                                        OptionalDouble.of(40.0),
                                        OptionalDouble.of(20.0),
                                        OptionalDouble.of(5.0),
                                        OptionalDouble.of(5.0),
                                        Optional.of(new Taper(44.4, 38.4)),
                                        Optional.empty(),
                                        OptionalDouble.empty()));
        Limits limits = Limits.of(build);
        assertThat(Review.of(build, limits, Operation.of(build, limits)).findings())
                .extracting(Finding::topic)
                .contains(Topic.PROTECTION_BEFORE_TAPER);
    }
}

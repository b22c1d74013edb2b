package brakewright.braking;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import org.junit.jupiter.api.Test;

/** What happens between two speeds that are neighbours among the numbers of a computer. */
class NarrowPanelTest {

    @Test
    void isNextToNothing() {
        Build build = Builds.trailBoard();
        Braking braking =
                new Braking(
                        build,
                        Operation.of(build, Limits.of(build)).brake(),
                        Surroundings.of(build));
        double charge = build.use().chargeFrom();
        for (double from : new double[] {1e-3, 1.0, 8.0}) {
            double[] tally = new double[Counted.COUNT];
            Counted.CHARGE.put(tally, charge);
            new SpeedIntegral(braking, new Tally.Peak(charge))
                    .add(from, Math.nextDown(from), tally);
            assertThat(Counted.CHARGE.in(tally)).isEqualTo(charge);
            assertThat(Counted.TIME.in(tally)).isBetween(0.0, 1e-12);
        }
    }
}

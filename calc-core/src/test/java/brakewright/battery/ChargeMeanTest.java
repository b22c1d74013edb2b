package brakewright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.Builds;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** From full down to 0.2, in quarters of 0.2. A board's cells have a point at 0.5. */
@Tag("law")
class ChargeMeanTest {

    private static final Offset<Double> ROUNDING = within(1e-12);

    private static final BatteryModel MODEL = new BatteryModel(Builds.trailBoard().battery());

    @Test
    void theQuartersBeginWithTheFullest() {
        double[] ends = {1.0, 0.8, 0.6, 0.4, 0.2};
        ChargeMean mean = mean(charge -> charge);
        assertThat(mean.parts()).hasSize(4);
        for (int part = 0; part < 4; part++) {
            assertThat(mean.parts().get(part).from()).isCloseTo(ends[part], ROUNDING);
            assertThat(mean.parts().get(part).to()).isCloseTo(ends[part + 1], ROUNDING);
        }
    }

    /** The mean of s² between a and b is {@code (a² + a·b + b²)/3}. */
    @Test
    void theMeanOfASquareIsKnown() {
        ChargeMean mean = mean(charge -> charge * charge);
        assertThat(mean.parts().get(0).mean()).isCloseTo((1.0 + 0.8 + 0.64) / 3.0, ROUNDING);
        assertThat(mean.parts().get(3).mean()).isCloseTo((0.16 + 0.08 + 0.04) / 3.0, ROUNDING);
        assertThat(mean.whole()).isCloseTo((1.0 + 0.2 + 0.04) / 3.0, ROUNDING);
    }

    @Test
    void whatBendsAtAPointOfTheCellsIsTakenOnBothSidesOfIt() {
        ChargeMean mean = mean(charge -> Math.abs(charge - 0.5));
        assertThat(mean.parts().get(2).mean()).isCloseTo(0.05, ROUNDING);
        assertThat(mean.whole()).isCloseTo((0.4 + 0.2 + 0.05 + 0.2) / 4.0, ROUNDING);
    }

    private static ChargeMean mean(DoubleUnaryOperator quantity) {
        return ChargeMean.of(MODEL, 1.0, 0.2, quantity);
    }
}

package brakewright.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class AxisTest {

    @Test
    void ticksAreRound() {
        assertThat(Axis.exact("speed", "km/h", 0.0, 32.0).ticks())
                .containsExactly(0.0, 10.0, 20.0, 30.0);
        assertThat(Axis.holding("deceleration", "m/s²", 0.0, 2.7).ticks())
                .containsExactly(0.0, 1.0, 2.0, 3.0);
        assertThat(Axis.holding("voltage", "V", 31.2, 41.9).ticks())
                .containsExactly(30.0, 35.0, 40.0, 45.0);
    }

    @Test
    void numbersHaveAsManyDigitsAsTheStep() {
        Axis axis = Axis.holding("deceleration", "m/s²", 0.0, 0.7);
        assertThat(axis.tick(0.4)).isEqualTo("0.4");
        assertThat(axis.fine(0.4)).isEqualTo("0.40");
        assertThat(axis.tick(-0.4)).isEqualTo("−0.4");
        assertThat(axis.tick(-0.001)).isEqualTo("0.0");
        assertThat(axis.fine(Double.NaN)).isEmpty();
        assertThat(axis.title()).isEqualTo("deceleration [m/s²]");
    }

    @Test
    void numbersThatAreAllAlikeStillHaveAnAxis() {
        assertThat(Axis.holding("current", "A", 0.0, 0.0).ticks().length).isGreaterThan(1);
        assertThat(Axis.holding("current", "A", Double.NaN).ticks().length).isGreaterThan(1);
        assertThat(Axis.exact("charge", "%", 50.0, 50.0).high()).isEqualTo(51.0);
    }

    @Test
    void whatIsNoNumberHasNoAxis() {
        assertThatThrownBy(() -> new Axis("speed", "km/h", 1.0, 1.0, 0.1))
                .hasMessageContaining("must go from a lower to a higher number");
        assertThatThrownBy(() -> new Axis("speed", "km/h", Double.NaN, 1.0, 0.1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Property(tries = 100)
    void anAxisHoldsItsNumbersInFewTicks(
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double one,
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double other) {
        Axis axis = Axis.holding("any", "", one, other);
        double[] ticks = axis.ticks();
        assertThat(ticks.length).isBetween(2, 8);
        assertThat(axis.share(Math.min(one, other))).isGreaterThan(-1e-6);
        assertThat(axis.share(Math.max(one, other))).isLessThan(1.0 + 1e-6);
        assertThat(axis.share(ticks[0])).isBetween(-1e-6, 1e-6);
        assertThat(axis.share(ticks[ticks.length - 1])).isBetween(1.0 - 1e-6, 1.0 + 1e-6);
    }
}

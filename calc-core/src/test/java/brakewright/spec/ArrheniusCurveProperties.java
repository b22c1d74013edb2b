package brakewright.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

@Tag("law")
class ArrheniusCurveProperties {

    private static final double ROUNDING = 1e-12;

    @Property
    void keepsEveryPointOfTheTable(@ForAll("tables") Curve table) {
        double[] temperatures = table.abscissas();
        double[] factors = table.ordinates();
        for (int i = 0; i < factors.length; i++) {
            assertThat(ArrheniusCurve.through(table).at(temperatures[i]))
                    .isCloseTo(factors[i], within(ROUNDING * factors[i]));
        }
    }

    /** Beyond the ends of the table, too. */
    @Property
    void isPositiveAndFallsAsItGetsWarmer(
            @ForAll("tables") Curve table,
            @ForAll @Scale(6) @DoubleRange(min = -60.0, max = 100.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = -60.0, max = 100.0) double other) {
        ArrheniusCurve curve = ArrheniusCurve.through(table);
        double warm = curve.at(Math.max(one, other));
        assertThat(warm)
                .isPositive()
                .isLessThanOrEqualTo(curve.at(Math.min(one, other)) * (1.0 + ROUNDING));
    }

    /** Half way in 1/T lies the geometric mean. */
    @Property
    void isStraightInTheLogarithmOverTheReciprocalTemperature(
            @ForAll("tables") Curve table,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double place) {
        double[] temperatures = table.abscissas();
        double low = temperatures[0] + place * (temperatures[1] - temperatures[0]);
        double high = temperatures[1];
        double middle = 2.0 / (1.0 / (low + 273.15) + 1.0 / (high + 273.15)) - 273.15;
        ArrheniusCurve curve = ArrheniusCurve.through(table);
        double mean = Math.sqrt(curve.at(low) * curve.at(high));
        assertThat(curve.at(middle)).isCloseTo(mean, within(1e-9 * mean));
    }

    @Property
    void nothingIsBelowTheLeast(
            @ForAll("tables") Curve table,
            @ForAll @Scale(6) @DoubleRange(min = -60.0, max = 100.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = -60.0, max = 100.0) double other,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double place) {
        ArrheniusCurve curve = ArrheniusCurve.through(table);
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        assertThat(curve.least(low, high))
                .isLessThanOrEqualTo(curve.at(low + place * (high - low)) * (1.0 + ROUNDING))
                .isEqualTo(curve.at(high));
    }

    /** On a level stretch no digit of the factor may get lost. */
    @Example
    void aLevelStretchIsLevel() {
        ArrheniusCurve curve =
                ArrheniusCurve.through(
                        Curve.of(new double[] {0.0, 15.0}, new double[] {0.302, 0.302}));
        assertThat(curve.at(0.0)).isEqualTo(0.302);
        assertThat(curve.at(7.0)).isEqualTo(0.302);
    }

    /** A curve that its user made may have its least in between. */
    @Example
    void theLeastMayLieWithin() {
        ArrheniusCurve curve =
                ArrheniusCurve.through(
                        Curve.of(new double[] {0.0, 20.0, 40.0}, new double[] {2.0, 1.0, 1.1}));
        assertThat(curve.least(0.0, 40.0)).isEqualTo(1.0);
        assertThat(curve.least(25.0, 40.0)).isBetween(1.0, 1.05);
    }

    @Example
    void refusesWhatNoTemperatureHas() {
        ArrheniusCurve curve = ArrheniusCurve.through(Curve.constant(1.0));
        assertThatThrownBy(() -> curve.at(-273.15)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> curve.at(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () ->
                                ArrheniusCurve.through(
                                        Curve.of(
                                                new double[] {-300.0, 25.0},
                                                new double[] {2.0, 1.0})))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ArrheniusCurve.through(Curve.constant(0.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("resistance factor by temperature");
    }

    /** Two to six points, ten kelvin apart or more, falling. */
    @Provide
    Arbitrary<Curve> tables() {
        return Combinators.combine(
                        Arbitraries.integers().between(-4, 0),
                        Arbitraries.integers().between(2, 6),
                        Arbitraries.doubles()
                                .between(0.3, 20.0)
                                .ofScale(4)
                                .array(double[].class)
                                .ofSize(6))
                .as(
                        (first, count, factors) ->
                                Curve.of(
                                        IntStream.range(0, count)
                                                .mapToDouble(i -> 10.0 * (first + 1.5 * i))
                                                .toArray(),
                                        Arrays.stream(factors)
                                                .limit(count)
                                                .map(factor -> -factor)
                                                .sorted()
                                                .map(factor -> -factor)
                                                .toArray()));
    }
}

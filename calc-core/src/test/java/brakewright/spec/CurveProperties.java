package brakewright.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class CurveProperties {

    private static final double ROUNDING = 1e-12;

    /** A few ulps of the abscissa, where points of the curve lie as close as 1e-3. */
    private static final double VOLTS = 1e-11;

    @Property
    void staysWithinItsOrdinates(
            @ForAll Curve curve,
            @ForAll @Scale(9) @DoubleRange(min = -2.0, max = 3.0) double abscissa) {
        double highest = Arrays.stream(curve.ordinates()).max().orElseThrow();
        assertThat(curve.at(abscissa))
                .isBetween(curve.least() * (1.0 - ROUNDING), highest * (1.0 + ROUNDING));
    }

    @Property
    void passesThroughItsPoints(@ForAll Curve curve) {
        double[] abscissas = curve.abscissas();
        double[] ordinates = curve.ordinates();
        for (int i = 0; i < abscissas.length; i++) {
            assertThat(curve.at(abscissas[i]))
                    .isBetween(ordinates[i] * (1.0 - ROUNDING), ordinates[i] * (1.0 + ROUNDING));
        }
    }

    /** The short way to the line that bears a place, against a walk along all of them. */
    @Property
    void readsTheLineBetweenTheNearestPoints(
            @ForAll Curve curve,
            @ForAll @Scale(15) @DoubleRange(min = 0.0, max = 1.0) double share,
            @ForAll @IntRange(min = 0, max = 1000) int point,
            @ForAll("spans") double span) {
        double[] at = Arrays.stream(curve.abscissas()).map(x -> x * span).distinct().toArray();
        double[] values = Arrays.copyOf(curve.ordinates(), at.length);
        Curve stretched = Curve.of(at, values);
        double near = at[point % at.length];
        for (double x : new double[] {share * span, near, Math.nextUp(near), Math.nextDown(near)}) {
            assertThat(stretched.at(x)).isEqualTo(walked(at, values, x));
        }
    }

    @Provide
    Arbitrary<Double> spans() {
        return Arbitraries.of(Double.MIN_VALUE * 1e4, 1e-300, 1e-6, 1.0, 1e6, 1e300);
    }

    private static double walked(double[] at, double[] values, double x) {
        int above = 0;
        while (above < at.length && at[above] < x) {
            above++;
        }
        if (above == 0) {
            return values[0];
        }
        if (above == at.length) {
            return values[above - 1];
        }
        if (at[above] == x && above == at.length - 1) {
            return values[above];
        }
        double share = (x - at[above - 1]) / (at[above] - at[above - 1]);
        return values[above - 1] + share * (values[above] - values[above - 1]);
    }

    @Property
    void aRisingTableGivesARisingCurve(
            @ForAll Curve curve,
            @ForAll @Scale(9) @DoubleRange(min = -0.5, max = 1.5) double one,
            @ForAll @Scale(9) @DoubleRange(min = -0.5, max = 1.5) double other) {
        assertThat(curve.neverFalls()).isTrue();
        assertThat(curve.at(Math.max(one, other)))
                .isGreaterThanOrEqualTo(curve.at(Math.min(one, other)) * (1.0 - ROUNDING));
    }

    /** The value is reached there, and not before. */
    @Property
    void firstReachesAValueWhereItSays(
            @ForAll Curve curve,
            @ForAll @Scale(9) @DoubleRange(min = 2.0, max = 5.0) double ordinate,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double share) {
        double found = curve.firstReaches(ordinate);
        double[] ends = ends(curve);
        assertThat(found).isBetween(0.0, 1.0);
        assertThat(curve.at(found))
                .isCloseTo(Math.max(ends[0], Math.min(ends[1], ordinate)), within(VOLTS));
        if (share * found < found) {
            assertThat(curve.at(share * found)).isLessThan(ordinate + VOLTS);
        }
    }

    /** The value is not yet left there, and is behind. */
    @Property
    void lastStaysAtAValueWhereItSays(
            @ForAll Curve curve,
            @ForAll @Scale(9) @DoubleRange(min = 2.0, max = 5.0) double ordinate,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double share) {
        double found = curve.lastStays(ordinate);
        double[] ends = ends(curve);
        assertThat(found).isBetween(0.0, 1.0);
        assertThat(curve.at(found))
                .isCloseTo(Math.max(ends[0], Math.min(ends[1], ordinate)), within(VOLTS));
        double behind = found + share * (1.0 - found);
        if (behind > found) {
            assertThat(curve.at(behind)).isGreaterThan(ordinate - VOLTS);
        }
    }

    @Property
    void whatItReadsItFindsAgain(
            @ForAll Curve curve,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double abscissa) {
        double ordinate = curve.at(abscissa);
        assertThat(curve.at(curve.firstReaches(ordinate))).isCloseTo(ordinate, within(VOLTS));
        assertThat(curve.at(curve.lastStays(ordinate))).isCloseTo(ordinate, within(VOLTS));
        assertThat(curve.firstReaches(ordinate))
                .isLessThanOrEqualTo(curve.lastStays(ordinate) + VOLTS);
    }

    @Example
    void bothEndsOfALevelPieceAreFound() {
        Curve level = Curve.of(new double[] {0.0, 0.2, 0.7, 1.0}, new double[] {3, 3.3, 3.3, 3.6});
        assertThat(level.firstReaches(3.3)).isEqualTo(0.2);
        assertThat(level.lastStays(3.3)).isEqualTo(0.7);
        assertThat(level.firstReaches(2.0)).isEqualTo(0.0);
        assertThat(level.lastStays(2.0)).isEqualTo(0.0);
        assertThat(level.firstReaches(4.0)).isEqualTo(1.0);
        assertThat(level.lastStays(4.0)).isEqualTo(1.0);
    }

    private static double[] ends(Curve curve) {
        return new double[] {curve.at(0.0), curve.at(1.0)};
    }

    @Property
    void isEqualToACopyOfItself(@ForAll Curve curve) {
        Curve copy = Curve.of(curve.abscissas(), curve.ordinates());
        assertThat(copy).isEqualTo(curve).hasSameHashCodeAs(curve).hasToString(curve.toString());
    }

    @Example
    void givesOutCopiesOnly() {
        Curve curve = Curve.constant(2.0);
        curve.ordinates()[0] = 9.0;
        curve.abscissas()[0] = -9.0;
        assertThat(curve).isEqualTo(Curve.constant(2.0));
    }

    @Example
    void knowsWhetherItFalls() {
        assertThat(Curve.of(new double[] {0, 1, 2}, new double[] {1, 3, 2}).neverFalls()).isFalse();
        assertThat(Curve.of(new double[] {0, 1, 2}, new double[] {1, 3, 2}))
                .isNotEqualTo(Curve.constant(1.0));
    }

    @Example
    void rejectsWhatIsNoCurve() {
        double[] two = {0.0, 1.0};
        assertThatThrownBy(() -> Curve.of(new double[] {0.0}, new double[] {1.0}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least two points");
        assertThatThrownBy(() -> Curve.of(two, new double[] {1.0}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 and 1");
        assertThatThrownBy(() -> Curve.of(new double[] {1.0, 1.0}, two))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must ascend");
        assertThatThrownBy(() -> Curve.of(two, new double[] {1.0, Double.NaN}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("point 2");
        assertThatThrownBy(() -> Curve.of(new double[] {Double.NEGATIVE_INFINITY, 1.0}, two))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("point 1");
    }
}

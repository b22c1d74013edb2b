package brakewright.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class CurveProperties {

    private static final double ROUNDING = 1e-12;

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

    @Property
    void aRisingTableGivesARisingCurve(
            @ForAll Curve curve,
            @ForAll @Scale(9) @DoubleRange(min = -0.5, max = 1.5) double one,
            @ForAll @Scale(9) @DoubleRange(min = -0.5, max = 1.5) double other) {
        assertThat(curve.neverFalls()).isTrue();
        assertThat(curve.at(Math.max(one, other)))
                .isGreaterThanOrEqualTo(curve.at(Math.min(one, other)) * (1.0 - ROUNDING));
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

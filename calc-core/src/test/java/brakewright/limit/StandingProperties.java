package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** A setting beside its limit, and a severity as a share of it. */
@Tag("law")
class StandingProperties {

    @Example
    void whatIsNotSetHasNoStanding() {
        assertThat(Standing.of(OptionalDouble.empty(), 0.0)).isEqualTo(Standing.NOT_SET);
    }

    @Example
    void whatDiffersByRoundingAloneIsWithin() {
        assertThat(Standing.of(OptionalDouble.of(0.1 + 0.2), 0.3)).isEqualTo(Standing.WITHIN);
        assertThat(Standing.of(OptionalDouble.of(0.3001), 0.3)).isEqualTo(Standing.OVER);
        assertThat(Standing.of(OptionalDouble.of(0.2999), 0.3)).isEqualTo(Standing.WITHIN);
    }

    @Property(tries = 100)
    void aSeverityIsReadAsAShareOfTheLimit(
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 100.0) double value,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 100.0) double limit) {
        assertThat(Severity.shareOfLimit(Severity.of(value, limit)))
                .isCloseTo(value / limit - 1.0, within(1e-9 * (1.0 + value / limit)));
    }
}

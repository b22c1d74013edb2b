package brakewright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.AnyDriven;
import brakewright.spec.Build;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyDriven.class)
@Domain(DomainContext.Global.class)
class DoubtedHeatProperties {

    @Property(tries = 200)
    void whatIsExpectedLiesInTheRange(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 500.0) double power,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.5) double spread) {
        PackHeat expected = expected(build, power);
        DoubtedHeat range =
                DoubtedHeat.atPower(
                        build, power, expected, new DoubtedHeat.Spreads(spread, spread, spread));
        assertThat(expected.endC()).isBetween(range.lowC(), range.highC());
        assertThat(range.highC())
                .isLessThanOrEqualTo(Math.max(expected.endC(), expected.dischargeLimitC()));
    }

    /** One spread by itself reaches as far as the ride with that much more or less. */
    @Property(tries = 200)
    void oneSpreadAloneIsTheRideAtItsEnds(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 500.0) double power,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.5) double spread) {
        PackHeat expected = expected(build, power);
        BatteryModel model = new BatteryModel(build.battery());
        double[] more = {1.0 + spread, 1.0};
        double[] less = {1.0 - spread, 1.0};
        DoubtedHeat range =
                DoubtedHeat.atPower(
                        build, power, expected, new DoubtedHeat.Spreads(spread, 0.0, 0.0));
        double warm = PackHeat.doubted(build, model, power, expected, more).orElseThrow().endC();
        double cool = PackHeat.doubted(build, model, power, expected, less).orElseThrow().endC();
        assertThat(warm).isGreaterThanOrEqualTo(cool - 0.05);
        if (warm >= expected.endC() && cool <= expected.endC()) {
            assertThat(range.highC()).isCloseTo(warm, within(1e-9));
            assertThat(range.lowC()).isCloseTo(cool, within(1e-9));
        }
    }

    @Property(tries = 100)
    void whatIsKnownHasNoRange(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 500.0) double power) {
        PackHeat expected = expected(build, power);
        assertThat(
                        DoubtedHeat.atPower(
                                build, power, expected, new DoubtedHeat.Spreads(0.0, 0.0, 0.0)))
                .isEqualTo(new DoubtedHeat(expected.endC(), expected.endC()));
    }

    private static PackHeat expected(Build build, double power) {
        var heat = PackHeat.atPower(build, power);
        Assume.that(heat.isPresent() && heat.get().stoppedAfter().isEmpty());
        return heat.get();
    }
}

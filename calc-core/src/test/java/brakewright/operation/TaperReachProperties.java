package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.Limits;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Taper;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class TaperReachProperties {

    private static final double NEAR = 1e-6;

    /** Just below the charge that is told all of the set current is let in, just above it not. */
    @Property(tries = 200)
    void beginsJustWhereATaperLetsLessIn(
            @ForAll Build build,
            @ForAll @Scale(3) @DoubleRange(min = 0.9, max = 1.0) double ends,
            @ForAll @Scale(3) @DoubleRange(min = 0.8, max = 0.98) double begins) {
        Limits limits = Limits.of(build);
        double full = limits.battery().openCircuitVoltage(1.0);
        Taper taper = new Taper(begins * ends * full, ends * full);
        ElectricBrake set = Operation.of(build, limits).brake();
        OptionalDouble from = TaperReach.from(build, set, taper);
        ElectricBrake tapered = set.withTaper(Optional.of(taper));
        if (from.isEmpty()) {
            assertThat(isHeldBack(build, limits, tapered, build.use().chargeFrom())).isFalse();
        } else if (from.getAsDouble() > build.use().chargeTo()) {
            assertThat(isHeldBack(build, limits, tapered, from.getAsDouble() - NEAR)).isFalse();
            assertThat(isHeldBack(build, limits, tapered, from.getAsDouble() + NEAR)).isTrue();
        }
    }

    private static boolean isHeldBack(
            Build build, Limits limits, ElectricBrake tapered, double charge) {
        PackState pack = PackState.of(limits.battery(), charge, build.battery().temperatureC());
        return tapered.settledPackLimit(pack) < tapered.packCurrent();
    }
}

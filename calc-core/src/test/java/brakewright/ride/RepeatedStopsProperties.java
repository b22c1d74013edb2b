package brakewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.Limits;
import brakewright.review.Operation;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class RepeatedStopsProperties {

    @Property(tries = 200)
    void moreStopsAreNeverCooler(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 15.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @IntRange(min = 2, max = 10) int stops) {
        Optional<RepeatedStops> once = stops(build, speed, charge, 1);
        Optional<RepeatedStops> often = stops(build, speed, charge, stops);
        Assume.that(once.isPresent() && often.isPresent());
        assertThat(often.get().windingC()).isGreaterThanOrEqualTo(once.get().windingC());
        assertThat(once.get().windingC())
                .isGreaterThanOrEqualTo(build.use().climate().ambientC() - 1e-9);
        assertThat(often.get().limitC()).isEqualTo(build.motor().windingLimitC());
    }

    @Property(tries = 200)
    void aMotorOfUnknownHeatHasNoAnswer(@ForAll Build build) {
        assertThat(stops(build, 5.0, 0.5, 2).isPresent())
                .satisfiesAnyOf(
                        present -> assertThat(present).isFalse(),
                        present -> assertThat(build.motor().heat()).isPresent());
    }

    private static Optional<RepeatedStops> stops(
            Build build, double speed, double charge, int stops) {
        Operation operation = Operation.of(build, Limits.of(build));
        return RepeatedStops.of(build, operation.brake(), operation.drive(), speed, charge, stops);
    }
}

package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.machine.WindingHeat;
import brakewright.operation.Operation;
import brakewright.powertrain.AnyDriven;
import brakewright.spec.Build;
import brakewright.spec.MotorHeat;
import java.util.Optional;
import java.util.OptionalDouble;
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
class RecoveryProperties {

    private static final double LIMIT_C = 120.0;
    private static final double RESISTANCE = 0.04;

    /** The rest is solved for to 1e-6 s, on either side. */
    private static final double TIME_ACCURACY = 2e-6;

    /** The time until the limit is solved for to 1e-9 s and 1e-12 of it. */
    private static final double SOLVED = 1e-8;

    /** After the rest a pull of that length just reaches the limit; after less it is too long. */
    @Property(tries = 300)
    void afterTheRestThePullIsJustBorne(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 1.1, max = 6.0) double overload,
            @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.95) double share,
            @ForAll @Scale(3) @DoubleRange(min = 0.0, max = 10.0) double drag) {
        WindingHeat pulling = new WindingHeat(heat, RESISTANCE, LIMIT_C, 20.0, drag);
        WindingHeat resting = new WindingHeat(heat, RESISTANCE, LIMIT_C, 20.0, 0.0);
        double current = overload * pulling.continuousCurrent();
        Assume.that(current > 0.0);
        double cold = pulling.timeToLimit(pulling.cold(), current).orElseThrow();
        double pull = share * cold;
        double rest = new Recovery(pulling, resting, current, pull).after(cold).orElseThrow();
        WindingHeat.Temperatures hot = pulling.after(pulling.cold(), current, cold);
        double shorter = Math.max(0.0, rest - TIME_ACCURACY);
        assertThat(borne(pulling, resting.after(hot, 0.0, rest + TIME_ACCURACY), current))
                .isGreaterThanOrEqualTo(pull - SOLVED);
        assertThat(borne(pulling, resting.after(hot, 0.0, shorter), current))
                .isLessThanOrEqualTo(pull + SOLVED);
        assertThat(borne(pulling, resting.after(hot, 0.0, 0.9 * rest), current)).isLessThan(pull);
        assertThat(pulling.after(resting.after(hot, 0.0, rest), current, pull).windingC())
                .isCloseTo(LIMIT_C, within(0.01));
    }

    @Property(tries = 300)
    void noRestIsEnoughForAPullThatIsNotBorneFromCold(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 1.1, max = 6.0) double overload,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 5.0) double factor) {
        WindingHeat motor = new WindingHeat(heat, RESISTANCE, LIMIT_C, 20.0, 0.0);
        double current = overload * motor.continuousCurrent();
        double cold = motor.timeToLimit(motor.cold(), current).orElseThrow();
        assertThat(new Recovery(motor, motor, current, factor * cold).after(cold)).isEmpty();
    }

    @Property(tries = 300)
    void aLongerPullNeedsALongerRest(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 1.1, max = 6.0) double overload,
            @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.45) double share) {
        WindingHeat motor = new WindingHeat(heat, RESISTANCE, LIMIT_C, 20.0, 0.0);
        double current = overload * motor.continuousCurrent();
        double cold = motor.timeToLimit(motor.cold(), current).orElseThrow();
        Recovery brief = new Recovery(motor, motor, current, share * cold);
        Recovery lasting = new Recovery(motor, motor, current, 2.0 * share * cold);
        assertThat(lasting.after(cold).orElseThrow())
                .isGreaterThan(brief.after(cold).orElseThrow());
    }

    /** No motor that is warm from a ride bears its drive current longer than a cold one. */
    @Property(tries = 300)
    void aWarmMotorReachesItsLimitNoLater(@ForAll Build build) {
        Operation operation = Operation.of(build, Limits.of(build));
        Optional<HeatSheet.Known> known =
                HeatSheet.of(
                                build,
                                operation,
                                DriveSheet.of(build, operation, build.use().chargeFrom()))
                        .known();
        assertThat(known.isPresent()).isEqualTo(build.motor().heat().isPresent());
        Assume.that(known.isPresent());
        OptionalDouble cold = known.get().timeAtDriveSetting();
        WarmStart warm = known.get().afterCruise();
        if (cold.isPresent()) {
            if (warm instanceof WarmStart.Borne borne) {
                assertThat(borne.lasts().orElseThrow())
                        .isLessThanOrEqualTo(cold.getAsDouble() + SOLVED);
            }
            assertThat(known.get().recovery().isPresent())
                    .isEqualTo(build.use().effort().hardPull() < cold.getAsDouble());
        } else {
            assertThat(known.get().recovery()).isEmpty();
        }
    }

    private static double borne(WindingHeat motor, WindingHeat.Temperatures start, double current) {
        return motor.timeToLimit(start, current).orElse(Double.POSITIVE_INFINITY);
    }
}

package brakewright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.driving.StopAndGo;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.AnyDriven;
import brakewright.spec.Build;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** A ride in town against the even one that takes as much. */
@Tag("law")
@Domain(AnyDriven.class)
@Domain(DomainContext.Global.class)
class TownRideProperties {

    /** No current has a mean above the root of its mean square, electronics at a stop apart. */
    @Property
    void anUnevenCurrentHeatsNoLessThanTheEvenOneThatTakesAsMuch(
            @ForAll Build build,
            @ForAll @Scale(4) @DoubleRange(min = 0.0005, max = 0.02) double stops) {
        leg(build, stops)
                .ifPresent(
                        leg -> {
                            double idle = build.use().riding().idlePower();
                            BatteryModel model = new BatteryModel(build.battery());
                            double voltage = model.openCircuitVoltage(middle(build));
                            assertThat(leg.effectiveCurrent(resistance(build)))
                                    .isGreaterThan(leg.meanCurrent() - 2.0 * idle / voltage - 1e-6);
                        });
    }

    /**
     * What pulling away and stopping change goes with how often it is done: the more seldom, the
     * nearer an even ride.
     */
    @Property
    void aRideThatHardlyStopsIsEven(@ForAll Build build) {
        leg(build, 1e-9)
                .filter(leg -> leg.meanCurrent() > 0.1)
                .ifPresent(
                        leg ->
                                assertThat(leg.effectiveCurrent(resistance(build)))
                                        .isCloseTo(
                                                leg.meanCurrent(),
                                                within(0.01 * leg.meanCurrent())));
    }

    private static double middle(Build build) {
        return 0.5 * (build.use().chargeFrom() + build.use().chargeTo());
    }

    private static double resistance(Build build) {
        return new BatteryModel(build.battery())
                .resistance(middle(build), build.battery().temperatureC());
    }

    private static Optional<StopAndGo.Leg> leg(Build build, double stops) {
        Operation operation = Operation.of(build, Limits.of(build));
        return StopAndGo.leg(
                build,
                operation.drive(),
                operation.brake(),
                build.use().riding().cruiseSpeed(),
                stops,
                middle(build));
    }
}

package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.braking.StopOutcome;
import brakewright.limit.Limits;
import brakewright.powertrain.PackState;
import brakewright.spec.AnyBuild;
import brakewright.spec.BrakedBuilds;
import brakewright.spec.Build;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class FirstStopProperties {

    /** The charge state is found to 1e-9; the currents move by less than 1e-4 A with it. */
    private static final double AMPERES = 1e-3;

    @Property(tries = 300)
    void isSafeWhereThePackMayTakeWhatComes(@ForAll Build build) {
        Limits limits = Limits.of(build);
        FirstStop stop = first(build, limits);
        double cells = build.battery().temperatureC();
        assertThat(stop.mayTake())
                .isEqualTo(limits.packRegen().valueAt(build.use().chargeFrom(), cells));
        assertThat(stop.isSafe()).isEqualTo(flowing(build, stop.charge()) <= stop.mayTake());
        assertThat(stop.safeRegen())
                .isCloseTo(stop.mayTake() / build.controllers().count(), within(1e-12));
    }

    /**
     * A pack that rests above its trip is left out: it is open before anything flows. Few vehicles
     * are safe with their fullest group full, so many are passed over.
     */
    @Property(tries = 300, maxDiscardRatio = 30)
    void whatIsSafeOpensNothing(@ForAll Build build) {
        FirstStop stop = first(build, Limits.of(build));
        Assume.that(stop.isSafe() && stop.packCurrent() > 0.0);
        assertThat(stop.opening()).isEqualTo(FirstStop.Opening.NOTHING);
    }

    @Property(tries = 300)
    void nothingIsAskedOfWhatIsSafeAlready(@ForAll Build build) {
        FirstStop stop = first(build, Limits.of(build));
        assertThat(stop.rideFirst().isPresent()).isEqualTo(stop.chargeTo().isPresent());
        if (!stop.isSafe()) {
            assertThat(stop.chargeTo()).isPresent();
        }
    }

    @Property(tries = 300)
    void atTheSafeChargeThePackTakesAllItMay(@ForAll Build build) {
        Limits limits = Limits.of(build);
        FirstStop stop = first(build, limits);
        Assume.that(stop.chargeTo().isPresent());
        double charge = stop.chargeTo().getAsDouble();
        assertThat(charge).isBetween(build.use().chargeTo(), build.use().chargeFrom());
        assertThat(stop.rideFirst().getAsDouble()).isNotNegative();
        double mayTake = limits.packRegen().valueAt(charge, build.battery().temperatureC());
        if (charge > build.use().chargeTo()) {
            assertThat(flowing(build, charge)).isCloseTo(mayTake, within(AMPERES));
        } else {
            assertThat(flowing(build, charge)).isGreaterThanOrEqualTo(mayTake - AMPERES);
        }
    }

    /** The stop that is told meets no more than the greatest return that it is judged by. */
    @Property(tries = 300)
    void theStopItselfReturnsNoMore(@ForAll Build any) {
        Build build = BrakedBuilds.buildingUp(any, 0.0);
        FirstStop stop = first(build, Limits.of(build));
        Assume.that(stop.outcome() instanceof StopOutcome.Stopped);
        assertThat(((StopOutcome.Stopped) stop.outcome()).peakPackCurrent())
                .isLessThanOrEqualTo(stop.packCurrent() * (1.0 + 1e-9) + 1e-9);
    }

    private static double flowing(Build build, double charge) {
        Operation operation = Operation.of(build, Limits.of(build));
        return operation
                .brake()
                .greatestReturn(
                        operation.topSpeed(),
                        PackState.of(
                                new BatteryModel(build.battery()),
                                charge,
                                build.battery().temperatureC()));
    }

    private static FirstStop first(Build build, Limits limits) {
        return FirstStop.of(
                build, limits, Operation.of(build, limits), build.battery().temperatureC());
    }
}

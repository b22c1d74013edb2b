package brakewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.MotorHeatBalance;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.road.RoadLoad;
import brakewright.spec.Axles;
import brakewright.spec.Build;
import java.util.Optional;
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
class ClimbProperties {

    /** Sine and tangent of an angle and back. */
    private static final double ROUNDING = 1e-9;

    /** The time is solved for to 1e-9 s; windings warm by less than 1000 K/s. */
    private static final double SOLVED_K = 1e-6;

    /** Thrust, grip and balance on the slope, from the forces on the two axles. */
    @Property(tries = 500)
    void theSteepestSlopeIsHeldAndASteeperOneIsNot(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricDrive drive = AnyDriven.drive(build);
        PackState pack = pack(build, charge);
        double thrust = drive.pull(0.0, pack).thrust();
        double steepest = Climb.of(build, drive, pack).steepest();
        if (steepest > 0.0) {
            assertThat(isHeld(steepest * (1.0 - 1e-6), thrust, build)).isTrue();
        }
        assertThat(isHeld(steepest * (1.0 + 1e-6) + ROUNDING, thrust, build)).isFalse();
    }

    @Property(tries = 500)
    void theNamedCurrentsHoldTheirSlopes(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricDrive drive = AnyDriven.drive(build);
        PackState pack = pack(build, charge);
        Climb climb = Climb.of(build, drive, pack);
        RoadLoad load = RoadLoad.of(build);
        if (climb.steepest() > 0.0) {
            double force = load.force(0.0, climb.steepest(), 0.0);
            assertThat(drive.powertrain().thrust(climb.current(), 0.0))
                    .isCloseTo(force, within(ROUNDING * force));
        }
        assertThat(climb.current()).isLessThanOrEqualTo(drive.motorCurrent());
        double slope = build.use().slope();
        if (climb.speedUp() > 0.0) {
            double force = load.force(climb.speedUp(), slope, 0.0);
            assertThat(drive.powertrain().thrust(climb.currentUp(), climb.speedUp()))
                    .isCloseTo(force, within(ROUNDING * force));
            assertThat(climb.timeUp() * climb.speedUp())
                    .isCloseTo(build.use().slopeLength(), within(ROUNDING * 300.0));
        } else {
            assertThat(climb.timeUp()).isInfinite();
            assertThat(climb.lastsUp()).isEmpty();
        }
    }

    /**
     * At the end of the time that is given the winding is at its limit; without one it never is.
     */
    @Property(tries = 500)
    void theWindingReachesItsLimitWhenTheTimeIsUp(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Optional<WindingHeat> balance = MotorHeatBalance.of(build);
        Climb climb = Climb.of(build, AnyDriven.drive(build), pack(build, charge));
        if (balance.isEmpty()) {
            assertThat(climb.heldFor()).isEmpty();
            return;
        }
        WindingHeat heat = balance.get();
        double limit = build.motor().windingLimitC();
        if (climb.heldFor().isEmpty()) {
            assertThat(heat.steady(climb.current()).orElseThrow().windingC())
                    .isLessThanOrEqualTo(limit + SOLVED_K);
            return;
        }
        double time = climb.heldFor().getAsDouble();
        assertThat(heat.after(heat.cold(), climb.current(), time).windingC())
                .isCloseTo(limit, within(SOLVED_K));
        assertThat(heat.after(heat.cold(), climb.current(), 0.5 * time).windingC())
                .isLessThan(limit);
    }

    private static boolean isHeld(double slope, double thrust, Build build) {
        double weight = build.mass() * 9.80665;
        double angle = Math.atan(slope);
        double into = Math.cos(angle);
        double down = Math.sin(angle);
        Axles axles = build.vehicle().axles();
        double length = axles.wheelbase();
        double behind = axles.massCentreFromFront();
        double height = axles.massCentreHeight();
        double rear = weight * (behind * into + height * down) / length;
        double front = weight * ((length - behind) * into - height * down) / length;
        double gripping =
                switch (axles.driven()) {
                    case REAR -> rear;
                    case FRONT -> front;
                    case BOTH -> weight * into;
                };
        double needed = weight * (build.vehicle().rollingResistance() * into + down);
        return needed <= thrust && needed <= build.vehicle().grip() * gripping && front >= 0.0;
    }

    private static PackState pack(Build build, double charge) {
        return PackState.of(
                new BatteryModel(build.battery()), charge, build.battery().temperatureC());
    }
}

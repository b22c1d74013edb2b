package brakewright.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.limit.MotorHeatBalance;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.road.RoadLoad;
import brakewright.spec.Axles;
import brakewright.spec.Build;
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
        double thrust = drive.at(0.0, pack).thrust();
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
     * At the end of the time that is given the winding is at its limit; without one it never is. At
     * a crawl there is no drag loss.
     */
    @Property(tries = 500)
    void theWindingReachesItsLimitWhenTheTimeIsUp(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Climb climb = Climb.of(build, AnyDriven.drive(build), pack(build, charge));
        if (build.motor().heat().isEmpty()) {
            assertThat(climb.heldFor()).isEmpty();
            assertThat(climb.lastsUp()).isEmpty();
            return;
        }
        reachesItsLimit(build, 0.0, climb.current(), climb.heldFor());
        if (climb.speedUp() > 0.0) {
            reachesItsLimit(build, climb.speedUp(), climb.currentUp(), climb.lastsUp());
        }
    }

    private static void reachesItsLimit(
            Build build, double speed, double current, OptionalDouble time) {
        WindingHeat heat = MotorHeatBalance.at(build, speed).orElseThrow();
        double limit = build.motor().windingLimitC();
        if (time.isEmpty()) {
            assertThat(heat.steady(current).orElseThrow().windingC())
                    .isLessThanOrEqualTo(limit + SOLVED_K);
            return;
        }
        assertThat(heat.after(heat.cold(), current, time.getAsDouble()).windingC())
                .isCloseTo(limit, within(SOLVED_K));
        assertThat(heat.after(heat.cold(), current, 0.5 * time.getAsDouble()).windingC())
                .isLessThanOrEqualTo(limit);
    }

    /**
     * What is sustained is held, warms no winding beyond its limit and draws no more than rated.
     */
    @Property(tries = 500)
    void theSustainedSlopeIsBorneForAnyTime(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricDrive drive = AnyDriven.drive(build);
        Climb climb = Climb.of(build, drive, pack(build, charge));
        double slope = climb.steepestSustained();
        assertThat(slope).isBetween(0.0, climb.steepest());
        Assume.that(slope > 0.0 && !Double.isInfinite(slope));
        double force = RoadLoad.of(build).force(0.0, slope, 0.0);
        double current = drive.powertrain().thrustCurrent(force, 0.0);
        MotorHeatBalance.at(build, 0.0)
                .ifPresent(
                        heat ->
                                assertThat(heat.steady(current).orElseThrow().windingC())
                                        .isLessThanOrEqualTo(
                                                build.motor().windingLimitC() + SOLVED_K));
        double cellsC = build.battery().temperatureC();
        PackState lasting =
                PackState.of(
                        new BatteryModel(build.battery()),
                        charge,
                        cellsC,
                        Double.POSITIVE_INFINITY);
        double drawn = -lasting.currentInto(-drive.powertrain().drawnPower(current, 0.0));
        assertThat(drawn)
                .isLessThanOrEqualTo(
                        Limits.of(build).packDischarge().sustained().valueAt(charge, cellsC)
                                        * (1.0 + ROUNDING)
                                + ROUNDING);
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

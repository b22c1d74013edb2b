package brakewright.spec;

import java.util.Optional;
import java.util.OptionalDouble;

/** Vehicles of which a stop asks something simple. */
public final class BrakedBuilds {

    private BrakedBuilds() {}

    /** The same vehicle with brakes that take their time. */
    public static Build buildingUp(Build build, double seconds) {
        Use use = build.use();
        Effort effort = use.effort();
        return Builds.withUse(build, use.withEffort(effort.withBuildUp(seconds)));
    }

    /** The same vehicle with a friction brake that slows it by so much [m/s²]. */
    public static Build withFriction(Build build, double deceleration) {
        return Builds.withVehicle(
                build, build.vehicle().withFrictionBrake(OptionalDouble.of(deceleration)));
    }

    /** A board that nothing but its friction brake slows, and that at once. */
    public static Build frictionOnly(double deceleration) {
        Build board = buildingUp(Builds.trailBoard(), 0.0);
        Vehicle old = board.vehicle();
        Build still =
                Builds.withVehicle(
                        board,
                        old.withRollingResistance(0.0)
                                .withDragArea(0.0)
                                .withRotatingShare(0.0)
                                .withFrictionBrake(OptionalDouble.of(deceleration)));
        return Builds.withMotor(
                still,
                new Motor(
                        100.0,
                        0.1,
                        1,
                        0.0,
                        0.0,
                        0.0,
                        OptionalDouble.empty(),
                        100.0,
                        Optional.empty()));
    }
}

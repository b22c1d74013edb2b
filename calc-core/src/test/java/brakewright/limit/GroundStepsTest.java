package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.formula.Inputs;
import brakewright.formula.Step;
import brakewright.spec.Axles;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.DrivenAxle;
import brakewright.spec.Input;
import brakewright.spec.Vehicle;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Bounds of the ground whose figures can be worked out on paper. */
class GroundStepsTest {

    /** Grip 0.6, rolling 0.02, 1 m between axles, half of it behind the front, 0.5 m high. */
    @Test
    void theSlopeOnWhichDrivenWheelsSpinIsToldWhereTheyDo() {
        assertThat(climbing(DrivenAxle.REAR, 0.5).orElseThrow().result().value())
                .isCloseTo((0.6 * 0.5 - 0.02) / (1.0 - 0.3), within(1e-12));
        assertThat(climbing(DrivenAxle.FRONT, 0.5).orElseThrow().result().value())
                .isCloseTo((0.6 * 0.5 - 0.02) / (1.0 + 0.3), within(1e-12));
        assertThat(climbing(DrivenAxle.BOTH, 0.5).orElseThrow().result().value())
                .isCloseTo(0.58, within(1e-12));
        assertThat(climbing(DrivenAxle.REAR, 1.7)).as("tips over before").isEmpty();
    }

    private static Optional<Step> climbing(DrivenAxle driven, double height) {
        Build board = Builds.trailBoard();
        Vehicle old = board.vehicle();
        Build build =
                Builds.withVehicle(
                        board,
                        new Vehicle(
                                old.mass(),
                                old.cargo(),
                                old.wheelDiameter(),
                                new Axles(1.0, height, 0.5, driven),
                                0.02,
                                old.dragArea(),
                                0.6,
                                old.gripWet(),
                                old.rotatingShare(),
                                old.frictionBrake()));
        return new GroundSteps(build, new Inputs(build).of(Input.VEHICLE_GRIP)).climbingGrip("i_g");
    }
}

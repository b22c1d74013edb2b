package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.road.FrictionBrake;
import brakewright.road.RoadLoad;
import brakewright.spec.BrakedBuilds;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A board that only its friction brake slows, hand-worked, and boards that are tried throughout.
 */
class BrakeVerdictTest {

    private static final Offset<Double> ROUNDING = within(1e-9);

    private static final double GRAVITY = 9.80665;

    /** 2 m/s² are wanted, and a fifth of it is no brake. */
    @ParameterizedTest(name = "{0} m/s2 down {1}")
    @CsvSource({
        "2.1, 0, ENOUGH",
        "2.0, 0, ENOUGH",
        "1.9, 0, WEAK",
        "0.41, 0, WEAK",
        "0.39, 0, NONE",
        "2.5, 0.3, WEAK",
        "2.9, 0.3, ENOUGH"
    })
    void theWordIsOfWhatTheBrakeReaches(double reached, double slope, BrakeVerdict.Word word) {
        BrakeVerdict verdict = BrakeVerdict.of(coasting(reached, slope));
        assertThat(verdict.word()).isEqualTo(word);
        assertThat(verdict.deceleration()).isCloseTo(reached, ROUNDING);
        assertThat(verdict.left()).isCloseTo(reached, ROUNDING);
        assertThat(verdict.wanted()).isEqualTo(2.0);
        assertThat(verdict.least()).isCloseTo(0.4, ROUNDING);
        assertThat(verdict.downhill())
                .isCloseTo(reached - GRAVITY * Math.sin(Math.atan(slope)), ROUNDING);
    }

    /** 2 for each word, and 3/4 of 3 m/s² less, or 1/2 of −1 m/s² more. */
    @Test
    void theBadnessGoesByTheWordFirst() {
        assertThat(verdict(BrakeVerdict.Word.ENOUGH, 3.0).badness()).isEqualTo(-0.75);
        assertThat(verdict(BrakeVerdict.Word.WEAK, 3.0).badness()).isEqualTo(1.25);
        assertThat(verdict(BrakeVerdict.Word.NONE, -1.0).badness()).isEqualTo(4.5);
    }

    @Test
    void wordsHaveNames() {
        assertThat(BrakeVerdict.Word.values())
                .extracting(BrakeVerdict.Word::key)
                .containsExactly("enough", "weak", "none");
    }

    /**
     * Half a m/s² of the friction brake is weak, and weakest where the air slows least; without it
     * there is no brake, and least of one at the highest speed, where a tenth of an ampere does
     * least.
     */
    @Test
    void aWeakBrakeIsToldWhereAllSlowsLeastAndNoneWhereTheBrakeDoes() {
        BrakeVerdict weak = returningATenthOfAnAmpere(0.5);
        assertThat(weak.word()).isEqualTo(BrakeVerdict.Word.WEAK);
        BrakeVerdict none = returningATenthOfAnAmpere(0.0);
        assertThat(none.word()).isEqualTo(BrakeVerdict.Word.NONE);
        double felt = 0.5 / (1.0 + Builds.trailBoard().vehicle().rotatingShare());
        assertThat(weak.deceleration()).isCloseTo(none.deceleration() + felt, within(1e-6));
        assertThat(weak.left()).isCloseTo(none.left() + felt, within(1e-6));
        assertThat(none.speed()).isEqualTo(topSpeed());
        assertThat(weak.speed()).isLessThan(0.9 * topSpeed());
    }

    private static BrakeVerdict returningATenthOfAnAmpere(double friction) {
        return BrakeVerdict.of(
                BrakedBuilds.withFriction(
                        Builds.trailBoard()
                                .withSettings(
                                        Builds.trailBoard().settings().withPackRegenCurrent(0.1)),
                        friction));
    }

    private static double topSpeed() {
        Build board = Builds.trailBoard();
        return Operation.of(board, Limits.of(board)).topSpeed();
    }

    /** At no speed from a tenth of the top on is it less, and where it is told, it is so. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.5, 2.0, 10.0, 40.0})
    void nowhereInUseIsTheBrakeWeaker(double regen) {
        for (Build any :
                new Build[] {
                    Builds.trailBoard(), Builds.parcelTrike(), Builds.dockCart(), softCells()
                }) {
            Build build = any.withSettings(any.settings().withPackRegenCurrent(regen));
            Limits limits = Limits.of(build);
            Operation operation = Operation.of(build, limits);
            BrakeVerdict verdict = BrakeVerdict.of(build, limits, operation);
            BatteryModel model = new BatteryModel(build.battery());
            double least = Double.POSITIVE_INFINITY;
            double left = Double.POSITIVE_INFINITY;
            for (double cellsC : build.cellTemperatures()) {
                for (double charge : operation.bends(build, limits)) {
                    Felt felt = new Felt(build, operation, PackState.of(model, charge, cellsC));
                    for (int step = 10; step <= 100; step++) {
                        double speed = step * operation.topSpeed() / 100.0;
                        least = Math.min(least, felt.total(speed));
                        left = Math.min(left, felt.added(speed));
                    }
                }
            }
            assertThat(verdict.deceleration()).isLessThanOrEqualTo(least + 1e-9);
            assertThat(verdict.left()).isLessThanOrEqualTo(left + 1e-9);
            Felt there =
                    new Felt(
                            build,
                            operation,
                            PackState.of(model, verdict.charge(), verdict.cellsC()));
            if (verdict.word() == BrakeVerdict.Word.NONE) {
                assertThat(there.added(verdict.speed())).isCloseTo(verdict.left(), ROUNDING);
            } else {
                assertThat(there.total(verdict.speed()))
                        .isCloseTo(verdict.deceleration(), ROUNDING);
            }
        }
    }

    /** A winding of 1 Ω at which braking draws, near a standstill more than soft cells can give. */
    private static Build softCells() {
        Build board = Builds.withCells(Builds.trailBoard(), cell -> cell.withResistance(20.0));
        return Builds.withMotor(
                board, board.motor().withResistanceAt20C(1.0).withNoLoadCurrent(0.0));
    }

    /** What a rider feels, and what of it the brakes add. */
    private record Felt(Build build, Operation operation, PackState state) {

        double total(double speed) {
            return (brakes(speed) + RoadLoad.of(build).force(speed, 0.0, 0.0)) / build.inertia();
        }

        double added(double speed) {
            return (brakes(speed) - operation.brake().powertrain().brakeForce(0.0, speed))
                    / build.inertia();
        }

        private double brakes(double speed) {
            ElectricBrake settled = operation.brake().settled(state);
            return settled.powertrain().brakeForce(settled.motorCurrent(speed, state), speed)
                    + FrictionBrake.force(build, build.vehicle().grip(), 0.0);
        }
    }

    private static BrakeVerdict verdict(BrakeVerdict.Word word, double deceleration) {
        return new BrakeVerdict(word, deceleration, 2.0, 0.5, 25.0, 5.0, 1.0, 1.0);
    }

    private static Build coasting(double friction, double slope) {
        Build board = BrakedBuilds.frictionOnly(friction);
        Use use = board.use();
        return board.withUse(use.withSlope(slope, use.slopeLength()))
                .withSettings(Settings.NONE.withMotorBrakeCurrent(0.0));
    }
}

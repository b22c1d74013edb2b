package brakewright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Riding;
import brakewright.spec.Settings;
import brakewright.spec.Wiring;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** An ordinary ride of a board at 6 m/s whose warmest pack in use is at 40 °C. */
class WarmRideTest {

    private static final Build BOARD = Builds.trailBoard();

    @Test
    void theRideBeginsWithTheWarmestPackInUse() {
        assertThat(WarmRide.startC(BOARD)).isEqualTo(40.0);
        assertThat(WarmRide.startC(BOARD.withBattery(BOARD.battery().at(50.0)))).isEqualTo(50.0);
        WarmRide ride = WarmRide.of(BOARD, drive(BOARD)).orElseThrow();
        assertThat(ride.speed()).isEqualTo(6.0);
        assertThat(ride.heat().startC()).isEqualTo(40.0);
    }

    @Test
    void theElectronicsAndAHeadwindTakeTheirPower() {
        Powertrain powertrain = Powertrain.of(BOARD);
        double still = WarmRide.power(BOARD, powertrain);
        assertThat(still).isPositive();
        assertThat(WarmRide.power(riding(BOARD, 6.0, 0.0, 10.0), powertrain))
                .isCloseTo(still + 7.0, within(1e-9));
        assertThat(WarmRide.power(riding(BOARD, 6.0, 2.0, 3.0), powertrain)).isGreaterThan(still);
    }

    @Test
    void nothingIsToldOfARideThatIsNotReachedOrTakesNothing() {
        assertThat(WarmRide.of(riding(BOARD, 40.0, 0.0, 3.0), drive(BOARD))).isEmpty();
        Build weak = BOARD.withSettings(Settings.NONE.withMotorDriveCurrent(0.1));
        assertThat(WarmRide.of(weak, drive(weak))).isEmpty();
        assertThat(WarmRide.of(Builds.parcelTrike(), drive(Builds.parcelTrike()))).isEmpty();
    }

    /** What leaves the pack cooler than the warmest that is stated adds no temperature. */
    @Test
    void onlyARideThatWarmsBeyondWhatIsStatedAddsATemperature() {
        assertThat(WarmRide.temperatures(BOARD, drive(BOARD))).startsWith(BOARD.cellTemperatures());
        Build airy = through(BOARD, 1e-3);
        assertThat(WarmRide.temperatures(airy, drive(airy)))
                .containsExactly(airy.cellTemperatures());
        Build closed = through(BOARD, 100.0);
        double highest = WarmRide.of(closed, drive(closed)).orElseThrow().heat().highestC();
        assertThat(highest).isGreaterThan(40.0);
        assertThat(WarmRide.temperatures(closed, drive(closed))).hasSize(4).endsWith(highest);
    }

    /** The one without a way to the air warms more; of alike packs the first is told. */
    @Test
    void ofTwoPacksTheOneThatComesNearerToItsWindowIsTold() {
        Pack airy = Builds.pack(through(BOARD, 1.0));
        Pack closed = Builds.pack(through(BOARD, 100.0));
        assertThat(told(airy, closed)).isEqualTo(2);
        assertThat(told(closed, airy)).isEqualTo(1);
        assertThat(told(closed, closed)).isEqualTo(1);
        Pack cool = Builds.pack(through(BOARD, 0.01));
        Pack cooler = Builds.pack(through(BOARD, 0.001));
        assertThat(told(cool, cooler)).isEqualTo(1);
        assertThat(told(cooler, cool)).isEqualTo(2);
    }

    private static int told(Pack one, Pack other) {
        Build build =
                BOARD.withBattery(
                        new Battery(List.of(one, other), Joining.PARALLEL, Wiring.NONE, 0.0));
        return WarmRide.of(build, drive(build)).orElseThrow().heat().pack();
    }

    private static ElectricDrive drive(Build build) {
        return Operation.of(build, Limits.of(build)).drive();
    }

    private static Build riding(Build build, double speed, double wind, double idle) {
        return build.withUse(
                build.use().withRiding(new Riding(speed, wind, idle, 0.0005, Optional.empty())));
    }

    private static Build through(Build build, double toAir) {
        Pack old = Builds.pack(build);
        return Builds.withPack(build, old.withToAir(OptionalDouble.of(toAir)));
    }
}

package brakewright.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.TopSpeed;
import brakewright.road.RoadLoad;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Riding;
import brakewright.spec.Taper;
import brakewright.spec.Use;
import brakewright.spec.Wiring;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What riders of stand-on boards commonly report. Common practice: no source was found for either
 * figure, so they are held against the model with wide bounds only.
 */
@Tag("plausibility")
class CommonPracticeTest {

    private static final double KILOMETRES_PER_HOUR = 1.0 / 3.6;
    private static final double WATT_HOURS_PER_KILOMETRE = 3.6;

    /** The board draws this at top speed on flat ground, as is commonly said [W]. */
    private static final double DRAWN = 1500.0;

    /** Riders, tyres and clothes differ by some tens of per cent, speed by a third of that. */
    private static final double ANY_RIDER = 0.15;

    /** A vineyard trail board whose pack current is what 1.5 kW takes; its motors could do more. */
    @Test
    void aBoardThatDrawsOneAndAHalfKilowattsTopsOutNearFortyFiveKilometresPerHour() {
        Build board = Builds.trailBoard();
        PackState pack =
                PackState.of(
                        new BatteryModel(board.battery()), 0.7, board.battery().temperatureC());
        ElectricDrive drive =
                new ElectricDrive(
                        Powertrain.of(board), 60.0, -pack.currentInto(-DRAWN), Optional.empty());
        TopSpeed.Result top = TopSpeed.find(drive, RoadLoad.of(board), 0.0, 0.0, pack);
        DriveState state = drive.at(top.speed(), pack);
        assertThat(top.holder()).isEqualTo(TopSpeed.Holder.PACK_CURRENT);
        assertThat(state.packCurrent() * state.packVoltage())
                .isCloseTo(DRAWN, within(1e-6 * DRAWN));
        double commonlySaid = 45.0;
        assertThat(top.speed() / KILOMETRES_PER_HOUR)
                .isCloseTo(commonlySaid, within(ANY_RIDER * commonlySaid));
    }

    /** 32 km at a mean of 19 km/h on two packs of 10S4P, until they are empty. */
    @Test
    void twoPacksThatLastThirtyTwoKilometresImplyAPlausibleConsumption() {
        double speed = 19.0 * KILOMETRES_PER_HOUR;
        double distance = 32_000.0;
        Build board = twoPacks();
        ElectricDrive drive = tapered(board);
        Cruise steady = Cruise.of(board, drive, Road.LEVEL, speed);
        double implied = steady.spent().atTerminals() / distance;
        assertThat(implied / WATT_HOURS_PER_KILOMETRE).isBetween(10.0, 30.0);
        assertThat(steady.consumption())
                .as("a steady ride on the level takes less than one with stops and slopes")
                .isBetween(0.3 * implied, implied);
        MeasuredRange measured =
                MeasuredRange.of(board, drive, new Riding.Measured(implied, speed));
        assertThat(measured.distance()).isCloseTo(distance, within(0.05 * distance));
    }

    /** The taper fades the drive near the end, so the last of the way is ridden slower. */
    @Test
    void theRangeEndsAtACrawl() {
        Build board = twoPacks();
        double speed = 19.0 * KILOMETRES_PER_HOUR;
        Cruise ride = Cruise.of(board, tapered(board), Road.LEVEL, speed);
        double slower = ride.distance() - ride.distanceHeld();
        assertThat(slower).isBetween(100.0, 3000.0);
        double timeHeld = ride.distanceHeld() / speed;
        assertThat(slower / (ride.time() - timeHeld)).isLessThan(0.8 * speed);
    }

    private static ElectricDrive tapered(Build board) {
        return new ElectricDrive(
                Powertrain.of(board), 60.0, 40.0, Optional.of(new Taper(33.0, 29.0)));
    }

    /** The trail board on two packs of 10S4P with cells of 3 Ah, ridden until they are empty. */
    private static Build twoPacks() {
        Build board = Builds.trailBoard();
        Cell four = Builds.pack(board).cell();
        Cell three = four.withCapacityAh(3.0).withDischargeCurrent(15.0).withChargeCurrent(4.0);
        Pack pack = Builds.barePack(three, 10, 4, 0.012);
        Use use = board.use();
        return board.withBattery(
                        new Battery(List.of(pack, pack), Joining.PARALLEL, Wiring.NONE, 0.0))
                .withUse(use.withChargeTo(0.0).withChargeFrom(1.0));
    }
}

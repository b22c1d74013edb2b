package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Protection;
import brakewright.spec.RoundFigures;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** 20 A at 10 m/s return 160 W: 4 A at a charge of 0.8, against 38 V and 2 V more; hand-worked. */
@Tag("law")
class FirstStopTest {

    private static final Offset<Double> ROUNDING = within(1e-9);
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    /** Cells that bear 4.5 V may take 14 A at 3.8 V. */
    @Test
    void aStopThatThePackMayTakeIsSafe() {
        FirstStop stop = stop(braking(4.5, Protection.UNKNOWN), 0.8);
        assertThat(stop.packCurrent()).isCloseTo(4.0, ROUNDING);
        assertThat(stop.cellVoltage()).isCloseTo(4.0, ROUNDING);
        assertThat(stop.mayTake()).isCloseTo(14.0, ROUNDING);
        assertThat(stop.isSafe()).isTrue();
        assertThat(stop.isExceeded()).isFalse();
        assertThat(stop.opening()).isEqualTo(FirstStop.Opening.NOTHING);
        assertThat(stop.opensAfter()).isInfinite();
        assertThat(stop.isDelayTypical()).isFalse();
        assertThat(stop.opened()).isEmpty();
        assertThat(stop.chargeTo()).isEmpty();
        assertThat(stop.rideFirst()).isEmpty();
    }

    /** Its typical delay is 9 ms. */
    @Test
    void aChargeTripOpensAfterItsDelay() {
        FirstStop stop = stop(braking(4.5, trips(3.0, UNKNOWN, 9.0, UNKNOWN)), 0.8);
        assertThat(stop.mayTake()).isCloseTo(3.0, ROUNDING);
        assertThat(stop.isExceeded()).isTrue();
        assertThat(stop.isSafe()).isFalse();
        assertThat(stop.opening()).isEqualTo(FirstStop.Opening.CHARGE_TRIP);
        assertThat(stop.opensAfter()).isCloseTo(9e-3, ROUNDING);
        assertThat(stop.isDelayTypical()).isTrue();
        assertThat(stop.opened().orElseThrow().after()).isCloseTo(9e-3, ROUNDING);
    }

    /** A charge trip that is told to wait 2 s is overtaken by the typical 1.2 s of the other. */
    @Test
    void ofTwoTripsTheOneThatIsOverFirstOpens() {
        OptionalDouble two = OptionalDouble.of(2.0);
        FirstStop slow = stop(braking(4.5, trips(3.0, two, 3.9, UNKNOWN)), 0.8);
        assertThat(slow.opening()).isEqualTo(FirstStop.Opening.OVERVOLTAGE_TRIP);
        assertThat(slow.opensAfter()).isCloseTo(1.2, ROUNDING);
        assertThat(slow.isDelayTypical()).isTrue();
        FirstStop told = stop(braking(4.5, trips(3.0, two, 3.9, OptionalDouble.of(2.5))), 0.8);
        assertThat(told.opening()).isEqualTo(FirstStop.Opening.CHARGE_TRIP);
        assertThat(told.opensAfter()).isCloseTo(2.0, ROUNDING);
        assertThat(told.isDelayTypical()).isFalse();
    }

    /** 10 N and 3 m/s² times 100 kg slow down 125 kg. */
    @Test
    void roadAndFrictionBrakeAreLeftWithoutTheElectricBrake() {
        Build build =
                Builds.withVehicle(
                        braking(4.5, Protection.UNKNOWN),
                        RoundFigures.parts(0.25, OptionalDouble.of(3.0)));
        FirstStop stop = stop(build, 0.8);
        assertThat(stop.leftSlow()).isCloseTo(310.0 / 125.0, ROUNDING);
        assertThat(stop.leftDeceleration()).isCloseTo(310.0 / 125.0, ROUNDING);
    }

    /**
     * Cells that bear 4 V may take 4 A at a charge of 0.8 and no more. From 0.9 down to there the
     * pack gives 0.2 Ah at 38.5 V. Against 10 N the motor needs 10 A, which draw 110 W at 10 m/s:
     * 11 J for each metre.
     */
    @Test
    void theRideThatBringsThePackToASafeChargeSpendsWhatIsTooMuch() {
        FirstStop stop = stop(braking(4.0, Protection.UNKNOWN), 0.9);
        assertThat(stop.chargeTo().orElseThrow()).isCloseTo(0.8, within(1e-8));
        assertThat(stop.rideFirst().orElseThrow())
                .isCloseTo(0.2 * 3600.0 * 38.5 / 11.0, within(1e-3));
    }

    private static Build braking(double borne, Protection protection) {
        return RoundFigures.fed(RoundFigures.cell(2.0, borne), protection)
                .withSettings(RoundFigures.set(20.0, 20.0, 20.0, 20.0));
    }

    private static FirstStop stop(Build build, double charge) {
        Build used = build.withUse(build.use().withChargeFrom(charge));
        Limits limits = Limits.of(used);
        return FirstStop.of(used, limits, Operation.of(used, limits), 25.0);
    }

    private static Protection trips(
            double current, OptionalDouble waits, double voltage, OptionalDouble waitsToo) {
        return Protection.UNKNOWN
                .withChargeTrip(OptionalDouble.of(current))
                .withCellOvervoltageTrip(OptionalDouble.of(voltage))
                .withChargeTripDelay(waits)
                .withOvervoltageTripDelay(waitsToo);
    }
}

package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.spec.Battery;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.Onset;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.Relaxation;
import brakewright.spec.RoundFigures;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Cells of 0.05 Ω, at 3.5 V where they are half charged; hand-worked. */
@Tag("law")
class TrippingTest {

    /** 5 A raise the cells to 3.75 V. */
    @Test
    void whatIsJustAtATripDoesNotPassIt() {
        assertThat(half(pack(RoundFigures.CELL, 5.0, 3.75)).passedBy(5.0)).isEmpty();
        assertThat(half(pack(RoundFigures.CELL, 5.0, 3.75)).passedBy(5.001))
                .extracting(Tripping.Trip::opening)
                .containsExactly(FirstStop.Opening.CHARGE_TRIP, FirstStop.Opening.OVERVOLTAGE_TRIP);
    }

    @Test
    void cellsThatRestAboveTheTripPassItWithTheFirstCurrentNotBefore() {
        Tripping above = half(pack(RoundFigures.CELL, 5.0, 3.4));
        assertThat(above.passedBy(0.0)).isEmpty();
        assertThat(above.passedBy(1e-6))
                .singleElement()
                .satisfies(trip -> assertThat(trip.passedAfter()).isZero());
    }

    /**
     * 60 % of the resistance are there at once; half of the rest, which takes 10 s, after {@code 10
     * s·lb(4/3)}, as it comes with a time constant of 10 s/ln 2. 3.7 V are 0.2 V above rest: 40 %
     * of what 10 A make, 80 % of what 5 A make, all of what 4 A make.
     */
    @Test
    void theVoltagePassesItsTripOnceEnoughOfTheResistanceIsThere() {
        Cell rising =
                Builds.relaxing(
                        RoundFigures.CELL,
                        new Relaxation(
                                0.0,
                                60.0,
                                Curve.constant(1.0),
                                new Onset(0.6, 10.0 / Math.log(2.0))));
        Tripping tripping = half(pack(rising, 100.0, 3.7));
        assertThat(after(tripping, 10.0)).isZero();
        assertThat(after(tripping, 5.0))
                .isCloseTo(10.0 * Math.log(4.0 / 3.0) / Math.log(2.0), within(1e-9));
        assertThat(after(tripping, 4.0 + 1e-9)).isCloseTo(10.0, within(1e-6));
        assertThat(tripping.passedBy(3.999)).isEmpty();
    }

    /** Two alike packs carry half of the current each: 5 A of 10 A, and 3.75 V. */
    @Test
    void ofSeveralPacksEachPassesItsOwnTripWithItsOwnPartOfTheCurrent() {
        Pack early = pack(RoundFigures.CELL, 4.9, 3.74);
        Pack late = pack(RoundFigures.CELL, 5.1, 3.76);
        Tripping both = half(Builds.joined(Joining.PARALLEL, List.of(late, early)));
        assertThat(both.passedBy(10.0))
                .allSatisfy(trip -> assertThat(trip.place()).isEqualTo(1))
                .extracting(Tripping.Trip::opening)
                .containsExactly(FirstStop.Opening.CHARGE_TRIP, FirstStop.Opening.OVERVOLTAGE_TRIP);
        assertThat(both.passedBy(9.5)).isEmpty();
    }

    /** 9 ms and 1.2 s are typical. */
    @Test
    void aTripWaitsAsLongAsItsBoardTellsOrAsSuchOnesTypicallyDo() {
        Protection told =
                Protection.UNKNOWN
                        .withChargeTrip(OptionalDouble.of(4.0))
                        .withCellOvervoltageTrip(OptionalDouble.of(3.6))
                        .withChargeTripDelay(OptionalDouble.of(0.3))
                        .withOvervoltageTripDelay(OptionalDouble.of(2.0));
        assertThat(half(RoundFigures.pack(RoundFigures.CELL, told)).passedBy(5.0))
                .extracting(Tripping.Trip::delay)
                .containsExactly(0.3, 2.0);
        assertThat(half(pack(RoundFigures.CELL, 4.0, 3.6)).passedBy(5.0))
                .extracting(Tripping.Trip::delay)
                .containsExactly(9e-3, 1.2);
    }

    private static double after(Tripping tripping, double current) {
        List<Tripping.Trip> passed = tripping.passedBy(current);
        assertThat(passed).hasSize(1);
        return passed.get(0).passedAfter();
    }

    private static Tripping half(Pack pack) {
        return half(Battery.of(pack));
    }

    private static Tripping half(Battery battery) {
        return new Tripping(new BatteryModel(battery), 0.5, 25.0);
    }

    private static Pack pack(Cell cell, double chargeTrip, double overvoltageTrip) {
        return RoundFigures.pack(
                cell,
                Protection.UNKNOWN
                        .withChargeTrip(OptionalDouble.of(chargeTrip))
                        .withCellOvervoltageTrip(OptionalDouble.of(overvoltageTrip)));
    }
}

package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.spec.AnyBuild;
import brakewright.spec.Battery;
import brakewright.spec.Cell;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** Which trips a current passes, and when. */
@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class TrippingProperties {

    private static final double ROUNDING = 1e-9;

    /** The voltage is at the trip when it is said to pass it, or beyond it from the beginning. */
    @Property
    void theVoltageIsAtTheTripWhenItPassesIt(
            @ForAll Battery battery,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 300.0) double current,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        double cellsC = battery.temperatureC();
        BatteryModel model = new BatteryModel(battery);
        for (Tripping.Trip trip : new Tripping(model, charge, cellsC).passedBy(current)) {
            PackModel pack = model.into().packs().get(trip.place());
            double own = current * model.into().share(trip.place(), charge, cellsC);
            assertThat(trip.passedAfter()).isBetween(0.0, Cell.PULSE);
            if (trip.opening() == FirstStop.Opening.CHARGE_TRIP) {
                assertThat(own).isGreaterThan(pack.pack().protection().chargeTrip().getAsDouble());
                assertThat(trip.passedAfter()).isZero();
            } else {
                double voltage =
                        pack.highestCellVoltage(
                                own,
                                model.chargeOf(trip.place(), charge),
                                cellsC,
                                trip.passedAfter());
                double bound = pack.pack().protection().cellOvervoltageTrip().getAsDouble();
                assertThat(voltage).isGreaterThan(bound - ROUNDING);
                if (trip.passedAfter() > 0.0) {
                    assertThat(voltage).isCloseTo(bound, within(1e-6));
                }
            }
        }
    }

    /** What a current passes, a greater one passes, too, and no later. */
    @Property
    void moreCurrentPassesNoFewerTripsAndNoneLater(
            @ForAll Battery battery,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 300.0) double one,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 300.0) double other,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Tripping tripping = new Tripping(new BatteryModel(battery), charge, battery.temperatureC());
        for (Tripping.Trip less : tripping.passedBy(Math.min(one, other))) {
            assertThat(tripping.passedBy(Math.max(one, other)))
                    .anySatisfy(
                            more -> {
                                assertThat(more.opening()).isEqualTo(less.opening());
                                assertThat(more.place()).isEqualTo(less.place());
                                assertThat(more.passedAfter())
                                        .isLessThanOrEqualTo(less.passedAfter() + ROUNDING);
                            });
        }
    }
}

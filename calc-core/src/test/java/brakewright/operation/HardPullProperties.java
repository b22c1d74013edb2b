package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.limit.Limits;
import brakewright.limit.Severity;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Protection;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What opens in a hard pull, and when. */
@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class HardPullProperties {

    /** What stands in a search for a time is found to 1e-12, of volts that fall with it. */
    private static final double SEARCHED = 1e-6;

    /** The voltage is at the trip, or the current beyond it, as it is said to be passed. */
    @Property
    void whatOpensIsAtItsTripWhenItIsPassed(
            @ForAll Build build, @ForAll @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Optional<HardPull.Opened> found = pull(build).opensFirst(charge);
        if (found.isEmpty()) {
            return;
        }
        HardPull.Opened opened = found.get();
        BatteryModel model = new BatteryModel(build.battery());
        PackModel pack = model.packs().get(opened.place());
        Protection protection = pack.pack().protection();
        assertThat(opened.passedAfter()).isBetween(0.0, build.use().effort().hardPull() + SEARCHED);
        if (opened.opening() == HardPull.Opening.DISCHARGE_TRIP) {
            assertThat(opened.current())
                    .isGreaterThan(protection.dischargeTrip().getAsDouble() - SEARCHED);
        } else {
            double trip = protection.cellUndervoltageTrip().getAsDouble();
            double voltage =
                    pack.lowestCellVoltage(
                            opened.current(),
                            model.chargeOf(opened.place(), charge),
                            opened.cellsC(),
                            opened.passedAfter());
            assertThat(voltage).isLessThan(trip + SEARCHED);
            if (opened.passedAfter() > 0.0) {
                assertThat(voltage).isCloseTo(trip, within(SEARCHED));
            }
        }
    }

    /** Where the cells are told to be beyond a trip at the end of the pull, something opens. */
    @Property
    void aTripThatIsExceededOpensAndWhatOpensIsExceeded(
            @ForAll Build build, @ForAll @DoubleRange(min = 0.0, max = 1.0) double charge) {
        HardPull pull = pull(build);
        HardPull.Loaded nearest = pull.nearestToTrip(charge);
        Optional<HardPull.Opened> found = pull.opensFirst(charge);
        if (Severity.isExceeded(nearest.trip(), nearest.cell())) {
            assertThat(found).isPresent();
        }
        if (found.isPresent() && found.get().opening() == HardPull.Opening.UNDERVOLTAGE_TRIP) {
            assertThat(nearest.cell()).isLessThan(nearest.trip());
        }
    }

    private static HardPull pull(Build build) {
        Limits limits = Limits.of(build);
        return new HardPull(
                build,
                limits,
                Operation.of(build, limits).trusted(limits),
                build.battery().temperatureC());
    }
}

package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.powertrain.PackState;
import brakewright.spec.AnyBattery;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Joined;
import brakewright.spec.Joining;
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
@Domain(SetBuild.class)
@Domain(AnyBattery.class)
@Domain(DomainContext.Global.class)
class LossProperties {

    /** Between the charge states looked at, shares and currents bend by less. */
    private static final double BETWEEN = 1e-3;

    /** Losing a pack never lowers another's current, and the charge told is the worst in use. */
    @Property(tries = 200)
    void theOthersCarryNoLessThanBeforeAtAnyCharge(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double share) {
        Battery battery = joined.battery();
        Assume.that(battery.joining() == Joining.PARALLEL && battery.packs().size() == 2);
        Build build = any.withBattery(battery);
        Limits limits = Limits.of(build);
        Operation trusted = Operation.of(build, limits).trusted(limits);
        BatteryModel model = new BatteryModel(battery);
        double low = build.use().chargeTo();
        double charge = low + share * (build.use().chargeFrom() - low);
        PackState state = PackState.of(model, charge, battery.temperatureC());
        for (Sharing.Loss loss : Sharing.of(build, limits, Operation.of(build, limits)).losses()) {
            int left = 2 - loss.pack();
            var protection = battery.packs().get(left).protection();
            OptionalDouble trip =
                    loss.isDraw() ? protection.dischargeTrip() : protection.chargeTrip();
            double whole =
                    loss.isDraw()
                            ? trusted.drive().greatestDraw(trusted.topSpeed(), state)
                            : trusted.brake().greatestReturn(trusted.topSpeed(), state);
            if (trip.isEmpty()) {
                assertThat(loss.greatestUse()).isNaN();
            } else {
                assertThat(loss.greatestUse() * (1.0 + BETWEEN))
                        .isGreaterThanOrEqualTo(whole / trip.getAsDouble());
                assertThat(loss.isAllLost()).isEqualTo(loss.greatestUse() > 1.0);
            }
        }
    }
}

package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import java.util.Optional;
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
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class CheckProperties {

    @Property(tries = 100)
    void theSameSettingsChangeNothing(@ForAll Build build) {
        for (Settings same : new Settings[] {Settings.NONE, build.settings()}) {
            CheckSheet check = CheckSheet.of(build, same);
            assertThat(check.isNoLessSafe()).isTrue();
            assertThat(check.uselessAbove()).isEmpty();
            assertThat(check.safeChargeProposed()).isEqualTo(check.safeChargePresent());
            assertThat(check.proposed().review()).isEqualTo(check.present().review());
        }
    }

    @Property(tries = 100)
    void lessRegenIsNeverLessSafeForThePack(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 50.0) double amperes,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double share) {
        Build present = build.withSettings(setting(OptionalDouble.empty(), amperes));
        CheckSheet check = CheckSheet.of(present, setting(OptionalDouble.empty(), share * amperes));
        assertThat(check.safeChargeProposed())
                .isGreaterThanOrEqualTo(check.safeChargePresent() - 1e-9);
    }

    /** Both brake alike above the speed and unlike below it, at the fullest pack in use. */
    @Property(tries = 300)
    void aRaiseIsUselessExactlyAboveTheNamedSpeed(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 60.0) double amperes,
            @ForAll @Scale(6) @DoubleRange(min = 1.05, max = 2.0) double multiple,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 30.0) double regen) {
        Build present = build.withSettings(setting(OptionalDouble.of(amperes), regen));
        CheckSheet check =
                CheckSheet.of(
                        present,
                        new Settings(
                                OptionalDouble.empty(),
                                OptionalDouble.of(multiple * amperes),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                OptionalDouble.empty()));
        double top = check.proposed().operation().topSpeed();
        double useless = check.uselessAbove().orElse(top);
        assertThat(useless).isLessThanOrEqualTo(top);
        PackState full =
                PackState.of(
                        new BatteryModel(build.battery()),
                        build.use().chargeFrom(),
                        build.battery().temperatureC());
        for (double share : new double[] {0.001, 0.3, 1.0}) {
            double speed = useless + share * (top - useless);
            double before = current(check.present().operation().brake(), speed, full);
            double after = current(check.proposed().operation().brake(), speed, full);
            if (check.uselessAbove().isPresent()) {
                assertThat(after).isCloseTo(before, within(1e-9 * before + 1e-9));
            }
        }
        Assume.that(useless > 0.0);
        for (double share : new double[] {0.1, 0.7, 0.999}) {
            double speed = share * useless;
            double before = current(check.present().operation().brake(), speed, full);
            double after = current(check.proposed().operation().brake(), speed, full);
            if (speed < build.controllers().brakeEndsBelow()) {
                assertThat(after).isEqualTo(before);
            } else {
                assertThat(after).isGreaterThan(before);
            }
        }
    }

    private static double current(ElectricBrake brake, double speed, PackState pack) {
        return brake.powertrain()
                .limitedBrakeCurrent(
                        brake.motorCurrentAt(speed),
                        speed,
                        pack.powerReturnedBy(brake.settledPackLimit(pack)));
    }

    private static Settings setting(OptionalDouble brake, double regen) {
        return new Settings(
                OptionalDouble.empty(),
                brake,
                OptionalDouble.empty(),
                OptionalDouble.of(regen),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }
}

package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.AlongCharge;
import brakewright.battery.BatteryModel;
import brakewright.powertrain.PackState;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Joined;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What is found at several charge states at once is what is found at each, to the last digit. */
@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class AlongChargeProperties {

    @Property(tries = 100)
    void constraintsPermitAlongTheChargeWhatTheyPermitAtEachPlace(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Size(3) List<@Scale(6) @DoubleRange(min = 0.0, max = 1.0) Double> some,
            @ForAll @Scale(2) @DoubleRange(min = -20.0, max = 60.0) double cellsC) {
        Build build = Builds.withBattery(any, joined.battery());
        double[] charges = some.stream().mapToDouble(Double::doubleValue).toArray();
        Limits limits = Limits.of(build);
        agree(limits.packRegen(), limits.battery().into().along(charges), cellsC);
        agree(limits.packRegen().brief(), limits.battery().into().along(charges), cellsC);
        agree(limits.packDischarge(), limits.battery().along(charges), cellsC);
    }

    private static void agree(PackLimit limit, AlongCharge along, double cellsC) {
        for (PackConstraint constraint : limit.constraints()) {
            for (double atC : new double[] {cellsC, 25.0, cellsC}) {
                double[] permitted = constraint.limitsAt(along, atC);
                for (int i = 0; i < permitted.length; i++) {
                    assertThat(permitted[i])
                            .as("%s of %s", constraint.id(), constraint.pack())
                            .isEqualTo(constraint.limitAt(along.charges()[i], atC));
                }
            }
        }
    }

    @Property(tries = 100)
    void packsAreAlongTheChargeWhatTheyAreAtEachPlace(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Size(3) List<@Scale(6) @DoubleRange(min = 0.0, max = 1.0) Double> some,
            @ForAll @Scale(2) @DoubleRange(min = -20.0, max = 60.0) double cellsC) {
        BatteryModel model = new BatteryModel(Builds.withBattery(any, joined.battery()).battery());
        double[] charges = some.stream().mapToDouble(Double::doubleValue).toArray();
        AlongCharge out = model.along(charges);
        AlongCharge into = model.into().along(charges);
        PackState[] states = PackState.of(out, into, cellsC);
        for (int i = 0; i < charges.length; i++) {
            PackState one = PackState.of(model, charges[i], cellsC);
            assertThat(states[i].voltage()).isEqualTo(one.voltage());
            assertThat(states[i].resistance()).isEqualTo(one.resistance());
            assertThat(states[i].resistanceInto()).isEqualTo(one.resistanceInto());
            for (int pack = 0; pack < model.packs().size(); pack++) {
                assertThat(out.shares(pack, cellsC)[i])
                        .isEqualTo(model.share(pack, charges[i], cellsC));
                assertThat(into.resistances(cellsC, Double.POSITIVE_INFINITY)[i])
                        .isEqualTo(
                                model.into()
                                        .resistance(charges[i], cellsC, Double.POSITIVE_INFINITY));
            }
        }
    }
}

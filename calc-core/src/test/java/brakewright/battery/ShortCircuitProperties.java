package brakewright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.AnyBuild;
import brakewright.spec.Battery;
import brakewright.spec.Builds;
import brakewright.spec.FuseBreaking;
import brakewright.spec.Joined;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;

@Tag("law")
@Domain(AnyBuild.class)
class ShortCircuitProperties {

    private static final double ROUNDING = 1e-12;

    /**
     * 12 cells of 4.2 V; 12/4 of 16 mΩ, times 0.6 for the first instant, and at 60 °C times 0.6887:
     * 0.8 at 45 °C, further down on the line of Arrhenius from 25 °C.
     */
    @Example
    void aBoardsFuseMeetsTwoAndAHalfThousandAmperes() {
        ShortCircuit fault = new ShortCircuit(Builds.trailBoard().battery());
        assertThat(fault.voltage()).isCloseTo(50.4, within(1e-9));
        assertThat(fault.current()).isCloseTo(50.4 / (0.0288 * 0.688721024), within(1e-4));
        assertThat(fault.currentThrough(0)).isEqualTo(fault.current());
    }

    @Property
    void twoEqualPacksInParallelDriveTwiceTheCurrentAndEachFuseMeetsThatOfOne(@ForAll Pack pack) {
        var voltage = pack.cell().openCircuitVoltage();
        Assume.that(voltage.at(1.0) > voltage.at(0.0) + 1e-3);
        ShortCircuit one = new ShortCircuit(Battery.of(pack));
        ShortCircuit two = new ShortCircuit(joined(pack, Joining.PARALLEL));
        assertThat(two.voltage()).isEqualTo(one.voltage());
        assertThat(two.current()).isEqualTo(2.0 * one.current());
        assertThat(two.currentThrough(1)).isEqualTo(one.current());
    }

    @Property
    void twoEqualPacksInSeriesDriveTheCurrentOfOneAtTwiceTheVoltage(@ForAll Pack pack) {
        ShortCircuit one = new ShortCircuit(Battery.of(pack));
        ShortCircuit two = new ShortCircuit(joined(pack, Joining.SERIES));
        assertThat(two.voltage()).isEqualTo(2.0 * one.voltage());
        assertThat(two.current()).isEqualTo(one.current());
        assertThat(two.currentThrough(0)).isEqualTo(one.current());
    }

    private static Battery joined(Pack pack, Joining joining) {
        Battery alone = Battery.of(pack);
        return new Battery(List.of(pack, pack), joining, alone.trunk(), 0.0);
    }

    @Property
    void aFuseMeetsAllThatItsPackFeedsAndAllThatTheOthersFeed(@ForAll Joined joined) {
        Assume.that(joined.battery().joining() == Joining.PARALLEL);
        ShortCircuit fault = new ShortCircuit(joined.battery());
        double sum = 0.0;
        for (int k = 0; k < joined.battery().packs().size(); k++) {
            double own = new ShortCircuit(Battery.of(joined.battery().packs().get(k))).current();
            sum += own;
            assertThat(fault.currentThrough(k))
                    .isGreaterThanOrEqualTo(own * (1.0 - ROUNDING))
                    .isGreaterThanOrEqualTo((fault.current() - own) * (1.0 - ROUNDING))
                    .isLessThanOrEqualTo(fault.current() * (1.0 + ROUNDING));
        }
        assertThat(sum).isCloseTo(fault.current(), within(ROUNDING * sum));
    }

    /** That common to all where it is described; else what one behind all packs would meet. */
    @Property
    void theFuseOfWhichMostIsAskedIsFound(@ForAll Joined joined) {
        FuseDuty hardest = FuseDuty.hardest(joined.battery());
        List<FuseDuty> all = FuseDuty.of(joined.battery());
        if (all.isEmpty()) {
            ShortCircuit fault = new ShortCircuit(joined.battery());
            assertThat(hardest.current()).isEqualTo(fault.current());
            assertThat(hardest.breaking()).isEqualTo(FuseBreaking.UNKNOWN);
        } else {
            assertThat(all).contains(hardest).allMatch(each -> each.current() <= hardest.current());
        }
    }

    /** It is an upper bound of what the pack drives at any charge and temperature. */
    @Property
    void noChargeOrTemperatureDrivesMore(@ForAll Pack pack) {
        PackModel model = new PackModel(pack);
        double most = new ShortCircuit(Battery.of(pack)).current();
        for (double charge : new double[] {0.0, 0.3, 0.6, 0.9, 1.0}) {
            double now = model.openCircuitVoltage(charge) / model.resistance(charge, 60.0);
            assertThat(now).isLessThan(most);
        }
    }
}

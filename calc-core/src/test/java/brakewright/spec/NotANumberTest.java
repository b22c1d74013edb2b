package brakewright.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.limit.Limits;
import brakewright.limit.PackLimit;
import brakewright.machine.Copper;
import brakewright.powertrain.PackState;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whoever looks something up at NaN is told which argument that was. */
@Tag("law")
class NotANumberTest {

    private static final Build BUILD = Builds.trailBoard();

    private static void assertRefused(String name, ThrowingCallable lookUp) {
        assertThatThrownBy(lookUp)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(name)
                .hasMessageContaining("must be a number, was NaN");
    }

    @Test
    void isRefusedByCurves() {
        Curve curve = Curve.constant(3.0);
        assertRefused("where a curve is read", () -> curve.at(Double.NaN));
        assertRefused("what a curve reaches", () -> curve.firstReaches(Double.NaN));
        assertRefused("what a curve stays below", () -> curve.lastStays(Double.NaN));
        assertThat(curve.at(Double.NEGATIVE_INFINITY)).isEqualTo(3.0);
        assertThat(curve.at(Double.POSITIVE_INFINITY)).isEqualTo(3.0);
    }

    @Test
    void isRefusedByTemperatureWindows() {
        Cell cell = Builds.pack(BUILD).cell();
        assertRefused("cell temperature", () -> cell.charging().shareAt(Double.NaN));
        assertRefused("cell temperature", () -> cell.discharging().contains(Double.NaN));
        assertRefused("temperature of copper", () -> Copper.resistanceFactor(Double.NaN));
    }

    @Test
    void isRefusedByPacks() {
        PackModel pack = new PackModel(Builds.pack(BUILD));
        BatteryModel battery = new BatteryModel(BUILD.battery());
        assertRefused("a curve", () -> pack.openCircuitVoltage(Double.NaN));
        assertRefused("a curve", () -> pack.resistance(0.5, Double.NaN));
        assertRefused("charge state", () -> battery.openCircuitVoltage(Double.NaN));
        assertRefused("charge state", () -> battery.chargeOf(0, Double.NaN));
        assertRefused("a curve", () -> battery.resistance(0.5, Double.NaN));
        assertRefused("charge state", () -> PackState.of(battery, Double.NaN, 20.0));
    }

    @Test
    void isRefusedByPackLimits() {
        for (PackLimit limit :
                new PackLimit[] {Limits.of(BUILD).packRegen(), Limits.of(BUILD).packDischarge()}) {
            assertRefused("charge state", () -> limit.valueAt(Double.NaN, 20.0));
            assertRefused("cell temperature", () -> limit.valueAt(0.5, Double.NaN));
            assertRefused("charge state", () -> limit.at(Double.NaN, 20.0));
            assertRefused("cell temperature", () -> limit.at(0.5, Double.NaN));
            assertRefused("cell temperature", () -> limit.staticPart(Double.NaN));
            assertRefused("current", () -> limit.chargeBound(Double.NaN, 20.0));
            assertRefused("cell temperature", () -> limit.chargeBound(5.0, Double.NaN));
        }
    }
}

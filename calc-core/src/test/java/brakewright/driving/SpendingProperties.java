package brakewright.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.Spending;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyDriven.class)
@Domain(DomainContext.Global.class)
class SpendingProperties {

    /** Ten parts of a sum that may cancel: climbing and moving, downhill. */
    private static final double ROUNDING = 1e-9;

    /** What the cells give is U·I, with the current that the power at the terminals takes. */
    @Property(tries = 500)
    void thePartsAddUpToWhatTheCellsGive(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = -0.2, max = 0.2) double slope,
            @ForAll @Scale(6) @DoubleRange(min = -5.0, max = 8.0) double headwind,
            @ForAll boolean full) {
        Propulsion propulsion =
                new Propulsion(build, AnyDriven.drive(build), new Road(slope, headwind));
        Powertrain train = Powertrain.of(build);
        PackState pack = pack(build, charge);
        double current =
                full ? propulsion.fullCurrent(speed, pack) : propulsion.holdingCurrent(speed);
        Assume.that(current == 0.0 || train.thrust(current, speed) > 0.0);
        double idle = build.use().riding().idlePower();
        double power = train.drawnPower(current, speed) + idle;
        Assume.that(power < pack.greatestPower());
        double packCurrent = -pack.currentInto(-power);
        Spending spending = propulsion.spending(current, speed, pack);
        double scale = size(spending);
        assertThat(spending.sum())
                .isCloseTo(pack.voltage() * packCurrent, within(ROUNDING * scale));
        assertThat(spending.atTerminals()).isCloseTo(power, within(ROUNDING * scale));
    }

    /** Force times speed, worked out with sine and cosine of the slope. */
    @Property(tries = 500)
    void eachPartIsItsForceTimesTheSpeed(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = -0.2, max = 0.2) double slope,
            @ForAll @Scale(6) @DoubleRange(min = -5.0, max = 8.0) double headwind) {
        Propulsion propulsion =
                new Propulsion(build, AnyDriven.drive(build), new Road(slope, headwind));
        PackState pack = pack(build, 0.5);
        double current = propulsion.holdingCurrent(speed);
        Spending spending = propulsion.spending(current, speed, pack);
        RoadLoad load = RoadLoad.of(build);
        double weight = build.mass() * 9.80665;
        double angle = Math.atan(slope);
        double scale = ROUNDING * (size(spending) + weight * speed);
        assertThat(spending.climbing()).isCloseTo(weight * Math.sin(angle) * speed, within(scale));
        assertThat(spending.rolling())
                .isCloseTo(
                        weight * load.rollingResistance() * Math.cos(angle) * speed, within(scale));
        double wind = speed + headwind;
        assertThat(spending.air())
                .isCloseTo(
                        0.5 * load.airDensity() * load.dragArea() * wind * Math.abs(wind) * speed,
                        within(scale));
        assertThat(spending.idle()).isEqualTo(build.use().riding().idlePower());
        if (current > 0.0) {
            assertThat(spending.moving()).isCloseTo(0.0, within(scale));
        }
    }

    private static double size(Spending spending) {
        return Math.abs(spending.air())
                + spending.rolling()
                + Math.abs(spending.climbing())
                + Math.abs(spending.moving())
                + spending.drive()
                + spending.motorDrag()
                + spending.copper()
                + spending.controller()
                + spending.idle()
                + spending.pack();
    }

    private static PackState pack(Build build, double charge) {
        return PackState.of(
                new BatteryModel(build.battery()), charge, build.battery().temperatureC());
    }
}

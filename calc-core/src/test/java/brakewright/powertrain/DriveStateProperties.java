package brakewright.powertrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Builds;
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
class DriveStateProperties {

    /** A few ulps of a chain of products and quotients. */
    private static final double ROUNDING = 1e-12;

    /** The solver for the current stops at 1e-12 of it; the voltages are some hundred volts. */
    private static final double SOLVED = 1e-9;

    /** Near the greatest power of the pack half the digits of a current are lost in a root. */
    private static final double HALF_THE_DIGITS = 1e-7;

    /** The solver for the speed stops at 1e-9 m/s. */
    private static final double SPEED_ACCURACY = 1e-8;

    @Property(tries = 500)
    void moreDrawNeverRaisesTheLoadedVoltage(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(3) @DoubleRange(min = 0.0, max = 600.0) double seconds,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 300.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 300.0) double other) {
        PackState pack =
                PackState.of(
                        new BatteryModel(build.battery()),
                        charge,
                        build.battery().temperatureC(),
                        seconds);
        double less = Math.min(one, other);
        double more = Math.max(one, other);
        assertThat(pack.terminalVoltage(-more)).isLessThanOrEqualTo(pack.terminalVoltage(-less));
        double greatest = pack.greatestPower();
        double lessPower = Math.min(1.0, less / 300.0) * greatest;
        double morePower = Math.min(1.0, more / 300.0) * greatest;
        assertThat(pack.terminalVoltage(pack.currentInto(-morePower)))
                .isLessThanOrEqualTo(pack.terminalVoltage(pack.currentInto(-lessPower)));
    }

    @Property(tries = 500)
    void aLongerDrawNeverRaisesTheLoadedVoltage(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(3) @DoubleRange(min = 0.0, max = 600.0) double one,
            @ForAll @Scale(3) @DoubleRange(min = 0.0, max = 600.0) double other) {
        BatteryModel model = new BatteryModel(build.battery());
        double cells = build.battery().temperatureC();
        PackState brief = PackState.of(model, charge, cells, Math.min(one, other));
        PackState lasting = PackState.of(model, charge, cells, Math.max(one, other));
        PackState endless = PackState.of(model, charge, cells, Double.POSITIVE_INFINITY);
        double rounding = 1.0 + ROUNDING;
        assertThat(brief.resistance()).isLessThanOrEqualTo(lasting.resistance() * rounding);
        assertThat(lasting.resistance()).isLessThanOrEqualTo(endless.resistance() * rounding);
    }

    @Property(tries = 500)
    void noneOfTheThreeLimitsIsExceeded(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricDrive drive = AnyDriven.drive(build);
        PackState pack = pack(build, charge);
        DriveState state = drive.at(speed, pack);
        assertThat(state.motorCurrent()).isBetween(0.0, drive.motorCurrent());
        double limit = drive.settledPackLimit(pack);
        assertThat(state.packCurrent())
                .isLessThanOrEqualTo(limit * (1.0 + HALF_THE_DIGITS) + ROUNDING);
        assertThat(state.packCurrent() * state.packVoltage())
                .isLessThanOrEqualTo(pack.powerDrawnBy(limit) * (1.0 + SOLVED) + ROUNDING);
        if (state.motorCurrent() > 0.0) {
            assertThat(drive.powertrain().voltageNeed(state.motorCurrent(), speed))
                    .isLessThanOrEqualTo(state.packVoltage() + SOLVED);
        }
    }

    @Property(tries = 500)
    void whatIsNamedHoldsThePullDown(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricDrive drive = AnyDriven.drive(build);
        PackState pack = pack(build, charge);
        DriveState state = drive.at(speed, pack);
        double need = drive.powertrain().voltageNeed(state.motorCurrent(), speed);
        switch (state.holder()) {
            case MOTOR_CURRENT -> assertThat(state.motorCurrent()).isEqualTo(drive.motorCurrent());
            case PACK_CURRENT -> {
                double permitted = pack.powerDrawnBy(drive.settledPackLimit(pack));
                assertThat(drive.powertrain().drawnPower(state.motorCurrent(), speed))
                        .isCloseTo(permitted, within(SOLVED * permitted));
            }
            case VOLTAGE -> {
                if (state.motorCurrent() > 0.0) {
                    assertThat(need).isCloseTo(state.packVoltage(), within(SOLVED));
                } else {
                    assertThat(need).isGreaterThanOrEqualTo(pack.voltage());
                }
            }
            case STANDSTILL -> throw new AssertionError("a pull is always held by something");
        }
    }

    @Property(tries = 500)
    void thePullIsWhatItsCurrentGives(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricDrive drive = AnyDriven.drive(build);
        PackState pack = pack(build, charge);
        DriveState state = drive.at(speed, pack);
        double power = drive.powertrain().drawnPower(state.motorCurrent(), speed);
        assertThat(state.thrust())
                .isEqualTo(drive.powertrain().thrust(state.motorCurrent(), speed));
        assertThat(state.packVoltage())
                .isCloseTo(
                        pack.voltage() - state.packCurrent() * pack.resistance(),
                        within(ROUNDING * pack.voltage()));
        assertThat(state.packCurrent() * state.packVoltage())
                .isCloseTo(power, within(SOLVED * power));
    }

    @Property(tries = 500)
    void thrustNeverRisesWithSpeed(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double other,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricDrive drive = AnyDriven.drive(build);
        PackState pack = pack(build, charge);
        double slow = drive.at(Math.min(one, other), pack).thrust();
        double fast = drive.at(Math.max(one, other), pack).thrust();
        assertThat(fast).isLessThanOrEqualTo(slow * (1.0 + SOLVED) + SOLVED);
    }

    @Property(tries = 500)
    void atTopSpeedTheThrustMeetsTheRoad(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.15) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 8.0) double headwind,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricDrive drive = AnyDriven.drive(build);
        PackState pack = pack(build, charge);
        RoadLoad load = RoadLoad.of(build);
        TopSpeed.Result top = TopSpeed.find(drive, load, slope, headwind, pack);
        double slower = Math.max(0.0, top.speed() - 10.0 * SPEED_ACCURACY);
        double faster = top.speed() + 10.0 * SPEED_ACCURACY;
        if (top.holder() == TopSpeed.Holder.STANDSTILL) {
            assertThat(top.speed()).isZero();
            assertThat(drive.at(0.0, pack).thrust())
                    .isLessThanOrEqualTo(load.force(0.0, slope, headwind) * (1.0 + SOLVED));
        } else {
            assertThat(drive.at(slower, pack).thrust())
                    .isGreaterThanOrEqualTo(load.force(slower, slope, headwind));
            assertThat(drive.at(faster, pack).thrust())
                    .isLessThanOrEqualTo(load.force(faster, slope, headwind));
        }
    }

    /** The resistance is that of one charge state throughout, so only the voltage falls. */
    @Property(tries = 500)
    void topSpeedNeverRisesAsTheChargeFalls(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double other) {
        Build build = Builds.withCells(any, Builds::evenResistance);
        assertThat(top(build, build.mass(), 0.0, 0.0, Math.min(one, other)))
                .isLessThanOrEqualTo(
                        top(build, build.mass(), 0.0, 0.0, Math.max(one, other)) + SPEED_ACCURACY);
    }

    @Property(tries = 500)
    void topSpeedFallsWithSlopeWindAndMass(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.2) double steeper,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 8.0) double stronger,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 80.0) double heavier) {
        double mass = build.mass();
        double plain = top(build, mass, 0.0, 0.0, charge);
        Assume.that(plain > 0.0);
        assertThat(top(build, mass, steeper, 0.0, charge)).isLessThan(plain);
        assertThat(top(build, mass, 0.0, stronger, charge)).isLessThan(plain);
        assertThat(top(build, mass + heavier, 0.0, 0.0, charge)).isLessThan(plain);
    }

    private static double top(
            Build build, double mass, double slope, double headwind, double charge) {
        RoadLoad own = RoadLoad.of(build);
        RoadLoad load =
                new RoadLoad(mass, own.rollingResistance(), own.dragArea(), own.airDensity());
        return TopSpeed.find(AnyDriven.drive(build), load, slope, headwind, pack(build, charge))
                .speed();
    }

    private static PackState pack(Build build, double charge) {
        return PackState.of(
                new BatteryModel(build.battery()), charge, build.battery().temperatureC());
    }
}

package brakewright.powertrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.road.RoadLoad;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Taper;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
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
class PowertrainProperties {

    private static final double ROUNDING = 1e-12;

    /** Pack power less the controllers' loss is shaft power, drag power and copper loss. */
    @Property
    void energyIsConservedWhenDriving(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 150.0) double current) {
        Powertrain train = Powertrain.of(build);
        double thrust = train.thrust(current, speed);
        Assume.that(thrust > 0.0);
        double shaft = thrust * speed / build.drive().efficiency();
        double drag = dragPower(build, train, speed);
        double copper = train.copperLoss(current);
        double accounted = (shaft + drag + copper) / build.controllers().efficiency();
        assertThat(train.drawnPower(current, speed))
                .isCloseTo(accounted, within(ROUNDING * accounted));
    }

    @Property
    void energyIsConservedWhenBraking(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 150.0) double current) {
        Powertrain train = Powertrain.of(build);
        double shaft = train.brakeForce(current, speed) * speed * build.drive().efficiency();
        double drag = dragPower(build, train, speed);
        double copper = train.copperLoss(current);
        double pack = train.returnedPower(current, speed);
        double efficiency = build.controllers().efficiency();
        double motors = pack >= 0.0 ? pack / efficiency : pack * efficiency;
        assertThat(motors)
                .isCloseTo(shaft - drag - copper, within(ROUNDING * (shaft + drag + copper)));
    }

    @Property
    void aForceLeadsToItsCurrentAndBack(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 150.0) double current) {
        Powertrain train = Powertrain.of(build);
        double drag = train.motor().dragTorque(train.angularSpeed(speed));
        double scale = current + drag / train.motor().torqueConstant();
        assertThat(train.brakeCurrent(train.brakeForce(current, speed), speed))
                .isCloseTo(current, within(1e-11 * scale));
        double thrust = train.thrust(current, speed);
        Assume.that(thrust > 0.0);
        assertThat(train.thrustCurrent(thrust, speed)).isCloseTo(current, within(1e-11 * scale));
    }

    @Property
    void thePackCurrentNeverExceedsWhatIsSet(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 150.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 80.0) double packCurrent) {
        ElectricBrake brake =
                new ElectricBrake(Powertrain.of(build), current, packCurrent, Optional.empty());
        PackState pack = stateOf(build, charge);
        assertThat(brake.packCurrent(speed, pack))
                .isLessThanOrEqualTo(packCurrent * (1.0 + ROUNDING));
        assertThat(brake.motorCurrent(speed, pack)).isBetween(0.0, current);
    }

    @Property
    void thePackDrawNeverExceedsWhatIsSet(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 150.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 40.0) double packCurrent) {
        Powertrain train = Powertrain.of(build);
        ElectricDrive drive = new ElectricDrive(train, current, packCurrent, Optional.empty());
        PackState pack = stateOf(build, charge);
        Assume.that(2.0 * packCurrent * pack.resistance() < 0.99 * pack.voltage());
        double flowing = drive.at(speed, pack).motorCurrent();
        double drawn = -pack.currentInto(-train.drawnPower(flowing, speed));
        assertThat(drawn).isLessThanOrEqualTo(packCurrent * (1.0 + 1e-9));
        assertThat(drive.greatestDraw(speed, pack)).isLessThanOrEqualTo(packCurrent);
    }

    @Property
    void theBrakeFadesAboveItsFadeSpeedAndNotBelow(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 150.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 80.0) double packCurrent) {
        Powertrain train = Powertrain.of(build);
        PackState pack = stateOf(build, charge);
        double perMotor =
                pack.powerReturnedBy(packCurrent)
                        / (build.drive().motors() * build.controllers().efficiency());
        Assume.that(train.copperLoss(current) / build.drive().motors() <= perMotor);
        ElectricBrake brake = new ElectricBrake(train, current, packCurrent, Optional.empty());
        double fade = brake.fadeSpeed(pack);
        assertThat(brake.motorCurrent(fade * (1.0 - 1e-6), pack)).isEqualTo(current);
        assertThat(brake.motorCurrent(fade * (1.0 + 1e-6), pack)).isLessThan(current);
    }

    /** A current beyond the peak of the returned power is cut back at once, not gradually. */
    @Property
    void aCurrentBeyondThePeakIsCutBackWhereItsPowerTouchesTheLimit(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 10.0) double power,
            @ForAll @Scale(6) @DoubleRange(min = 1.01, max = 10.0) double beyond) {
        Powertrain train = Powertrain.of(build);
        int motors = build.drive().motors();
        double perMotor = power / (motors * build.controllers().efficiency());
        double current = beyond * Math.sqrt(perMotor * motors / train.copperLoss(1.0));
        double fade = train.fadeSpeed(current, power);
        assertThat(train.limitedBrakeCurrent(current, fade * (1.0 - 1e-6), power))
                .isEqualTo(current);
        assertThat(train.limitedBrakeCurrent(current, fade * (1.0 + 1e-6), power))
                .isLessThan(current);
    }

    @Property
    void fasterNeverBrakesWithMoreCurrent(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double other,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 150.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 80.0) double packCurrent) {
        ElectricBrake brake =
                new ElectricBrake(Powertrain.of(build), current, packCurrent, Optional.empty());
        PackState pack = stateOf(build, charge);
        Assume.that(canSupply(brake, Math.min(one, other), pack));
        double slower = brake.motorCurrent(Math.min(one, other), pack);
        double faster = brake.motorCurrent(Math.max(one, other), pack);
        assertThat(faster).isLessThanOrEqualTo(slower * (1.0 + ROUNDING));
    }

    /**
     * Near standstill braking draws; a weak pack then holds the current down, less so when faster.
     */
    private static boolean canSupply(ElectricBrake brake, double speed, PackState pack) {
        double asked = brake.motorCurrent();
        return brake.powertrain().suppliedBrakeCurrent(asked, speed, pack::greatestPower) == asked;
    }

    @Property
    void atTheCrossoverNothingIsReturned(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 150.0) double current) {
        Powertrain train = Powertrain.of(build);
        double crossover = train.crossoverSpeed(current);
        double copper = train.copperLoss(current);
        assertThat(train.returnedPower(current, crossover)).isCloseTo(0.0, within(1e-11 * copper));
        assertThat(train.returnedPower(current, 0.99 * crossover)).isNegative();
        assertThat(train.returnedPower(current, 1.01 * crossover)).isPositive();
    }

    @Property
    void mostPowerIsReturnedWhereTheBrakeBeginsToFade(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 150.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 5000.0) double power) {
        Powertrain train = Powertrain.of(build);
        double speed = train.fadeSpeed(current, power);
        double most = train.mostReturningCurrent(current, speed);
        double scale = power + train.copperLoss(most);
        assertThat(most).isLessThanOrEqualTo(current);
        assertThat(train.returnedPower(most, speed)).isCloseTo(power, within(1e-9 * scale));
    }

    /** Held to even resistance: a cell that is stiffer when half empty may well be faster there. */
    @Property
    void topSpeedNeverRisesAsChargeFalls(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double other,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 150.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double packCurrent) {
        Build build = Builds.withCells(any, Builds::evenResistance);
        TopSpeed.Result empty = top(build, Math.min(one, other), current, packCurrent);
        TopSpeed.Result full = top(build, Math.max(one, other), current, packCurrent);
        assertThat(empty.speed()).isLessThanOrEqualTo(full.speed() + 1e-6);
        assertThat(full.holder() == TopSpeed.Holder.STANDSTILL).isEqualTo(full.speed() == 0.0);
    }

    @Property
    void atTopSpeedTheHolderIsUsedUp(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 150.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double packCurrent) {
        Powertrain train = Powertrain.of(build);
        PackState pack = stateOf(build, charge);
        TopSpeed.Result top = top(build, charge, current, packCurrent);
        double holding =
                train.thrustCurrent(RoadLoad.of(build).force(top.speed(), 0.0, 0.0), top.speed());
        switch (top.holder()) {
            case MOTOR_CURRENT -> assertThat(holding).isCloseTo(current, within(1e-6 * current));
            case PACK_CURRENT -> {
                double power = pack.powerDrawnBy(packCurrent);
                assertThat(train.drawnPower(holding, top.speed()))
                        .isCloseTo(power, within(1e-6 * power));
            }
            case VOLTAGE -> {
                double drawn = pack.currentInto(-train.drawnPower(holding, top.speed()));
                double terminal = Double.isInfinite(drawn) ? 0.0 : pack.terminalVoltage(drawn);
                assertThat(train.voltageNeed(holding, top.speed()))
                        .isGreaterThanOrEqualTo(terminal - 1e-4);
            }
            case STANDSTILL -> assertThat(top.speed()).isZero();
        }
    }

    /** In steady state the tapered limit and the voltage it causes agree. */
    @Property
    void theSettledLimitSolvesTheTaper(
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 60.0) double packCurrent,
            @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 8.0) double band) {
        Build board = Builds.trailBoard();
        PackState pack = stateOf(board, charge);
        double end = 50.4;
        ElectricBrake brake =
                new ElectricBrake(
                        Powertrain.of(board),
                        30.0,
                        packCurrent,
                        Optional.of(new Taper(end - band, end)));
        double settled = brake.settledPackLimit(pack);
        double voltage = pack.terminalVoltage(settled);
        double allowed = packCurrent * Math.max(0.0, Math.min(1.0, (end - voltage) / band));
        assertThat(settled).isBetween(0.0, packCurrent);
        assertThat(settled).isCloseTo(allowed, within(1e-9 * packCurrent));
    }

    @Property
    void theSettledDrawSolvesTheTaper(
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 60.0) double packCurrent,
            @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 8.0) double band) {
        Build board = Builds.trailBoard();
        PackState pack = stateOf(board, charge);
        double end = 36.0;
        ElectricDrive drive =
                new ElectricDrive(
                        Powertrain.of(board),
                        30.0,
                        packCurrent,
                        Optional.of(new Taper(end + band, end)));
        double settled = drive.settledPackLimit(pack);
        double voltage = pack.terminalVoltage(-settled);
        double allowed = packCurrent * Math.max(0.0, Math.min(1.0, (voltage - end) / band));
        assertThat(settled).isCloseTo(allowed, within(1e-9 * packCurrent));
    }

    @Property
    void theBusLastsForTheEnergyItTakes(
            @ForAll @Scale(6) @DoubleRange(min = 1e-4, max = 1e-2) double capacitance,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 100.0) double voltage,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 100.0) double highest,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 5000.0) double power) {
        double time = BusRise.time(capacitance, voltage, highest, power);
        double energy = 0.5 * capacitance * (highest * highest - voltage * voltage);
        assertThat(time * power)
                .isCloseTo(Math.max(0.0, energy), within(1e-12 * capacitance * 1e4));
    }

    @Example
    void aBusWithoutCapacitanceIsRejected() {
        assertThatThrownBy(() -> BusRise.time(0.0, 40.0, 60.0, 100.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContainingAll("bus capacitance", "F");
        assertThatThrownBy(() -> BusRise.time(1e-3, Double.NaN, 60.0, 100.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bus voltage");
        assertThatThrownBy(() -> BusRise.time(1e-3, 40.0, -1.0, 100.0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BusRise.time(1e-3, 40.0, 60.0, 0.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("braking power");
    }

    @Example
    void aBrakeThatIsNotSetNeverFadesAndNeverReturns() {
        Powertrain train = Powertrain.of(Builds.trailBoard());
        PackState pack = stateOf(Builds.trailBoard(), 0.8);
        ElectricBrake none = new ElectricBrake(train, 0.0, 10.0, Optional.empty());
        assertThat(none.fadeSpeed(pack)).isInfinite();
        assertThat(none.speedReturning(5.0, pack)).isInfinite();
        assertThat(none.packCurrent(10.0, pack)).isZero();
    }

    private static TopSpeed.Result top(
            Build build, double charge, double current, double packCurrent) {
        return TopSpeed.find(
                new ElectricDrive(Powertrain.of(build), current, packCurrent, Optional.empty()),
                RoadLoad.of(build),
                0.0,
                0.0,
                stateOf(build, charge));
    }

    private static double dragPower(Build build, Powertrain train, double speed) {
        double angularSpeed = train.angularSpeed(speed);
        return build.drive().motors() * train.motor().dragTorque(angularSpeed) * angularSpeed;
    }

    private static PackState stateOf(Build build, double charge) {
        return PackState.of(
                new BatteryModel(build.battery()), charge, build.battery().temperatureC());
    }
}

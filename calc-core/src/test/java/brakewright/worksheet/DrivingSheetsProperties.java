package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.driving.Cruise;
import brakewright.driving.Road;
import brakewright.driving.StandingStart;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.TopSpeed;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** The sheets about driving against the laws they are filled from. */
@Tag("law")
@Domain(AnyDriven.class)
@Domain(DomainContext.Global.class)
class DrivingSheetsProperties {

    private static final double ROUNDING = 1e-9;

    /** Two derivations: the least of several multiples of the weight, and the pull from rest. */
    @Property(tries = 300)
    void theLaunchIsThePullFromStandstill(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Operation operation = operation(build);
        DriveSheet sheet = DriveSheet.of(build, operation, charge);
        StandingStart pull = new StandingStart(build, operation.drive(), Road.LEVEL);
        double expected = Math.max(0.0, pull.acceleration(0.0, pack(build, charge)));
        assertThat(sheet.launch()).isCloseTo(expected, within(ROUNDING * (1.0 + expected)));
        double thrust = besideElectronics(build, operation.drive(), pack(build, charge));
        double whole = (thrust - RoadLoad.of(build).force(0.0, 0.0, 0.0)) / build.inertia();
        if (sheet.isLaunchHeldByGround()) {
            assertThat(sheet.launch()).isLessThan(Math.max(0.0, whole) + ROUNDING);
        } else {
            assertThat(sheet.launch())
                    .isCloseTo(Math.max(0.0, whole), within(ROUNDING * (1.0 + Math.abs(whole))));
        }
    }

    @Property(tries = 200)
    void theCruiseSpeedIsReachedInTheTimeOfThePull(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Operation operation = operation(build);
        DriveSheet sheet = DriveSheet.of(build, operation, charge);
        double cruise = build.use().riding().cruiseSpeed();
        sheet.toCruise()
                .ifPresent(
                        reached -> {
                            assertThat(sheet.topSpeedFlat().speed()).isGreaterThan(cruise);
                            assertThat(reached.distance()).isLessThan(reached.time() * cruise);
                            assertThat(sheet.launch() * reached.time())
                                    .isGreaterThanOrEqualTo(cruise * (1.0 - ROUNDING));
                        });
        assertThat(sheet.lastingFlat().speed())
                .isLessThanOrEqualTo(sheet.topSpeedFlat().speed() + ROUNDING);
        if (build.use().riding().headwind() >= 0.0) {
            assertThat(sheet.topSpeedWind().speed())
                    .isLessThanOrEqualTo(sheet.topSpeedFlat().speed() + ROUNDING);
            assertThat(sheet.lastingWind().speed())
                    .isLessThanOrEqualTo(sheet.lastingFlat().speed() + ROUNDING);
        }
    }

    /** Where the thrust of the map exceeds the road the top speed lies above, else below. */
    @Property(tries = 100)
    void theThrustMapCrossesTheRoadAtTheTopSpeed(@ForAll Build build) {
        Worksheet sheet = Worksheet.of(build);
        Operation operation = sheet.operation();
        DriveSheet full = sheet.drive();
        ThrustMap map = sheet.thrustMap();
        assertThat(map.speeds()[0]).isZero();
        assertThat(map.speeds()[map.speeds().length - 1])
                .isGreaterThanOrEqualTo(full.topSpeedFlat().speed() * (1.0 - ROUNDING));
        for (int row = 0; row < map.charges().length; row++) {
            double top =
                    TopSpeed.find(
                                    operation.drive(),
                                    RoadLoad.of(build),
                                    0.0,
                                    0.0,
                                    pack(build, map.charges()[row]))
                            .speed();
            for (int column = 0; column < map.speeds().length; column++) {
                DriveState pull = map.pulls()[row][column];
                double spare = pull.thrust() - map.resistance()[column];
                if (Math.abs(map.speeds()[column] - top) > 1e-6) {
                    assertThat(spare > 0.0).isEqualTo(map.speeds()[column] < top);
                }
            }
        }
    }

    @Property(tries = 60)
    void theRangeSheetHoldsTheRidesAtItsSpeeds(@ForAll Build build) {
        Operation operation = operation(build);
        RangeSheet sheet = RangeSheet.of(build, operation);
        Road road = new Road(0.0, build.use().riding().headwind());
        assertThat(sheet.cruise())
                .isEqualTo(
                        Cruise.of(
                                build,
                                operation.drive(),
                                road,
                                build.use().riding().cruiseSpeed()));
        double before = 0.0;
        for (Cruise each : sheet.steady()) {
            assertThat(each).isEqualTo(Cruise.of(build, operation.drive(), road, each.speed()));
            assertThat(each.speed()).isGreaterThan(before);
            assertThat(each.speed()).isNotEqualTo(sheet.cruise().speed());
            before = each.speed();
        }
        assertThat(sheet.measured().isPresent())
                .isEqualTo(build.use().riding().measured().isPresent());
        assertThat(sheet.effects()).hasSize(RangeSheet.Change.values().length);
    }

    @Example
    void onTheTrailBoardLoadColdWindAndSlopeCostRangeAndHeightGivesSome() {
        Build board = Builds.trailBoard();
        RangeSheet sheet = RangeSheet.of(board, operation(board));
        for (RangeSheet.Effect effect : sheet.effects()) {
            if (effect.change() == RangeSheet.Change.HIGHER) {
                assertThat(effect.distance()).isGreaterThan(sheet.cruise().distance());
            } else {
                assertThat(effect.distance()).isLessThan(sheet.cruise().distance());
            }
        }
    }

    private static Operation operation(Build build) {
        return Operation.of(build, Limits.of(build));
    }

    private static PackState pack(Build build, double charge) {
        return PackState.of(
                new BatteryModel(build.battery()), charge, build.battery().temperatureC());
    }

    /** The thrust at a standstill, no more than the pack gives beside what electronics draw. */
    private static double besideElectronics(Build build, ElectricDrive drive, PackState pack) {
        double left = Math.max(0.0, pack.greatestPower() - build.use().riding().idlePower());
        double current = drive.at(0.0, pack).motorCurrent();
        Powertrain train = drive.powertrain();
        return train.thrust(
                Double.isInfinite(left) ? current : train.limitedDriveCurrent(current, 0.0, left),
                0.0);
    }
}

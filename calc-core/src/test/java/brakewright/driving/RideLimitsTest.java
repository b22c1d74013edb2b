package brakewright.driving;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.Spending;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RideLimitsTest {

    /** The board on one cell in parallel: its full pack resists more than at 90 %. */
    private static Build weak() {
        Build board = Builds.trailBoard();
        return board.withBattery(
                Battery.of(Builds.barePack(Builds.pack(board).cell(), 12, 1, 0.012)));
    }

    @Test
    void neverRidesFasterThanAsked() {
        Build build = weak();
        double asked = 13.26;
        Cruise ride =
                Cruise.of(
                        build,
                        new ElectricDrive(Powertrain.of(build), 60.0, 40.0, Optional.empty()),
                        Road.LEVEL,
                        asked);
        assertThat(ride.distance()).isPositive();
        assertThat(ride.distance() / ride.time()).isLessThanOrEqualTo(asked);
    }

    @Test
    void idlePowerNeverAsksForMoreThanThePackCanGive() {
        Build build = weak();
        ElectricDrive drive =
                new ElectricDrive(Powertrain.of(build), 200.0, 300.0, Optional.empty());
        PackState pack = PackState.of(new BatteryModel(build.battery()), 0.1, 25.0);
        Spending spent =
                new StandingStart(build, drive, Road.LEVEL).to(10.0, pack).orElseThrow().spent();
        assertThat(spent.sum()).isFinite();
        Cruise steep = Cruise.of(build, drive, new Road(0.1, 0.0), 20.0);
        assertThat(steep.distance()).isGreaterThan(0.0);
    }

    /** Where the last of the power decides, a speed just beyond could not be held at all. */
    @Test
    void theSpeedThatIsHeldAsksForNoMoreThanThePackCanGive() {
        Build build = weak();
        ElectricDrive drive =
                new ElectricDrive(Powertrain.of(build), 200.0, 300.0, Optional.empty());
        BatteryModel model = new BatteryModel(build.battery());
        int found = 0;
        for (double slope : new double[] {0.0, 0.02, 0.05, 0.1}) {
            Propulsion propulsion = new Propulsion(build, drive, new Road(slope, 0.0));
            for (double charge = 0.02; charge <= 1.0; charge += 0.01) {
                PackState pack = PackState.of(model, charge, 25.0, Double.POSITIVE_INFINITY);
                double speed = propulsion.steadySpeed(pack);
                if (speed > 0.0) {
                    found++;
                    assertThat(propulsion.reserve(speed, pack)).isNotNegative();
                    double power =
                            propulsion.terminalPower(propulsion.holdingCurrent(speed), speed);
                    assertThat(pack.currentInto(-power)).isFinite();
                }
            }
        }
        assertThat(found).isGreaterThan(100);
    }
}

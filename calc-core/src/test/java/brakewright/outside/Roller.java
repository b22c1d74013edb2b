package brakewright.outside;

import static brakewright.spec.CurrentBasis.DC_EQUIVALENT;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Axles;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Climate;
import brakewright.spec.DrivenAxle;
import brakewright.spec.Effort;
import brakewright.spec.Rider;
import brakewright.spec.Settings;
import brakewright.spec.Stance;
import brakewright.spec.Use;
import brakewright.spec.Vehicle;
import brakewright.worksheet.StopTable;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A vehicle that has only what a textbook gives it: in air of 1.225 kg/m³, without turning parts,
 * its motors and pack without loss.
 *
 * @param mass [kg]
 * @param deceleration of the friction brake [m/s²]
 * @param rolling coefficient of rolling resistance [1]
 * @param area drag area [m²]
 * @param slope rise over run; negative downhill [1]
 * @param grip friction coefficient [1]
 * @param reaction time [s]
 * @param buildUp of the brakes [s]
 * @param brakeCurrent of the electric brake [A]
 * @param packCurrent that the pack is let take [A]
 */
record Roller(
        double mass,
        double deceleration,
        double rolling,
        double area,
        double slope,
        double grip,
        double reaction,
        double buildUp,
        double brakeCurrent,
        double packCurrent) {

    /** The pack's voltage [V]. */
    static final double VOLTAGE = 100.0;

    private static final double CHARGE = 0.5;
    private static final double LOSSLESS = 1e-9;
    private static final double BOUNDLESS = 1e6;
    private static final double RIDER = 30.0;

    /** Its friction brake alone slows it. */
    static Roller braking(double deceleration) {
        return new Roller(90.0, deceleration, 0.0, 0.0, 0.0, 0.8, 0.0, 0.0, 0.0, 0.0);
    }

    /** Its electric brake is as strong as the wheels grip. */
    static Roller sliding(double grip) {
        return new Roller(90.0, 0.0, 0.0, 0.0, 0.0, grip, 0.0, 0.0, BOUNDLESS, BOUNDLESS);
    }

    Roller weighing(double kilograms, double rollingResistance, double dragArea) {
        return new Roller(
                kilograms,
                deceleration,
                rollingResistance,
                dragArea,
                slope,
                grip,
                reaction,
                buildUp,
                brakeCurrent,
                packCurrent);
    }

    Roller on(double rise) {
        return new Roller(
                mass,
                deceleration,
                rolling,
                area,
                rise,
                grip,
                reaction,
                buildUp,
                brakeCurrent,
                packCurrent);
    }

    Roller reacting(double seconds) {
        return new Roller(
                mass,
                deceleration,
                rolling,
                area,
                slope,
                grip,
                seconds,
                buildUp,
                brakeCurrent,
                packCurrent);
    }

    Roller buildingUp(double seconds) {
        return new Roller(
                mass,
                deceleration,
                rolling,
                area,
                slope,
                grip,
                reaction,
                seconds,
                brakeCurrent,
                packCurrent);
    }

    /** The electric brake may return no more than a power [W]. */
    Roller returning(double power) {
        return new Roller(
                mass,
                deceleration,
                rolling,
                area,
                slope,
                grip,
                reaction,
                buildUp,
                brakeCurrent,
                power / VOLTAGE);
    }

    Build build() {
        return build(10.0);
    }

    private Build build(double speedMax) {
        Build bench = Machines.bench(Machines.motor(10.0, LOSSLESS, 0.0), DC_EQUIVALENT);
        return bench.withTitle("roller")
                .withRider(new Rider(RIDER, Stance.SEATED, 0.5, 0.2))
                .withVehicle(
                        new Vehicle(
                                mass - RIDER,
                                0.0,
                                2.0,
                                new Axles(1.0, 0.5, 0.5, DrivenAxle.BOTH),
                                rolling,
                                area,
                                grip,
                                grip,
                                0.0,
                                OptionalDouble.of(deceleration)))
                .withBattery(
                        Battery.of(
                                Builds.barePack(
                                        Builds.flatCell(VOLTAGE, LOSSLESS, 50.0, 150.0),
                                        1,
                                        1,
                                        0.0)))
                .withUse(
                        new Use(
                                1.0,
                                0.0,
                                speedMax,
                                new Climate(15.0, 25.0, 25.0, 0.0, 30.0),
                                0.1,
                                100.0,
                                bench.use().riding(),
                                new Effort(10.0, 10.0, reaction, buildUp)))
                .withMargins(Builds.NO_MARGINS);
    }

    ElectricBrake brake() {
        return new ElectricBrake(
                Powertrain.of(build()), brakeCurrent, packCurrent, Optional.empty());
    }

    StopOutcome outcome(double speed) {
        Build build = build();
        return new Stop(build, brake(), Surroundings.of(build).withSlope(slope))
                .from(speed, CHARGE);
    }

    StopOutcome.Stopped stop(double speed) {
        return (StopOutcome.Stopped) outcome(speed);
    }

    /** The way from seeing to standing [m]. */
    double distanceWithReaction(double speed) {
        return speed * reaction + stop(speed).distance();
    }

    /** The same as the worksheet has it for the highest speed [m]. */
    double distanceOnWorksheet(double speed) {
        Settings settings =
                new Settings(
                        OptionalDouble.empty(),
                        OptionalDouble.of(brakeCurrent),
                        OptionalDouble.empty(),
                        OptionalDouble.of(packCurrent),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty());
        List<StopTable.Row> rows = Worksheet.of(build(speed).withSettings(settings)).stops();
        StopTable.Row last = rows.get(rows.size() - 1);
        return last.reaction() + ((StopOutcome.Stopped) last.outcome()).distance();
    }
}

package brakewright.outside;

import static brakewright.spec.CurrentBasis.DC_EQUIVALENT;

import brakewright.driving.Cruise;
import brakewright.driving.MeasuredRange;
import brakewright.driving.Road;
import brakewright.driving.StandingStart;
import brakewright.heat.PackHeat;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.TopSpeed;
import brakewright.road.RoadLoad;
import brakewright.spec.Axles;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Climate;
import brakewright.spec.Drive;
import brakewright.spec.DrivenAxle;
import brakewright.spec.Rider;
import brakewright.spec.Riding;
import brakewright.spec.Stance;
import brakewright.spec.Use;
import brakewright.spec.Vehicle;
import java.util.Optional;
import java.util.OptionalDouble;

/** Speed, pulling away, consumption and range. */
class DrivingOutsideTest {

    private static final double KILOMETRES_PER_HOUR = 1.0 / 3.6;
    private static final double JOULES_PER_WATT_HOUR = 3600.0;
    private static final double BOUNDLESS = 1e6;
    private static final double VOLTAGE = 1000.0;
    private static final double RIDER = 30.0;

    @OutsideCheck(quantity = "consumption of a steady ride", source = "steady-ride")
    void consumesWhatTheForceOverTheWayTakes(OutsideCase check) {
        check.agreesWith(ride(check).consumption() * 1000.0 / JOULES_PER_WATT_HOUR);
    }

    @OutsideCheck(quantity = "mean power of a steady ride", source = "steady-ride")
    void takesThePowerOfForceTimesSpeed(OutsideCase check) {
        Cruise cruise = ride(check);
        check.agreesWith(cruise.spent().sum() / cruise.time());
    }

    @OutsideCheck(quantity = "top speed at a power", source = "steady-ride")
    void runsAsFastAsTheTabulatedPowerAllows(OutsideCase check) {
        RoadLoad load =
                new RoadLoad(check.in("mass"), check.in("rolling"), check.in("area"), 1.225);
        check.agreesWith(topSpeed(check.in("power"), load, 0.0) / KILOMETRES_PER_HOUR);
    }

    @OutsideCheck(quantity = "top speed with a wheel power", source = "top-speed-textbook")
    void runsAsFastAsThePowerOfTheTextbookAllows(OutsideCase check) {
        double slope = check.in("slope");
        double mass = check.in("mass");
        double rolling = check.in("rollingForce") / (mass * 9.80665) * Math.hypot(1.0, slope);
        RoadLoad load = new RoadLoad(mass, rolling, check.in("area"), check.in("density"));
        check.agreesWith(topSpeed(check.in("power"), load, slope));
    }

    @OutsideCheck(quantity = "force that coasting leaves", source = "top-speed-textbook")
    void coastsAsFastAsTheTextbookSays(OutsideCase check) {
        RoadLoad load = new RoadLoad(check.in("mass"), 0.0, check.in("area"), check.in("density"));
        check.agreesWith(load.force(check.in("speed"), check.in("slope"), 0.0));
    }

    @OutsideCheck(quantity = "distance gained at constant power", source = "pull-away-arithmetic")
    void gainsTheDistanceOfConstantPower(OutsideCase check) {
        check.agreesWith(
                powered(check, check.in("to")).distance()
                        - powered(check, check.in("from")).distance());
    }

    @OutsideCheck(
            quantity = "time at constant power from speed to speed",
            source = "pull-away-arithmetic")
    void takesTheTimeOfConstantPower(OutsideCase check) {
        check.agreesWith(
                powered(check, check.in("to")).time() - powered(check, check.in("from")).time());
    }

    @OutsideCheck(quantity = "distance of a pull", source = "pull-away-arithmetic")
    void pullsAwayInTheDistanceOfTheClosedForm(OutsideCase check) {
        check.agreesWith(pulled(check).distance());
    }

    @OutsideCheck(quantity = "time of a pull", source = "pull-away-arithmetic")
    void pullsAwayInTheTimeOfTheClosedForm(OutsideCase check) {
        check.agreesWith(pulled(check).time());
    }

    @OutsideCheck(quantity = "range from a consumption", source = "range-arithmetic")
    void goesAsFarAsTheConsumptionLeaves(OutsideCase check) {
        check.agreesWith(measured(check, check.in("consumption")).distance() / 1000.0);
    }

    @OutsideCheck(quantity = "energy at the terminals", source = "range-arithmetic")
    void givesTheEnergyOfItsCells(OutsideCase check) {
        double consumption = 1.0;
        check.agreesWith(consumption * measured(check, consumption).distance() / 1000.0);
    }

    @OutsideCheck(quantity = "time until empty", source = "range-arithmetic")
    void isEmptyAfterTheTimeOfItsRate(OutsideCase check) {
        Build build = vehicle(90.0, 0.0, 0.0, 1.0, cell(3.7, check.in("capacity")), 1, 1.0, 0.0);
        check.agreesWith(
                PackHeat.atCurrent(build, check.in("current")).orElseThrow().time() / 60.0);
    }

    private static Cruise ride(OutsideCase check) {
        Build build =
                vehicle(
                        check.in("mass"),
                        check.in("rolling"),
                        check.in("area"),
                        check.in("efficiency"),
                        cell(VOLTAGE, 1.0),
                        1,
                        1.0,
                        0.0);
        return Cruise.of(
                build,
                drive(build, BOUNDLESS, BOUNDLESS),
                Road.LEVEL,
                check.in("speed") * KILOMETRES_PER_HOUR);
    }

    /** Nothing is lost and the voltage never limits, so the pack's power alone does. */
    private static double topSpeed(double power, RoadLoad load, double slope) {
        Powertrain bench = Machines.powertrain(Machines.motor(1.0, 1e-9, 0.0), DC_EQUIVALENT);
        ElectricDrive drive =
                new ElectricDrive(bench, BOUNDLESS, power / VOLTAGE, Optional.empty());
        PackState pack = new PackState(0.5, 25.0, VOLTAGE, 0.0);
        return TopSpeed.find(drive, load, slope, 0.0, pack).speed();
    }

    private static StandingStart.Reached powered(OutsideCase check, double speed) {
        Build build = vehicle(check.in("mass"), 0.0, 0.0, 1.0, cell(VOLTAGE, 1.0), 1, 1.0, 0.0);
        ElectricDrive drive = drive(build, BOUNDLESS, check.in("power") / VOLTAGE);
        return new StandingStart(build, drive, Road.LEVEL).to(speed, full()).orElseThrow();
    }

    private static StandingStart.Reached pulled(OutsideCase check) {
        Build build =
                vehicle(
                        check.in("mass"),
                        check.in("rolling"),
                        check.in("area"),
                        1.0,
                        cell(VOLTAGE, 1.0),
                        1,
                        1.0,
                        0.0);
        double current = Powertrain.of(build).thrustCurrent(check.in("force"), 0.0);
        ElectricDrive drive = drive(build, current, BOUNDLESS);
        double speed = check.in("speed") * KILOMETRES_PER_HOUR;
        return new StandingStart(build, drive, new Road(check.in("slope"), 0.0))
                .to(speed, full())
                .orElseThrow();
    }

    /** So slowly that nothing is lost. */
    private static MeasuredRange measured(OutsideCase check, double wattHoursPerKilometre) {
        Build build =
                vehicle(
                        90.0,
                        0.0,
                        0.0,
                        1.0,
                        cell(check.in("cell"), check.in("capacity")),
                        (int) check.in("series"),
                        check.in("from"),
                        check.in("to"));
        double energyPerMetre = wattHoursPerKilometre * JOULES_PER_WATT_HOUR / 1000.0;
        return MeasuredRange.of(
                build,
                drive(build, BOUNDLESS, BOUNDLESS),
                new Riding.Measured(energyPerMetre, 1e-3));
    }

    private static ElectricDrive drive(Build build, double motorCurrent, double packCurrent) {
        return new ElectricDrive(Powertrain.of(build), motorCurrent, packCurrent, Optional.empty());
    }

    private static PackState full() {
        return new PackState(1.0, 25.0, VOLTAGE, 0.0);
    }

    private static Cell cell(double voltage, double capacityAh) {
        return Builds.flatCell(voltage, 1e-9, 0.5 * voltage, 2.0 * voltage)
                .withCapacityAh(capacityAh)
                .withDischargeCurrent(BOUNDLESS)
                .withChargeCurrent(BOUNDLESS)
                .withHeatCapacity(OptionalDouble.of(1.0));
    }

    /** In air of 1.225 kg/m³, without turning parts; only the gears may lose something. */
    private static Build vehicle(
            double mass,
            double rolling,
            double area,
            double efficiency,
            Cell cell,
            int series,
            double from,
            double to) {
        Build bench = Machines.bench(Machines.motor(1.0, 1e-9, 0.0), DC_EQUIVALENT);
        return bench.withTitle("lossless")
                .withRider(new Rider(RIDER, Stance.SEATED, 0.5, 0.2))
                .withVehicle(
                        new Vehicle(
                                mass - RIDER,
                                0.0,
                                2.0,
                                new Axles(1.0, 0.001, 0.5, DrivenAxle.BOTH),
                                rolling,
                                area,
                                1.5,
                                1.5,
                                0.0,
                                OptionalDouble.empty()))
                .withDrive(new Drive(1, 1.0, efficiency))
                .withBattery(Battery.of(Builds.barePack(cell, series, 1, 0.0)))
                .withUse(
                        new Use(
                                from,
                                to,
                                10.0,
                                new Climate(15.0, 25.0, 25.0, 0.0, 30.0),
                                0.1,
                                100.0,
                                new Riding(5.0, 0.0, 0.0, 0.0, Optional.empty()),
                                bench.use().effort()))
                .withMargins(Builds.NO_MARGINS);
    }
}

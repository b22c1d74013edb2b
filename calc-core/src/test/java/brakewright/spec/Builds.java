package brakewright.spec;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** Vehicles to test with. All their figures are invented, in the range of the real thing. */
public final class Builds {

    /** No margin anywhere: a limit is the rating itself. */
    public static final Margins NO_MARGINS = new Margins(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);

    private Builds() {}

    /**
     * A vineyard trail board: standing rider, two motors on the rear axle, 12S4P, no other brake.
     */
    public static Build trailBoard() {
        Cell cell =
                new Cell(
                        4.0,
                        30.0,
                        6.0,
                        4.2,
                        2.5,
                        0.016,
                        Curve.of(
                                new double[] {0.0, 0.1, 0.3, 0.5, 0.7, 0.9, 1.0},
                                new double[] {2.6, 3.3, 3.55, 3.7, 3.9, 4.08, 4.19}),
                        new ResistanceByCharge(
                                Curve.of(
                                        new double[] {0.0, 0.15, 0.9, 1.0},
                                        new double[] {1.4, 1.0, 1.0, 1.25}),
                                Curve.of(
                                        new double[] {0.0, 0.5, 1.0},
                                        new double[] {0.1, 0.03, 0.1})),
                        ArrheniusCurve.through(
                                Curve.of(
                                        new double[] {-10.0, 0.0, 25.0, 45.0},
                                        new double[] {4.0, 2.4, 1.0, 0.8})),
                        new Relaxation(
                                0.9,
                                60.0,
                                Curve.of(
                                        new double[] {0.06, 0.5, 0.8},
                                        new double[] {1.5, 1.0, 0.9})),
                        OptionalDouble.of(65.0),
                        new ChargingWindow(
                                0.0, 45.0, 10.0, 0.2, ChargingWindow.WHATEVER_THE_CHARGE),
                        new DischargingWindow(-20.0, 60.0),
                        Optional.empty(),
                        2.5);
        Pack pack =
                new Pack(
                        cell,
                        12,
                        4,
                        0.012,
                        0.1,
                        25.0,
                        OptionalDouble.of(0.9),
                        OptionalDouble.empty(),
                        new Protection(
                                OptionalDouble.of(100.0),
                                OptionalDouble.of(40.0),
                                OptionalDouble.of(4.25),
                                OptionalDouble.of(2.8)),
                        new Wiring(
                                OptionalDouble.of(80.0),
                                new FuseBreaking(
                                        OptionalDouble.of(80.0), OptionalDouble.of(4000.0)),
                                OptionalDouble.of(90.0),
                                OptionalDouble.of(45.0),
                                true));
        return new Build(
                "vineyard trail board",
                new Rider(78.0, Stance.STANDING_SIDEWAYS, 0.95, 0.3),
                new Vehicle(
                        14.0,
                        2.0,
                        0.2,
                        new Axles(0.95, 0.9, 0.5, DrivenAxle.REAR),
                        0.02,
                        0.6,
                        0.7,
                        0.4,
                        0.03,
                        OptionalDouble.empty()),
                new Drive(2, 4.0, 0.93),
                new Motor(
                        170.0,
                        0.06,
                        7,
                        4e-5,
                        1.0,
                        2e-5,
                        OptionalDouble.of(60.0),
                        120.0,
                        Optional.of(new MotorHeat(0.6, 1.6, 60.0, 450.0))),
                new Controllers(
                        2,
                        CurrentBasis.PHASE_PEAK,
                        80.0,
                        50.0,
                        60.0,
                        0.96,
                        OptionalDouble.of(2e-3)),
                Battery.of(pack),
                new Use(
                        1.0,
                        0.1,
                        11.0,
                        new Climate(20.0, 5.0, 40.0, 300.0, 30.0),
                        0.12,
                        400.0,
                        new Riding(6.0, 0.0, 3.0, 0.0005, Optional.empty()),
                        new Effort(20.0, 6.0, 0.8, 0.2)),
                new Margins(0.2, 0.1, 0.25, 0.03, 0.1, 0.2, 0.1),
                new Criteria(2.0, 3.5, 0.12, OptionalDouble.of(20_000.0)),
                Settings.NONE);
    }

    /**
     * A parcel trike: seated rider, one hub motor in front, 16S6P of LFP cells, a friction brake.
     */
    public static Build parcelTrike() {
        Cell cell =
                new Cell(
                        6.0,
                        18.0,
                        6.0,
                        3.65,
                        2.0,
                        0.008,
                        Curve.of(
                                new double[] {0.0, 0.1, 0.3, 0.5, 0.7, 0.9, 1.0},
                                new double[] {2.2, 3.18, 3.28, 3.308, 3.33, 3.352, 3.59}),
                        ResistanceByCharge.alike(Curve.constant(1.0)),
                        ArrheniusCurve.through(
                                Curve.of(new double[] {0.0, 25.0}, new double[] {2.0, 1.0})),
                        new Relaxation(0.8, 90.0),
                        OptionalDouble.empty(),
                        new ChargingWindow(
                                0.0, 45.0, 10.0, 0.3, ChargingWindow.WHATEVER_THE_CHARGE),
                        new DischargingWindow(-20.0, 55.0),
                        Optional.empty(),
                        2.0);
        Pack pack =
                new Pack(
                        cell,
                        16,
                        6,
                        0.01,
                        0.2,
                        20.0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        new Protection(
                                OptionalDouble.of(120.0),
                                OptionalDouble.of(60.0),
                                OptionalDouble.of(3.8),
                                OptionalDouble.of(2.2)),
                        Wiring.NONE);
        return new Build(
                "parcel trike",
                new Rider(82.0, Stance.SEATED, 0.35, 0.2),
                new Vehicle(
                        60.0,
                        80.0,
                        0.48,
                        new Axles(1.4, 0.8, 0.8, DrivenAxle.FRONT),
                        0.012,
                        0.9,
                        0.75,
                        0.5,
                        0.04,
                        OptionalDouble.of(3.0)),
                new Drive(1, 1.0, 1.0),
                new Motor(
                        11.0,
                        0.12,
                        23,
                        2e-4,
                        0.8,
                        1e-3,
                        OptionalDouble.empty(),
                        130.0,
                        Optional.empty()),
                new Controllers(
                        1,
                        CurrentBasis.PHASE_PEAK,
                        120.0,
                        60.0,
                        75.0,
                        0.95,
                        OptionalDouble.empty()),
                Battery.of(pack),
                new Use(
                        0.95,
                        0.1,
                        8.0,
                        new Climate(15.0, 5.0, 35.0, 100.0, 30.0),
                        0.08,
                        600.0,
                        new Riding(
                                5.0, 2.0, 8.0, 0.002, Optional.of(new Riding.Measured(70.0, 4.5))),
                        new Effort(60.0, 8.0, 1.0, 0.2)),
                new Margins(0.2, 0.1, 0.25, 0.05, 0.05, 0.2, 0.2),
                new Criteria(2.5, 5.0, 0.08, OptionalDouble.empty()),
                Settings.NONE);
    }

    /** A ferry-dock hand-cart: one brushless motor in six-step commutation, 7S5P, settings made. */
    public static Build dockCart() {
        Build board = trailBoard();
        Build cart =
                new Build(
                        "ferry-dock hand-cart",
                        new Rider(70.0, Stance.STANDING_FORWARD, 1.0, 0.15),
                        new Vehicle(
                                40.0,
                                60.0,
                                0.25,
                                new Axles(0.8, 0.6, 0.4, DrivenAxle.BOTH),
                                0.025,
                                0.7,
                                0.6,
                                0.35,
                                0.02,
                                OptionalDouble.of(1.0)),
                        new Drive(1, 8.0, 0.85),
                        new Motor(
                                120.0,
                                0.09,
                                4,
                                0.0,
                                1.5,
                                0.0,
                                OptionalDouble.of(40.0),
                                110.0,
                                Optional.of(new MotorHeat(0.8, 1.2, 80.0, 700.0))),
                        new Controllers(
                                1,
                                CurrentBasis.DC_EQUIVALENT,
                                50.0,
                                40.0,
                                36.0,
                                0.92,
                                OptionalDouble.of(1e-3)),
                        Battery.of(barePack(pack(board).cell(), 7, 5, 0.008)),
                        new Use(
                                0.9,
                                0.2,
                                3.0,
                                new Climate(20.0, 25.0, 25.0, 0.0, 30.0),
                                0.1,
                                50.0,
                                new Riding(1.5, 0.0, 2.0, 0.004, Optional.empty()),
                                new Effort(120.0, 20.0, 1.0, 0.2)),
                        NO_MARGINS,
                        new Criteria(1.0, 2.0, 0.1, OptionalDouble.empty()),
                        Settings.NONE);
        return cart.withSettings(
                new Settings(
                        OptionalDouble.of(30.0),
                        OptionalDouble.of(20.0),
                        OptionalDouble.of(25.0),
                        OptionalDouble.of(10.0),
                        Optional.of(new Taper(21.0, 18.0)),
                        Optional.of(new Taper(28.0, 29.2)),
                        OptionalDouble.of(3.0)));
    }

    /** A cell whose voltage and resistance are the same at every charge state and temperature. */
    public static Cell flatCell(double voltage, double resistance, double lowest, double highest) {
        return new Cell(
                1.0,
                1000.0,
                1000.0,
                highest,
                lowest,
                resistance,
                Curve.constant(voltage),
                ResistanceByCharge.alike(Curve.constant(1.0)),
                ArrheniusCurve.through(Curve.constant(1.0)),
                new Relaxation(0.0, 60.0),
                OptionalDouble.empty(),
                new ChargingWindow(-60.0, 100.0, 0.0, 0.0, ChargingWindow.WHATEVER_THE_CHARGE),
                new DischargingWindow(-60.0, 100.0),
                Optional.empty(),
                lowest);
    }

    /** The same cell with its maker's ratings. */
    public static Cell rated(Cell cell, double discharge, double charge) {
        return cell.withDischargeCurrent(discharge).withChargeCurrent(charge);
    }

    /** The same cell with another charging window. */
    public static Cell charged(Cell cell, ChargingWindow window) {
        return cell.withCharging(window);
    }

    /** The same cell with one resistance at every charge state. */
    public static Cell evenResistance(Cell cell) {
        return relaxing(
                withResistanceByCharge(cell, Curve.constant(1.0)),
                new Relaxation(cell.relaxation().rise(), cell.relaxation().timeConstant()));
    }

    /** The same cell with a resistance that follows the charge state. */
    public static Cell withResistanceByCharge(Cell cell, Curve factor) {
        return resisting(cell, ResistanceByCharge.alike(factor));
    }

    /** The same cell, which resists more while it is charged, at every charge state alike. */
    public static Cell resistingMoreWhileCharged(Cell cell, double more) {
        return resisting(
                cell,
                new ResistanceByCharge(cell.resistanceByCharge().drawn(), Curve.constant(more)));
    }

    /** The same cell that resists otherwise while it is drawn from and charged. */
    public static Cell resisting(Cell cell, ResistanceByCharge resistance) {
        return cell.withResistanceByCharge(resistance);
    }

    /** The same cell with its maker's ratings for a pulse. */
    public static Cell pulsed(Cell cell, PulseRating pulse) {
        return cell.withPulse(Optional.of(pulse));
    }

    /** The same cell that relaxes otherwise. */
    public static Cell relaxing(Cell cell, Relaxation relaxation) {
        return cell.withRelaxation(relaxation);
    }

    /** The same cell with another open-circuit voltage. */
    public static Cell withVoltage(Cell cell, Curve openCircuitVoltage) {
        return cell.withOpenCircuitVoltage(openCircuitVoltage);
    }

    /** A pack without protection and wiring. */
    public static Pack barePack(Cell cell, int series, int parallel, double joints) {
        return new Pack(
                cell,
                series,
                parallel,
                joints,
                0.0,
                25.0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Protection.UNKNOWN,
                Wiring.NONE);
    }

    /** The first of its packs, or the only one. */
    public static Pack pack(Build build) {
        return build.battery().packs().get(0);
    }

    /** The vehicle fed from its first pack alone, made of another cell. */
    public static Build withCell(Build build, Cell cell) {
        return withPack(build, withCell(pack(build), cell));
    }

    /** The vehicle with every cell changed. */
    public static Build withCells(Build build, UnaryOperator<Cell> change) {
        Battery old = build.battery();
        return withBattery(
                build,
                old.withPacks(
                        old.packs().stream()
                                .map(pack -> withCell(pack, change.apply(pack.cell())))
                                .toList()));
    }

    /** The same pack of another cell. */
    public static Pack withCell(Pack pack, Cell cell) {
        return pack.withCell(cell);
    }

    /** Packs that are joined without loss, by what bears any current. */
    public static Battery joined(Joining joining, List<Pack> packs) {
        return new Battery(packs, joining, Wiring.NONE, 0.0);
    }

    public static Build withPack(Build build, Pack pack) {
        return withBattery(build, Battery.of(pack));
    }

    public static Build withBattery(Build build, Battery battery) {
        return build.withBattery(battery);
    }

    public static Build withMotor(Build build, Motor motor) {
        return build.withMotor(motor);
    }

    public static Build withDrive(Build build, Drive drive, double wheelDiameter) {
        Vehicle old = build.vehicle();
        return build.withVehicle(old.withWheelDiameter(wheelDiameter)).withDrive(drive);
    }

    /** Its regen limiter that late, and its charge and over-voltage trips that quick [s]. */
    public static Build withLateLimiter(Build build, double response, double delay) {
        Controllers old = build.controllers();
        Battery battery = build.battery();
        Controllers late = old.withRegenResponse(response);
        return withControllers(build, late)
                .withBattery(
                        battery.withPacks(
                                battery.packs().stream()
                                        .map(pack -> withDelay(pack, delay))
                                        .toList()));
    }

    private static Pack withDelay(Pack pack, double delay) {
        Protection old = pack.protection();
        OptionalDouble told = old.isBypassed() ? OptionalDouble.empty() : OptionalDouble.of(delay);
        return pack.withProtection(old.withChargeTripDelay(told).withOvervoltageTripDelay(told));
    }

    public static Build withControllers(Build build, Controllers controllers) {
        return build.withControllers(controllers);
    }

    public static Build withVehicle(Build build, Vehicle vehicle) {
        return build.withVehicle(vehicle);
    }

    public static Build withUse(Build build, Use use) {
        return build.withUse(use);
    }

    /** Another margin of the cells' ratings, the other margins as they are. */
    public static Build withCellMargin(Build build, double margin) {
        Margins old = build.margins();
        return withMargins(build, old.withCell(margin));
    }

    public static Build withMargins(Build build, Margins margins) {
        return build.withMargins(margins);
    }
}

package brakewright.spec;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A vehicle that can be worked out by hand.
 *
 * <p>Its pack has ten cells in series, from 3 V empty to 4 V full and 0.05 Ω each: {@code 30 V + 10
 * V·s} behind 0.5 Ω, at whatever temperature and for however long; the cells hold 2 Ah and bear 2 V
 * to 5 V.
 *
 * <p>Its motor makes 0.1 V·s/rad and has 0.1 Ω, without friction or iron loss; the wheel turns ten
 * radians per metre, so that the back-EMF is 1 V for each m/s. Neither drive nor controller loses
 * anything: at 10 m/s a drive current I draws {@code 10 V·I + 0.1 Ω·I²}, and a brake current
 * returns {@code 10 V·I − 0.1 Ω·I²}.
 *
 * <p>It weighs 100 kg, rolls against 10 N and meets no air.
 */
public final class RoundFigures {

    public static final Cell CELL = cell(2.0, 5.0);

    private RoundFigures() {}

    /** The cell, bearing other voltages. */
    public static Cell cell(double lowest, double highest) {
        return cell(lowest, highest, Curve.constant(1.0));
    }

    /** The cell, of so many times its resistance at 5 °C and of its own at 25 °C. */
    public static Cell resistingCold(double factor) {
        return cell(2.0, 5.0, Curve.of(new double[] {5.0, 25.0}, new double[] {factor, 1.0}));
    }

    private static Cell cell(double lowest, double highest, Curve resistanceByTemperature) {
        return new Cell(
                2.0,
                1000.0,
                1000.0,
                highest,
                lowest,
                0.05,
                Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 4.0}),
                ResistanceByCharge.alike(Curve.constant(1.0)),
                ArrheniusCurve.through(resistanceByTemperature),
                new Relaxation(0.0, 60.0),
                OptionalDouble.empty(),
                new ChargingWindow(-60.0, 100.0, 0.0, 0.0, ChargingWindow.WHATEVER_THE_CHARGE),
                new DischargingWindow(-60.0, 100.0),
                Optional.empty(),
                lowest);
    }

    public static Pack pack(Cell cell, Protection protection) {
        return pack(cell, protection, OptionalDouble.empty());
    }

    public static Pack pack(Cell cell, Protection protection, OptionalDouble joinedAt) {
        return new Pack(
                cell,
                10,
                1,
                0.0,
                0.0,
                25.0,
                OptionalDouble.empty(),
                joinedAt,
                protection,
                Wiring.NONE);
    }

    /** A vehicle that nothing but its cells' voltages limits, up to 10 m/s. */
    public static Build vehicle() {
        return new Build(
                "round figures",
                new Rider(70.0, Stance.SEATED, 0.5, 0.3),
                parts(0.0, OptionalDouble.empty()),
                new Drive(1, 1.0, 1.0),
                new Motor(
                        60.0 / (2.0 * Math.PI) / 0.1,
                        0.1,
                        7,
                        0.0,
                        0.0,
                        0.0,
                        OptionalDouble.empty(),
                        120.0,
                        Optional.empty()),
                controllers(0.0),
                Battery.of(pack(CELL, Protection.UNKNOWN)),
                new Use(
                        1.0,
                        0.0,
                        10.0,
                        new Climate(20.0, 25.0, 25.0, 0.0, 20.0),
                        0.0,
                        0.0,
                        new Riding(5.0, 0.0, 0.0, 0.0, Optional.empty()),
                        new Effort(10.0, 10.0, 1.0, 0.0)),
                Builds.NO_MARGINS,
                new Criteria(1.0, 10.0, 0.0, OptionalDouble.empty()),
                Settings.NONE);
    }

    /** 30 kg on wheels that take 10 N, with a share of mass that turns and a friction brake. */
    public static Vehicle parts(double rotatingShare, OptionalDouble frictionBrake) {
        return new Vehicle(
                30.0,
                0.0,
                0.2,
                new Axles(1.0, 0.5, 0.5, DrivenAxle.BOTH),
                10.0 / (100.0 * 9.80665),
                0.0,
                1.0,
                1.0,
                rotatingShare,
                frictionBrake);
    }

    /** The vehicle with a pack of these cells, protected like this. */
    public static Build fed(Cell cell, Protection protection) {
        return Builds.withPack(vehicle(), pack(cell, protection));
    }

    /** Motor currents when driving and braking, pack currents drawn and returned [A]. */
    public static Settings set(double drive, double brake, double discharge, double regen) {
        return Settings.NONE
                .withMotorDriveCurrent(drive)
                .withMotorBrakeCurrent(brake)
                .withPackDischargeCurrent(discharge)
                .withPackRegenCurrent(regen);
    }

    /** The vehicle with cells that are colder at times [°C]. */
    public static Build coldestAt(Build build, double coldestC) {
        return build.withUse(build.use().withClimate(new Climate(20.0, coldestC, 25.0, 0.0, 20.0)));
    }

    /** The vehicle with a limiter of the pack regen current that is that late [s]. */
    public static Build limitedAfter(Build build, double regenResponse) {
        return Builds.withControllers(build, controllers(regenResponse));
    }

    private static Controllers controllers(double regenResponse) {
        return new Controllers(
                1,
                CurrentBasis.DC_EQUIVALENT,
                1000.0,
                1000.0,
                1000.0,
                1.0,
                OptionalDouble.empty(),
                regenResponse,
                0.0);
    }
}

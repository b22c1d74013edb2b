package brakewright.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.LoadTransfer;
import brakewright.spec.AnyBuild;
import brakewright.spec.BrakedBuilds;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Vehicle;
import java.util.Optional;
import java.util.OptionalDouble;
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
class StopProperties {

    /** The quadrature's own relative tolerance, with room for its sum over many panels. */
    private static final double QUADRATURE = 1e-6;

    /**
     * Where grip begins to hold the brake back, or the fade speed moves with the charge, the
     * integrand bends out of sight of the quadrature's nodes; 1.4e-5 was met.
     */
    private static final double UNSEEN_BEND = 1e-4;

    /** Where the forces nearly cancel, their rounding decides how far the vehicle goes. */
    private static final double NEARLY_BALANCED = 0.1;

    /** A sum of a few hundred terms of like size. */
    private static final double SUM = 1e-9;

    /** So often at most is something added to the charge state in a stop, and rounded. */
    private static final int SUMMED = 500;

    /** A handful of operations on numbers of like size. */
    private static final double ROUNDING = 1e-9;

    /** Nearer to a speed that is held the time to get there grows without bound. */
    private static final double JUST_ABOVE = 1e-3;

    @Property(tries = 300)
    void aFasterVehicleStopsLater(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 1.01, max = 2.0) double multiple,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Stop stop = stop(build, 0.0);
        double slow = distance(stop.from(speed, charge));
        double fast = distance(stop.from(multiple * speed, charge));
        assertThat(fast).isGreaterThan(slow * (1.0 - QUADRATURE));
    }

    @Property(tries = 300)
    void aSteeperDescentNeverStopsShorter(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = -0.3, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.2) double steeper) {
        double gentle = distance(stop(build, slope).from(speed, charge));
        double steep = distance(stop(build, slope - steeper).from(speed, charge));
        assertThat(steep).isGreaterThanOrEqualTo(gentle * (1.0 - QUADRATURE));
    }

    @Property(tries = 300)
    void aHeavierVehicleNeverStopsShorterByTheSameForce(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 100.0) double more) {
        ElectricBrake brake = brake(any);
        Build light = loaded(any, 0.0);
        Build heavy = loaded(any, more);
        double lightly = distance(new Stop(light, brake, level(light)).from(speed, charge));
        double heavily = distance(new Stop(heavy, brake, level(heavy)).from(speed, charge));
        assertThat(heavily).isGreaterThanOrEqualTo(lightly * (1.0 - QUADRATURE));
    }

    @Property(tries = 300)
    void moreBrakeCurrentNeverStopsLater(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double share) {
        ElectricBrake full = brake(build);
        ElectricBrake less =
                new ElectricBrake(
                        full.powertrain(),
                        share * full.motorCurrent(),
                        full.packCurrent(),
                        full.taper(),
                        full.endsBelow());
        double harder = distance(new Stop(build, full, level(build)).from(speed, charge));
        double softer = distance(new Stop(build, less, level(build)).from(speed, charge));
        assertThat(harder).isLessThanOrEqualTo(softer * (1.0 + QUADRATURE));
    }

    @Property(tries = 300)
    void aWetRoadNeverStopsShorter(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = -0.3, max = 0.3) double slope) {
        Surroundings dry = level(build).withSlope(slope);
        Surroundings wet = dry.withGrip(build.vehicle().gripWet());
        double onDry = distance(new Stop(build, brake(build), dry).from(speed, charge));
        double onWet = distance(new Stop(build, brake(build), wet).from(speed, charge));
        assertThat(onWet).isGreaterThanOrEqualTo(onDry * (1.0 - QUADRATURE));
    }

    @Property(tries = 300)
    void aConstantForceStopsAsAByTwoVSquared(
            @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 40.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 9.0) double deceleration) {
        stopsByFrictionAlone(speed, deceleration, 2.0, 0.0, deceleration);
    }

    /** However hard the lever is pulled, a wet road carries {@code μ·g·cosθ} and no more. */
    @Property(tries = 300)
    void theFrictionBrakeStopsNoHarderThanTheRoadCarries(
            @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 40.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double asked,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 1.2) double grip,
            @ForAll @Scale(6) @DoubleRange(min = -0.09, max = 0.3) double slope) {
        double angle = Math.atan(slope);
        double carried = Math.min(asked, grip * 9.80665 * Math.cos(angle));
        double deceleration = carried + 9.80665 * Math.sin(angle);
        Assume.that(deceleration > NEARLY_BALANCED);
        stopsByFrictionAlone(speed, asked, grip, slope, deceleration);
    }

    /**
     * By hand: 10 m/s on ice of μ = 0.1, {@code 100/(2·0.980665) = 50.986 m}, whatever is asked.
     */
    @Example
    void stopsOnIceAsWorkedByHand() {
        Build bench = BrakedBuilds.frictionOnly(6.0);
        ElectricBrake none = new ElectricBrake(Powertrain.of(bench), 0.0, 0.0, Optional.empty());
        double distance =
                distance(new Stop(bench, none, level(bench).withGrip(0.1)).from(10.0, 0.5));
        assertThat(distance).isCloseTo(50.986, within(0.0005));
    }

    private static void stopsByFrictionAlone(
            double speed, double asked, double grip, double slope, double deceleration) {
        Build bench = BrakedBuilds.frictionOnly(asked);
        Powertrain train = Powertrain.of(bench);
        ElectricBrake none = new ElectricBrake(train, 0.0, 0.0, Optional.empty());
        Surroundings where = level(bench).withGrip(grip).withSlope(slope);
        StopOutcome.Stopped stopped =
                (StopOutcome.Stopped) new Stop(bench, none, where).from(speed, 0.5);
        double expected = speed * speed / (2.0 * deceleration);
        assertThat(stopped.distance()).isCloseTo(expected, within(SUM * expected));
        assertThat(stopped.time())
                .isCloseTo(speed / deceleration, within(SUM * speed / deceleration));
        assertThat(stopped.meanDeceleration()).isCloseTo(deceleration, within(SUM * deceleration));
        assertThat(stopped.leastDeceleration()).isCloseTo(deceleration, within(SUM * deceleration));
        assertThat(stopped.fullyDeveloped()).isCloseTo(deceleration, within(SUM * deceleration));
    }

    /** Whole stops, and every speed and share of the brakes within them. */
    @Property(tries = 500)
    void noStopIsHarderThanGripAndRoadAllow(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip,
            @ForAll @Scale(6) @DoubleRange(min = -0.3, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double share) {
        Build build = withFriction(BrakedBuilds.buildingUp(any, 0.0), 9.0 * share);
        Surroundings where = level(build).withGrip(grip).withSlope(slope);
        double carried = grip * 9.80665 * build.mass() * Math.cos(Math.atan(slope));
        Braking braking = new Braking(build, brake(build), where);
        double[] rates = new double[Counted.COUNT];
        for (int step = 0; step <= 20; step++) {
            double here = speed * step / 20;
            double brakes =
                    Tally.rates(braking, here, charge, share, rates) - braking.roadForce(here);
            assertThat(brakes).isBetween(0.0, carried * (1.0 + ROUNDING));
        }
        if (new Stop(build, brake(build), where).from(speed, charge)
                instanceof StopOutcome.Stopped stopped) {
            double most = (carried + braking.roadForce(speed)) / build.inertia();
            assertThat(stopped.meanDeceleration()).isLessThanOrEqualTo(most * (1.0 + QUADRATURE));
            assertThat(stopped.leastDeceleration()).isLessThanOrEqualTo(most * (1.0 + ROUNDING));
        }
    }

    /** Where there is only the electric brake, it is held back as its limit is, slope or not. */
    @Property(tries = 300)
    void withoutFrictionBrakeTheElectricBrakeHasTheWholeGrip(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip,
            @ForAll @Scale(6) @DoubleRange(min = -0.3, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed) {
        Powertrain train = Powertrain.of(any);
        ElectricBrake endless = new ElectricBrake(train, 1e6, 1e6, Optional.empty());
        Surroundings where =
                new Surroundings(slope, grip, any.battery().temperatureC(), false, 0.0);
        double force = new Braking(any, endless, where).electricForce(1e6, speed, 1.0);
        double multiple = new LoadTransfer(any.vehicle().axles()).brakingGrip(grip);
        double normal = 9.80665 * any.mass() * Math.cos(Math.atan(slope));
        double expected = normal * Math.min(grip, multiple);
        assertThat(force).isCloseTo(expected, within(ROUNDING * expected));
    }

    @Property(tries = 300)
    void theEnergyOfMotionIsAccountedFor(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = -0.3, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Build build = BrakedBuilds.buildingUp(any, 0.0);
        StopOutcome.Stopped stopped = stopped(stop(build, slope).from(speed, charge));
        double energy =
                0.5 * build.mass() * (1.0 + build.vehicle().rotatingShare()) * speed * speed;
        ledgerCloses(stopped, energy, SUM);
    }

    /** While the brakes build up, the speed is integrated and not counted: 1e-6 instead of 1e-9. */
    @Property(tries = 300)
    void theEnergyOfMotionIsAccountedForWhileTheBrakesBuildUp(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = -0.3, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        StopOutcome.Stopped stopped = stopped(stop(build, slope).from(speed, charge));
        double energy =
                0.5 * build.mass() * (1.0 + build.vehicle().rotatingShare()) * speed * speed;
        ledgerCloses(stopped, energy, QUADRATURE);
    }

    /** The terminals take the energy that charges the cells and the heat in them, never less. */
    @Property(tries = 300)
    void theChargeRisesByNoMoreThanTheTerminalsTake(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.9) double charge) {
        Build build = Builds.withCell(any, Builds.flatCell(3.6, 0.02, 2.5, 4.2));
        StopOutcome.Stopped stopped = stopped(stop(build, 0.0).from(speed, charge));
        double whole =
                3600.0
                        * new BatteryModel(build.battery()).capacityAh()
                        * 3.6
                        * Builds.pack(build).series();
        double stored = (stopped.endCharge() - charge) * whole;
        double slack = QUADRATURE * scale(0.0, stopped);
        assertThat(stored).isLessThanOrEqualTo(stopped.returned() + slack);
        assertThat(stopped.spent().sum())
                .isCloseTo(-stored, within(slack + SUMMED * Math.ulp(1.0) * whole));
        if (stopped.returned() < -slack) {
            assertThat(stopped.endCharge()).isLessThan(charge);
        }
    }

    @Property(tries = 300)
    void thePackNeverTakesMoreThanTheSettledLimit(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = -0.3, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricBrake brake = brake(build);
        Surroundings where = level(build).withSlope(slope);
        StopOutcome.Stopped stopped = stopped(new Stop(build, brake, where).from(speed, charge));
        double limit =
                brake.settledPackLimit(
                        PackState.of(new BatteryModel(build.battery()), charge, where.cellsC()));
        assertThat(stopped.peakPackCurrent()).isLessThanOrEqualTo(limit * (1.0 + 1e-9));
    }

    @Property(tries = 100)
    void agreesWithAPlainIntegrationInManySteps(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = -0.2, max = 0.2) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 0.9) double charge) {
        agreesWithAPlainIntegration(BrakedBuilds.buildingUp(any, 0.0), speed, slope, charge);
    }

    @Property(tries = 100)
    void agreesWithAPlainIntegrationWhileTheBrakesBuildUp(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = -0.2, max = 0.05) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 0.9) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.3) double seconds) {
        agreesWithAPlainIntegration(BrakedBuilds.buildingUp(any, seconds), speed, slope, charge);
    }

    private static void agreesWithAPlainIntegration(
            Build build, double speed, double slope, double charge) {
        Surroundings where = level(build).withSlope(slope);
        ElectricBrake brake = brake(build);
        StopOutcome.Stopped stopped = stopped(new Stop(build, brake, where).from(speed, charge));
        Assume.that(stopped.time() > 1.5 * build.use().effort().buildUp());
        Assume.that(stopped.leastDeceleration() > NEARLY_BALANCED);
        SlowIntegration.Result slow = new SlowIntegration(build, brake, where).stop(speed, charge);
        assertThat(stopped.distance())
                .as("%s %s", stopped, slow)
                .isCloseTo(slow.distance(), within(UNSEEN_BEND * slow.distance()));
        assertThat(stopped.time()).isCloseTo(slow.time(), within(UNSEEN_BEND * slow.time()));
        assertThat(stopped.endCharge()).isCloseTo(slow.endCharge(), within(UNSEEN_BEND));
        assertThat(stopped.peakPackCurrent())
                .as("%s %s", stopped, slow)
                .isCloseTo(slow.peak(), within(0.01 * slow.peak() + 0.05));
    }

    /** 12S4P of 5 Ω give 30 W at the most; 40 A near a standstill ask for more. */
    @Example
    void agreesWithAPlainIntegrationWhereThePackCannotGiveWhatBrakingDraws() {
        Build board =
                Builds.withCells(
                        Builds.trailBoard()
                                .withSettings(
                                        Builds.trailBoard().settings().withMotorBrakeCurrent(40.0)),
                        StopProperties::soft);
        agreesWithAPlainIntegration(BrakedBuilds.buildingUp(board, 0.0), 1.0, 0.0, 0.5);
    }

    private static Cell soft(Cell cell) {
        return Builds.evenResistance(cell.withResistance(5.0));
    }

    /**
     * Cells so small that a stop fills a fifth of them: the voltage at the highest current is that
     * of the charge by then, not that of the beginning.
     */
    @Example
    void theVoltageIsThatOfTheChargeAtThePeak() {
        Build board = BrakedBuilds.buildingUp(tinyCells(), 0.0);
        for (double packCurrent : new double[] {4.0, 12.0, 100.0}) {
            ElectricBrake limited =
                    new ElectricBrake(Powertrain.of(board), 60.0, packCurrent, Optional.empty());
            StopOutcome.Stopped stopped =
                    stopped(new Stop(board, limited, level(board)).from(11.0, 0.3));
            SlowIntegration.Result slow =
                    new SlowIntegration(board, limited, level(board)).stop(11.0, 0.3);
            BatteryModel model = new BatteryModel(board.battery());
            double before =
                    model.cellVoltage(
                            stopped.peakPackCurrent(), 0.3, board.battery().temperatureC());
            assertThat(stopped.peakPackCurrent())
                    .isCloseTo(slow.peak(), within(1e-3 * slow.peak()));
            assertThat(stopped.peakCellVoltage())
                    .as("peak at %s A; %s V as it began", stopped.peakPackCurrent(), before)
                    .isCloseTo(slow.peakCellVoltage(), within(0.01));
            if (packCurrent < 20.0) {
                assertThat(stopped.peakCellVoltage()).isGreaterThan(before + 0.03);
            }
        }
    }

    /** The fade speed lies below a coarse search's last place: nothing but corners finds it. */
    @Property(tries = 500)
    void noWindowInWhichTheSlopeIsStrongerIsMissed(
            @ForAll @Scale(6) @DoubleRange(min = 6.0, max = 30.0) double start,
            @ForAll @Scale(6) @DoubleRange(min = 2.0, max = 12.0) double packCurrent,
            @ForAll @Scale(6) @DoubleRange(min = -0.2, max = 0.2) double deeper) {
        Build board = BrakedBuilds.buildingUp(Builds.trailBoard(), 0.0);
        ElectricBrake fading =
                new ElectricBrake(Powertrain.of(board), 60.0, packCurrent, Optional.empty());
        SlowIntegration onLevel = new SlowIntegration(board, fading, level(board));
        double least = Double.POSITIVE_INFINITY;
        int steps = 4000;
        for (int step = 1; step <= steps; step++) {
            least = Math.min(least, onLevel.force(start * step / steps, 0.5, 1.0));
        }
        double weight = board.mass() * 9.80665;
        Surroundings where =
                level(board).withSlope(-Math.tan(Math.asin((least + deeper) / weight)));
        SlowIntegration downhill = new SlowIntegration(board, fading, where);
        double highest = 0.0;
        for (int step = 1; step <= steps; step++) {
            if (downhill.force(start * step / steps, 0.5, 1.0) < 0.0) {
                highest = start * step / steps;
            }
        }
        StopOutcome outcome = new Stop(board, fading, where).from(start, 0.5);
        if (highest > 0.0) {
            assertThat(outcome).isInstanceOf(StopOutcome.Unstoppable.class);
            assertThat(((StopOutcome.Unstoppable) outcome).heldAt())
                    .isBetween(highest * (1.0 - ROUNDING), highest + start / steps);
        } else if (outcome instanceof StopOutcome.Unstoppable unstoppable) {
            assertThat(downhill.force(unstoppable.heldAt(), 0.5, 1.0)).isLessThan(0.01);
        }
    }

    /** Nothing slows a vehicle without brakes and rolling resistance in the end. */
    @Example
    void doesNotStopByAirAlone() {
        Build still = BrakedBuilds.frictionOnly(0.0);
        Vehicle old = still.vehicle();
        Build sail =
                Builds.withVehicle(
                        still,
                        old.withRollingResistance(0.0)
                                .withDragArea(0.6)
                                .withRotatingShare(0.0)
                                .withFrictionBrake(OptionalDouble.empty()));
        ElectricBrake none = new ElectricBrake(Powertrain.of(sail), 0.0, 0.0, Optional.empty());
        for (Build build : new Build[] {still, sail}) {
            assertThat(new Stop(build, none, level(build)).from(8.0, 0.5))
                    .isInstanceOf(StopOutcome.Unstoppable.class);
        }
    }

    /** The forces balance at the charge at the start, or at that on arriving at the speed. */
    @Property(tries = 500)
    void doesNotStopWhereTheSlopePullsHarderThanAllBrakes(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = -1.0, max = 0.0) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Build build = BrakedBuilds.buildingUp(any, 0.0);
        Surroundings where = level(build).withSlope(slope);
        ElectricBrake brake = brake(build);
        SlowIntegration forces = new SlowIntegration(build, brake, where);
        StopOutcome outcome = new Stop(build, brake, where).from(speed, charge);
        double weight = build.mass() * 9.80665;
        double atStart = forces.force(speed, charge, 1.0);
        if (atStart < -1e-9 * weight) {
            assertThat(outcome).isEqualTo(new StopOutcome.Unstoppable(speed));
        } else if (outcome instanceof StopOutcome.Unstoppable unstoppable) {
            double held = unstoppable.heldAt();
            assertThat(held).isPositive().isLessThanOrEqualTo(speed);
            double there =
                    forces.chargeAfter(speed, charge, Math.min(speed, held * (1.0 + JUST_ABOVE)));
            double below = held * (1.0 - 1e-6);
            assertThat(Math.min(forces.force(below, charge, 1.0), forces.force(below, there, 1.0)))
                    .isLessThan(1e-4 * weight);
        }
    }

    /** Where the pack holds the brake back, it is weakest between a fade and the air's help. */
    @Example
    void doesNotStopWhereTheSlopeIsStrongerAtSpeedsBetween() {
        Build board = BrakedBuilds.buildingUp(Builds.trailBoard(), 0.0);
        ElectricBrake fading = new ElectricBrake(Powertrain.of(board), 60.0, 5.0, Optional.empty());
        SlowIntegration forces = new SlowIntegration(board, fading, level(board));
        double weakest = 1.0;
        for (double speed = 1.0; speed < 20.0; speed += 0.001) {
            if (forces.force(speed, 0.5, 1.0) < forces.force(weakest, 0.5, 1.0)) {
                weakest = speed;
            }
        }
        double pull = forces.force(weakest, 0.5, 1.0) + 0.05;
        double weight = board.mass() * 9.80665;
        double slope = -Math.tan(Math.asin(pull / weight));
        Surroundings where = level(board).withSlope(slope);
        double start = weakest / 0.95;
        double net = new SlowIntegration(board, fading, where).force(weakest, 0.5, 1.0);
        assertThat(net).isNegative();
        assertThat(new Stop(board, fading, where).from(start, 0.5))
                .as("net force %s N at %s m/s", net, weakest)
                .isInstanceOf(StopOutcome.Unstoppable.class);
    }

    private static double distance(StopOutcome outcome) {
        return outcome instanceof StopOutcome.Stopped stopped
                ? stopped.distance()
                : Double.POSITIVE_INFINITY;
    }

    private static StopOutcome.Stopped stopped(StopOutcome outcome) {
        Assume.that(outcome instanceof StopOutcome.Stopped);
        return (StopOutcome.Stopped) outcome;
    }

    /**
     * What was motion has gone into the parts and the terminals, which are counted by themselves.
     */
    static void ledgerCloses(StopOutcome.Stopped stopped, double energy, double share) {
        double slack = share * scale(energy, stopped);
        assertThat(stopped.spent().moving()).isCloseTo(-energy, within(slack));
        assertThat(stopped.spent().atTerminals()).isCloseTo(-stopped.returned(), within(slack));
        assertThat(stopped.spent().idle()).isZero();
    }

    /** What moves at most: large terms may cancel, as on a long descent. */
    private static double scale(double energy, StopOutcome.Stopped stopped) {
        return energy
                + Math.abs(stopped.returned())
                + stopped.spent().copper()
                + stopped.spent().friction()
                + Math.abs(stopped.spent().climbing());
    }

    private static Surroundings level(Build build) {
        return Surroundings.of(build);
    }

    private static ElectricBrake brake(Build build) {
        return Operation.of(build, Limits.of(build)).brake();
    }

    private static Stop stop(Build build, double slope) {
        return new Stop(build, brake(build), level(build).withSlope(slope));
    }

    private static Build loaded(Build build, double more) {
        Vehicle old = build.vehicle();
        return Builds.withVehicle(
                build, old.withCargo(old.cargo() + more).withFrictionBrake(OptionalDouble.empty()));
    }

    private static Build tinyCells() {
        return Builds.withCells(Builds.trailBoard(), cell -> cell.withCapacityAh(0.05));
    }

    private static Build withFriction(Build build, double deceleration) {
        Vehicle old = build.vehicle();
        return Builds.withVehicle(build, old.withFrictionBrake(OptionalDouble.of(deceleration)));
    }
}

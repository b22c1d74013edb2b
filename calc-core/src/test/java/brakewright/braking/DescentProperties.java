package brakewright.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.MotorHeatBalance;
import brakewright.limit.PackLimit;
import brakewright.machine.WindingHeat;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.RoadLoad;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Controllers;
import brakewright.spec.Motor;
import brakewright.spec.MotorHeat;
import brakewright.spec.Pack;
import brakewright.spec.PulseRating;
import brakewright.spec.Taper;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class DescentProperties {

    private static final double CELLS_C = 25.0;
    private static final double ROUNDING = 1e-9;

    /** The end is solved for to 1e-12 of the charge; no reserve is steeper than 1e5 per charge. */
    private static final double SOLVED = 1e-6;

    /** To which the end of a descent is solved [1]. */
    private static final double CHARGE_ACCURACY = 1e-12;

    /** The integrator's own tolerance is 1e-12 a step, and it takes a thousand steps or more. */
    private static final double INTEGRATED = 1e-7;

    /** Rise over run; the pull still grows with the slope [1]. */
    private static final double STEEPEST = 5.0;

    /** To which the time of a winding is solved for [s]. */
    private static final double SOLVED_S = 1e-9;

    private static final double ROUNDING_K = 1e-11;

    @Property(tries = 300)
    void theBrakeHoldsTheSteepestSlopeAndNoSteeper(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Descent level = descent(build, 0.0, speed, charge);
        double steepest = level.steepestHeld();
        Assume.that(steepest < 10.0);
        Descent edge = descent(build, steepest, speed, charge);
        double weight = build.mass() * 9.80665;
        assertThat(edge.pull()).isCloseTo(edge.available(), within(ROUNDING * weight));
        assertThat(descent(build, steepest * 1.0001, speed, charge).isHeld()).isFalse();
        assertThat(descent(build, steepest * 0.9999, speed, charge).isHeld()).isTrue();
        assertThat(edge.steepestHeld()).isEqualTo(steepest);
    }

    @Property(tries = 300)
    void thePullIsTheRoadLoadTurnedRound(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.5) double slope) {
        Descent descent = descent(build, slope, speed, 0.5);
        double angle = Math.atan(slope);
        RoadLoad load = RoadLoad.of(build);
        double expected =
                build.mass()
                                * 9.80665
                                * (Math.sin(angle) - load.rollingResistance() * Math.cos(angle))
                        - load.airForce(speed);
        assertThat(descent.pull()).isCloseTo(expected, within(ROUNDING * build.mass() * 9.80665));
    }

    /**
     * At the current that is named, the brake is as strong as the pull, or drag alone stronger; it
     * then holds for ever, unless the wheels do not grip even that.
     */
    @Property(tries = 300)
    void theNamedCurrentHolds(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.5) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        namedCurrentHolds(build, descent(build, slope, speed, charge), charge);
    }

    /** At a crawl the windings take more than the packs can give at any current. */
    @Example
    void morePowerThanThePacksCanGiveIsDrawnFromNone() {
        Motor old = Builds.trailBoard().motor();
        Build build =
                Builds.withMotor(
                        Builds.trailBoard(),
                        old.withResistanceAt20C(100.0 * old.resistanceAt20C()));
        Descent descent = descent(build, 0.3, 0.3, 0.5);
        assertThat(descent.packCurrent()).isEqualTo(Double.NEGATIVE_INFINITY);
        namedCurrentHolds(build, descent, 0.5);
    }

    private static void namedCurrentHolds(Build build, Descent descent, double charge) {
        Powertrain train = brake(build).powertrain();
        double force = train.brakeForce(descent.motorCurrent(), descent.speed());
        assertThat(force).isGreaterThanOrEqualTo(descent.pull() * (1.0 - ROUNDING));
        if (descent.motorCurrent() > 0.0) {
            assertThat(force).isCloseTo(descent.pull(), within(ROUNDING * force));
            double power = train.returnedPower(descent.motorCurrent(), descent.speed());
            double current = flowing(model(build), power, charge);
            if (Double.isInfinite(current)) {
                assertThat(descent.packCurrent()).isEqualTo(current);
            } else {
                assertThat(descent.packCurrent())
                        .isCloseTo(current, within(ROUNDING * Math.abs(current)));
            }
        } else {
            assertThat(descent.packCurrent()).isZero();
            boolean held = descent.isHeld();
            assertThat(descent.end()).isEqualTo(held ? DescentEnd.NEVER : DescentEnd.NOT_HELD);
            assertThat(descent.distance()).isEqualTo(held ? Double.POSITIVE_INFINITY : 0.0);
        }
    }

    /** Whether the packs are filled or emptied, whoever has more at first has more at the end. */
    @Property(tries = 300)
    void aGreaterChargeNeverEndsLower(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double other) {
        Descent emptier = descent(build, slope, speed, Math.min(one, other));
        Descent fuller = descent(build, slope, speed, Math.max(one, other));
        assertThat(fuller.endCharge()).isGreaterThanOrEqualTo(emptier.endCharge() - SOLVED);
    }

    /** Just before the end all conditions hold, and at least one does not just after it. */
    @Property(tries = 600, edgeCases = EdgeCasesMode.NONE)
    void atTheEndAReserveIsJustUsedUp(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.05) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.9, max = 1.1) double begins,
            @ForAll @Scale(6) @DoubleRange(min = 0.005, max = 0.1) double band) {
        Build build = fitting(any);
        ElectricBrake brake = tapered(build, begins, band);
        Limits limits = Limits.of(build);
        Descent descent = borne(build, brake, share, speed, charge);
        double end = descent.endCharge();
        double lowest = Math.min(charge, build.use().chargeTo());
        assertThat(end).isBetween(lowest, 1.0);
        switch (descent.end()) {
            case NOT_HELD -> assertThat(descent.isHeld()).isFalse();
            case NEVER -> assertThat(descent.packCurrent()).isZero();
            case FULL -> assertThat(end).isEqualTo(1.0);
            case LOWEST_CHARGE -> assertThat(end).isEqualTo(lowest);
            case PACK_REFUSES -> {
                Assume.that(end != charge);
                BatteryModel model = model(build);
                double power = power(brake, descent);
                double flowing = flowing(model, power, end);
                PackLimit limit = permitted(limits, flowing);
                double permitted = limit.valueAt(end, CELLS_C);
                // Where a curve is steep, or a pack near its greatest power, a charge that is
                // solved to its last digits leaves the current open in the sixth.
                double fuller = end + CHARGE_ACCURACY;
                double emptier = end - CHARGE_ACCURACY;
                double unsure =
                        Math.abs(flowing(model, power, fuller) - flowing(model, power, emptier))
                                + Math.abs(
                                        limit.valueAt(Math.min(1.0, fuller), CELLS_C)
                                                - limit.valueAt(Math.max(0.0, emptier), CELLS_C));
                assertThat(Math.abs(flowing))
                        .isCloseTo(permitted, within(SOLVED * (1.0 + permitted) + unsure));
                assertThat(descent.refusing()).isPresent();
            }
            case BRAKE_FADES -> {
                Assume.that(end != charge);
                PackState pack = lasting(model(build), end);
                Powertrain train = brake.powertrain();
                double most = train.mostReturningCurrent(descent.motorCurrent(), speed);
                double passed = pack.currentInto(train.returnedPower(most, speed));
                double settled = brake.settledPackLimit(pack);
                assertThat(passed).isCloseTo(settled, within(SOLVED * (1.0 + settled)));
            }
            default -> throw new AssertionError(descent.end());
        }
    }

    /** Along the way nothing is exceeded, at any of many places. */
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void nothingIsExceededOnTheWay(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.99) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.9, max = 1.1) double begins) {
        Build build = fitting(any);
        ElectricBrake brake = tapered(build, begins, 0.05);
        Limits limits = Limits.of(build);
        Descent descent = borne(build, brake, share, speed, charge);
        Assume.that(descent.endCharge() != charge);
        double power = power(brake, descent);
        BatteryModel model = model(build);
        PackLimit permitted = permitted(limits, power);
        for (int step = 0; step <= 400; step++) {
            double at = charge + (descent.endCharge() - charge) * step / 400.0;
            double flowing = flowing(model, power, at);
            assertThat(Math.abs(flowing))
                    .isLessThanOrEqualTo(permitted.valueAt(at, CELLS_C) * (1.0 + SOLVED) + SOLVED);
            if (flowing > 0.0) {
                assertThat(flowing)
                        .isLessThanOrEqualTo(
                                brake.settledPackLimit(lasting(model, at)) * (1.0 + SOLVED)
                                        + SOLVED);
            }
        }
    }

    /** Another way: the charge over time as a differential equation, in small steps. */
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void theTimeIsWhatMovesTheCharge(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.99) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Build build = fitting(any);
        ElectricBrake brake = tapered(build, 1.05, 0.05);
        Descent descent = borne(build, brake, share, speed, charge);
        assertThat(descent.distance()).isNotNaN().isNotNegative();
        Assume.that(descent.endCharge() != charge);
        assertThat(integrated(build, power(brake, descent), charge, descent.time()))
                .isCloseTo(descent.endCharge(), within(INTEGRATED));
        assertThat(descent.time() * speed).isCloseTo(descent.distance(), within(1e-6));
    }

    /** At a walk the brake draws more for its windings than the slope returns. */
    @Example
    void aDescentThatDrawsEndsAtTheLowestChargeInUse() {
        Build build = Builds.trailBoard();
        Descent descent = descent(build, 0.12, 0.3, 0.5);
        assertThat(descent.isHeld()).isTrue();
        assertThat(descent.packCurrent()).isNegative();
        assertThat(descent.end()).isEqualTo(DescentEnd.LOWEST_CHARGE);
        assertThat(descent.endCharge()).isEqualTo(build.use().chargeTo());
        double power = power(brake(build), descent);
        assertThat(integrated(build, power, 0.5, descent.time()))
                .isCloseTo(build.use().chargeTo(), within(INTEGRATED));
        double asIfNothingChanged =
                0.4 * 3600.0 * model(build).capacityAh() / -descent.packCurrent();
        assertThat(descent.time()).isLessThan(asIfNothingChanged);
    }

    /** A trip far up the voltage curve opens long before the lowest charge in use. */
    @Example
    void aDescentThatDrawsEndsWhereTheUnderVoltageTripWouldOpen() {
        Build build = tripping(Builds.trailBoard(), 3.3);
        Descent descent = descent(build, 0.12, 0.3, 0.5);
        assertThat(descent.packCurrent()).isNegative();
        assertThat(descent.end()).isEqualTo(DescentEnd.PACK_REFUSES);
        assertThat(descent.refusing()).contains(ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP);
        assertThat(descent.endCharge()).isBetween(0.11, 0.49);
        assertThat(descent.endCellVoltage())
                .isCloseTo(3.3 + build.margins().overvoltage(), within(SOLVED));
    }

    /** What the cells bear for as long as the braking in use lasts says nothing of a descent. */
    @Example
    void aPulseRatingLetsNoDescentLastLonger() {
        Build build = Builds.trailBoard();
        Build pulsed =
                Builds.withCells(
                        build,
                        cell ->
                                withPulse(
                                        cell,
                                        new PulseRating(
                                                OptionalDouble.of(2.0 * cell.dischargeCurrent()),
                                                OptionalDouble.of(3.0 * cell.chargeCurrent()),
                                                60.0)));
        assertThat(Limits.of(pulsed).packRegen().valueAt(0.5, CELLS_C))
                .isGreaterThan(1.3 * Limits.of(build).packRegen().valueAt(0.5, CELLS_C));
        ElectricBrake brake = new ElectricBrake(Powertrain.of(build), 60.0, 80.0, Optional.empty());
        Descent expected = Descent.of(build, brake, Limits.of(build), CELLS_C, 0.15, 9.0, 0.5);
        Descent descent = Descent.of(pulsed, brake, Limits.of(pulsed), CELLS_C, 0.15, 9.0, 0.5);
        assertThat(expected.distance()).isPositive();
        assertThat(descent).isEqualTo(expected);
    }

    /**
     * The continuous ratings and the resistance of an endless current permit no more. Unlike packs
     * side by side divide a lasting current otherwise than a pulse, so that one may be relieved.
     */
    @Property(tries = 300)
    void aLastingCurrentIsPermittedNoMoreThanAPulse(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = -10.0, max = 60.0) double cellsC) {
        Build build =
                Builds.withCells(
                        any,
                        cell ->
                                withPulse(
                                        cell,
                                        new PulseRating(
                                                OptionalDouble.of(1.5 * cell.dischargeCurrent()),
                                                OptionalDouble.of(1.5 * cell.chargeCurrent()),
                                                1000.0)));
        Assume.that(model(build).isEven());
        Limits limits = Limits.of(build);
        for (PackLimit limit : List.of(limits.packRegen(), limits.packDischarge())) {
            PackLimit lasting = limit.sustained();
            assertThat(lasting.id()).isEqualTo(limit.id());
            assertThat(lasting.valueAt(charge, cellsC))
                    .isLessThanOrEqualTo(limit.valueAt(charge, cellsC) * (1.0 + ROUNDING))
                    .isEqualTo(lasting.sustained().valueAt(charge, cellsC));
        }
    }

    /** Up to the steepest slope that is sustained the packs accept, just beyond it they refuse. */
    @Property(tries = 300)
    void thePacksBearTheSteepestSustainedSlopeAndNoSteeper(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Build build = fitting(any);
        ElectricBrake brake = new ElectricBrake(Powertrain.of(build), 80.0, 1e3, Optional.empty());
        Limits limits = Limits.of(build);
        Descent level = Descent.of(build, brake, limits, CELLS_C, 0.0, speed, charge);
        double steepest = level.steepestSustained();
        assertThat(steepest).isLessThanOrEqualTo(level.steepestHeld());
        Assume.that(steepest < 10.0);
        Descent below = Descent.of(build, brake, limits, CELLS_C, steepest * 0.9999, speed, charge);
        assertThat(below.end() == DescentEnd.PACK_REFUSES && below.endCharge() == charge).isFalse();
        if (steepest < level.steepestHeld() * 0.999) {
            Descent above =
                    Descent.of(build, brake, limits, CELLS_C, steepest * 1.0001, speed, charge);
            assertThat(above.distance()).isZero();
            assertThat(above.end()).isEqualTo(DescentEnd.PACK_REFUSES);
        }
    }

    /**
     * At the end of the time the winding is at its limit, its drag that of the speed held; without
     * a time it never is.
     */
    @Property(tries = 300)
    void theWindingReachesItsLimitWhenTheTimeIsUp(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double slope) {
        Descent descent = descent(build, slope, speed, 0.5);
        if (build.motor().heat().isEmpty()) {
            assertThat(descent.windingTime()).isEmpty();
            return;
        }
        WindingHeat heat = MotorHeatBalance.at(build, speed).orElseThrow();
        double limit = build.motor().windingLimitC();
        if (descent.windingTime().isEmpty()) {
            assertThat(heat.steady(descent.motorCurrent()).orElseThrow().windingC())
                    .isLessThanOrEqualTo(limit + SOLVED);
            return;
        }
        double time = descent.windingTime().getAsDouble();
        double current = descent.motorCurrent();
        double reached = heat.after(heat.cold(), current, time).windingC();
        double rate = (heat.after(heat.cold(), current, time + 1e-6).windingC() - reached) / 1e-6;
        assertThat(reached).isCloseTo(limit, within(SOLVED_S * rate + ROUNDING_K));
    }

    /** Windings of so little copper that they warm by more than a thousand kelvins a second. */
    @Example
    void tinyWindingsReachTheirLimitWhenTheTimeIsUp() {
        Build board = Builds.trailBoard();
        MotorHeat known = board.motor().heat().orElseThrow();
        for (int hundredths = 1; hundredths <= 200; hundredths++) {
            MotorHeat tiny =
                    new MotorHeat(
                            known.windingToCase(),
                            known.caseToAir(),
                            0.01 * hundredths,
                            known.caseHeatCapacity());
            theWindingReachesItsLimitWhenTheTimeIsUp(
                    board.withMotor(board.motor().withHeat(Optional.of(tiny))), 0.3, 2.0);
        }
    }

    @Example
    void speedSlopeAndChargeMustBePossible() {
        Build build = Builds.trailBoard();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> descent(build, 0.1, 5.0, 1.01))
                .withMessageContaining("charge state");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> descent(build, -0.1, 5.0, 0.5))
                .withMessageContaining("slope");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> descent(build, 0.1, Double.NaN, 0.5))
                .withMessageContaining("speed");
    }

    private static double integrated(Build build, double power, double from, double time) {
        BatteryModel model = model(build);
        double coulombs = 3600.0 * model.capacityAh();
        FirstOrderDifferentialEquations charging =
                new FirstOrderDifferentialEquations() {
                    @Override
                    public int getDimension() {
                        return 1;
                    }

                    @Override
                    public void computeDerivatives(double t, double[] y, double[] slope) {
                        double within = Math.max(0.0, Math.min(1.0, y[0]));
                        slope[0] = flowing(model, power, within) / coulombs;
                    }
                };
        double[] charge = {from};
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-12 * time, 0.001 * time, 1e-12, 1e-12);
        for (double knot : model.knots()) {
            integrator.addEventHandler(new Bend(knot), 0.001 * time, 1e-12 * time, 200);
        }
        integrator.integrate(charging, 0.0, charge, time, charge);
        return charge[0];
    }

    /** Ends a step where the curves bend. */
    private record Bend(double charge) implements EventHandler {

        @Override
        public void init(double start, double[] state, double end) {}

        @Override
        public double g(double t, double[] state) {
            return state[0] - charge;
        }

        @Override
        public Action eventOccurred(double t, double[] state, boolean rising) {
            return Action.RESET_DERIVATIVES;
        }

        @Override
        public void resetState(double t, double[] state) {}
    }

    /**
     * Into the packs after an endless time; negative when drawn: {@code I·(U + I·R) = p}. More than
     * {@code U²/4R} is drawn by no current, which is told as one without bound.
     */
    private static double flowing(BatteryModel model, double power, double charge) {
        PackState pack = lasting(model, charge);
        double u = pack.voltage();
        double r = power >= 0.0 ? pack.resistanceInto() : pack.resistance();
        double root = u * u + 4.0 * r * power;
        return root < 0.0 ? Double.NEGATIVE_INFINITY : 2.0 * power / (u + Math.sqrt(root));
    }

    private static PackState lasting(BatteryModel model, double charge) {
        return PackState.of(model, charge, CELLS_C, Double.POSITIVE_INFINITY);
    }

    private static BatteryModel model(Build build) {
        return new BatteryModel(build.battery());
    }

    private static double power(ElectricBrake brake, Descent descent) {
        return brake.powertrain().returnedPower(descent.motorCurrent(), descent.speed());
    }

    private static PackLimit permitted(Limits limits, double flowing) {
        return (flowing >= 0.0 ? limits.packRegen() : limits.packDischarge()).sustained();
    }

    /** The same with controllers that bear the full packs. */
    private static Build fitting(Build build) {
        Controllers controllers = build.controllers();
        double full = model(build).openCircuitVoltage(1.0);
        return Builds.withControllers(
                build,
                controllers.withVoltageRating(Math.max(controllers.voltageRating(), 1.1 * full)));
    }

    /** A descent that takes a share of the greatest current that settings and packs bear there. */
    private static Descent borne(
            Build build, ElectricBrake brake, double share, double speed, double charge) {
        Limits limits = Limits.of(build);
        RoadLoad load = RoadLoad.of(build);
        double steepest =
                Math.min(
                        STEEPEST,
                        Descent.of(build, brake, limits, CELLS_C, 0.0, speed, charge)
                                .steepestSustained());
        Powertrain train = brake.powertrain();
        double most = train.brakeCurrent(-load.force(speed, -steepest, 0.0), speed);
        double force = train.brakeForce(share * most, speed);
        double slope =
                force <= -load.force(speed, 0.0, 0.0) || force >= -load.force(speed, -STEEPEST, 0.0)
                        ? steepest
                        : new BrentSolver(1e-12)
                                .solve(
                                        200,
                                        rise -> -load.force(speed, -rise, 0.0) - force,
                                        0.0,
                                        STEEPEST);
        return Descent.of(build, brake, limits, CELLS_C, slope, speed, charge);
    }

    /** A strong brake; its taper's begin and band are shares of the voltage of the full packs. */
    private static ElectricBrake tapered(Build build, double begins, double band) {
        double full = model(build).openCircuitVoltage(1.0);
        return new ElectricBrake(
                Powertrain.of(build),
                80.0,
                60.0,
                Optional.of(new Taper(begins * full, (begins + band) * full)));
    }

    private static Build tripping(Build build, double volts) {
        Pack pack = Builds.pack(build);
        return Builds.withPack(
                build,
                pack.withProtection(
                        pack.protection().withCellUndervoltageTrip(OptionalDouble.of(volts))));
    }

    private static Cell withPulse(Cell cell, PulseRating pulse) {
        return cell.withPulse(Optional.of(pulse));
    }

    private static ElectricBrake brake(Build build) {
        return Operation.of(build, Limits.of(build)).brake();
    }

    private static Descent descent(Build build, double slope, double speed, double charge) {
        return Descent.of(build, brake(build), Limits.of(build), CELLS_C, slope, speed, charge);
    }
}

package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.formula.Derivation;
import brakewright.formula.Inputs;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.Powertrain;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Collects what limits the current of one motor, driving and braking.
 *
 * <p>A brake current must be borne at every speed in use. The motor's drag brakes beside the
 * current and grows with speed, and so does the road load; both are taken at the highest speed in
 * use, where they leave least.
 *
 * <p>A drive current must be borne when pulling away, where nothing takes a part of it but the drag
 * of a motor that hardly turns. The road load is not taken off there: the air does not hold yet,
 * and what rolling takes would only permit a little more.
 *
 * <p>Assumption: level road. A descent unloads the rear axle and tips the vehicle and its rider
 * forward earlier, by about the slope as a part of g; a climb does so backward when driving.
 *
 * <p>Assumption: the electric brake acts alone. A friction brake used with it takes its part of
 * grip and of what the rider bears.
 *
 * <p>Assumption: air and rolling shift no load between the axles, and hold at no height of their
 * own.
 *
 * <p>Assumption: a motor that hardly turns, with its drag of no load, for driving; turning parts
 * take nothing of the thrust there, which errs on the side of less.
 *
 * <p>Assumption: the winding and its case start at the temperature of the air. After a ride they
 * are warmer and bear the current for a shorter time, as the worksheet's heat section tells.
 */
final class MotorConstraints {

    private static final String BALANCE = "conservation of energy, drag taken into account";

    private final Build build;
    private final Inputs inputs;
    private final Powertrain powertrain;
    private final MotorSteps motor;
    private final Step usableGrip;
    private final GroundSteps ground;

    MotorConstraints(Build build) {
        this.build = build;
        this.inputs = new Inputs(build);
        this.powertrain = Powertrain.of(build);
        this.motor = new MotorSteps(build);
        this.usableGrip = GroundSteps.usableGrip(build);
        this.ground = new GroundSteps(build, usableGrip.result());
    }

    /**
     * Collects what limits the brake current.
     *
     * @param regen what the packs may take
     * @param model the packs, for a current into them
     */
    Limit braking(PackLimit regen, BatteryModel model) {
        List<Constraint> all = common(build.use().effort().hardBrake(), Input.USE_HARD_BRAKE);
        Braking braking = new Braking();
        all.add(
                ground.brakingGrip()
                        .map(bound -> braking.onTheRoad(ConstraintId.GRIP, bound))
                        .orElseGet(this::noGripBound));
        all.add(
                braking.felt(
                        ConstraintId.TIPPING,
                        Input.VEHICLE_MASS_CENTRE_HEIGHT,
                        ground.brakingTip()));
        if (build.rider().stance().isStanding()) {
            all.add(
                    braking.felt(
                            ConstraintId.RIDER_BALANCE,
                            Input.RIDER_SUPPORT_HALF_LENGTH,
                            ground.riderTip("z")));
        }
        all.add(braking.tolerated());
        all.addAll(new Overshoot(build, motor, model).constraints(regen.brief()));
        return new Limit(LimitId.MOTOR_BRAKE_CURRENT, all);
    }

    Limit driving() {
        List<Constraint> all = common(build.use().effort().hardPull(), Input.USE_HARD_PULL);
        Driving driving = new Driving();
        all.add(
                ground.drivingGrip("z")
                        .map(
                                bound ->
                                        driving.borne(
                                                ConstraintId.GRIP,
                                                Input.VEHICLE_GRIP,
                                                usableGrip,
                                                bound))
                        .orElseGet(this::noGripBound));
        all.add(
                driving.borne(
                        ConstraintId.TIPPING,
                        Input.VEHICLE_MASS_CENTRE_HEIGHT,
                        ground.drivingTip("z", "front wheels lift, part of g")));
        if (build.rider().stance().isStanding()) {
            all.add(
                    driving.borne(
                            ConstraintId.RIDER_BALANCE,
                            Input.RIDER_SUPPORT_HALF_LENGTH,
                            ground.riderTip("z")));
        }
        return new Limit(LimitId.MOTOR_DRIVE_CURRENT, all);
    }

    private List<Constraint> common(double time, Input timeInput) {
        List<Constraint> all = new ArrayList<>();
        build.motor()
                .currentRating()
                .ifPresent(
                        rating ->
                                all.add(
                                        rated(
                                                ConstraintId.MOTOR_CURRENT_RATING,
                                                rating,
                                                Input.MOTOR_CURRENT_RATING)));
        all.add(
                rated(
                        ConstraintId.CONTROLLER_MOTOR_RATING,
                        build.controllers().motorCurrentRating(),
                        Input.CONTROLLER_MOTOR_CURRENT_RATING));
        MotorHeatBalance.of(build)
                .map(heat -> heat.highestCurrentFor(heat.cold(), time))
                .map(found -> HeatSteps.constraint(build, motor, time, timeInput, found))
                .ifPresent(all::add);
        return all;
    }

    private Constraint rated(ConstraintId id, double rating, Input input) {
        double margin = build.margins().rating();
        return new Constraint(
                id,
                (1.0 - margin) * rating,
                input,
                new Derivation(
                        "(1 − m)·I_r",
                        "own choice, the rating less a margin",
                        Term.given(Input.MARGINS_RATING, margin),
                        Term.given(input, rating)));
    }

    private Constraint noGripBound() {
        return new Constraint(
                ConstraintId.GRIP,
                Double.POSITIVE_INFINITY,
                Input.VEHICLE_GRIP,
                List.of(usableGrip),
                ground.tipsBefore());
    }

    /** What a drive current is held to, where the vehicle pulls away. */
    private final class Driving {

        /** Bounds the thrust by an acceleration, which the last of the steps finds. */
        Constraint borne(ConstraintId id, Input decisive, Step... bounds) {
            Term multiple = bounds[bounds.length - 1].result();
            double newton = newton(multiple);
            return new Constraint(
                    id,
                    powertrain.thrustCurrent(newton, 0.0),
                    decisive,
                    Working.when(() -> words(List.of(bounds), multiple, newton)));
        }

        private Working.Words words(List<Step> bounds, Term multiple, double newton) {
            Step mass = motor.mass();
            Step torqueConstant = motor.torqueConstant();
            Step drag = motor.dragAtRest();
            Step ofDrag = motor.currentOfDrag(drag.result(), torqueConstant.result());
            Step perNewton = motor.currentForForce(torqueConstant.result(), false);
            Steps steps = new Steps();
            steps.with(List.of(mass, motor.voltageConstant(), torqueConstant));
            steps.with(List.of(drag, ofDrag, perNewton)).with(bounds);
            Term force =
                    steps.add(
                            Term.computed("F", "thrust that is borne", newton, Unit.NEWTON),
                            "m·g·z",
                            MotorSteps.NEWTON,
                            mass.result(),
                            MotorSteps.GRAVITY,
                            multiple);
            return new Working.Words(
                    steps,
                    new Derivation(
                            "F·c + I_d", BALANCE, force, perNewton.result(), ofDrag.result()));
        }
    }

    /** The force that gives the vehicle a multiple of g [N]. */
    private double newton(Term multiple) {
        return build.mass() * MotorSteps.GRAVITY.value() * multiple.value();
    }

    /** What a brake current is held to, at the highest speed that is met. */
    private final class Braking {

        private final double speed = build.highestSpeed();
        private final double roadLoad = RoadLoad.of(build).force(speed, 0.0, 0.0);

        /** Bounds the force between tyres and road. */
        Constraint onTheRoad(ConstraintId id, Step bound) {
            double newton = newton(bound.result());
            return constraint(
                    id,
                    Input.VEHICLE_GRIP,
                    newton,
                    machine -> {
                        machine.steps.with(List.of(usableGrip, bound));
                        return machine.force(
                                newton,
                                "m·g·z",
                                machine.mass.result(),
                                MotorSteps.GRAVITY,
                                bound.result());
                    });
        }

        /**
         * Bounds the whole deceleration, to which the road adds its part and from which turning
         * parts take theirs.
         */
        Constraint felt(ConstraintId id, Input decisive, Step bound) {
            double newton = left(MotorSteps.GRAVITY.value() * bound.result().value());
            return constraint(
                    id,
                    decisive,
                    newton,
                    machine -> {
                        Term road = machine.road();
                        machine.steps.with(List.of(bound));
                        return machine.force(
                                newton,
                                "max(0, m·(1 + j)·g·z − F_r)",
                                machine.mass.result(),
                                inputs.of(Input.VEHICLE_ROTATING_SHARE),
                                MotorSteps.GRAVITY,
                                bound.result(),
                                road);
                    });
        }

        Constraint tolerated() {
            double newton = left(build.criteria().riderDecelerationMax());
            return constraint(
                    ConstraintId.RIDER_TOLERANCE,
                    Input.CRITERIA_RIDER_DECELERATION_MAX,
                    newton,
                    machine -> {
                        Term road = machine.road();
                        return machine.force(
                                newton,
                                "max(0, m·(1 + j)·a − F_r)",
                                machine.mass.result(),
                                inputs.of(Input.VEHICLE_ROTATING_SHARE),
                                inputs.of(Input.CRITERIA_RIDER_DECELERATION_MAX),
                                road);
                    });
        }

        private double left(double deceleration) {
            return Math.max(0.0, build.inertia() * deceleration - roadLoad);
        }

        private Constraint constraint(
                ConstraintId id, Input decisive, double newton, Function<Machine, Term> force) {
            return new Constraint(
                    id,
                    powertrain.brakeCurrent(newton, speed),
                    decisive,
                    Working.when(() -> new Machine().words(force)));
        }
    }

    /** The steps from a brake force to a current, at the highest speed that is met. */
    private final class Machine {

        private final Term speed = inputs.highestSpeed();
        private final Step mass = motor.mass();
        private final Step torqueConstant = motor.torqueConstant();
        private final Step perNewton = motor.currentForForce(torqueConstant.result(), true);
        private final Step ofDrag;
        private final Steps steps = new Steps();

        Machine() {
            List<Step> drag = motor.dragAt(speed);
            ofDrag =
                    motor.currentOfDrag(
                            drag.get(drag.size() - 1).result(), torqueConstant.result());
            steps.with(List.of(mass, motor.voltageConstant(), torqueConstant)).with(drag);
            steps.with(List.of(ofDrag, perNewton));
        }

        Term road() {
            List<Step> road = motor.road(mass.result(), speed);
            steps.with(road);
            return road.get(road.size() - 1).result();
        }

        Term force(double newton, String formula, Term... terms) {
            return steps.add(
                    Term.computed("F", "brake force that is borne", newton, Unit.NEWTON),
                    formula,
                    MotorSteps.NEWTON,
                    terms);
        }

        Working.Words words(Function<Machine, Term> force) {
            Derivation derivation =
                    new Derivation(
                            "max(0, F·c − I_d)",
                            BALANCE,
                            force.apply(this),
                            perNewton.result(),
                            ofDrag.result());
            return new Working.Words(steps, derivation);
        }
    }
}

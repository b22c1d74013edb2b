package brakewright.limit;

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
    private final Step mass;
    private final Step torqueConstant;

    MotorConstraints(Build build) {
        this.build = build;
        this.inputs = new Inputs(build);
        this.powertrain = Powertrain.of(build);
        this.motor = new MotorSteps(build);
        this.usableGrip = GroundSteps.usableGrip(build);
        this.ground = new GroundSteps(build, usableGrip.result());
        this.mass = motor.mass();
        this.torqueConstant = motor.torqueConstant();
    }

    Limit braking(PackLimit regen) {
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
        all.addAll(new Overshoot(build, motor).constraints(regen.brief()));
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
                .map(found -> new HeatSteps(build, motor, time, timeInput, found).constraint())
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

        private final Step drag = motor.dragAtRest();
        private final Step ofDrag = motor.currentOfDrag(drag.result(), torqueConstant.result());
        private final Step perNewton = motor.currentForForce(torqueConstant.result(), false);
        private final List<Step> machine =
                List.of(mass, motor.voltageConstant(), torqueConstant, drag, ofDrag, perNewton);

        /** Bounds the thrust by an acceleration, which the last of the steps finds. */
        Constraint borne(ConstraintId id, Input decisive, Step... bounds) {
            Term multiple = bounds[bounds.length - 1].result();
            Steps steps = new Steps().with(machine).with(List.of(bounds));
            Term force =
                    steps.add(
                            Term.computed(
                                    "F",
                                    "thrust that is borne",
                                    build.mass() * MotorSteps.GRAVITY.value() * multiple.value(),
                                    Unit.NEWTON),
                            "m·g·z",
                            MotorSteps.NEWTON,
                            mass.result(),
                            MotorSteps.GRAVITY,
                            multiple);
            return new Constraint(
                    id,
                    powertrain.thrustCurrent(force.value(), 0.0),
                    decisive,
                    steps.all(),
                    new Derivation(
                            "F·c + I_d", BALANCE, force, perNewton.result(), ofDrag.result()));
        }
    }

    /** What a brake current is held to, at the highest speed that is met. */
    private final class Braking {

        private final Term speed = inputs.highestSpeed();
        private final List<Step> machine = new ArrayList<>();
        private final List<Step> road = motor.road(mass.result(), speed);
        private final Step perNewton = motor.currentForForce(torqueConstant.result(), true);
        private final Step ofDrag;
        private final double roadLoad = RoadLoad.of(build).force(speed.value(), 0.0, 0.0);

        Braking() {
            machine.add(mass);
            machine.add(motor.voltageConstant());
            machine.add(torqueConstant);
            machine.addAll(motor.dragAt(speed));
            ofDrag =
                    motor.currentOfDrag(
                            machine.get(machine.size() - 1).result(), torqueConstant.result());
            machine.add(ofDrag);
            machine.add(perNewton);
        }

        /** Bounds the force between tyres and road. */
        Constraint onTheRoad(ConstraintId id, Step bound) {
            Steps steps = new Steps().with(machine).with(List.of(usableGrip, bound));
            Term multiple = bound.result();
            Term force =
                    steps.add(
                            force(build.mass() * MotorSteps.GRAVITY.value() * multiple.value()),
                            "m·g·z",
                            MotorSteps.NEWTON,
                            mass.result(),
                            MotorSteps.GRAVITY,
                            multiple);
            return constraint(id, Input.VEHICLE_GRIP, steps, force);
        }

        /**
         * Bounds the whole deceleration, to which the road adds its part and from which turning
         * parts take theirs.
         */
        Constraint felt(ConstraintId id, Input decisive, Step bound) {
            Steps steps = new Steps().with(machine).with(road).with(List.of(bound));
            Term multiple = bound.result();
            Term force =
                    steps.add(
                            left(MotorSteps.GRAVITY.value() * multiple.value()),
                            "max(0, m·(1 + j)·g·z − F_r)",
                            MotorSteps.NEWTON,
                            mass.result(),
                            turning(),
                            MotorSteps.GRAVITY,
                            multiple,
                            roadTerm());
            return constraint(id, decisive, steps, force);
        }

        Constraint tolerated() {
            double deceleration = build.criteria().riderDecelerationMax();
            Steps steps = new Steps().with(machine).with(road);
            Term force =
                    steps.add(
                            left(deceleration),
                            "max(0, m·(1 + j)·a − F_r)",
                            MotorSteps.NEWTON,
                            mass.result(),
                            turning(),
                            inputs.of(Input.CRITERIA_RIDER_DECELERATION_MAX),
                            roadTerm());
            return constraint(
                    ConstraintId.RIDER_TOLERANCE,
                    Input.CRITERIA_RIDER_DECELERATION_MAX,
                    steps,
                    force);
        }

        private Constraint constraint(ConstraintId id, Input decisive, Steps steps, Term force) {
            return new Constraint(
                    id,
                    powertrain.brakeCurrent(force.value(), speed.value()),
                    decisive,
                    steps.all(),
                    new Derivation(
                            "max(0, F·c − I_d)",
                            BALANCE,
                            force,
                            perNewton.result(),
                            ofDrag.result()));
        }

        private Term left(double deceleration) {
            return force(Math.max(0.0, build.inertia() * deceleration - roadLoad));
        }

        private Term force(double newton) {
            return Term.computed("F", "brake force that is borne", newton, Unit.NEWTON);
        }

        private Term roadTerm() {
            return road.get(road.size() - 1).result();
        }

        private Term turning() {
            return inputs.of(Input.VEHICLE_ROTATING_SHARE);
        }
    }
}

package brakewright.limit;

import brakewright.machine.WindingHeat;
import brakewright.powertrain.Powertrain;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects what limits the current of one motor, driving and braking. */
final class MotorConstraints {

    private static final String BRAKE_FORMULA = "(F·η·r/(n·G) − T0)/kt, F = m·g·a";
    private static final String FELT_FORMULA = "(F·η·r/(n·G) − T0)/kt, F = m·(1+j)·g·a − F_road";
    private static final String DRIVE_FORMULA = "(m·g·a·r/(n·G·η) + T0)/kt";

    private final Build build;
    private final Powertrain powertrain;
    private final LoadTransfer transfer;
    private final double usableGrip;

    MotorConstraints(Build build) {
        this.build = build;
        this.powertrain = Powertrain.of(build);
        this.transfer = new LoadTransfer(build.vehicle().axles());
        this.usableGrip = (1.0 - build.margins().grip()) * build.vehicle().grip();
    }

    Limit braking() {
        List<Constraint> all = common(build.use().effort().hardBrake(), Input.USE_HARD_BRAKE);
        all.add(
                braking(
                        ConstraintId.GRIP,
                        transfer.brakingGrip(usableGrip),
                        Input.VEHICLE_GRIP,
                        "sliding of the braked wheels, " + gripFormula()));
        all.add(
                felt(
                        ConstraintId.TIPPING,
                        transfer.brakingTip(),
                        Input.VEHICLE_MASS_CENTRE_HEIGHT,
                        "rear wheels lifting, a = b/h"));
        if (build.rider().stance().isStanding()) {
            all.add(
                    felt(
                            ConstraintId.RIDER_BALANCE,
                            RiderBalance.tip(build.rider()),
                            Input.RIDER_SUPPORT_HALF_LENGTH,
                            "a standing rider tipping, a = l/h"));
        }
        all.add(
                felt(
                        ConstraintId.RIDER_TOLERANCE,
                        build.criteria().riderDecelerationMax() / Gravity.STANDARD,
                        Input.CRITERIA_RIDER_DECELERATION_MAX,
                        "the deceleration that the rider bears"));
        return new Limit(LimitId.MOTOR_BRAKE_CURRENT, all);
    }

    Limit driving() {
        List<Constraint> all = common(build.use().effort().hardPull(), Input.USE_HARD_PULL);
        all.add(
                driving(
                        ConstraintId.GRIP,
                        transfer.drivingGrip(usableGrip),
                        Input.VEHICLE_GRIP,
                        "spinning of the driven wheels, " + gripFormula()));
        all.add(
                driving(
                        ConstraintId.TIPPING,
                        transfer.drivingTip(),
                        Input.VEHICLE_MASS_CENTRE_HEIGHT,
                        "front wheels lifting, a = (L − b)/h"));
        if (build.rider().stance().isStanding()) {
            all.add(
                    driving(
                            ConstraintId.RIDER_BALANCE,
                            RiderBalance.tip(build.rider()),
                            Input.RIDER_SUPPORT_HALF_LENGTH,
                            "a standing rider tipping, a = l/h"));
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
        MotorHeatBalance.of(build).ifPresent(heat -> all.add(windingHeat(heat, time, timeInput)));
        return all;
    }

    private Constraint rated(ConstraintId id, double rating, Input input) {
        double margin = build.margins().rating();
        return new Constraint(
                id,
                (1.0 - margin) * rating,
                input,
                new Derivation(
                        "(1 − m)·I_rated",
                        "the part's rating; the margin as given",
                        List.of(
                                Term.given("m", "margin", margin, "", Input.MARGINS_RATING),
                                Term.given("I_rated", "rating", rating, "A", input))));
    }

    private Constraint windingHeat(WindingHeat heat, double time, Input timeInput) {
        return new Constraint(
                ConstraintId.WINDING_HEAT,
                heat.highestCurrentFor(heat.cold(), time),
                Input.MOTOR_WINDING_LIMIT,
                new Derivation(
                        "Tw(I, t) = T_lim from a cold start (two-node heat balance)",
                        "two-body thermal network of motor makers' data, solved exactly",
                        List.of(
                                Term.given("t", "time at this current", time, "s", timeInput),
                                Term.given(
                                        "T_lim",
                                        "winding limit",
                                        build.motor().windingLimitC(),
                                        "°C",
                                        Input.MOTOR_WINDING_LIMIT),
                                Term.given(
                                        "T_a",
                                        "air",
                                        build.use().climate().ambientC(),
                                        "°C",
                                        Input.USE_AMBIENT),
                                Term.computed(
                                        "Re",
                                        "loss resistance at 20 °C",
                                        powertrain.motor().lossResistance(20.0),
                                        "Ω"),
                                Term.computed(
                                        "P_fe",
                                        "drag loss at the top speed in use",
                                        MotorHeatBalance.caseLoss(build, build.use().speedMax()),
                                        "W"))));
    }

    private Constraint braking(ConstraintId id, double multiple, Input decisive, String what) {
        double force = build.mass() * Gravity.STANDARD * multiple;
        return new Constraint(
                id,
                powertrain.brakeCurrent(force, 0.0),
                decisive,
                new Derivation(BRAKE_FORMULA, what, forceTerms(multiple, decisive)));
    }

    /**
     * Bounds the whole deceleration, to which the road at the highest speed in use adds its part
     * and from which turning parts take theirs.
     */
    private Constraint felt(ConstraintId id, double multiple, Input decisive, String what) {
        double road = RoadLoad.of(build).force(build.use().speedMax(), 0.0, 0.0);
        double force = Math.max(0.0, build.inertia() * Gravity.STANDARD * multiple - road);
        List<Term> terms = new ArrayList<>(forceTerms(multiple, decisive));
        terms.add(
                Term.given(
                        "j",
                        "share of turning parts",
                        build.vehicle().rotatingShare(),
                        "",
                        Input.VEHICLE_ROTATING_SHARE));
        terms.add(Term.computed("F_road", "road load at the top speed in use", road, "N"));
        return new Constraint(
                id,
                powertrain.brakeCurrent(force, 0.0),
                decisive,
                new Derivation(FELT_FORMULA, what, terms));
    }

    private Constraint driving(ConstraintId id, double multiple, Input decisive, String what) {
        double force = build.mass() * Gravity.STANDARD * multiple;
        return new Constraint(
                id,
                powertrain.thrustCurrent(force, 0.0),
                decisive,
                new Derivation(DRIVE_FORMULA, what, forceTerms(multiple, decisive)));
    }

    private List<Term> forceTerms(double multiple, Input decisive) {
        return List.of(
                Term.computed("m", "mass of rider, vehicle and cargo", build.mass(), "kg"),
                new Term("a", "bound, as a multiple of g", multiple, "", Optional.of(decisive)),
                Term.given(
                        "η",
                        "drive efficiency",
                        build.drive().efficiency(),
                        "",
                        Input.DRIVE_EFFICIENCY),
                Term.computed("r", "wheel radius", build.vehicle().wheelRadius(), "m"),
                Term.given("n", "motors", build.drive().motors(), "", Input.DRIVE_MOTORS),
                Term.given("G", "reduction", build.drive().reduction(), "", Input.DRIVE_REDUCTION),
                Term.computed("T0", "drag torque", powertrain.motor().dragTorque(0.0), "N·m"),
                Term.computed(
                        "kt", "torque constant", powertrain.motor().torqueConstant(), "N·m/A"));
    }

    private String gripFormula() {
        return switch (build.vehicle().axles().driven()) {
            case REAR -> "rear axle, load transfer included";
            case FRONT -> "front axle, load transfer included";
            case BOTH -> "both axles, a = μ";
        };
    }
}

package brakewright.limit;

import brakewright.formula.Derivation;
import brakewright.formula.Inputs;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.spec.Axles;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.Optional;

/**
 * The steps to what wheels, vehicle and rider bear: each bound is an acceleration or deceleration
 * as a multiple of g.
 */
public final class GroundSteps {

    private static final String RIGID =
            "equilibrium of a rigid two-axle vehicle: Limpert, Motorcycle Braking Dynamics (2008)";

    private final Build build;
    private final Inputs inputs;
    private final Axles axles;
    private final LoadTransfer transfer;
    private final Term grip;

    /**
     * Prepares the steps of a vehicle.
     *
     * @param build the vehicle
     * @param grip what is counted on, as formulas write it
     */
    public GroundSteps(Build build, Term grip) {
        this.build = build;
        this.inputs = new Inputs(build);
        this.axles = build.vehicle().axles();
        this.transfer = new LoadTransfer(axles);
        this.grip = grip;
    }

    /** The grip less its margin. */
    static Step usableGrip(Build build) {
        Inputs inputs = new Inputs(build);
        Term margin = inputs.of(Input.MARGINS_GRIP);
        Term dry = inputs.of(Input.VEHICLE_GRIP);
        return new Step(
                Term.computed(
                        "μ_u", "usable grip", (1.0 - margin.value()) * dry.value(), Unit.RATIO),
                "(1 − m_μ)·μ",
                "own choice, grip less a margin",
                margin,
                dry);
    }

    /** Where the braked wheels slide; empty where the vehicle tips before. */
    Optional<Step> brakingGrip() {
        double bound = transfer.brakingGrip(grip.value());
        return grip("z", "braked wheels slide, part of g", bound, "+", "−");
    }

    /**
     * Returns where the driven wheels spin.
     *
     * @param symbol of the acceleration
     * @return the step to it, as a multiple of g; empty where the vehicle tips before
     */
    public Optional<Step> drivingGrip(String symbol) {
        double bound = transfer.drivingGrip(grip.value());
        return grip(symbol, "driven wheels spin, part of g", bound, "−", "+");
    }

    private Optional<Step> grip(
            String symbol, String meaning, double bound, String rear, String front) {
        if (Double.isInfinite(bound)) {
            return Optional.empty();
        }
        String mu = grip.symbol();
        Term height = inputs.of(Input.VEHICLE_MASS_CENTRE_HEIGHT);
        return Optional.of(
                switch (axles.driven()) {
                    case REAR ->
                            bound(
                                    symbol,
                                    meaning,
                                    bound,
                                    mu + "·b/(L " + rear + " " + mu + "·h)",
                                    grip,
                                    behindFront(),
                                    wheelbase(),
                                    height);
                    case FRONT ->
                            bound(
                                    symbol,
                                    meaning,
                                    bound,
                                    mu + "·(L − b)/(L " + front + " " + mu + "·h)",
                                    grip,
                                    wheelbase(),
                                    behindFront(),
                                    height);
                    case BOTH -> bound(symbol, meaning, bound, mu, grip);
                });
    }

    /**
     * Returns where the driven wheels spin on a steady climb.
     *
     * @param symbol of the slope
     * @return the step to it, as rise over run; empty where the vehicle tips before
     */
    public Optional<Step> climbingGrip(String symbol) {
        Term rolling = inputs.of(Input.VEHICLE_ROLLING_RESISTANCE);
        double bound = transfer.climbingGrip(grip.value(), rolling.value());
        if (Double.isInfinite(bound)) {
            return Optional.empty();
        }
        String meaning = "slope on which wheels spin";
        String mu = grip.symbol();
        Term height = inputs.of(Input.VEHICLE_MASS_CENTRE_HEIGHT);
        return Optional.of(
                switch (axles.driven()) {
                    case REAR ->
                            bound(
                                    symbol,
                                    meaning,
                                    bound,
                                    "(" + mu + "·b/L − crr)/(1 − " + mu + "·h/L)",
                                    rolling,
                                    grip,
                                    wheelbase(),
                                    behindFront(),
                                    height);
                    case FRONT ->
                            bound(
                                    symbol,
                                    meaning,
                                    bound,
                                    "(" + mu + "·(L − b)/L − crr)/(1 + " + mu + "·h/L)",
                                    rolling,
                                    grip,
                                    wheelbase(),
                                    behindFront(),
                                    height);
                    case BOTH -> bound(symbol, meaning, bound, mu + " − crr", rolling, grip);
                });
    }

    /** Why grip does not bound where the driven axle is loaded so much that it cannot slide. */
    Derivation tipsBefore() {
        return new Derivation(
                Constraint.NO_BOUND + "L − " + grip.symbol() + "·h ≤ 0",
                RIGID + "; it tips before the wheels slide",
                inputs.of(Input.VEHICLE_WHEELBASE),
                grip,
                inputs.of(Input.VEHICLE_MASS_CENTRE_HEIGHT));
    }

    Step brakingTip() {
        return bound(
                "z",
                "rear wheels lift, part of g",
                transfer.brakingTip(),
                "b/h",
                behindFront(),
                inputs.of(Input.VEHICLE_MASS_CENTRE_HEIGHT));
    }

    /**
     * Returns where the front wheels lift.
     *
     * @param symbol of what is found
     * @param meaning what that is: an acceleration as a multiple of g, or a slope as rise over run
     * @return the step to it
     */
    public Step drivingTip(String symbol, String meaning) {
        return bound(
                symbol,
                meaning,
                transfer.drivingTip(),
                "(L − b)/h",
                wheelbase(),
                behindFront(),
                inputs.of(Input.VEHICLE_MASS_CENTRE_HEIGHT));
    }

    /**
     * Returns where a standing rider tips.
     *
     * @param symbol of the acceleration
     * @return the step to it, as a multiple of g
     */
    public Step riderTip(String symbol) {
        return new Step(
                Term.computed(
                        symbol,
                        "a standing rider tips, part of g",
                        RiderBalance.tip(build.rider()),
                        Unit.RATIO),
                "l/h_r",
                "equilibrium of moments about the edge of the support, rider rigid",
                inputs.of(Input.RIDER_SUPPORT_HALF_LENGTH),
                inputs.of(Input.RIDER_MASS_HEIGHT));
    }

    private static Step bound(
            String symbol, String meaning, double value, String formula, Term... terms) {
        return new Step(Term.computed(symbol, meaning, value, Unit.RATIO), formula, RIGID, terms);
    }

    private Term wheelbase() {
        return inputs.of(Input.VEHICLE_WHEELBASE);
    }

    private Term behindFront() {
        return inputs.of(Input.VEHICLE_MASS_CENTRE_FROM_FRONT);
    }
}

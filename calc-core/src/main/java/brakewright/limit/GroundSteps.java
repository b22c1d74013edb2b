package brakewright.limit;

import brakewright.formula.Derivation;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.spec.Axles;
import brakewright.spec.Build;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The steps to what wheels, vehicle and rider bear: each bound is an acceleration or deceleration
 * as a multiple of g.
 */
final class GroundSteps {

    private static final String RIGID =
            "equilibrium of a rigid two-axle vehicle: Limpert, Motorcycle Braking Dynamics (2008)";

    private final Build build;
    private final Axles axles;
    private final LoadTransfer transfer;
    private final Term usable;
    private final Step usableGrip;

    GroundSteps(Build build) {
        this.build = build;
        this.axles = build.vehicle().axles();
        this.transfer = new LoadTransfer(axles);
        double margin = build.margins().grip();
        this.usable =
                Term.computed("μ", "usable grip", (1.0 - margin) * build.vehicle().grip(), "");
        this.usableGrip =
                new Step(
                        usable,
                        new Derivation(
                                "(1 − m_μ)·μ_0",
                                "own choice, grip less a margin",
                                List.of(
                                        Term.given(
                                                "m_μ",
                                                "margin for grip",
                                                margin,
                                                "",
                                                Input.MARGINS_GRIP),
                                        Term.given(
                                                "μ_0",
                                                "grip, dry",
                                                build.vehicle().grip(),
                                                "",
                                                Input.VEHICLE_GRIP))));
    }

    Step usableGrip() {
        return usableGrip;
    }

    /** Where the braked wheels slide; empty where the vehicle tips before. */
    Optional<Step> brakingGrip() {
        return grip("braked wheels slide, part of g", transfer.brakingGrip(usable.value()), true);
    }

    /** Where the driven wheels spin; empty where the vehicle tips before. */
    Optional<Step> drivingGrip() {
        return grip("driven wheels spin, part of g", transfer.drivingGrip(usable.value()), false);
    }

    private Optional<Step> grip(String meaning, double bound, boolean isBraking) {
        if (Double.isInfinite(bound)) {
            return Optional.empty();
        }
        String sign = isBraking ? "+" : "−";
        return Optional.of(
                switch (axles.driven()) {
                    case REAR ->
                            bound(
                                    meaning,
                                    bound,
                                    "μ·b/(L " + sign + " μ·h)",
                                    usable,
                                    behindFront(),
                                    wheelbase(),
                                    height());
                    case FRONT ->
                            bound(
                                    meaning,
                                    bound,
                                    "μ·(L − b)/(L " + (isBraking ? "−" : "+") + " μ·h)",
                                    usable,
                                    wheelbase(),
                                    behindFront(),
                                    height());
                    case BOTH -> bound(meaning, bound, "μ", usable);
                });
    }

    /** Why grip does not bound where the driven axle is loaded so much that it cannot slide. */
    Derivation tipsBefore() {
        return new Derivation(
                Constraint.NO_BOUND + "L − μ·h ≤ 0",
                RIGID + "; it tips before the wheels slide",
                List.of(wheelbase(), usable, height()));
    }

    Step brakingTip() {
        return bound(
                "rear wheels lift, part of g",
                transfer.brakingTip(),
                "b/h",
                behindFront(),
                height());
    }

    Step drivingTip() {
        return bound(
                "front wheels lift, part of g",
                transfer.drivingTip(),
                "(L − b)/h",
                wheelbase(),
                behindFront(),
                height());
    }

    /** Where a standing rider tips. */
    Step riderTip() {
        return new Step(
                Term.computed(
                        "z",
                        "a standing rider tips, part of g",
                        RiderBalance.tip(build.rider()),
                        ""),
                new Derivation(
                        "l/h_r",
                        "equilibrium of moments about the edge of the support, rider rigid",
                        List.of(
                                Term.given(
                                        "l",
                                        "half length of support",
                                        build.rider().supportHalfLength(),
                                        "m",
                                        Input.RIDER_SUPPORT_HALF_LENGTH),
                                Term.given(
                                        "h_r",
                                        "height of rider's mass centre",
                                        build.rider().massHeight(),
                                        "m",
                                        Input.RIDER_MASS_HEIGHT))));
    }

    private static Step bound(String meaning, double value, String formula, Term... terms) {
        return new Step(
                Term.computed("z", meaning, value, ""),
                new Derivation(formula, RIGID, new ArrayList<>(List.of(terms))));
    }

    private Term wheelbase() {
        return Term.given("L", "wheelbase", axles.wheelbase(), "m", Input.VEHICLE_WHEELBASE);
    }

    private Term behindFront() {
        return Term.given(
                "b",
                "mass centre behind front axle",
                axles.massCentreFromFront(),
                "m",
                Input.VEHICLE_MASS_CENTRE_FROM_FRONT);
    }

    private Term height() {
        return Term.given(
                "h",
                "height of mass centre",
                axles.massCentreHeight(),
                "m",
                Input.VEHICLE_MASS_CENTRE_HEIGHT);
    }
}

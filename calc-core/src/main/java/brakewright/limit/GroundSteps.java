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
                Term.computed("μ_u", "usable grip", (1.0 - margin) * build.vehicle().grip(), "");
        this.usableGrip =
                new Step(
                        usable,
                        new Derivation(
                                "(1 − m_μ)·μ",
                                "own choice, grip less a margin",
                                List.of(
                                        Term.given(Input.MARGINS_GRIP, margin),
                                        Term.given(Input.VEHICLE_GRIP, build.vehicle().grip()))));
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
                                    "μ_u·b/(L " + sign + " μ_u·h)",
                                    usable,
                                    behindFront(),
                                    wheelbase(),
                                    height());
                    case FRONT ->
                            bound(
                                    meaning,
                                    bound,
                                    "μ_u·(L − b)/(L " + (isBraking ? "−" : "+") + " μ_u·h)",
                                    usable,
                                    wheelbase(),
                                    behindFront(),
                                    height());
                    case BOTH -> bound(meaning, bound, "μ_u", usable);
                });
    }

    /** Why grip does not bound where the driven axle is loaded so much that it cannot slide. */
    Derivation tipsBefore() {
        return new Derivation(
                Constraint.NO_BOUND + "L − μ_u·h ≤ 0",
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
                                        Input.RIDER_SUPPORT_HALF_LENGTH,
                                        build.rider().supportHalfLength()),
                                Term.given(Input.RIDER_MASS_HEIGHT, build.rider().massHeight()))));
    }

    private static Step bound(String meaning, double value, String formula, Term... terms) {
        return new Step(
                Term.computed("z", meaning, value, ""),
                new Derivation(formula, RIGID, new ArrayList<>(List.of(terms))));
    }

    private Term wheelbase() {
        return Term.given(Input.VEHICLE_WHEELBASE, axles.wheelbase());
    }

    private Term behindFront() {
        return Term.given(Input.VEHICLE_MASS_CENTRE_FROM_FRONT, axles.massCentreFromFront());
    }

    private Term height() {
        return Term.given(Input.VEHICLE_MASS_CENTRE_HEIGHT, axles.massCentreHeight());
    }
}

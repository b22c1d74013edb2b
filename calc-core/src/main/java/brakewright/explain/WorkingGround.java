package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.spec.Axles;
import brakewright.spec.Build;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;

/** The steps to what wheels, vehicle and rider bear while the vehicle is driven. */
final class WorkingGround {

    private static final String RIGID =
            "equilibrium of a rigid two-axle vehicle, e.g. Cossalter, Motorcycle Dynamics";

    private final Build build;
    private final Steps steps;
    private final Axles axles;
    private final LoadTransfer transfer;

    WorkingGround(Build build, Steps steps) {
        this.build = build;
        this.steps = steps;
        this.axles = build.vehicle().axles();
        this.transfer = new LoadTransfer(axles);
    }

    /** What bounds an acceleration, each as a multiple of g; what never binds is left out. */
    List<Term> accelerating() {
        List<Term> all = new ArrayList<>();
        double grip = transfer.drivingGrip(build.vehicle().grip());
        if (Double.isFinite(grip)) {
            all.add(
                    bound(
                            "a_g",
                            "driven wheels spin, part of g",
                            grip,
                            switch (axles.driven()) {
                                case REAR -> "μ·b/(L − μ·h)";
                                case FRONT -> "μ·(L − b)/(L + μ·h)";
                                case BOTH -> "μ";
                            }));
        }
        all.add(tipping("a_t", "front wheels lift, part of g"));
        if (build.rider().stance().isStanding()) {
            all.add(
                    steps.add(
                            computed(
                                    "a_s",
                                    "a standing rider tips, part of g",
                                    RiderBalance.tip(build.rider()),
                                    ""),
                            "l/h_r",
                            "equilibrium of moments about the edge of the support",
                            given(
                                    Input.RIDER_SUPPORT_HALF_LENGTH,
                                    build.rider().supportHalfLength()),
                            given(Input.RIDER_MASS_HEIGHT, build.rider().massHeight())));
        }
        return all;
    }

    /** What bounds a slope, each as rise over run; what never binds is left out. */
    List<Term> climbing(Term rolling) {
        List<Term> all = new ArrayList<>();
        double grip = transfer.climbingGrip(build.vehicle().grip(), rolling.value());
        if (Double.isFinite(grip)) {
            all.add(
                    bound(
                            "s_g",
                            "slope on which wheels spin",
                            grip,
                            switch (axles.driven()) {
                                case REAR -> "(μ·b/L − crr)/(1 − μ·h/L)";
                                case FRONT -> "(μ·(L − b)/L − crr)/(1 + μ·h/L)";
                                case BOTH -> "μ − crr";
                            },
                            rolling));
        }
        all.add(tipping("s_t", "slope on which front wheels lift"));
        return all;
    }

    private Term tipping(String symbol, String meaning) {
        return bound(symbol, meaning, transfer.drivingTip(), "(L − b)/h");
    }

    /** Puts in only what the formula names. */
    private Term bound(
            String symbol, String meaning, double value, String formula, Term... further) {
        List<Term> terms = new ArrayList<>(List.of(further));
        if (formula.contains("μ")) {
            terms.add(given(Input.VEHICLE_GRIP, build.vehicle().grip()));
        }
        if (formula.contains("L")) {
            terms.add(given(Input.VEHICLE_WHEELBASE, axles.wheelbase()));
        }
        if (formula.contains("b")) {
            terms.add(given(Input.VEHICLE_MASS_CENTRE_FROM_FRONT, axles.massCentreFromFront()));
        }
        if (formula.contains("h")) {
            terms.add(given(Input.VEHICLE_MASS_CENTRE_HEIGHT, axles.massCentreHeight()));
        }
        return steps.add(
                computed(symbol, meaning, value, ""), formula, RIGID, terms.toArray(Term[]::new));
    }

    /** Joins the symbols of terms for a formula. */
    static String symbols(List<Term> terms) {
        return String.join(", ", terms.stream().map(Term::symbol).toList());
    }
}

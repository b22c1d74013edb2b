package brakewright.explain;

import brakewright.formula.Inputs;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.GroundSteps;
import brakewright.spec.Build;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;

/** The steps to what wheels, vehicle and rider bear while the vehicle is driven. */
final class WorkingGround {

    private final Build build;
    private final Steps steps;
    private final GroundSteps ground;

    WorkingGround(Build build, Steps steps) {
        this.build = build;
        this.steps = steps;
        this.ground = new GroundSteps(build, new Inputs(build).of(Input.VEHICLE_GRIP));
    }

    /** What bounds an acceleration, each as a multiple of g; what never binds is left out. */
    List<Term> accelerating() {
        List<Term> all = new ArrayList<>();
        ground.drivingGrip("a_g").map(steps::add).ifPresent(all::add);
        all.add(steps.add(ground.drivingTip("a_t", "front wheels lift, part of g")));
        if (build.rider().stance().isStanding()) {
            all.add(steps.add(ground.riderTip("a_s")));
        }
        return all;
    }

    /** What bounds a slope, each as rise over run; what never binds is left out. */
    List<Term> climbing() {
        List<Term> all = new ArrayList<>();
        ground.climbingGrip("s_g").map(steps::add).ifPresent(all::add);
        all.add(steps.add(ground.drivingTip("s_t", "slope on which front wheels lift")));
        return all;
    }

    /** Joins the symbols of terms for a formula. */
    static String symbols(List<Term> terms) {
        return String.join(", ", terms.stream().map(Term::symbol).toList());
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;

import brakewright.formula.Inputs;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.MotorSteps;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;

/** The steps to the resistance of a level road. */
final class WorkingRoad {

    private final Build build;
    private final Steps steps;
    private final RoadLoad load;
    private final MotorSteps shared;
    private final Inputs inputs;

    WorkingRoad(Build build, Steps steps) {
        this.build = build;
        this.steps = steps;
        this.load = RoadLoad.of(build);
        this.shared = new MotorSteps(build);
        this.inputs = new Inputs(build);
    }

    /** What the vehicle is given. */
    Inputs inputs() {
        return inputs;
    }

    /** The mass that moves. */
    Term mass() {
        return steps.add(shared.mass());
    }

    /** The mass that is accelerated. */
    Term inertia(Term mass) {
        return steps.add(
                computed("m_i", "mass to be accelerated", build.inertia(), Unit.KILOGRAM),
                "m·(1 + j)",
                MotorSteps.NEWTON + ", turning parts as a share of the mass",
                mass,
                inputs.of(Input.VEHICLE_ROTATING_SHARE));
    }

    Term density() {
        return steps.add(shared.density());
    }

    Term rolling(Term mass) {
        return steps.add(
                computed("F_r", "rolling resistance", load.force(0.0, 0.0, 0.0), Unit.NEWTON),
                "m·g·crr",
                MotorSteps.ROAD,
                mass,
                MotorSteps.GRAVITY,
                inputs.of(Input.VEHICLE_ROLLING_RESISTANCE));
    }

    /** The resistance of calm air. */
    Term calm(Term density, Term speed) {
        return steps.add(
                computed("F_a", "resistance of the air", load.airForce(speed.value()), Unit.NEWTON),
                "½·ρ·CdA·" + speed.symbol() + "²",
                MotorSteps.ROAD,
                density,
                inputs.of(Input.VEHICLE_DRAG_AREA),
                speed);
    }

    /** The resistance of the air against the headwind in use. */
    Term windy(Term density, Term speed) {
        double wind = build.use().riding().headwind();
        return steps.add(
                computed(
                        "F_a",
                        "resistance of the air",
                        load.airForce(speed.value() + wind),
                        Unit.NEWTON),
                "½·ρ·CdA·(" + speed.symbol() + " + w)·abs(" + speed.symbol() + " + w)",
                MotorSteps.ROAD,
                density,
                inputs.of(Input.VEHICLE_DRAG_AREA),
                speed,
                inputs.of(Input.USE_HEADWIND));
    }

    Term together(Term rolling, Term air) {
        return steps.add(
                computed("F", "resistance", rolling.value() + air.value(), Unit.NEWTON),
                "F_r + F_a",
                MotorSteps.ROAD,
                rolling,
                air);
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.constant;
import static brakewright.formula.Term.given;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.road.Gravity;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Input;

/** The steps to the resistance of a level road. */
final class WorkingRoad {

    static final Term GRAVITY = constant("g", "standard gravity", Gravity.STANDARD, "m/s²");

    private static final String ROAD =
            "Martin et al., J. Appl. Biomech. 14(3):276-291 (1998), road load";
    private static final String NEWTON = "Newton's second law";

    private final Build build;
    private final Steps steps;
    private final RoadLoad load;

    WorkingRoad(Build build, Steps steps) {
        this.build = build;
        this.steps = steps;
        this.load = RoadLoad.of(build);
    }

    /** The mass that moves. */
    Term mass() {
        return steps.add(
                computed("m", "mass that moves", build.mass(), "kg"),
                "m_r + m_v + m_c",
                "sum of what is aboard",
                given(Input.RIDER_MASS, build.rider().mass()),
                given(Input.VEHICLE_MASS, build.vehicle().mass()),
                given(Input.VEHICLE_CARGO, build.vehicle().cargo()));
    }

    /** The mass that is accelerated. */
    Term inertia(Term mass) {
        return steps.add(
                computed("m_i", "mass to be accelerated", build.inertia(), "kg"),
                "m·(1 + j)",
                NEWTON + ", turning parts as a share of the mass",
                mass,
                given(Input.VEHICLE_ROTATING_SHARE, build.vehicle().rotatingShare()));
    }

    Term density() {
        return steps.add(
                computed("ρ", "density of the air", load.airDensity(), "kg/m³"),
                "101325·(1 − 0.0065·h_a/288.15)^5.25588/(287.05287·(T_a + 273.15))",
                "ISO 2533:1975, Standard Atmosphere, at the temperature given",
                given(Input.USE_ALTITUDE, build.use().climate().altitude()),
                air(build));
    }

    static Term air(Build build) {
        return given(Input.USE_AMBIENT, build.use().climate().ambientC());
    }

    Term rolling(Term mass) {
        return steps.add(
                computed("F_r", "rolling resistance", load.force(0.0, 0.0, 0.0), "N"),
                "m·g·crr",
                ROAD,
                mass,
                GRAVITY,
                rollingCoefficient());
    }

    Term rollingCoefficient() {
        return given(Input.VEHICLE_ROLLING_RESISTANCE, load.rollingResistance());
    }

    Term dragArea() {
        return given(Input.VEHICLE_DRAG_AREA, load.dragArea());
    }

    /** The resistance of calm air. */
    Term calm(Term density, Term speed) {
        return steps.add(
                computed("F_a", "resistance of the air", load.airForce(speed.value()), "N"),
                "½·ρ·CdA·" + speed.symbol() + "²",
                ROAD,
                density,
                dragArea(),
                speed);
    }

    /** The resistance of the air against the headwind in use. */
    Term windy(Term density, Term speed) {
        double wind = build.use().riding().headwind();
        return steps.add(
                computed("F_a", "resistance of the air", load.airForce(speed.value() + wind), "N"),
                "½·ρ·CdA·(" + speed.symbol() + " + w)·abs(" + speed.symbol() + " + w)",
                ROAD,
                density,
                dragArea(),
                speed,
                given(Input.USE_HEADWIND, wind));
    }

    Term together(Term rolling, Term air) {
        return steps.add(
                computed("F", "resistance", rolling.value() + air.value(), "N"),
                "F_r + F_a",
                ROAD,
                rolling,
                air);
    }
}

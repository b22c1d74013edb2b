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
                given("m_r", "rider", build.rider().mass(), "kg", Input.RIDER_MASS),
                given("m_v", "vehicle", build.vehicle().mass(), "kg", Input.VEHICLE_MASS),
                given("m_c", "cargo", build.vehicle().cargo(), "kg", Input.VEHICLE_CARGO));
    }

    /** The mass that is accelerated. */
    Term inertia(Term mass) {
        return steps.add(
                computed("m_i", "mass to be accelerated", build.inertia(), "kg"),
                "m·(1 + j)",
                NEWTON + ", turning parts as a share of the mass",
                mass,
                given(
                        "j",
                        "share of turning parts",
                        build.vehicle().rotatingShare(),
                        "",
                        Input.VEHICLE_ROTATING_SHARE));
    }

    Term density() {
        return steps.add(
                computed("ρ", "density of the air", load.airDensity(), "kg/m³"),
                "101325·(1 − 0.0065·h_a/288.15)^5.25588/(287.05287·(T_a + 273.15))",
                "ISO 2533:1975, Standard Atmosphere, at the temperature given",
                given("h_a", "altitude", build.use().climate().altitude(), "m", Input.USE_ALTITUDE),
                air(build));
    }

    static Term air(Build build) {
        return given(
                "T_a",
                "temperature of the air",
                build.use().climate().ambientC(),
                "°C",
                Input.USE_AMBIENT);
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
        return given(
                "crr",
                "coefficient of rolling",
                load.rollingResistance(),
                "",
                Input.VEHICLE_ROLLING_RESISTANCE);
    }

    Term dragArea() {
        return given(
                "CdA",
                "drag coefficient times area",
                load.dragArea(),
                "m²",
                Input.VEHICLE_DRAG_AREA);
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
                given("w", "headwind", wind, "m/s", Input.USE_HEADWIND));
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

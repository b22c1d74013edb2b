package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.Powertrain;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Input;

/** The steps to the power drawn at the cruise speed, part by part. */
final class WorkingPower {

    private static final String LOSS = "conservation of energy";

    private final Build build;
    private final Steps steps;

    /** Against the headwind in use. */
    WorkingPower(Build build, Steps steps) {
        this.build = build;
        this.steps = steps;
    }

    static Term speed(Build build) {
        return given(Input.USE_CRUISE_SPEED, build.use().riding().cruiseSpeed());
    }

    /** Whether road and wind leave something for the motors to do. */
    static boolean isResisted(Build build) {
        return RoadLoad.of(build)
                        .force(
                                build.use().riding().cruiseSpeed(),
                                0.0,
                                build.use().riding().headwind())
                > 0.0;
    }

    /** The power at the terminals of the pack at a speed. */
    Term drawn(Term speed) {
        double v = speed.value();
        WorkingRoad road = new WorkingRoad(build, steps);
        Term rolling = road.rolling(road.mass());
        Term density = road.density();
        Term air = road.windy(density, speed);
        Term resistance = road.together(rolling, air);
        WorkingMotor motor = new WorkingMotor(build, steps);
        Term turning = motor.turning(speed);
        Term drag = motor.drag(turning);
        Term current = motor.holding(resistance, drag, v);
        Powertrain powertrain = motor.powertrain();
        double force = resistance.value();
        Term rollingPower =
                power("P_r", "tyres", rolling.value() * v, "F_r·" + speed.symbol(), rolling, speed);
        Term airPower = power("P_a", "air", air.value() * v, "F_a·" + speed.symbol(), air, speed);
        Term gears =
                power(
                        "P_g",
                        "belt, chain or gears",
                        force * v * (1.0 / build.drive().efficiency() - 1.0),
                        "F·" + speed.symbol() + "·(1/η − 1)",
                        resistance,
                        speed,
                        motor.inputs().of(Input.DRIVE_EFFICIENCY));
        Term friction =
                power(
                        "P_d",
                        "drag of the motors",
                        build.drive().motors() * drag.value() * turning.value(),
                        "n·T0·ω",
                        motor.inputs().of(Input.DRIVE_MOTORS),
                        drag,
                        turning);
        Term copper =
                power(
                        "P_c",
                        "windings",
                        powertrain.copperLoss(current.value()),
                        "n·R_e·I²",
                        motor.inputs().of(Input.DRIVE_MOTORS),
                        motor.lossResistance(),
                        current);
        double drawn = powertrain.drawnPower(current.value(), v);
        Term controllers =
                power(
                        "P_k",
                        "controllers",
                        drawn * (1.0 - build.controllers().efficiency()),
                        "(P_r + P_a + P_g + P_d + P_c)·(1/ηc − 1)",
                        rollingPower,
                        airPower,
                        gears,
                        friction,
                        copper,
                        motor.inputs().of(Input.CONTROLLER_EFFICIENCY));
        double idle = build.use().riding().idlePower();
        return power(
                "p",
                "power at the pack's terminals",
                drawn + idle,
                "P_r + P_a + P_g + P_d + P_c + P_k + P_i",
                rollingPower,
                airPower,
                gears,
                friction,
                copper,
                controllers,
                given(Input.USE_IDLE_POWER, idle));
    }

    private Term power(String symbol, String meaning, double value, String formula, Term... terms) {
        return steps.add(computed(symbol, meaning, value, "W"), formula, LOSS, terms);
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;

import brakewright.driving.SteadyPower;
import brakewright.formula.Inputs;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.Spending;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;

/** The steps to the power drawn at a steady speed against the headwind in use, part by part. */
final class WorkingPower {

    private final Build build;
    private final Inputs inputs;
    private final Steps steps;

    WorkingPower(Build build, Steps steps) {
        this.build = build;
        this.inputs = new Inputs(build);
        this.steps = steps;
    }

    /** The power at the terminals of the pack. */
    Term drawn(Term speed, SteadyPower steady) {
        return steady.isDriven() ? driven(speed, steady) : carried(steady);
    }

    /** The wind does the work. */
    private Term carried(SteadyPower steady) {
        return power(
                "p",
                "power at the pack's terminals",
                steady.terminals(),
                "P_i",
                inputs.of(Input.USE_IDLE_POWER));
    }

    private Term driven(Term speed, SteadyPower steady) {
        WorkingRoad road = new WorkingRoad(build, steps);
        Term rolling = road.rolling(road.mass());
        Term air = road.windy(road.density(), speed);
        Term resistance = road.together(rolling, air);
        WorkingMotor motor = new WorkingMotor(build, steps);
        Term turning = motor.turning(speed);
        Term drag = motor.drag(turning);
        Term current = motor.holding(resistance, drag, speed.value());
        String v = speed.symbol();
        Spending spent = steady.spent();
        Term tyres = power("P_r", "tyres", spent.rolling(), "F_r·" + v, rolling, speed);
        Term moved = power("P_a", "air", spent.air(), "F_a·" + v, air, speed);
        Term gears =
                power(
                        "P_g",
                        "belt, chain or gears",
                        spent.drive(),
                        "F·" + v + "·(1/η − 1)",
                        resistance,
                        speed,
                        inputs.of(Input.DRIVE_EFFICIENCY));
        Term motors = inputs.of(Input.DRIVE_MOTORS);
        Term friction =
                power(
                        "P_d",
                        "drag of the motors",
                        spent.motorDrag(),
                        "n·T0·ω",
                        motors,
                        drag,
                        turning);
        Term copper =
                power(
                        "P_c",
                        "windings",
                        spent.copper(),
                        "n·R_e·I²",
                        motors,
                        motor.lossResistance(),
                        current);
        Term controllers =
                power(
                        "P_k",
                        "controllers",
                        spent.controller(),
                        "(P_r + P_a + P_g + P_d + P_c)·(1/ηc − 1)",
                        tyres,
                        moved,
                        gears,
                        friction,
                        copper,
                        inputs.of(Input.CONTROLLER_EFFICIENCY));
        return power(
                "p",
                "power at the pack's terminals",
                steady.terminals(),
                "P_r + P_a + P_g + P_d + P_c + P_k + P_i",
                tyres,
                moved,
                gears,
                friction,
                copper,
                controllers,
                inputs.of(Input.USE_IDLE_POWER));
    }

    private Term power(String symbol, String meaning, double value, String formula, Term... terms) {
        return steps.add(
                computed(symbol, meaning, value, Unit.WATT), formula, WorkingMotor.BALANCE, terms);
    }
}

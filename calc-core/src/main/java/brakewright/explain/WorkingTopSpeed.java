package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.searched;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.worksheet.Worksheet;
import java.util.List;

/**
 * How the top speed came about: what the three limits leave of the thrust there, the resistance,
 * and the speed once more from the limit that holds it down.
 */
final class WorkingTopSpeed {

    private static final String MEET = "balance of thrust and resistance, solved for the speed";

    private final Worksheet sheet;
    private final Build build;
    private final Term speed;
    private final Steps steps = new Steps();
    private final WorkingRoad road;
    private final WorkingPack pack;

    private WorkingTopSpeed(Worksheet sheet, double found) {
        this.sheet = sheet;
        this.build = sheet.build();
        this.speed = searched("v", "top speed", found, Unit.METRE_PER_SECOND);
        this.road = new WorkingRoad(build, steps);
        this.pack = new WorkingPack(build, steps);
    }

    static WorkingOutcome of(Worksheet sheet) {
        double found = sheet.drive().topSpeedFlat().speed();
        return found > 0.0
                ? new WorkingTopSpeed(sheet, found).working()
                : new WorkingMissing(
                        ResultId.TOP_SPEED,
                        "With what is set the vehicle does not move off on a level road.");
    }

    private WorkingOutcome working() {
        Term rolling = road.rolling(road.mass());
        Term density = road.density();
        Term resistance = road.together(rolling, road.calm(density, speed));
        WorkingMotor motor = new WorkingMotor(build, steps);
        Term turning = motor.turning(speed);
        Term drag = motor.drag(turning);
        WorkingPack.At at = pack.at(sheet.drive().charge(), WorkingPack.PULSE);
        WorkingThrust thrust = new WorkingThrust(build, sheet.operation(), steps, motor);
        WorkingThrust.Currents currents = thrust.at(turning, at);
        Term most = thrusts(motor, currents, drag);
        switch (sheet.drive().topSpeedFlat().holder()) {
            case PACK_CURRENT ->
                    heldByPack(motor, currents, motor.holding(resistance, drag, speed.value()));
            case VOLTAGE -> {
                Term current = motor.holding(resistance, drag, speed.value());
                Term power = motor.drawn("P_h", current, turning);
                heldByVoltage(motor, current, turning, thrust.terminal("V_h", power, at));
            }
            case MOTOR_CURRENT, STANDSTILL -> heldByMotor(most, rolling, density);
        }
        steps.note(
                "Found by search: the one speed at which the thrust F_t meets the resistance F.");
        return Working.of(
                ResultId.TOP_SPEED,
                "Speed on a level road in calm air that the pack gives for 10 s, the speed cap left"
                        + " aside, windings at the temperature of the air. A pull without end meets"
                        + " a higher resistance: see the lasting top speed of the worksheet.",
                List.of(WorkingPack.charge(build, true), pack.temperature()),
                steps);
    }

    private Term thrusts(WorkingMotor motor, WorkingThrust.Currents currents, Term drag) {
        double v = speed.value();
        Term set = motor.thrust("F_m", "thrust of the current set", currents.motor(), drag, v);
        Term fed = motor.thrust("F_p", "thrust that the pack feeds", currents.pack(), drag, v);
        Term pushed =
                motor.thrust("F_v", "thrust that voltage pushes", currents.voltage(), drag, v);
        double least = Math.min(set.value(), Math.min(fed.value(), pushed.value()));
        return steps.add(
                computed("F_t", "thrust, the least of the three", least, Unit.NEWTON),
                "min(F_m, F_p, F_v)",
                "all three limits hold",
                set,
                fed,
                pushed);
    }

    private void heldByMotor(Term most, Term rolling, Term density) {
        steps.add(
                speed,
                "√(2·(F_t − F_r)/(ρ·CdA))",
                MEET,
                most,
                rolling,
                density,
                road.inputs().of(Input.VEHICLE_DRAG_AREA));
    }

    private void heldByPack(WorkingMotor motor, WorkingThrust.Currents currents, Term current) {
        steps.add(
                speed,
                "(P_p·ηc/n − R_e·I²)·d/(2·G·kt·I)",
                MEET + ", the pack's power being what is drawn",
                currents.power(),
                motor.inputs().of(Input.CONTROLLER_EFFICIENCY),
                motor.inputs().of(Input.DRIVE_MOTORS),
                motor.lossResistance(),
                current,
                motor.inputs().of(Input.VEHICLE_WHEEL_DIAMETER),
                motor.inputs().of(Input.DRIVE_REDUCTION),
                motor.torqueConstant());
    }

    private void heldByVoltage(WorkingMotor motor, Term current, Term turning, Term terminal) {
        String source = MEET + ", the terminals' voltage being what is needed";
        if (motor.basis().isSinusoidal()) {
            steps.add(
                    speed,
                    "(√(V_h² − 3·(p·ω·L·"
                            + motor.peak("I")
                            + ")²) − √3/2·R_w·"
                            + motor.peak("I")
                            + ")·d/(2·G·K)",
                    source,
                    terminal,
                    motor.inputs().of(Input.MOTOR_POLE_PAIRS),
                    turning,
                    motor.inputs().of(Input.MOTOR_INDUCTANCE),
                    current,
                    motor.terminalResistance(),
                    motor.inputs().of(Input.VEHICLE_WHEEL_DIAMETER),
                    motor.inputs().of(Input.DRIVE_REDUCTION),
                    motor.voltageConstant());
        } else {
            steps.add(
                    speed,
                    "(V_h − R_w·I)·d/(2·G·K)",
                    source,
                    terminal,
                    motor.terminalResistance(),
                    current,
                    motor.inputs().of(Input.VEHICLE_WHEEL_DIAMETER),
                    motor.inputs().of(Input.DRIVE_REDUCTION),
                    motor.voltageConstant());
        }
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;
import static brakewright.formula.Term.searched;

import brakewright.formula.Reading;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.MotorSteps;
import brakewright.machine.MotorModel;
import brakewright.operation.Operation;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.TopSpeed;
import brakewright.spec.Build;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Input;
import brakewright.spec.Taper;
import brakewright.spec.Unit;
import java.util.Optional;

/**
 * The steps to the current per motor that each of three limits leaves at one speed: what is set,
 * what the pack may give, and what the sagged voltage can push.
 */
final class WorkingThrust {

    private static final String TERMINAL = "Ohm's law at the terminals of the pack";
    private static final String SETTING = "setting of the controllers";

    private final Build build;
    private final Steps steps;
    private final WorkingMotor motor;
    private final ElectricDrive drive;
    private final Powertrain powertrain;
    private final Term set;
    private final Term draw;

    WorkingThrust(Build build, Operation operation, Steps steps, WorkingMotor motor) {
        this.build = build;
        this.steps = steps;
        this.motor = motor;
        this.drive = operation.drive();
        this.powertrain = drive.powertrain();
        this.set = set(build, drive);
        this.draw = draw(build, operation, steps);
    }

    /**
     * The current that each limit leaves.
     *
     * @param motor set
     * @param pack left by the pack limit
     * @param power that the pack limit gives
     * @param voltage left by the sagged voltage
     */
    record Currents(Term motor, Term pack, Term power, Term voltage) {}

    /** The current per motor that is set, or else its limit. */
    static Term set(Build build, ElectricDrive drive) {
        return build.settings().motorDriveCurrent().isPresent()
                ? given(Input.SETTINGS_MOTOR_DRIVE_CURRENT, drive.motorCurrent())
                : modelled(
                        "I_m", "limit, see motor-drive-current", drive.motorCurrent(), Unit.AMPERE);
    }

    /** The pack current set, of all controllers together. */
    static Term draw(Build build, Operation operation, Steps steps) {
        double draw = operation.drive().packCurrent();
        if (build.settings().packDischargeCurrent().isEmpty()) {
            return modelled("I_s", "limit, see pack-discharge-current", draw, Unit.AMPERE);
        }
        return steps.add(
                computed("I_s", "pack current set, in all", draw, Unit.AMPERE),
                "N·I_c",
                SETTING,
                given(Input.CONTROLLER_COUNT, build.controllers().count()),
                given(
                        Input.SETTINGS_PACK_DISCHARGE_CURRENT,
                        build.settings().packDischargeCurrent().getAsDouble()));
    }

    /** What the low-voltage taper leaves of a draw once the voltage has settled. */
    static Term settled(ElectricDrive drive, Steps steps, Term draw, WorkingPack.At at) {
        Optional<Taper> taper = drive.taper();
        Term result =
                computed(
                        "I_p",
                        "pack current permitted",
                        drive.settledPackLimit(at.state()),
                        Unit.AMPERE);
        if (taper.isEmpty()) {
            return steps.add(result, "I_s", SETTING + ", no low-voltage taper set", draw);
        }
        return steps.add(
                result,
                "min(I_s, max(0, I_s·(U − V_e)/(abs(V_b − V_e) + I_s·R)))",
                "linear taper, settled at the voltage that it leaves",
                draw,
                at.voltage(),
                end(taper.get()),
                begin(taper.get()),
                at.resistance());
    }

    static Term begin(Taper taper) {
        return Reading.TAPER_BEGINS.of(taper.begins());
    }

    static Term end(Taper taper) {
        return Reading.TAPER_ENDS.of(taper.ends());
    }

    /** Adds the steps at one speed. */
    Currents at(Term turning, WorkingPack.At at) {
        Term power = power(at);
        return new Currents(
                set,
                current("I_b", "current that the pack limit leaves", power, turning),
                power,
                voltage(turning, at));
    }

    /** The thrust with the least of the three. */
    Term least(Currents currents, Term drag, Term turning) {
        double least =
                Math.min(
                        currents.motor().value(),
                        Math.min(currents.pack().value(), currents.voltage().value()));
        Term current =
                steps.add(
                        computed("I", "the least of the three", least, Unit.AMPERE),
                        "min(I_m, I_b, I_v)",
                        "all three limits hold",
                        currents.motor(),
                        currents.pack(),
                        currents.voltage());
        return motor.thrust("F_t", "thrust", current, drag, powertrain.speed(turning.value()));
    }

    private Term power(WorkingPack.At at) {
        Term limit = settled(drive, steps, draw, at);
        double power = at.state().powerDrawnBy(limit.value());
        return at.state().isBeyondGreatestPower(limit.value())
                ? greatest("P_p", at)
                : steps.add(
                        computed("P_p", "power that this gives", power, Unit.WATT),
                        "I_p·(U − I_p·R)",
                        TERMINAL,
                        limit,
                        at.voltage(),
                        at.resistance());
    }

    private Term greatest(String symbol, WorkingPack.At at) {
        return steps.add(
                computed(
                        symbol,
                        "greatest power of the pack",
                        at.state().greatestPower(),
                        Unit.WATT),
                "U²/(4·R)",
                "maximum power transfer, e.g. OpenStax College Physics",
                at.voltage(),
                at.resistance());
    }

    private Term current(String symbol, String meaning, Term power, Term turning) {
        double left =
                powertrain.limitedDriveCurrent(
                        Double.POSITIVE_INFINITY, powertrain.speed(turning.value()), power.value());
        String each = power.symbol() + "·ηc/n";
        return steps.add(
                computed(symbol, meaning, left, Unit.AMPERE),
                "2·" + each + "/(kt·ω + √((kt·ω)² + 4·R_e·" + each + "))",
                WorkingMotor.BALANCE + ", the positive root of the power drawn",
                power,
                motor.inputs().of(Input.CONTROLLER_EFFICIENCY),
                motor.inputs().of(Input.DRIVE_MOTORS),
                motor.torqueConstant(),
                turning,
                motor.lossResistance());
    }

    private Term voltage(Term turning, WorkingPack.At at) {
        DriveState pull = drive.ofVoltage(powertrain.speed(turning.value()), at.state());
        if (pull.holder() != TopSpeed.Holder.VOLTAGE) {
            return current("I_v", "current at greatest power", greatest("P_g", at), turning);
        }
        Term found =
                searched(
                        "I_v", "current that the voltage pushes", pull.motorCurrent(), Unit.AMPERE);
        Term power = motor.drawn("P_v", found, turning);
        Term terminal = terminal("V", power, at);
        if (motor.basis().isSinusoidal()) {
            pushed(found, turning, terminal);
        } else {
            steps.add(
                    found,
                    "(V − K·ω)/R_w",
                    MotorSteps.MACHINE,
                    terminal,
                    motor.voltageConstant(),
                    turning,
                    motor.terminalResistance());
        }
        steps.note("Found by search: terminals and motors meet at one voltage.");
        return found;
    }

    /** The voltage at the terminals while a power is drawn. */
    Term terminal(String symbol, Term power, WorkingPack.At at) {
        double drawn = at.state().currentInto(-power.value());
        return steps.add(
                computed(
                        symbol,
                        "voltage at the terminals",
                        at.state().terminalVoltage(drawn),
                        Unit.VOLT),
                "½·(U + √(U² − 4·R·" + power.symbol() + "))",
                TERMINAL,
                at.voltage(),
                at.resistance(),
                power);
    }

    /** {@code V² = 3·((K·ω/√3 + R/2·I)² + (p·ω·L·I)²)}, solved for the peak current. */
    private void pushed(Term found, Term turning, Term terminal) {
        MotorModel.Phase phase =
                powertrain.motor().phase(turning.value(), build.use().climate().ambientC());
        Term square =
                steps.add(
                        computed(
                                "Z_2",
                                "square of a phase's impedance",
                                phase.impedanceSquare(),
                                Unit.OHM_SQUARED),
                        "(R_w/2)² + (p·ω·L)²",
                        MotorSteps.MACHINE,
                        motor.terminalResistance(),
                        motor.inputs().of(Input.MOTOR_POLE_PAIRS),
                        turning,
                        motor.inputs().of(Input.MOTOR_INDUCTANCE));
        Term cross =
                steps.add(
                        computed(
                                "B",
                                "back-EMF times resistance",
                                phase.backEmfTimesResistance(),
                                Unit.VOLT_OHM),
                        "K·ω·R_w/(2·√3)",
                        MotorSteps.MACHINE,
                        motor.voltageConstant(),
                        turning,
                        motor.terminalResistance());
        boolean isPeak = motor.basis() == CurrentBasis.PHASE_PEAK;
        steps.add(
                found,
                "(√(B² + Z_2·(V² − (K·ω)²)/3) − B)/"
                        + (isPeak ? "Z_2" : "(" + motor.peak("Z_2") + ")"),
                MotorSteps.MACHINE + ", the voltage need solved for the current",
                cross,
                square,
                terminal,
                motor.voltageConstant(),
                turning);
    }
}

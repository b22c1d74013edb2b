package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.constant;
import static brakewright.formula.Term.modelled;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.MotorSteps;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;

/** How the acceleration from a standstill and the steepest slope came about. */
final class WorkingLaunch {

    private final Worksheet sheet;
    private final Build build;
    private final Steps steps = new Steps();
    private final WorkingRoad road;
    private final WorkingPack pack;

    private WorkingLaunch(Worksheet sheet) {
        this.sheet = sheet;
        this.build = sheet.build();
        this.road = new WorkingRoad(build, steps);
        this.pack = new WorkingPack(build, steps);
    }

    static WorkingOutcome launch(Worksheet sheet) {
        return new WorkingLaunch(sheet).launch();
    }

    static WorkingOutcome climb(Worksheet sheet) {
        return new WorkingLaunch(sheet).climb();
    }

    private List<Term> conditions() {
        return List.of(WorkingPack.charge(build, true), pack.temperature());
    }

    /** The thrust at a standstill. */
    private Term thrust() {
        WorkingMotor motor = new WorkingMotor(build, steps);
        Term turning =
                motor.turning(constant("v", "speed, a standstill", 0.0, Unit.METRE_PER_SECOND));
        Term drag = motor.drag(turning);
        WorkingPack.At at = pack.at(sheet.drive().charge(), WorkingPack.PULSE);
        WorkingThrust thrust = new WorkingThrust(build, sheet.operation(), steps, motor);
        return thrust.least(thrust.at(turning, at), drag, turning);
    }

    private WorkingOutcome launch() {
        Term mass = road.mass();
        Term inertia = road.inertia(mass);
        Term rolling = road.rolling(mass);
        Term thrust = thrust();
        List<Term> bounds = new WorkingGround(build, steps).accelerating();
        List<Term> terms = new ArrayList<>(List.of(thrust, mass, MotorSteps.GRAVITY));
        terms.addAll(bounds);
        boolean isBeside = sheet.drive().isLaunchHeldByElectronics(thrust.value());
        if (isBeside) {
            terms.add(
                    modelled(
                            "F_e",
                            "thrust that the pack gives beside what electronics draw",
                            sheet.drive().launchThrust(),
                            Unit.NEWTON));
        }
        Term usable =
                steps.add(
                        computed(
                                "F_u",
                                "thrust that can be used",
                                sheet.drive().launchThrust(),
                                Unit.NEWTON),
                        "min(F_t, "
                                + (isBeside ? "F_e, " : "")
                                + "m·g·min("
                                + WorkingGround.symbols(bounds)
                                + "))",
                        "wheels, vehicle and rider must bear it",
                        terms.toArray(Term[]::new));
        steps.add(
                computed("a", "launch", sheet.drive().launch(), Unit.METRE_PER_SECOND_SQUARED),
                "max(0, (F_u − F_r)/m_i)",
                "Newton's second law",
                usable,
                rolling,
                inertia);
        return Working.of(
                ResultId.LAUNCH,
                "Acceleration from a standstill on a level road, windings at the temperature of"
                        + " the air.",
                conditions(),
                steps);
    }

    private WorkingOutcome climb() {
        Term mass = road.mass();
        Term thrust = thrust();
        Term rolling = road.inputs().of(Input.VEHICLE_ROLLING_RESISTANCE);
        double held = sheet.drive().climb().heldByThrust();
        List<Term> bounds = new ArrayList<>();
        if (Double.isFinite(held)) {
            bounds.add(
                    steps.add(
                            computed("s_d", "slope that the drive holds", held, Unit.RATIO),
                            "max(0, tan(asin(F_t/(m·g)/√(1 + crr²)) − atan(crr)))",
                            "equilibrium on a slope, F_t = m·g·(crr·cosθ + sinθ), solved for tanθ",
                            thrust,
                            mass,
                            MotorSteps.GRAVITY,
                            rolling));
        }
        bounds.addAll(new WorkingGround(build, steps).climbing());
        steps.add(
                computed("s", "steepest slope", sheet.drive().climb().steepest(), Unit.RATIO),
                "max(0, min(" + WorkingGround.symbols(bounds) + "))",
                "drive, grip and tipping all hold",
                bounds.toArray(Term[]::new));
        return Working.of(
                ResultId.CLIMB,
                "Steepest slope, rise over run, that is held at a crawl.",
                conditions(),
                steps);
    }
}

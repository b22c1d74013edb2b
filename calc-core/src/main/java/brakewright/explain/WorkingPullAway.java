package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.constant;
import static brakewright.formula.Term.modelled;

import brakewright.driving.Road;
import brakewright.driving.StandingStart;
import brakewright.formula.Inputs;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;

/** How the time from a standstill to the cruise speed came about. */
final class WorkingPullAway {

    private static final int PARTS = 4;
    private static final String[] PART = {"first", "second", "third", "last"};

    private WorkingPullAway() {}

    static WorkingOutcome of(Worksheet sheet) {
        Build build = sheet.build();
        Term cruise = new Inputs(build).of(Input.USE_CRUISE_SPEED);
        if (sheet.drive().toCruise().isEmpty()) {
            return new WorkingMissing(
                    ResultId.TIME_TO_CRUISE,
                    "The cruise speed is not reached with what is set: see top-speed.");
        }
        Steps steps = new Steps();
        WorkingPack pack = new WorkingPack(build, steps);
        PackState state = pack.state(sheet.drive().charge(), WorkingPack.PULSE);
        List<StandingStart.Point> points =
                new StandingStart(build, sheet.operation().drive(), Road.LEVEL)
                        .points(cruise.value(), PARTS, state);
        WorkingRoad road = new WorkingRoad(build, steps);
        Term mass = road.mass();
        Term inertia = road.inertia(mass);
        Term rolling = road.rolling(mass);
        Term density = road.density();
        for (int part = 0; part <= PARTS; part++) {
            StandingStart.Point point = points.get(part);
            steps.add(
                    computed(
                            "a" + part,
                            "acceleration at " + part + "/" + PARTS + " of it",
                            point.acceleration(),
                            Unit.METRE_PER_SECOND_SQUARED),
                    "(F_t − F_r − ½·ρ·CdA·v²)/m_i",
                    "Newton's second law",
                    modelled("F_t", "thrust at that speed", point.thrust(), Unit.NEWTON),
                    rolling,
                    density,
                    road.inputs().of(Input.VEHICLE_DRAG_AREA),
                    part == PARTS
                            ? cruise
                            : part == 0
                                    ? constant("v", "speed", point.speed(), Unit.METRE_PER_SECOND)
                                    : modelled("v", "speed", point.speed(), Unit.METRE_PER_SECOND),
                    inertia);
        }
        steps.note(
                "The thrust at each speed is the least of motor current, pack limit and sagged"
                        + " voltage, as top-speed works them out, no more than the ground"
                        + " bears, as launch does, and no more than the pack gives beside what"
                        + " electronics draw.");
        List<Term> times = new ArrayList<>();
        for (int part = 1; part <= PARTS; part++) {
            times.add(
                    modelled(
                            "t" + part,
                            "in the " + PART[part - 1] + " quarter of speed",
                            points.get(part).time(),
                            Unit.SECOND));
        }
        steps.add(
                computed(
                        "t",
                        "time to cruise speed",
                        sheet.drive().toCruise().get().time(),
                        Unit.SECOND),
                "t1 + t2 + t3 + t4",
                "Newton's second law, dt = m_i·dv/(F_t − F)",
                times.toArray(Term[]::new));
        steps.note(
                "Each part is integrated over the speed by adaptive Gauss-Legendre quadrature; the"
                        + " accelerations above are points of what is integrated, dt/dv = 1/a.");
        return Working.of(
                ResultId.TIME_TO_CRUISE,
                "Time from a standstill to the cruise speed on a level road in calm air.",
                List.of(WorkingPack.charge(build, true), pack.temperature(), cruise),
                steps);
    }
}

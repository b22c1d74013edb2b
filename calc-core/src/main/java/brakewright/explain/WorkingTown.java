package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.modelled;
import static brakewright.formula.Term.searched;

import brakewright.driving.Road;
import brakewright.driving.SteadyPower;
import brakewright.driving.StopAndGo;
import brakewright.formula.Inputs;
import brakewright.formula.Rounded;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the range with stops came about. */
final class WorkingTown {

    private final Worksheet sheet;
    private final Build build;
    private final Steps steps = new Steps();
    private final WorkingPack pack;
    private final Inputs inputs;

    private WorkingTown(Worksheet sheet) {
        this.sheet = sheet;
        this.build = sheet.build();
        this.pack = new WorkingPack(build, steps);
        this.inputs = new Inputs(build);
    }

    static WorkingOutcome of(Worksheet sheet) {
        if (!(sheet.build().use().riding().stopsPerMetre() > 0.0)) {
            return new WorkingMissing(
                    ResultId.TOWN_RANGE, "The build file asks for no stops: see use.stops_per_km.");
        }
        Optional<StopAndGo> town = sheet.range().town();
        Optional<StopAndGo.Leg> middle = town.flatMap(StopAndGo::middle);
        return town.isPresent() && middle.isPresent()
                ? new WorkingTown(sheet).working(town.get(), middle.get())
                : new WorkingMissing(
                        ResultId.TOWN_RANGE,
                        "Between two stops the vehicle cannot pull away and stop again at every"
                                + " charge state in use.");
    }

    private WorkingOutcome working(StopAndGo town, StopAndGo.Leg leg) {
        Term length =
                steps.add(
                        computed("D", "length of a leg", town.length(), Unit.METRE),
                        "1000/k",
                        "stops at even distances",
                        inputs.of(Input.USE_STOPS_PER_KM));
        Term cruise = inputs.of(Input.USE_CRUISE_SPEED);
        Term speed =
                leg.reached() == cruise.value()
                        ? cruise
                        : searched(
                                "v_h",
                                "highest speed that fits",
                                leg.reached(),
                                Unit.METRE_PER_SECOND);
        Term power =
                new WorkingPower(build, steps)
                        .drawn(
                                speed,
                                SteadyPower.of(
                                        build,
                                        sheet.operation().drive(),
                                        Road.ofUse(build),
                                        leg.reached(),
                                        pack.state(leg.charge(), WorkingPack.PULSE)));
        Term steady = steady(leg, length, speed);
        perCharge(leg, length, charge(leg, power, steady));
        distance(town);
        return Working.of(
                ResultId.TOWN_RANGE,
                "Distance with stops at even distances on a level road against the headwind in use:"
                        + " pull away with all that is permitted, hold the speed, stop with the"
                        + " electric brake alone.",
                List.of(
                        modelled("s_m", "charge state of the leg shown", leg.charge(), Unit.RATIO),
                        pack.temperature(),
                        cruise),
                steps);
    }

    private Term steady(StopAndGo.Leg leg, Term length, Term speed) {
        Term distance =
                steps.add(
                        computed("x_c", "at steady speed", leg.steadyDistance(), Unit.METRE),
                        "max(0, D − x_a − x_b)",
                        "what pulling away and stopping leave of the leg",
                        length,
                        modelled(
                                "x_a",
                                "pulling away, integrated",
                                leg.pull().distance(),
                                Unit.METRE),
                        modelled(
                                "x_b",
                                "stopping, integrated",
                                leg.stopped().distance(),
                                Unit.METRE));
        steps.note(
                "Propulsion away and stopping are integrated over the speed by Gauss-Legendre"
                        + " quadrature; time-to-cruise shows the former.");
        return steps.add(
                computed("t_c", "time at steady speed", leg.steadyTime(), Unit.SECOND),
                "x_c/" + speed.symbol(),
                "steady speed",
                distance,
                speed);
    }

    private Term charge(StopAndGo.Leg leg, Term power, Term steady) {
        WorkingPack.At at = pack.at(leg.charge(), WorkingPack.PULSE);
        Term current =
                steps.add(
                        computed("I_c", "pack current there", leg.steadyCurrent(), Unit.AMPERE),
                        "2·p/(U + √(U² − 4·R·p))",
                        "Ohm's law at the terminals, the smaller root of p = I·(U − I·R)",
                        power,
                        at.voltage(),
                        at.resistance());
        return steps.add(
                computed("q_n", "net charge of a leg", leg.netCharge(), Unit.COULOMB),
                "(W_a + P_i·t_b)/U + I_c·t_c − q_b",
                "conservation of charge",
                modelled("W_a", "from cells, pulling away", leg.pull().spent().sum(), Unit.JOULE),
                inputs.of(Input.USE_IDLE_POWER),
                modelled("t_b", "time of stopping, integrated", leg.stopped().time(), Unit.SECOND),
                at.voltage(),
                current,
                steady,
                modelled("q_b", "brought back by stopping", leg.broughtBack(), Unit.COULOMB));
    }

    private void perCharge(StopAndGo.Leg leg, Term length, Term charge) {
        Term capacity = pack.capacity();
        steps.add(
                computed(
                        "y",
                        "distance for a full charge, as there",
                        leg.perFullCharge(),
                        Unit.METRE),
                "3600·Q·D/q_n",
                "conservation of charge",
                capacity,
                length,
                charge);
        steps.note("This is what is integrated over the charge, shown at one charge state.");
    }

    private void distance(StopAndGo town) {
        List<Term> parts = new ArrayList<>();
        for (StopAndGo.Part part : town.parts()) {
            parts.add(
                    modelled(
                            "x" + (parts.size() + 1),
                            Rounded.percent(part.from())
                                    + " to "
                                    + Rounded.percent(part.to())
                                    + " % charge",
                            part.distance(),
                            Unit.METRE));
        }
        steps.add(
                computed("x", "range with stops", town.distance(), Unit.METRE),
                String.join(" + ", parts.stream().map(Term::symbol).toList()),
                "conservation of energy, dx = D·3600·Q·ds/q_n",
                parts.toArray(Term[]::new));
        steps.note(
                "Each part is integrated over the charge state by Gauss-Legendre quadrature, a leg"
                        + " worked out anew at two charge states of every piece.");
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;
import static brakewright.formula.Term.searched;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.PackState;
import brakewright.ride.PullAway;
import brakewright.ride.Road;
import brakewright.ride.Stop;
import brakewright.ride.StopAndGo;
import brakewright.ride.StopOutcome;
import brakewright.ride.Surroundings;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Use;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How the range with stops came about. */
final class WorkingTown {

    /** Ends of pieces of the integration itself, so that their sum is the whole. */
    private static final double[] PIECES = {1.0, 0.9, 0.6, 0.3, 0.0};

    private final Worksheet sheet;
    private final Build build;
    private final Steps steps = new Steps();
    private final WorkingPack pack;

    private WorkingTown(Worksheet sheet) {
        this.sheet = sheet;
        this.build = sheet.build();
        this.pack = new WorkingPack(build, steps);
    }

    static WorkingOutcome of(Worksheet sheet) {
        if (!(sheet.build().use().riding().stopsPerMetre() > 0.0)) {
            return new WorkingMissing(
                    ResultId.TOWN_RANGE, "The build file asks for no stops: see use.stops_per_km.");
        }
        Optional<StopAndGo> town = sheet.range().town();
        return town.isPresent()
                ? new WorkingTown(sheet).working(town.get())
                : new WorkingMissing(
                        ResultId.TOWN_RANGE,
                        "Between two stops the vehicle cannot pull away and stop again at every"
                                + " charge state in use.");
    }

    private WorkingOutcome working(StopAndGo town) {
        double middle = 0.5 * (build.use().chargeFrom() + build.use().chargeTo());
        Term length = length();
        Term speed = speed(town);
        PackState state = pack.state(middle, WorkingPack.PULSE);
        PullAway.Reached pull =
                new PullAway(build, sheet.operation().drive(), Road.ofUse(build))
                        .to(town.reached(), state)
                        .orElseThrow();
        StopOutcome.Stopped stop = stopped(town.reached(), middle);
        Term power = new WorkingPower(build, steps).drawn(speed);
        Term steady = steady(length, speed, pull, stop);
        Term current = current(middle, power);
        Term charge = charge(middle, pull, stop, steady, current);
        perCharge(length, charge);
        distance(town);
        return Working.of(
                ResultId.TOWN_RANGE,
                "Distance with stops at even distances on a level road against the headwind in use:"
                        + " pull away with all that is permitted, hold the speed, stop with the"
                        + " electric brake alone.",
                List.of(
                        modelled("s_m", "charge state of the leg shown", middle, ""),
                        pack.temperature(),
                        given(Input.USE_CRUISE_SPEED, build.use().riding().cruiseSpeed())),
                steps);
    }

    private Term length() {
        double stops = build.use().riding().stopsPerMetre();
        return steps.add(
                computed("D", "length of a leg", 1.0 / stops, "m"),
                "1000/k",
                "stops at even distances",
                given(Input.USE_STOPS_PER_KM, 1000.0 * stops));
    }

    private Term speed(StopAndGo town) {
        return town.reached() == build.use().riding().cruiseSpeed()
                ? WorkingPower.speed(build)
                : searched("v_h", "highest speed that fits", town.reached(), "m/s");
    }

    private StopOutcome.Stopped stopped(double speed, double charge) {
        Surroundings level =
                Surroundings.of(build)
                        .withoutFrictionBrake()
                        .withHeadwind(build.use().riding().headwind());
        return (StopOutcome.Stopped)
                new Stop(build, sheet.operation().brake(), level).from(speed, charge);
    }

    private Term steady(Term length, Term speed, PullAway.Reached pull, StopOutcome.Stopped stop) {
        double left = Math.max(0.0, length.value() - pull.distance() - stop.distance());
        Term distance =
                steps.add(
                        computed("x_c", "at steady speed", left, "m"),
                        "max(0, D − x_a − x_b)",
                        "what pulling away and stopping leave of the leg",
                        length,
                        modelled("x_a", "pulling away, integrated", pull.distance(), "m"),
                        modelled("x_b", "stopping, integrated", stop.distance(), "m"));
        steps.note(
                "Pulling away and stopping are integrated over the speed by Gauss-Legendre"
                        + " quadrature; time-to-cruise shows the former.");
        return steps.add(
                computed("t_c", "time at steady speed", left / speed.value(), "s"),
                "x_c/" + speed.symbol(),
                "steady speed",
                distance,
                speed);
    }

    private Term current(double charge, Term power) {
        WorkingPack.At at = pack.at(charge, WorkingPack.PULSE);
        return steps.add(
                computed("I_c", "pack current there", -at.state().currentInto(-power.value()), "A"),
                "2·p/(U + √(U² − 4·R·p))",
                "Ohm's law at the terminals, the smaller root of p = I·(U − I·R)",
                power,
                at.voltage(),
                at.resistance());
    }

    private Term charge(
            double charge,
            PullAway.Reached pull,
            StopOutcome.Stopped stop,
            Term steady,
            Term current) {
        double voltage = pack.model().openCircuitVoltage(charge);
        double idle = build.use().riding().idlePower();
        double back = (stop.endCharge() - charge) * 3600.0 * pack.model().capacityAh();
        double net =
                pull.spent().sum() / voltage
                        + current.value() * steady.value()
                        + idle * stop.time() / voltage
                        - back;
        return steps.add(
                computed("q_n", "net charge of a leg", net, "C"),
                "(W_a + P_i·t_b)/U + I_c·t_c − q_b",
                "conservation of charge",
                modelled("W_a", "from cells, pulling away", pull.spent().sum(), "J"),
                given(Input.USE_IDLE_POWER, idle),
                modelled("t_b", "time of stopping, integrated", stop.time(), "s"),
                computed(
                        "U",
                        "voltage at rest, " + WorkingPack.percent(charge) + " % charge",
                        voltage,
                        "V"),
                current,
                steady,
                modelled("q_b", "brought back by stopping", back, "C"));
    }

    private void perCharge(Term length, Term charge) {
        Term capacity = pack.capacity();
        steps.add(
                computed(
                        "y",
                        "distance for a full charge, as there",
                        3600.0 * capacity.value() * length.value() / charge.value(),
                        "m"),
                "3600·Q·D/q_n",
                "conservation of charge",
                capacity,
                length,
                charge);
        steps.note("This is what is integrated over the charge, shown at one charge state.");
    }

    private void distance(StopAndGo town) {
        List<Term> parts = new ArrayList<>();
        for (int piece = 0; piece + 1 < PIECES.length; piece++) {
            double upper = Math.min(build.use().chargeFrom(), PIECES[piece]);
            double lower = Math.max(build.use().chargeTo(), PIECES[piece + 1]);
            if (upper > lower) {
                parts.add(
                        modelled(
                                "x" + (parts.size() + 1),
                                WorkingPack.percent(upper)
                                        + " to "
                                        + WorkingPack.percent(lower)
                                        + " % charge",
                                between(upper, lower),
                                "m"));
            }
        }
        steps.add(
                computed("x", "range with stops", town.distance(), "m"),
                String.join(" + ", parts.stream().map(Term::symbol).toList()),
                "conservation of energy, dx = D·3600·Q·ds/q_n",
                parts.toArray(Term[]::new));
        steps.note(
                "Each part is integrated over the charge state by Gauss-Legendre quadrature, a leg"
                        + " worked out anew at two charge states of every piece.");
    }

    private double between(double from, double to) {
        Use use = build.use();
        Use part =
                new Use(
                        from,
                        to,
                        use.speedMax(),
                        use.climate(),
                        use.slope(),
                        use.slopeLength(),
                        use.riding(),
                        use.effort());
        return StopAndGo.of(
                        build.withUse(part),
                        sheet.operation().drive(),
                        sheet.operation().brake(),
                        use.riding().cruiseSpeed(),
                        use.riding().stopsPerMetre())
                .orElseThrow()
                .distance();
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.modelled;
import static brakewright.formula.Term.searched;

import brakewright.driving.Cruise;
import brakewright.driving.Road;
import brakewright.driving.SteadyPower;
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

/** How range and consumption at the cruise speed came about. */
final class WorkingRange {

    private static final String TERMINAL =
            "Ohm's law at the terminals, the smaller root of p = I·(U − I·R)";

    private final Build build;
    private final Cruise cruise;
    private final SteadyPower steady;
    private final Inputs inputs;
    private final Steps steps = new Steps();
    private final WorkingPack pack;

    private WorkingRange(Worksheet sheet) {
        this.build = sheet.build();
        this.cruise = sheet.range().cruise();
        this.inputs = new Inputs(build);
        this.pack = new WorkingPack(build, steps);
        this.steady =
                SteadyPower.of(
                        build,
                        sheet.operation().drive(),
                        Road.ofUse(build),
                        cruise.speed(),
                        pack.state(build.use().chargeFrom(), WorkingPack.ENDLESS));
    }

    static WorkingOutcome range(Worksheet sheet) {
        WorkingRange work = new WorkingRange(sheet);
        return work.missing(ResultId.RANGE).orElseGet(work::range);
    }

    static WorkingOutcome consumption(Worksheet sheet) {
        WorkingRange work = new WorkingRange(sheet);
        return work.missing(ResultId.CONSUMPTION).orElseGet(work::consumption);
    }

    private Optional<WorkingOutcome> missing(ResultId id) {
        if (!steady.isDriven()) {
            return Optional.of(
                    new WorkingMissing(
                            id,
                            "At the cruise speed the wind carries the vehicle; the motors have"
                                    + " nothing to do."));
        }
        return cruise.distanceHeld() > 0.0
                ? Optional.empty()
                : Optional.of(
                        new WorkingMissing(
                                id,
                                "The cruise speed is not held even with the fullest pack in use:"
                                        + " see top-speed."));
    }

    private WorkingOutcome consumption() {
        Term power =
                new WorkingPower(build, steps).drawn(inputs.of(Input.USE_CRUISE_SPEED), steady);
        steps.add(
                computed("e", "consumption", cruise.consumption(), Unit.JOULE_PER_METRE),
                "p/v",
                "conservation of energy",
                power,
                inputs.of(Input.USE_CRUISE_SPEED));
        return Working.of(
                ResultId.CONSUMPTION,
                "Energy at the pack's terminals for a distance at the cruise speed, level road,"
                        + " windings at the temperature of the air.",
                List.of(inputs.of(Input.USE_CRUISE_SPEED)),
                steps);
    }

    private WorkingOutcome range() {
        Term power =
                new WorkingPower(build, steps).drawn(inputs.of(Input.USE_CRUISE_SPEED), steady);
        double from = build.use().chargeFrom();
        double middle = 0.5 * (from + cruise.heldDownTo());
        loaded("f", "fullest", from, power);
        Term atMiddle = loaded("m", "middle", middle, power);
        loaded("e", "emptiest", cruise.heldDownTo(), power);
        steps.add(
                computed(
                        "I_p",
                        "pack current at the middle",
                        -pack.state(middle, WorkingPack.ENDLESS).currentInto(-power.value()),
                        Unit.AMPERE),
                "p/V_m",
                "power is voltage times current",
                power,
                atMiddle);
        Term energy = energy(power);
        Term time =
                steps.add(
                        computed("t", "time at that speed", cruise.timeHeld(), Unit.SECOND),
                        "E/p",
                        "conservation of energy",
                        energy,
                        power);
        distance(time);
        return Working.of(
                ResultId.RANGE,
                "Distance at the cruise speed on a level road from the fullest to the emptiest"
                        + " charge in use.",
                List.of(
                        inputs.of(Input.USE_CRUISE_SPEED),
                        inputs.of(Input.USE_CHARGE_FROM),
                        inputs.of(Input.USE_CHARGE_TO),
                        pack.temperature()),
                steps);
    }

    /** The voltage at which the power leaves the pack. */
    private Term loaded(String suffix, String where, double charge, Term power) {
        WorkingPack.At at = pack.at(charge, WorkingPack.ENDLESS);
        return steps.add(
                computed(
                        "V_" + suffix,
                        "loaded voltage, " + where + " (" + Rounded.percent(charge) + " %)",
                        at.state().loadedVoltage(power.value()),
                        Unit.VOLT),
                "½·(U + √(max(0, U² − 4·R·p)))",
                TERMINAL,
                at.voltage(),
                at.resistance(),
                power);
    }

    /** What the cells give at the terminals while the speed is held. */
    private Term energy(Term power) {
        double to = cruise.heldDownTo();
        Term mean = meanVoltage();
        Term capacity = pack.capacity();
        Term end =
                to > build.use().chargeTo()
                        ? searched("s_h", "speed held down to", to, Unit.RATIO)
                        : inputs.of(Input.USE_CHARGE_TO);
        return steps.add(
                computed("E", "usable energy", cruise.spentHeld().atTerminals(), Unit.JOULE),
                "3600·Q·(s_f − " + end.symbol() + ")·V",
                "energy is charge times voltage",
                capacity,
                inputs.of(Input.USE_CHARGE_FROM),
                end,
                mean);
    }

    private Term meanVoltage() {
        List<Term> means = new ArrayList<>();
        for (Cruise.Quarter quarter : cruise.quarters()) {
            means.add(
                    modelled(
                            "V" + (means.size() + 1),
                            "mean, "
                                    + Rounded.percent(quarter.from())
                                    + " to "
                                    + Rounded.percent(quarter.to())
                                    + " % charge",
                            quarter.meanVoltage(),
                            Unit.VOLT));
        }
        Term whole =
                steps.add(
                        computed(
                                "V", "mean of loaded voltage", cruise.meanVoltageHeld(), Unit.VOLT),
                        "(" + String.join(" + ", means.stream().map(Term::symbol).toList()) + ")/4",
                        "mean over the charge that flows",
                        means.toArray(Term[]::new));
        steps.note(
                "The means are taken over the charge state by Gauss-Legendre quadrature between the"
                        + " points of the cell's curves.");
        return whole;
    }

    private void distance(Term time) {
        Term speed = inputs.of(Input.USE_CRUISE_SPEED);
        double slower = cruise.distanceSlower();
        if (slower > 0.0) {
            steps.add(
                    computed("x", "range", cruise.distance(), Unit.METRE),
                    "v·t + x_s",
                    "sum of both parts of the ride",
                    speed,
                    time,
                    modelled("x_s", "at the lower speeds possible", slower, Unit.METRE));
            steps.note(
                    "Below the charge at which the speed can no longer be held, the ride goes on at"
                            + " the top speed of each charge state; that part is integrated"
                            + " likewise, dx = v·3600·Q·ds/I.");
        } else {
            steps.add(
                    computed("x", "range", cruise.distance(), Unit.METRE),
                    "v·t",
                    "steady speed",
                    speed,
                    time);
        }
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;
import static brakewright.formula.Term.searched;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.PackState;
import brakewright.ride.Cruise;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;

/** How range and consumption at the cruise speed came about. */
final class WorkingRange {

    private static final String TERMINAL =
            "Ohm's law at the terminals, the smaller root of p = I·(U − I·R)";

    private final Build build;
    private final Cruise cruise;
    private final Steps steps = new Steps();
    private final WorkingPack pack;

    private WorkingRange(Worksheet sheet) {
        this.build = sheet.build();
        this.cruise = sheet.range().cruise();
        this.pack = new WorkingPack(build, steps);
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
        if (!WorkingPower.isResisted(build)) {
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
        Term power = new WorkingPower(build, steps).drawn(WorkingPower.speed(build));
        steps.add(
                computed("e", "consumption", cruise.consumption(), "J/m"),
                "p/v",
                "conservation of energy",
                power,
                WorkingPower.speed(build));
        return Working.of(
                ResultId.CONSUMPTION,
                "Energy at the pack's terminals for a distance at the cruise speed, level road,"
                        + " windings at the temperature of the air.",
                List.of(WorkingPower.speed(build)),
                steps);
    }

    private WorkingOutcome range() {
        Term power = new WorkingPower(build, steps).drawn(WorkingPower.speed(build));
        double from = build.use().chargeFrom();
        double middle = 0.5 * (from + cruise.heldDownTo());
        loaded("f", "fullest", from, power);
        Term atMiddle = loaded("m", "middle", middle, power);
        loaded("e", "emptiest", cruise.heldDownTo(), power);
        steps.add(
                computed(
                        "I_p", "pack current at the middle", power.value() / atMiddle.value(), "A"),
                "p/V_m",
                "power is voltage times current",
                power,
                atMiddle);
        Term energy = energy(power);
        Term time =
                steps.add(
                        computed(
                                "t",
                                "time at that speed",
                                cruise.distanceHeld() / cruise.speed(),
                                "s"),
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
                        WorkingPower.speed(build),
                        fullest(),
                        given(Input.USE_CHARGE_TO, build.use().chargeTo()),
                        pack.temperature()),
                steps);
    }

    private Term fullest() {
        return given(Input.USE_CHARGE_FROM, build.use().chargeFrom());
    }

    /** The voltage at which the power leaves the pack. */
    private Term loaded(String suffix, String where, double charge, Term power) {
        WorkingPack.At at = pack.at(charge, WorkingPack.ENDLESS);
        return steps.add(
                computed(
                        "V_" + suffix,
                        "loaded voltage, " + where + " (" + WorkingPack.percent(charge) + " %)",
                        voltage(at.state(), power.value()),
                        "V"),
                "½·(U + √(U² − 4·R·p))",
                TERMINAL,
                at.voltage(),
                at.resistance(),
                power);
    }

    private static double voltage(PackState state, double power) {
        return state.terminalVoltage(state.currentInto(-power));
    }

    /** What the cells give at the terminals while the speed is held. */
    private Term energy(Term power) {
        double from = build.use().chargeFrom();
        double to = cruise.heldDownTo();
        Term mean =
                pack.mean(
                        computed("V", "loaded voltage", Double.NaN, "V"),
                        from,
                        to,
                        charge -> voltage(pack.state(charge, WorkingPack.ENDLESS), power.value()));
        Term capacity = pack.capacity();
        Term end =
                to > build.use().chargeTo()
                        ? searched("s_h", "speed held down to", to, "")
                        : given(Input.USE_CHARGE_TO, to);
        return steps.add(
                computed("E", "usable energy", cruise.spentHeld().atTerminals(), "J"),
                "3600·Q·(s_f − " + end.symbol() + ")·V",
                "energy is charge times voltage",
                capacity,
                fullest(),
                end,
                mean);
    }

    private void distance(Term time) {
        Term speed = WorkingPower.speed(build);
        double slower = cruise.distance() - cruise.distanceHeld();
        if (slower > 0.0) {
            steps.add(
                    computed("x", "range", cruise.distance(), "m"),
                    "v·t + x_s",
                    "sum of both parts of the ride",
                    speed,
                    time,
                    modelled("x_s", "at the lower speeds possible", slower, "m"));
            steps.note(
                    "Below the charge at which the speed can no longer be held, the ride goes on at"
                            + " the top speed of each charge state; that part is integrated"
                            + " likewise, dx = v·3600·Q·ds/I.");
        } else {
            steps.add(
                    computed("x", "range", cruise.distance(), "m"),
                    "v·t",
                    "steady speed",
                    speed,
                    time);
        }
    }
}

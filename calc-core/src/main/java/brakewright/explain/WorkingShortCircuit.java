package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;

import brakewright.battery.FuseDuty;
import brakewright.battery.PackModel;
import brakewright.battery.ShortCircuit;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.PackTerms;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a short circuit may drive through the fuse of which it asks most. */
final class WorkingShortCircuit {

    private static final String OHM = "Ohm's law";

    private final Build build;
    private final FuseDuty fuse;
    private final ShortCircuit fault;
    private final Steps steps = new Steps();
    private final WorkingPack pack;

    WorkingShortCircuit(Build build) {
        this.build = build;
        this.fuse = FuseDuty.hardest(build.battery());
        this.fault = new ShortCircuit(build.battery());
        this.pack = new WorkingPack(build, steps);
    }

    WorkingOutcome working() {
        if (build.battery().isOnePack()) {
            through(List.of(voltage(0), pack.least("R_i", 0)), "U_f/R_i", OHM);
        } else if (build.battery().joining() == Joining.SERIES) {
            series();
        } else {
            parallel();
        }
        steps.note(
                "Full packs, cells as warm as they may be; joints, leads and the fuse itself would"
                        + " lower it: an upper bound.");
        return Working.of(
                ResultId.SHORT_CIRCUIT_CURRENT,
                "Greatest current that a dead short may drive through "
                        + name()
                        + ", close behind it; the fuse must be able to break it.",
                List.of(
                        modelled(
                                "U_b",
                                "voltage that the fuse must break",
                                fuse.voltage(),
                                Unit.VOLT)),
                steps);
    }

    private String name() {
        return FuseDuty.of(build.battery()).isEmpty()
                ? "a main fuse (none is described)"
                : fuse.pack()
                        .map(number -> "the fuse of pack " + number)
                        .orElse(
                                build.battery().isOnePack()
                                        ? "the main fuse"
                                        : "the fuse common to all packs");
    }

    private Term voltage(int place) {
        PackModel model = pack.model().packs().get(place);
        WhichPack which = build.battery().which(place);
        return steps.add(
                which,
                computed(
                        which.map(number -> "U" + number).orElse("U_f"),
                        "voltage when full",
                        fault.packs().get(place).voltage(),
                        Unit.VOLT),
                "S·u_max",
                "cells in series add their voltage",
                List.of(
                        PackTerms.series(model),
                        given(Input.CELL_VOLTAGE_MAX, model.pack().cell().voltageMax())));
    }

    /** Every pack feeds the fault; the fuse of one sees what it gives, or all others into it. */
    private void parallel() {
        List<Term> currents = new ArrayList<>();
        for (int place = 0; place < fault.packs().size(); place++) {
            currents.add(alone(place, voltage(place), resistance(place)));
        }
        if (fuse.pack().isWhole()) {
            through(currents, sum(currents), PackTerms.KIRCHHOFF);
            return;
        }
        List<Term> others = new ArrayList<>(currents);
        Term own = others.remove(place());
        through(currents, "max(" + own.symbol() + ", " + sum(others) + ")", PackTerms.KIRCHHOFF);
    }

    /** One current flows through all, or one pack is shorted by itself. */
    private void series() {
        List<Term> voltages = new ArrayList<>();
        List<Term> resistances = new ArrayList<>();
        for (int place = 0; place < fault.packs().size(); place++) {
            voltages.add(voltage(place));
            resistances.add(resistance(place));
        }
        List<Term> all = new ArrayList<>(voltages);
        all.addAll(resistances);
        String through = "(" + sum(voltages) + ")/(" + sum(resistances) + ")";
        if (fuse.pack().isWhole()) {
            through(all, through, OHM);
            return;
        }
        Term own = alone(place(), voltages.get(place()), resistances.get(place()));
        all.add(own);
        through(all, "max(" + own.symbol() + ", " + through + ")", OHM);
    }

    /** Of the pack whose fuse it is, from 0. */
    private int place() {
        return fuse.pack().number().orElseThrow() - 1;
    }

    private Term resistance(int place) {
        return pack.least("R" + (place + 1), place);
    }

    private Term alone(int place, Term voltage, Term resistance) {
        int number = place + 1;
        return steps.add(
                WhichPack.of(number),
                computed(
                        "I" + number,
                        "shorted by itself",
                        fault.packs().get(place).current(),
                        Unit.AMPERE),
                voltage.symbol() + "/" + resistance.symbol(),
                OHM,
                List.of(voltage, resistance));
    }

    private void through(List<Term> terms, String formula, String source) {
        steps.add(
                computed("I_f", "current through the fuse", fuse.current(), Unit.AMPERE),
                formula,
                source,
                terms.toArray(Term[]::new));
    }

    private static String sum(List<Term> terms) {
        return terms.stream().map(Term::symbol).collect(Collectors.joining(" + "));
    }
}

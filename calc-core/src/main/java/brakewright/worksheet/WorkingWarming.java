package brakewright.worksheet;

import static brakewright.limit.Term.computed;
import static brakewright.limit.Term.given;

import brakewright.battery.PackModel;
import brakewright.limit.Term;
import brakewright.powertrain.PackState;
import brakewright.ride.PackHeat;
import brakewright.spec.Build;
import brakewright.spec.Input;
import java.util.List;
import java.util.Optional;

/** How warm the cells become over a full discharge at the cruise speed. */
final class WorkingWarming {

    private final Build build;
    private final PackHeat heat;
    private final WorkingSteps steps = new WorkingSteps();
    private final WorkingPack pack;
    private final PackModel warmest;
    private final int place;

    private WorkingWarming(Build build, PackHeat heat) {
        this.build = build;
        this.heat = heat;
        this.pack = new WorkingPack(build, steps);
        this.place = heat.pack() - 1;
        this.warmest = pack.model().packs().get(place);
    }

    static WorkingOutcome of(Worksheet sheet) {
        Optional<PackHeat> cruising = sheet.heat().packCruising();
        return cruising.isPresent()
                ? new WorkingWarming(sheet.build(), cruising.get()).working()
                : new WorkingMissing(
                        ResultId.PACK_WARMING,
                        "The heat capacity of the cells is not known (see pack.cell.mass), or the"
                                + " power at the cruise speed cannot be drawn down to the emptiest"
                                + " charge in use.");
    }

    private WorkingOutcome working() {
        Term power = new WorkingPower(build, steps).drawn(WorkingPower.speed(build));
        double from = build.use().chargeFrom();
        double to = build.use().chargeTo();
        Term lost =
                pack.mean(
                        computed("D", "voltage lost in the cells", Double.NaN, "V"),
                        from,
                        to,
                        charge -> lost(charge, power.value()));
        steps.note(
                WorkingIntegral.HOW
                        + " At each charge state it is I_k²·R_k/I: the current I = p/V of all, the"
                        + " part I_k of it in the pack that warms most, and its R_k without joints"
                        + " in an endless pull.");
        Term capacity = pack.capacity();
        Term full = given("s_f", "fullest charge in use", from, "", Input.USE_CHARGE_FROM);
        Term empty = given("s_e", "emptiest charge in use", to, "", Input.USE_CHARGE_TO);
        double charge = 3600.0 * capacity.value() * (from - to);
        Term joule =
                steps.add(
                        computed("H", "heat in its cells", charge * lost.value(), "J"),
                        "3600·Q·(s_f − s_e)·D",
                        "Joule heating",
                        capacity,
                        full,
                        empty,
                        lost);
        Term store = store();
        Term rise =
                steps.add(
                        computed("dT", "rise if all of it stays", heat.riseK(), "K"),
                        "H/C",
                        "heat balance of one body",
                        joule,
                        store);
        if (warmest.pack().toAir().isPresent()) {
            shedding(power, joule, store, capacity, full, empty);
        } else {
            steps.add(
                    end(),
                    "T_p + dT",
                    "heat balance of one body, no way to the air given",
                    pack.temperature(),
                    rise);
        }
        return Working.of(
                ResultId.PACK_WARMING,
                "Temperature of the cells"
                        + (build.battery().isOnePack() ? "" : " of pack " + heat.pack())
                        + " after a full discharge at the cruise speed.",
                List.of(WorkingPower.speed(build), full, empty, pack.temperature()),
                steps);
    }

    private Term end() {
        return computed("T_end", "cells at the end", heat.endC(), "°C");
    }

    private double lost(double charge, double power) {
        PackState state = pack.state(charge, WorkingPack.ENDLESS);
        double cells = build.battery().temperatureC();
        double share = pack.model().share(place, charge, cells);
        double resistance =
                warmest.resistance(pack.model().chargeOf(place, charge), cells, WorkingPack.ENDLESS)
                        - warmest.pack().jointResistance();
        return share * share * -state.currentInto(-power) * resistance;
    }

    private Term store() {
        double each = warmest.pack().cell().heatCapacity().orElseThrow();
        double all = warmest.pack().series() * warmest.pack().parallel() * each;
        return steps.add(
                build.battery().isOnePack() ? 0 : heat.pack(),
                computed("C", "heat capacity of its cells", all, "J/K"),
                "S·P·c",
                "sum over its cells",
                WorkingPack.series(warmest),
                given("P", "cells in parallel", warmest.pack().parallel(), "", Input.PACK_PARALLEL),
                given("c", "of a cell, from mass", each, "J/K", Input.CELL_MASS));
    }

    /** The end with heat leaving at the mean power. */
    private void shedding(
            Term power, Term joule, Term store, Term capacity, Term full, Term empty) {
        Term loaded =
                pack.mean(
                        computed("V", "loaded voltage", Double.NaN, "V"),
                        full.value(),
                        empty.value(),
                        each -> loaded(each, power.value()));
        Term time =
                steps.add(
                        computed("t", "time of the discharge", heat.time(), "s"),
                        "3600·Q·(s_f − s_e)·V/p",
                        "conservation of energy",
                        capacity,
                        full,
                        empty,
                        loaded,
                        power);
        Term way =
                given(
                        "R_a",
                        "from its cells to the air",
                        warmest.pack().toAir().orElseThrow(),
                        "K/W",
                        Input.PACK_TO_AIR);
        Term air = WorkingRoad.air(build);
        Term settled =
                steps.add(
                        computed(
                                "T_s",
                                "where it would settle",
                                air.value() + joule.value() / time.value() * way.value(),
                                "°C"),
                        "T_a + H/t·R_a",
                        "heat balance of one body, at the mean power",
                        air,
                        joule,
                        time,
                        way);
        steps.add(
                end(),
                "T_s + (T_p − T_s)·exp(−t/(R_a·C))",
                "heat balance of one body",
                settled,
                pack.temperature(),
                time,
                way,
                store);
    }

    private double loaded(double charge, double power) {
        PackState state = pack.state(charge, WorkingPack.ENDLESS);
        return state.terminalVoltage(state.currentInto(-power));
    }
}

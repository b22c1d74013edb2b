package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;

import brakewright.battery.PackModel;
import brakewright.formula.Inputs;
import brakewright.formula.Rounded;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.heat.PackHeat;
import brakewright.limit.PackTerms;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;

/** How warm the cells become over a full discharge at the cruise speed. */
final class WorkingWarming {

    private final Build build;
    private final PackHeat heat;
    private final Steps steps = new Steps();
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
        Term speed = new Inputs(build).of(Input.USE_CRUISE_SPEED);
        Term store = store();
        Term joule = modelled("H", "heat in its cells", heat.heat(), Unit.JOULE);
        steps.note(
                "H is I_k²·R_k over the time, added up step by step while the charge falls: the"
                        + " current of all at the power of the cruise speed, the part I_k of it in"
                        + " the pack that warms most, and its R_k without joints in an endless"
                        + " pull, at the temperature that the cells have by then.");
        Term rise =
                steps.add(
                        computed("dT", "rise if all of it stays", heat.riseK(), Unit.KELVIN),
                        "H/C",
                        "heat balance of one body",
                        joule,
                        store);
        if (warmest.pack().toAir().isPresent()) {
            shedding(joule, store);
        } else {
            steps.add(
                    end(),
                    "T_p + dT",
                    "heat balance of one body, no way to the air given",
                    pack.temperature(),
                    rise);
        }
        if (heat.stoppedAfter().isPresent()) {
            steps.note("There the cells may no longer be discharged: the ride is stopped.");
        }
        return Working.of(
                ResultId.PACK_WARMING,
                "Temperature of the cells"
                        + (build.battery().isOnePack() ? "" : " of pack " + heat.pack())
                        + " after a full discharge at the cruise speed.",
                List.of(speed, pack.temperature()),
                steps);
    }

    private Term end() {
        return computed("T_end", "cells at the end", heat.endC(), Unit.CELSIUS);
    }

    private Term store() {
        double each = warmest.pack().cell().heatCapacity().orElseThrow();
        return steps.add(
                build.battery().which(heat.pack() - 1),
                computed("C", "heat capacity of its cells", heat.capacity(), Unit.JOULE_PER_KELVIN),
                "S·P·c",
                "sum over its cells",
                List.of(
                        PackTerms.series(warmest),
                        PackTerms.parallel(warmest),
                        given(Input.CELL_MASS, each)));
    }

    /** The end with heat leaving: what left is added up together with the heat. */
    private void shedding(Term joule, Term store) {
        double way = warmest.pack().toAir().orElseThrow();
        steps.note(
                "L is (T − T_a)/R_a over the same time, the air at "
                        + Rounded.to(1, build.use().climate().ambientC())
                        + " °C and R_a "
                        + Rounded.to(3, way)
                        + " K/W (pack.to_air).");
        Term left = modelled("L", "heat that leaves to the air", heat.shed(), Unit.JOULE);
        steps.add(
                end(),
                "T_p + (H − L)/C",
                "heat balance of one body",
                pack.temperature(),
                joule,
                left,
                store);
    }
}

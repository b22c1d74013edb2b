package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.modelled;

import brakewright.formula.Inputs;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.BatterySteps;
import brakewright.limit.OnePack;
import brakewright.limit.PackLimit;
import brakewright.operation.Sharing;
import brakewright.powertrain.ElectricDrive;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Unit;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** How several packs share a current, and how far apart in voltage they may be joined. */
final class WorkingSharing {

    private final Worksheet sheet;
    private final Build build;
    private final Steps steps = new Steps();
    private final WorkingPack pack;

    private WorkingSharing(Worksheet sheet) {
        this.sheet = sheet;
        this.build = sheet.build();
        this.pack = new WorkingPack(build, steps);
    }

    static WorkingOutcome sharing(Worksheet sheet) {
        return sheet.build().battery().isOnePack()
                ? new WorkingMissing(
                        ResultId.PACK_SHARING, "There is one pack; it carries all of the current.")
                : new WorkingSharing(sheet).sharing();
    }

    static WorkingOutcome joining(Worksheet sheet) {
        if (sheet.build().battery().isOnePack()) {
            return new WorkingMissing(
                    ResultId.JOINING, "There is one pack; there is nothing to join.");
        }
        return sheet.build().battery().joining() == Joining.SERIES
                ? new WorkingMissing(
                        ResultId.JOINING,
                        "The packs are in series; no current flows between them when they are"
                                + " joined.")
                : new WorkingSharing(sheet).joining();
    }

    private WorkingOutcome sharing() {
        Sharing.Load most =
                sheet.sharing().loads().stream()
                        .filter(Sharing.Load::isDraw)
                        .max(Comparator.comparingDouble(Sharing.Load::use))
                        .orElseThrow();
        WorkingPack.At at = pack.at(most.charge(), WorkingPack.PULSE);
        Term whole = whole(at);
        boolean parallel = build.battery().joining() == Joining.PARALLEL;
        Term result =
                computed("I_k", "pack " + most.pack() + " carries", most.current(), Unit.AMPERE);
        if (parallel) {
            Term own = steps.found("R" + most.pack()).orElseThrow();
            Term share =
                    steps.add(
                            computed(
                                    "w",
                                    "its share",
                                    pack.model()
                                            .share(
                                                    most.pack() - 1,
                                                    most.charge(),
                                                    build.battery().temperatureC()),
                                    Unit.RATIO),
                            "(R − R_t)/" + own.symbol(),
                            BatterySteps.JOINED,
                            at.resistance(),
                            new Inputs(build).of(Input.TRUNK_RESISTANCE),
                            own);
            steps.add(result, "w·I", BatterySteps.JOINED, share, whole);
        } else {
            steps.add(result, "I", BatterySteps.JOINED + ", in series one current", whole);
        }
        steps.note("By itself it may give I_z there, see above.");
        return Working.of(
                ResultId.PACK_SHARING,
                "Current of the pack that uses most of what it may give, while driving at full"
                        + " draw.",
                List.of(
                        most.charge() == build.use().chargeFrom()
                                ? WorkingPack.charge(build, true)
                                : most.charge() == build.use().chargeTo()
                                        ? WorkingPack.charge(build, false)
                                        : modelled(
                                                "s",
                                                "charge state of all",
                                                most.charge(),
                                                Unit.RATIO),
                        modelled("s_k", "charge state of the pack", most.ownCharge(), Unit.RATIO),
                        pack.temperature(),
                        modelled("I_z", "it may give there", most.limit(), Unit.AMPERE)),
                steps);
    }

    /** The greatest current that leaves all packs together. */
    private Term whole(WorkingPack.At at) {
        ElectricDrive drive = sheet.operation().drive();
        double top = sheet.operation().topSpeed();
        WorkingMotor motor = new WorkingMotor(build, steps);
        Term turning =
                motor.turning(
                        modelled("v", "highest speed that is met", top, Unit.METRE_PER_SECOND));
        Term set = WorkingThrust.set(build, drive);
        Term power = motor.drawn("P_m", set, turning);
        Term limit =
                WorkingThrust.settled(
                        drive, steps, WorkingThrust.draw(build, sheet.operation(), steps), at);
        double asked = -at.state().currentInto(-power.value());
        double least = drive.greatestDraw(top, at.state());
        if (Double.isInfinite(asked)) {
            return steps.add(
                    computed("I", "current of all packs", least, Unit.AMPERE),
                    "I_p",
                    "the motors ask for more than the packs can give",
                    limit);
        }
        return steps.add(
                computed("I", "current of all packs", least, Unit.AMPERE),
                "min(I_p, 2·P_m/(U + √(U² − 4·R·P_m)))",
                "what is permitted or what the motors ask for, whichever is less",
                limit,
                power,
                at.voltage(),
                at.resistance());
    }

    private WorkingOutcome joining() {
        Sharing.Joint least =
                sheet.sharing().joints().stream()
                        .min(Comparator.comparingDouble(Sharing.Joint::difference))
                        .orElseThrow();
        List<Term> bearing = new ArrayList<>();
        List<Term> others = new ArrayList<>();
        @Nullable Term own = null;
        StringBuilder sum = new StringBuilder();
        for (int place = 0; place < pack.model().packs().size(); place++) {
            int number = place + 1;
            Term resistance = pack.least("R" + number, place);
            if (number == least.pack()) {
                own = resistance;
            } else {
                others.add(resistance);
                sum.append(sum.length() == 0 ? "" : " + ").append("1/R").append(number);
            }
            bearing.add(bears("I_g", "may give", OnePack.giving(build, place), number));
            bearing.add(bears("I_t", "may take", OnePack.taking(build, place), number));
        }
        Term rest =
                steps.add(
                        computed("R_o", "resistance of the others", least.others(), Unit.OHM),
                        "1/(" + sum + ")",
                        BatterySteps.JOINED,
                        others.toArray(Term[]::new));
        Term permitted =
                steps.add(
                        computed("I_z", "what may flow either way", least.permitted(), Unit.AMPERE),
                        "min(" + WorkingGround.symbols(bearing) + ")",
                        "the weakest pack decides; see pack-discharge-current, pack-regen-current",
                        bearing.toArray(Term[]::new));
        Term mine = Objects.requireNonNull(own);
        steps.add(
                computed(
                        "dU",
                        "difference, pack " + least.pack() + " to the others",
                        least.difference(),
                        Unit.VOLT),
                "I_z·(" + mine.symbol() + " + R_o)",
                "Ohm's law",
                permitted,
                mine,
                rest);
        return Working.of(
                ResultId.JOINING,
                "Highest difference of the voltages at rest at which the packs may be joined. In the"
                        + " first instant a current meets the least resistance.",
                List.of(pack.temperature()),
                steps);
    }

    private Term bears(String symbol, String what, PackLimit limit, int number) {
        return modelled(
                symbol + number,
                "pack " + number + " " + what,
                limit.staticPart(build.battery().temperatureC()).value(),
                Unit.AMPERE);
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.searched;

import brakewright.battery.PackModel;
import brakewright.battery.WorstGroup;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.GroupTerms;
import brakewright.limit.PackTerms;
import brakewright.operation.Sag;
import brakewright.powertrain.ElectricDrive;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Input;
import brakewright.spec.Pack;
import brakewright.spec.Unit;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the voltage falls while the set current is drawn, and what it meets first. */
final class WorkingSag {

    private static final String NOTHING_MET =
            "Nothing is met: down to the emptiest charge in use the voltage stays above the"
                    + " taper, the cells' lowest voltage and the protection's trip.";

    private final Worksheet sheet;
    private final Build build;
    private final ElectricDrive drive;
    private final Steps steps = new Steps();
    private final WorkingPack pack;

    private WorkingSag(Worksheet sheet) {
        this.sheet = sheet;
        this.build = sheet.build();
        this.drive = sheet.operation().drive();
        this.pack = new WorkingPack(build, steps);
    }

    static WorkingOutcome of(Worksheet sheet) {
        return new WorkingSag(sheet).working();
    }

    private WorkingOutcome working() {
        Sag.Case set = sheet.sag().cases().get(0);
        Optional<Sag.Meeting> first = set.first();
        double charge = first.map(Sag.Meeting::charge).orElse(build.use().chargeTo());
        WorkingPack.At at = pack.at(charge, set.draw().seconds());
        Term draw = WorkingThrust.draw(build, sheet.operation(), steps);
        Term left = WorkingThrust.settled(drive, steps, draw, at);
        Term terminal =
                steps.add(
                        computed(
                                "V",
                                "voltage at the terminals",
                                at.state().terminalVoltage(-left.value()),
                                Unit.VOLT),
                        "U − I_p·R",
                        "Ohm's law",
                        at.voltage(),
                        left,
                        at.resistance());
        Term rest = WorkingPack.charge(build, false);
        if (first.isPresent()) {
            boolean isAtStart = charge >= build.use().chargeFrom();
            rest =
                    isAtStart
                            ? WorkingPack.charge(build, true)
                            : searched("s", "charge state there", charge, Unit.RATIO);
        }
        if (first.isPresent()) {
            loadedCell(first.get().event(), charge, rest, left);
        }
        steps.add(
                computed("D", "sag", at.voltage().value() - terminal.value(), Unit.VOLT),
                "U − V",
                "difference to the voltage at rest",
                at.voltage(),
                terminal);
        steps.note(first.map(met -> note(met.event())).orElse(NOTHING_MET));
        return Working.of(
                ResultId.SAG,
                "How far the voltage falls below that at rest while the set current is drawn for"
                        + " 10 s, "
                        + (first.isPresent()
                                ? "at the charge state where it first meets something."
                                : "at the emptiest charge in use."),
                conditions(rest, first),
                steps);
    }

    private List<Term> conditions(Term rest, Optional<Sag.Meeting> first) {
        List<Term> all = new ArrayList<>(List.of(rest, pack.temperature()));
        first.flatMap(met -> met(met.event())).ifPresent(all::add);
        return all;
    }

    /** The voltage that is met, where it is that of one pack. */
    private Optional<Term> met(Sag.Event event) {
        Pack one = build.battery().packs().get(0);
        boolean single = build.battery().isOnePack();
        return switch (event) {
            case TAPER_BEGINS -> drive.taper().map(WorkingThrust::begin);
            case TAPER_ENDS -> drive.taper().map(WorkingThrust::end);
            case CELL_FLOOR ->
                    single
                            ? Optional.of(given(Input.CELL_VOLTAGE_MIN, one.cell().voltageMin()))
                            : Optional.empty();
            case PROTECTION_TRIP ->
                    single
                            ? Optional.of(
                                    given(
                                            Input.PROTECTION_UNDERVOLTAGE_TRIP,
                                            one.protection().cellUndervoltageTrip().orElseThrow()))
                            : Optional.empty();
        };
    }

    /** The voltage in the emptiest group, joints left out, where it is that which is met. */
    private void loadedCell(Sag.Event event, double charge, Term rest, Term left) {
        boolean isCell = event == Sag.Event.CELL_FLOOR || event == Sag.Event.PROTECTION_TRIP;
        if (!isCell || !build.battery().isOnePack()) {
            return;
        }
        PackModel model = pack.model().packs().get(0);
        double cells = build.battery().temperatureC();
        GroupTerms group = new GroupTerms(model, WorstGroup.End.EMPTIEST);
        steps.add(group.chargeAt(rest));
        Term atRest = group.openCircuitVoltage(charge);
        List<Term> terms = new ArrayList<>(List.of(atRest, left));
        terms.addAll(group.resistance(charge, cells));
        terms.add(PackTerms.parallel(model));
        steps.add(
                computed(
                        "u_l",
                        "loaded cell of that group",
                        model.lowestCellVoltage(left.value(), charge, cells, Cell.PULSE),
                        Unit.VOLT),
                atRest.symbol() + " − I_p·" + group.resistanceFormula(charge, cells, "") + "/P",
                "Ohm's law",
                terms.toArray(Term[]::new));
    }

    private static String note(Sag.Event event) {
        return switch (event) {
            case TAPER_BEGINS ->
                    "Found by search over the charge state: here V reaches the voltage at which"
                            + " the low-voltage taper begins to fade the draw.";
            case CELL_FLOOR ->
                    "Found by search over the charge state: here the most loaded cell reaches"
                            + " its maker's lowest voltage.";
            case PROTECTION_TRIP ->
                    "Found by search over the charge state: here the most loaded cell reaches"
                            + " the voltage at which the protection"
                            + " disconnects.";
            case TAPER_ENDS ->
                    "Found by search over the charge state: here the voltage at rest is at the"
                            + " end of the low-voltage taper, which leaves nothing.";
        };
    }
}

package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.constant;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;
import static brakewright.formula.Term.searched;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.battery.WorstGroup;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.GroupTerms;
import brakewright.limit.PackTerms;
import brakewright.operation.HardPull;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Input;
import brakewright.spec.Relaxation;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;

/** How soon the protection opens once a hard pull has begun. */
final class WorkingHardPull {

    private static final String NOTHING_OPENS =
            "Nothing opens in a hard pull: what is drawn passes no trip of the protection that is"
                    + " told, or not for as long as it waits.";

    private final Build build;
    private final HardPull.Opened opened;
    private final PackModel pack;
    private final GroupTerms group;
    private final double charge;
    private final Steps steps = new Steps();
    private final TripSteps trip;

    private WorkingHardPull(Worksheet sheet, HardPull.Opened opened) {
        this.build = sheet.build();
        this.opened = opened;
        BatteryModel battery = new BatteryModel(build.battery());
        this.pack = battery.packs().get(opened.place());
        this.group = new GroupTerms(pack, WorstGroup.End.EMPTIEST);
        this.charge = battery.chargeOf(opened.place(), opened.charge());
        this.trip = new TripSteps(steps, which(), opened.isDelayTypical());
    }

    static WorkingOutcome of(Worksheet sheet) {
        List<HardPull.Opened> opened = sheet.hardPulls();
        return opened.isEmpty()
                ? new WorkingMissing(ResultId.HARD_PULL_TRIP, NOTHING_OPENS)
                : new WorkingHardPull(sheet, opened.get(0)).working();
    }

    private WorkingOutcome working() {
        Term whole =
                searched("s", "charge state at which it is soonest", opened.charge(), Unit.RATIO);
        Term current = current();
        boolean isVoltage = opened.opening() == HardPull.Opening.UNDERVOLTAGE_TRIP;
        List<Term> times = new ArrayList<>();
        if (isVoltage) {
            Term multiple = multiple(whole, current);
            if (opened.passedAfter() > 0.0) {
                times.add(time(multiple));
            } else {
                trip.passedAtOnce();
            }
        } else {
            double permitted = pack.pack().protection().dischargeTrip().orElseThrow();
            steps.add(
                    which(),
                    computed(
                            "I_x",
                            "beyond the discharge trip",
                            opened.current() - permitted,
                            Unit.AMPERE),
                    current.symbol() + " − I_r",
                    "a current trip is passed as soon as the current is beyond it",
                    List.of(current, given(Input.PROTECTION_DISCHARGE_TRIP, permitted)));
            if (opened.passedAfter() > 0.0) {
                times.add(
                        searched("t_v", "trip is passed after", opened.passedAfter(), Unit.SECOND));
            }
        }
        times.add(
                trip.delay(
                        isVoltage
                                ? Input.PROTECTION_UNDERVOLTAGE_TRIP_DELAY
                                : Input.PROTECTION_DISCHARGE_TRIP_DELAY,
                        opened.delay()));
        trip.opens(
                opened.after(),
                times,
                "Counted from when the set draw began, at the charge in use at which it is soonest;"
                        + " the current is the one that flows as the trip is passed.",
                opened.opening().recovery());
        return Working.of(
                ResultId.HARD_PULL_TRIP,
                "How soon the protection opens in a pull at the set draw that lasts as long as the"
                        + " hardest in use: the vehicle cuts dead, and the electric brake goes with it.",
                List.of(
                        whole,
                        given(Input.PACK_TEMPERATURE, opened.cellsC()),
                        given(Input.USE_HARD_PULL, build.use().effort().hardPull())),
                steps);
    }

    private WhichPack which() {
        return build.battery().which(opened.place());
    }

    private Term current() {
        Term whole =
                searched("I_p", "drawn then, with idle power", opened.packCurrent(), Unit.AMPERE);
        return build.battery().isOnePack()
                ? whole
                : trip.share(whole, "of that, out of this pack", opened.current());
    }

    /** What of the pulse resistance must be there for the voltage to fall to the trip. */
    private Term multiple(Term whole, Term current) {
        steps.add(
                group.chargeAt(
                        build.battery().isOnePack()
                                ? whole
                                : modelled(
                                        "s_p", "charge state of this pack", charge, Unit.RATIO)));
        Term rest = group.openCircuitVoltage(charge);
        List<Term> terms = new ArrayList<>();
        terms.add(PackTerms.parallel(pack));
        terms.add(
                given(
                        Input.PROTECTION_UNDERVOLTAGE_TRIP,
                        pack.pack().protection().cellUndervoltageTrip().orElseThrow()));
        terms.add(rest);
        terms.add(current);
        terms.addAll(group.resistance(charge, opened.cellsC()));
        return steps.add(
                which(),
                computed("q_r", "resistance needed, of a pulse's", opened.multiple(), Unit.RATIO),
                "P·("
                        + rest.symbol()
                        + " − u_trip)/("
                        + current.symbol()
                        + "·"
                        + group.resistanceFormula(charge, opened.cellsC(), "")
                        + ")",
                "Ohm's law",
                terms);
    }

    private Term time(Term multiple) {
        Relaxation relaxation = pack.pack().cell().relaxation();
        Term pulse = constant("t_10", "length of the pulse", Cell.PULSE, Unit.SECOND);
        boolean isWithinPulse = opened.multiple() <= 1.0;
        List<Term> terms =
                isWithinPulse
                        ? List.of(
                                multiple,
                                given(Input.CELL_OHMIC_SHARE, relaxation.onset().ohmicShare()),
                                given(Input.CELL_ONSET_TIME, relaxation.onset().timeConstant()),
                                pulse)
                        : List.of(
                                multiple,
                                given(
                                        Input.CELL_SUSTAINED_RISE,
                                        group.rise(charge, opened.cellsC())),
                                given(Input.CELL_RELAXATION_TIME, relaxation.timeConstant()),
                                pulse);
        return steps.add(
                which(),
                computed("t_v", "trip is passed after", opened.passedAfter(), Unit.SECOND),
                isWithinPulse
                        ? "min(t_10, −τ_f·ln(1 − (q_r − k)/(1 − k)·(1 − exp(−t_10/τ_f))))"
                        : "t_10 − τ·ln(1 − (q_r − 1)/x_r)",
                "equivalent circuit of two resistances with capacitors, e.g. Plett, Battery"
                        + " Management Systems 1 (2015), ch. 2",
                terms);
    }
}

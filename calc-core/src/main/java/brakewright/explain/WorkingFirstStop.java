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
import brakewright.operation.FirstStop;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Input;
import brakewright.spec.Onset;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;

/** How soon the protection opens once the current of the first stop has begun. */
final class WorkingFirstStop {

    private static final String NOTHING_OPENS =
            "Nothing opens in the first stop after a full charge: what it sends back passes no trip"
                    + " of the protection that is told.";

    private final Build build;
    private final FirstStop stop;
    private final FirstStop.Passed passed;
    private final PackModel pack;
    private final Steps steps = new Steps();
    private final TripSteps trip;

    private WorkingFirstStop(Worksheet sheet, FirstStop stop) {
        this.build = sheet.build();
        this.stop = stop;
        this.passed = stop.passed().orElseThrow();
        this.pack = new BatteryModel(build.battery()).into().packs().get(passed.place());
        this.trip = new TripSteps(steps, which(), stop.isDelayTypical());
    }

    static WorkingOutcome of(Worksheet sheet) {
        FirstStop stop = sheet.firstStops().get(0);
        return stop.passed().isEmpty()
                ? new WorkingMissing(ResultId.FIRST_STOP_TRIP, NOTHING_OPENS)
                : new WorkingFirstStop(sheet, stop).working();
    }

    private WorkingOutcome working() {
        Term current = current();
        boolean isVoltage = stop.opening() == FirstStop.Opening.OVERVOLTAGE_TRIP;
        List<Term> times = new ArrayList<>();
        if (isVoltage) {
            Term share = share(current);
            if (passed.after() > 0.0) {
                times.add(time(share));
            } else {
                trip.passedAtOnce();
            }
        } else {
            steps.add(
                    which(),
                    computed("I_x", "beyond the charge trip", beyond(), Unit.AMPERE),
                    current.symbol() + " − I_r",
                    "a current trip is passed at once",
                    List.of(current, given(Input.PROTECTION_CHARGE_TRIP, trip())));
        }
        times.add(
                trip.delay(
                        isVoltage
                                ? Input.PROTECTION_OVERVOLTAGE_TRIP_DELAY
                                : Input.PROTECTION_CHARGE_TRIP_DELAY,
                        passed.delay()));
        trip.opens(
                stop.opensAfter(),
                times,
                "Counted from when that current began. The current is held at what it is at the"
                        + " beginning of the stop, so that nothing opens later than is told.",
                stop.opening().recovery());
        return Working.of(
                ResultId.FIRST_STOP_TRIP,
                "How soon the protection opens in the first stop with the fullest pack in use, from"
                        + " the highest speed, once the current of the settled brake has begun.",
                List.of(
                        WorkingPack.charge(build, true),
                        given(Input.PACK_TEMPERATURE, stop.cellsC())),
                steps);
    }

    private WhichPack which() {
        return build.battery().which(passed.place());
    }

    private double trip() {
        return pack.pack().protection().chargeTrip().orElseThrow();
    }

    private double beyond() {
        return passed.current() - trip();
    }

    private Term current() {
        Term whole =
                searched("I_b", "most that this stop sends back", stop.packCurrent(), Unit.AMPERE);
        return build.battery().isOnePack()
                ? whole
                : trip.share(whole, "of that, into this pack", passed.current());
    }

    /** What of the pulse resistance must be there for the voltage to reach the trip. */
    private Term share(Term current) {
        GroupTerms group = new GroupTerms(pack, WorstGroup.End.FULLEST);
        double charge = new BatteryModel(build.battery()).chargeOf(passed.place(), stop.charge());
        steps.add(
                group.chargeAt(
                        build.battery().isOnePack()
                                ? WorkingPack.charge(build, true)
                                : modelled(
                                        "s_p", "charge state of this pack", charge, Unit.RATIO)));
        Term rest = group.openCircuitVoltage(charge);
        List<Term> terms = new ArrayList<>();
        terms.add(PackTerms.parallel(pack));
        terms.add(
                given(
                        Input.PROTECTION_OVERVOLTAGE_TRIP,
                        pack.pack().protection().cellOvervoltageTrip().orElseThrow()));
        terms.add(rest);
        terms.add(current);
        terms.addAll(group.resistance(charge, stop.cellsC()));
        return steps.add(
                which(),
                computed("q_r", "resistance needed, of a pulse's", passed.share(), Unit.RATIO),
                "min(1, P·(u_trip − "
                        + rest.symbol()
                        + ")/("
                        + current.symbol()
                        + "·"
                        + group.resistanceFormula(charge, stop.cellsC(), "")
                        + "))",
                "Ohm's law",
                terms);
    }

    private Term time(Term share) {
        Onset onset = pack.pack().cell().relaxation().onset();
        return steps.add(
                which(),
                computed("t_v", "trip is passed after", passed.after(), Unit.SECOND),
                "min(t_10, −τ_f·ln(1 − (q_r − k)/(1 − k)·(1 − exp(−t_10/τ_f))))",
                "first-order equivalent circuit, e.g. Plett, Battery Management Systems 1 (2015),"
                        + " ch. 2",
                List.of(
                        share,
                        given(Input.CELL_OHMIC_SHARE, onset.ohmicShare()),
                        given(Input.CELL_ONSET_TIME, onset.timeConstant()),
                        constant("t_10", "length of the pulse", Cell.PULSE, Unit.SECOND)));
    }
}

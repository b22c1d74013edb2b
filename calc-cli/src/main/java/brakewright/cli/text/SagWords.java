package brakewright.cli.text;

import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.formula.Term;
import brakewright.limit.ConstraintId;
import brakewright.limit.TaperLimit;
import brakewright.operation.HardPull;
import brakewright.operation.Recovery;
import brakewright.operation.Sag;
import brakewright.spec.Input;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.worksheet.SagSheet;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** Says what a falling voltage meets, and why the low-voltage taper lies where it does. */
final class SagWords {

    private final Worksheet sheet;
    private final SagSheet sag;
    private final Page page;

    SagWords(Worksheet sheet, SagSheet sag, Page page) {
        this.sheet = sheet;
        this.sag = sag;
        this.page = page;
    }

    /** The temperature of the cells, and how long is drawn. */
    static String name(Sag.Draw drawn) {
        return Numbers.nearest(drawn.cellsC(), 0)
                + " °C, "
                + (Double.isInfinite(drawn.seconds())
                        ? "sustained"
                        : Numbers.nearest(drawn.seconds(), 0) + " s");
    }

    /** Adds a row for each event: the charge at which it is met. */
    void meetings(List<Sag.Case> cases, boolean all) {
        for (Sag.Event event : Sag.Event.values()) {
            boolean met = cases.stream().anyMatch(each -> each.charge(event).isPresent());
            if (isKnown(event) && (all || met)) {
                page.line(SagTable.row(label(event), cases, each -> at(each, event) + "   "));
            }
        }
    }

    void print() {
        List<Sag.Case> set = sag.cases().stream().filter(each -> each.draw().isSet()).toList();
        boolean met = set.stream().anyMatch(each -> each.first().isPresent());
        if (!met) {
            page.paragraph("", 2, "With the draw set, nothing of this is met in use.");
        }
        for (int pulse = 0; met && pulse + 1 < set.size(); pulse += 2) {
            page.paragraph("", 2, first(set.get(pulse), set.get(pulse + 1)));
        }
        pulls();
        unknown();
        taper();
    }

    /** What opens soonest in a hard pull, where a trip is told. */
    private void pulls() {
        List<HardPull.Opened> pulls = sheet.hardPulls();
        String lasts = Numbers.time(sheet.build().use().effort().hardPull());
        if (pulls.isEmpty() && withTrip() > 0) {
            page.paragraph("", 2, "In a pull of " + lasts + " no trip that is told opens.");
        }
        for (HardPull.Opened opened : pulls) {
            page.paragraph(
                    "",
                    2,
                    "In a pull of "
                            + lasts
                            + ", cells at "
                            + Numbers.nearest(opened.cellsC(), 0)
                            + " °C, the protection's "
                            + (opened.opening() == HardPull.Opening.DISCHARGE_TRIP
                                    ? "discharge trip"
                                    : "under-voltage trip")
                            + (sheet.build().battery().isOnePack()
                                    ? ""
                                    : " of pack " + (opened.place() + 1))
                            + " opens soonest at "
                            + Numbers.percent(opened.charge())
                            + " charge: "
                            + (opened.isDelayTypical() ? "typically " : "")
                            + "after "
                            + Numbers.time(opened.after())
                            + ". Drive and electric brake are gone then, "
                            + (opened.opening().recovery() == Recovery.CHARGER
                                    ? "typically until a charger is connected."
                                    : "typically until the load is off."));
        }
    }

    /** Met at the latest there: rounded up. */
    private String at(Sag.Case drawn, Sag.Event event) {
        OptionalDouble charge = drawn.charge(event);
        if (charge.isPresent()) {
            return Numbers.up(100.0 * charge.getAsDouble(), 1) + " %";
        }
        return event == Sag.Event.CELL_FLOOR && sag.isKeptByTaper(drawn.draw())
                ? "not met (taper)"
                : "not met";
    }

    private static String label(Sag.Event event) {
        return switch (event) {
            case TAPER_BEGINS -> "taper begins";
            case CELL_FLOOR -> "cell at floor";
            case PROTECTION_TRIP -> "trip opens";
            case TAPER_ENDS -> "taper ends";
        };
    }

    /** What a sustained pull and a pulse at one temperature meet first. */
    private String first(Sag.Case pulse, Sag.Case sustained) {
        return "With the cells at "
                + Numbers.nearest(sustained.draw().cellsC(), 0)
                + " °C, a pulse of "
                + Numbers.nearest(pulse.draw().seconds(), 0)
                + " s "
                + meets(pulse.first())
                + "; a sustained draw "
                + meets(sustained.first())
                + ".";
    }

    private String meets(Optional<Sag.Meeting> first) {
        if (first.isEmpty()) {
            return "meets nothing";
        }
        double charge = first.get().charge();
        String what =
                switch (first.get().event()) {
                    case TAPER_BEGINS -> "the taper's beginning";
                    case CELL_FLOOR -> "the cells' lowest voltage";
                    case PROTECTION_TRIP -> "the protection's trip";
                    case TAPER_ENDS -> "the taper's end";
                };
        return "first meets "
                + what
                + (charge >= sheet.build().use().chargeFrom()
                        ? " at once"
                        : " at " + Numbers.up(100.0 * charge, 1) + " % charge");
    }

    private boolean isKnown(Sag.Event event) {
        return switch (event) {
            case CELL_FLOOR -> true;
            case PROTECTION_TRIP -> withTrip() > 0;
            case TAPER_BEGINS, TAPER_ENDS -> sheet.inEffect().lowVoltageTaper().isPresent();
        };
    }

    private long withTrip() {
        return protections(each -> each.cellUndervoltageTrip().isPresent());
    }

    private long protections(Predicate<Protection> which) {
        return sheet.build().battery().packs().stream().map(Pack::protection).filter(which).count();
    }

    private void unknown() {
        if (sheet.inEffect().lowVoltageTaper().isEmpty()) {
            page.paragraph("", 2, "No low-voltage taper is set: nothing fades the draw in time.");
        }
        int packs = sheet.build().battery().packs().size();
        if (protections(Protection::isBypassed) > 0) {
            page.paragraph(
                    "",
                    2,
                    "No trip opens "
                            + (sheet.build().battery().isGuarded() ? "in every pack" : "at all")
                            + " while riding: the protection is on the charge lead alone.");
        }
        if (withTrip() + protections(Protection::isBypassed) < packs) {
            page.paragraph(
                    "",
                    2,
                    "not computed: where the protection"
                            + (packs == 1 ? "" : " of every pack")
                            + " disconnects, for pack.protection.cell_undervoltage_trip is not"
                            + " given");
        }
    }

    private void taper() {
        TaperLimit limit = sheet.permitted().lowVoltageTaper();
        if (limit.value().isEmpty()) {
            return;
        }
        String cause =
                limit.binding().decisive() == Input.CELL_TAPER_FLOOR
                        ? "the usual cut-off of such cells, since their maker's lowest voltage leaves"
                                + " nothing in them and no protection is told that opens before"
                        : limit.binding().id() == ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP
                                ? LimitWords.of(limit.binding().id()) + " with its margin"
                                : LimitWords.of(limit.binding().id());
        page.paragraph(
                "",
                2,
                "Why a taper from "
                        + Numbers.up(limit.value().get().begins(), 1)
                        + " to "
                        + Numbers.up(limit.value().get().ends(), 1)
                        + " V is recommended: it ends at "
                        + cause
                        + ", so that the drive has faded before anything cuts it. Its band"
                        + " must be at least the draw times the resistance of the coldest, emptiest pack in use"
                        + band(limit)
                        + ". As the draw fades the voltage recovers, which lets more flow again;"
                        + " in a narrower band each step is greater than the last, and the power"
                        + " surges."
                        + (sag.isTaperBeyondFull()
                                ? " Here that begins above the voltage of the fullest pack: draw less"
                                        + " instead, which needs a narrower band."
                                : ""));
    }

    private static String band(TaperLimit limit) {
        List<String> factors = new ArrayList<>();
        for (Term term : limit.band().derivation().terms()) {
            factors.add(term.unit().behind(Numbers.significant(term.value())));
        }
        return " ("
                + String.join(" times ", factors)
                + ", that is "
                + Numbers.up(limit.band().limit(), 1)
                + " V)";
    }
}

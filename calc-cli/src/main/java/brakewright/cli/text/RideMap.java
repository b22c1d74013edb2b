package brakewright.cli.text;

import brakewright.braking.StopOutcome;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.worksheet.BrakeRow;
import brakewright.worksheet.Fading;
import brakewright.worksheet.RiddenCharges;
import brakewright.worksheet.RiddenStop;
import brakewright.worksheet.SettingsInEffect;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Locale;

/** The brake at the charges at which one rides: what it sends into the pack, and how it stops. */
final class RideMap {

    private static final int COLUMNS = 6;

    private final Showing showing;
    private final Worksheet sheet;
    private final UnitSystem units;
    private final Page page;
    private final SettingsInEffect set;
    private final RiddenCharges ridden;
    private final boolean isNarrow;

    RideMap(Showing showing) {
        this.showing = showing;
        this.sheet = showing.sheet();
        this.units = showing.units();
        this.page = showing.page();
        this.set = sheet.inEffect();
        this.ridden = sheet.ridden();
        this.isNarrow = showing.ink().isNarrow();
    }

    void print(Wording wording) {
        page.line(showing.ink().heading("The brake where you ride"));
        page.note(
                (isNarrow ? "Into the pack [A] by " + units.speedUnit() : "Into the pack [A]")
                        + " at "
                        + Numbers.nearest(set.motorBrake(), 1)
                        + " A per motor, cells at "
                        + Numbers.nearest(sheet.build().battery().temperatureC(), 0)
                        + " °C. Stop: from "
                        + units.speedText(set.topSpeed())
                        + ", dry, nothing opens.");
        double[] speeds = ShownSpeeds.upTo(units, set.topSpeed(), COLUMNS);
        StringBuilder head =
                new StringBuilder(String.format(Locale.ROOT, "  %6s %9s |", "charge", "may take"));
        for (double speed : speeds) {
            head.append(
                    String.format(
                            Locale.ROOT, "%7s", ShownSpeeds.head(units, speed, set.topSpeed())));
        }
        page.line(
                head
                        + (isNarrow
                                ? String.format(Locale.ROOT, " |%9s  %10s", "stop", "entered")
                                : String.format(
                                        Locale.ROOT,
                                        " %-5s|%9s  %10s",
                                        units.speedUnit(),
                                        "stop",
                                        "as entered")));
        List<BrakeRow> rows = sheet.brakeAt(ridden.mapped(), speeds);
        List<RiddenStop> now = sheet.riddenStops();
        List<RiddenStop> entered = showing.asked().stopsEntered();
        for (int i = 0; i < rows.size(); i++) {
            page.line(
                    BrakeTable.row(rows.get(i), " ", 6)
                            + String.format(
                                    Locale.ROOT,
                                    isNarrow ? " |%9s  %10s" : "      |%9s  %10s",
                                    distance(now.get(i)),
                                    distance(entered.get(i))));
        }
        page.note(
                isNarrow
                        ? "! more than it may take  ~ held back by limit or taper  - drawn"
                        : "!  more than the pack may take  ~  held back by pack limit or taper  -"
                                + "  drawn");
        sheet.fading()
                .ifPresent(
                        fading ->
                                page.note(
                                        wording.isTerse() ? terse(fading) : told(fading, wording)));
    }

    private String distance(RiddenStop stop) {
        return stop.outcome() instanceof StopOutcome.Stopped stopped
                ? units.lengthText(stopped.distance())
                : "none";
    }

    private String terse(Fading fading) {
        return (fading.speed() > 0.0
                        ? "Above " + units.speedDown(fading.speed()) + " at "
                        : "At any speed and ")
                + Numbers.percent(fading.charge())
                + " more brake current is useless: "
                + (fading.isHeldByTaper() ? "taper." : "pack limit.");
    }

    private String told(Fading fading, Wording wording) {
        return (fading.speed() > 0.0
                        ? "Above "
                                + units.speedDown(fading.speed())
                                + " at "
                                + Numbers.percent(fading.charge())
                                + " charge "
                        : "At " + Numbers.percent(fading.charge()) + " charge and any speed ")
                + (fading.isHeldByTaper() ? "the high-voltage taper" : "the pack limit")
                + (wording.isTight()
                        ? " decides: more brake current buys nothing."
                        : " decides how hard it brakes: a higher motor brake current buys nothing"
                                + " there.");
    }
}

package brakewright.cli.text;

import brakewright.braking.StopOutcome;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.operation.FirstStop;
import brakewright.spec.Build;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.CheckedStop;
import brakewright.worksheet.LeftBraking;
import java.util.List;
import java.util.Optional;

/** How the vehicle stops: dry and wet, first after a full charge, and where the pack refuses. */
final class CheckStops {

    private static final String ROW = "  %-24s %13s %13s %13s %13s %15s";

    private final CheckSheet check;
    private final UnitSystem units;
    private final CheckRows rows;
    private final Page page;
    private final Ink ink;
    private final Build build;

    CheckStops(CheckSheet check, UnitSystem units, CheckRows rows, Page page, Ink ink) {
        this.check = check;
        this.units = units;
        this.rows = rows;
        this.page = page;
        this.ink = ink;
        this.build = check.proposed().build();
    }

    void printDistances() {
        rows.heading(
                "Stopping distance at "
                        + Numbers.percent(build.use().chargeFrom())
                        + " charge, level road");
        line("", "dry,", "dry,", "wet,", "wet,", "reaction");
        line("", "present", "proposed", "present", "proposed", "adds");
        for (CheckedStop stop : check.stops()) {
            line(
                    "from " + units.speedText(stop.from()),
                    told(stop.dry().present()),
                    told(stop.dry().proposed()),
                    told(stop.wet().present()),
                    told(stop.wet().proposed()),
                    units.lengthText(stop.reaction()));
        }
    }

    private String told(Optional<StopOutcome> outcome) {
        return outcome.map(this::distance).orElse("-");
    }

    private String distance(StopOutcome outcome) {
        return outcome instanceof StopOutcome.Stopped stopped
                ? units.lengthText(stopped.distance())
                : "does not stop";
    }

    private void line(String... cells) {
        Object[] settled = new Object[cells.length];
        for (int i = 0; i < cells.length; i++) {
            settled[i] = ink.settle(cells[i]);
        }
        page.row(ROW, settled);
    }

    void printFirst() {
        rows.heading("First stop after a full charge");
        rows.row("", "present", "proposed", "may take");
        for (int i = 0; i < check.proposed().firstStops().size(); i++) {
            FirstStop before = check.present().firstStops().get(i);
            FirstStop after = check.proposed().firstStops().get(i);
            rows.row(
                    "into the pack, cells at " + Numbers.nearest(after.cellsC(), 0) + " °C",
                    CheckRows.flow(before.packCurrent(), before.isExceeded()),
                    CheckRows.flow(after.packCurrent(), after.isExceeded()),
                    Numbers.down(after.mayTake(), 1) + " A");
            rows.row("  what opens first", opening(before), opening(after), "");
            if (before.opened().isPresent() || after.opened().isPresent()) {
                rows.row("  stop with it opened", opened(before), opened(after), "");
            }
            rows.row(
                    "  stop if nothing opens",
                    distance(before.outcome()),
                    distance(after.outcome()),
                    "");
        }
    }

    private String opened(FirstStop stop) {
        return stop.opened().map(opened -> distance(opened.outcome())).orElse("-");
    }

    private static String opening(FirstStop stop) {
        return switch (stop.opening()) {
            case NOTHING -> "nothing";
            case CHARGE_TRIP -> "charge trip";
            case OVERVOLTAGE_TRIP -> "over-voltage";
        };
    }

    void printLeft() {
        rows.heading("What is left where the pack refuses");
        page.note("stop from the highest speed, level dry road, and its mean deceleration");
        rows.row("", "present", "proposed", "may take");
        List<LeftBraking> before = check.present().leftBraking();
        List<LeftBraking> after = check.proposed().leftBraking();
        for (int i = 0; i < after.size(); i++) {
            LeftBraking left = after.get(i);
            rows.row(
                    refusal(left),
                    distance(before.get(i).outcome()),
                    distance(left.outcome()),
                    left.refusal() == LeftBraking.Refusal.TRIPPED
                            ? "nothing"
                            : Numbers.down(left.mayTake(), 1) + " A");
            rows.row("  mean", mean(before.get(i).outcome()), mean(left.outcome()), "");
        }
    }

    private static String refusal(LeftBraking left) {
        return switch (left.refusal()) {
            case FULL -> "full: at " + Numbers.percent(left.charge()) + ", held to what it takes";
            case COLD ->
                    "cold: cells at "
                            + Numbers.nearest(left.cellsC(), 0)
                            + " °C, held to what it takes";
            case TRIPPED -> "tripped: no electric brake at all";
        };
    }

    private static String mean(StopOutcome outcome) {
        return outcome instanceof StopOutcome.Stopped stopped
                ? Numbers.nearest(stopped.meanDeceleration(), 2) + " m/s²"
                : "";
    }
}

package brakewright.cli.text;

import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.worksheet.PackRow;
import brakewright.worksheet.TimedAnswer;
import brakewright.worksheet.Worksheet;

/** The pack over its charge. */
final class PackTable {

    private static final String ROW = "  %6s %8s %8s %10s  %-20s %10s  %-20s";

    private final Worksheet sheet;
    private final Page page;

    PackTable(Worksheet sheet, Page page) {
        this.sheet = sheet;
        this.page = page;
    }

    void print(Ink ink) {
        page.line(ink.heading("The pack over its charge"));
        page.note(
                "cells at "
                        + Numbers.nearest(sheet.build().battery().temperatureC(), 0)
                        + " °C; loaded: at the pack discharge current set, after "
                        + lasts(TimedAnswer.LOADED)
                        + "; may give for "
                        + lasts(TimedAnswer.MAY_GIVE)
                        + ", may take for as long as braking lasts, "
                        + lasts(TimedAnswer.MAY_TAKE)
                        + "; currents of all controllers together");
        String holder = ink.isNarrow() ? "held by" : "held down by";
        page.row(
                ROW,
                "charge",
                "at rest",
                "loaded",
                ink.isNarrow() ? "gives" : "may give",
                holder,
                ink.isNarrow() ? "takes" : "may take",
                holder);
        for (PackRow row : sheet.packAt(charges())) {
            print(row);
        }
    }

    private String lasts(TimedAnswer answer) {
        double seconds = answer.horizon().seconds(sheet);
        return Double.isInfinite(seconds) ? "without end" : Numbers.time(seconds);
    }

    /** Every 10 % in use and both ends, and near full every 5 %. */
    private double[] charges() {
        return ShownCharges.with(
                sheet.build().use(), 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.95);
    }

    private void print(PackRow row) {
        page.row(
                ROW,
                Numbers.percent(row.charge()),
                Numbers.nearest(row.openCircuitVoltage(), 1) + " V",
                row.loadedVoltage().isPresent()
                        ? Numbers.nearest(row.loadedVoltage().getAsDouble(), 1) + " V"
                        : "gone",
                Numbers.down(row.mayGive(), 1) + " A",
                LimitWords.brief(row.giveBoundBy()),
                Numbers.down(row.mayTake(), 1) + " A",
                LimitWords.brief(row.takeBoundBy()));
    }
}

package brakewright.cli.text;

import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.spec.Use;
import brakewright.worksheet.PackRow;
import brakewright.worksheet.Worksheet;
import java.util.Locale;

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
        page.line(
                "  cells at "
                        + Numbers.nearest(sheet.build().battery().temperatureC(), 0)
                        + " °C; loaded: at the pack discharge current set; currents of all"
                        + " controllers together");
        page.line(
                String.format(
                        Locale.ROOT,
                        ROW,
                        "charge",
                        "at rest",
                        "loaded",
                        "may give",
                        "held down by",
                        "may take",
                        "held down by"));
        for (int i = sheet.pack().size() - 1; i >= 0; i--) {
            PackRow row = sheet.pack().get(i);
            if (isShown(row.charge())) {
                print(row);
            }
        }
    }

    private void print(PackRow row) {
        page.line(
                String.format(
                        Locale.ROOT,
                        ROW,
                        Numbers.percent(row.charge()),
                        Numbers.nearest(row.openCircuitVoltage(), 1) + " V",
                        row.loadedVoltage().isPresent()
                                ? Numbers.nearest(row.loadedVoltage().getAsDouble(), 1) + " V"
                                : "gone",
                        Numbers.down(row.mayGive(), 1) + " A",
                        LimitWords.brief(row.giveBoundBy()),
                        Numbers.down(row.mayTake(), 1) + " A",
                        LimitWords.brief(row.takeBoundBy())));
    }

    /** Every 10 % in use, and the last 10 % below full in steps of 5 %. */
    private boolean isShown(double charge) {
        Use use = sheet.build().use();
        long percent = Math.round(100.0 * charge);
        return charge >= use.chargeTo() - 1e-9
                && charge <= use.chargeFrom() + 1e-9
                && (percent % 10 == 0 || percent >= 85);
    }
}

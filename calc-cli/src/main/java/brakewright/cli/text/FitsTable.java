package brakewright.cli.text;

import brakewright.cli.words.FitWords;
import brakewright.cli.words.Numbers;
import brakewright.fitting.Fit;
import brakewright.fitting.Fits;
import brakewright.fitting.Fitted;
import brakewright.fitting.WarmResistance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes what a ride says of its vehicle, and the lines of a build file that say so. */
final class FitsTable {

    private static final int LABEL = 26;

    private final Page page;
    private final Ink ink;

    FitsTable(Page page, Ink ink) {
        this.page = page;
        this.ink = ink;
    }

    void write(Fits fits) {
        page.line(ink.heading("what the ride says of the vehicle"));
        for (Fit fit : fits.all()) {
            page.paragraph("  " + FitWords.name(fit.what()), LABEL, told(fit));
            if (fit.what() == Fitted.PULL_RESISTANCE) {
                fits.byWarmth().forEach(this::warm);
            }
        }
        List<Fit.Found> lines =
                fits.preferred().stream()
                        .filter(fit -> FitWords.key(fit.what()).isPresent())
                        .toList();
        if (!lines.isEmpty()) {
            page.blank();
            page.note(
                    "For the build file: each line below the heading that stands there already, in"
                            + " place of its own key; no heading may stand twice.");
            lines(lines);
        }
        page.note(
                "All else is taken as described: a wrong mass or efficiency is put down to tyres"
                        + " and air. A shown charge that is counted finds the capacity it counts"
                        + " with.");
        page.blank();
    }

    private void warm(WarmResistance each) {
        page.paragraph(
                "    at "
                        + Numbers.nearest(each.fromC(), 0)
                        + " to "
                        + Numbers.nearest(each.toC(), 0)
                        + " °C",
                LABEL,
                FitWords.told(each.found()) + ", from " + each.found().events() + " events");
    }

    /** Keys stand below the name of their table. */
    private void lines(List<Fit.Found> fits) {
        Map<String, List<String>> tables = new TreeMap<>();
        for (Fit.Found fit : fits) {
            String key = FitWords.key(fit.what()).orElseThrow();
            int dot = key.lastIndexOf('.');
            tables.computeIfAbsent(key.substring(0, dot), unused -> new ArrayList<>())
                    .add(key.substring(dot + 1) + " = " + FitWords.literal(fit));
        }
        tables.forEach(
                (table, own) -> {
                    page.copied("[" + table + "]");
                    own.forEach(each -> page.copied(ink.settle(each)));
                });
    }

    private static String told(Fit fit) {
        if (fit instanceof Fit.Found found) {
            return FitWords.told(found)
                    + ", from "
                    + found.events()
                    + " events"
                    + condition(found.what());
        }
        return "not told: " + ((Fit.Refused) fit).reason();
    }

    private static String condition(Fitted what) {
        return switch (what) {
            case JOINT_RESISTANCE -> ", if its cells resist as described";
            case COASTING_ROLLING, COASTING_DRAG -> ", if nobody braked meanwhile";
            case WHEEL_DIAMETER -> ", if the recorder counts with the one described";
            default -> "";
        };
    }
}

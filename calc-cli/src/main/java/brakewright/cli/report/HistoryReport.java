package brakewright.cli.report;

import brakewright.cli.chart.Axis;
import brakewright.cli.chart.Line;
import brakewright.cli.chart.Plot;
import brakewright.cli.chart.Role;
import brakewright.cli.history.History;
import brakewright.cli.history.PastSheet;
import brakewright.cli.history.Watched;
import brakewright.cli.text.Piece;
import brakewright.cli.words.HistoryWords;
import brakewright.cli.words.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Past worksheets as a document. */
public final class HistoryReport {

    private HistoryReport() {}

    /**
     * Makes the document.
     *
     * @param history the worksheets
     * @param pieces what the page of text tells, its title first
     * @param units for speeds and lengths
     * @return a picture where there are several, then what the page tells
     */
    public static Report of(History history, List<Piece> pieces, UnitSystem units) {
        List<PastSheet> sheets = history.sheets();
        List<Piece> headed = new ArrayList<>(pieces);
        headed.set(0, new Piece.Heading("the worksheets"));
        List<Chapter> chapters = new ArrayList<>();
        if (sheets.size() > 1) {
            chapters.add(
                    new Chapter(
                            "The brake from sheet to sheet",
                            List.of(new Block.Picture(brake(sheets, units)))));
        }
        chapters.addAll(Chapters.of(headed));
        return new Report(
                HistoryWords.title(history), "What changed", List.of(), List.of(), chapters);
    }

    private static Plot brake(List<PastSheet> sheets, UnitSystem units) {
        double[] places = new double[sheets.size()];
        double[] weakest = new double[sheets.size()];
        for (int i = 0; i < places.length; i++) {
            places[i] = i + 1.0;
            weakest[i] = number(sheets.get(i));
        }
        HistoryWords words = new HistoryWords(units);
        return new Plot(
                "Where the brake is weakest",
                "From the first sheet to the last it goes from "
                        + told(words, sheets.get(0))
                        + " to "
                        + told(words, sheets.get(sheets.size() - 1))
                        + ".",
                new Axis("sheet", "", 1.0, places.length, Math.max(1.0, places.length / 6)),
                Axis.holding(
                        "deceleration",
                        "m/s²",
                        DoubleStream.concat(DoubleStream.of(0.0), DoubleStream.of(weakest))
                                .toArray()),
                places,
                List.of(new Line("weakest brake", Role.PRESENT, weakest)),
                List.of());
    }

    private static double number(PastSheet sheet) {
        return sheet.values().get(Watched.BRAKE_WEAKEST) instanceof Double number
                ? number
                : Double.NaN;
    }

    private static String told(HistoryWords words, PastSheet sheet) {
        Object value = sheet.values().get(Watched.BRAKE_WEAKEST);
        return value == null ? "unknown" : words.value(Watched.BRAKE_WEAKEST, value);
    }
}

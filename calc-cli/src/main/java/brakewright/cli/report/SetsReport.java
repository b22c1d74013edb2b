package brakewright.cli.report;

import brakewright.cli.text.Piece;
import brakewright.cli.words.UnitSystem;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Settings side by side as a document: what is compared, or what is proposed. */
public final class SetsReport {

    private SetsReport() {}

    /**
     * Makes the document.
     *
     * @param title what the vehicle is called
     * @param kind what is told of it
     * @param pieces what the page of text tells, its title first
     * @param sheets the settings by their names, the present ones first
     * @param units for speeds and distances
     * @return the table, then pictures of the first of them, then what the page tells besides
     */
    public static Report of(
            String title,
            String kind,
            List<Piece> pieces,
            Map<String, Worksheet> sheets,
            UnitSystem units) {
        List<BrakePictures.Shown> shown = new ArrayList<>();
        sheets.forEach((name, sheet) -> shown.add(new BrakePictures.Shown(name, sheet)));
        BrakePictures brake = new BrakePictures(shown, units);
        List<Piece> headed = new ArrayList<>(pieces);
        headed.set(0, new Piece.Heading("side by side"));
        List<Chapter> told = Chapters.of(headed);
        List<Chapter> chapters = new ArrayList<>();
        chapters.add(told.get(0));
        chapters.add(
                new Chapter(
                        "The brake in pictures",
                        List.of(
                                new Block.Picture(brake.deceleration()),
                                new Block.Picture(brake.stops()))));
        chapters.addAll(told.subList(1, told.size()));
        return new Report(title, kind, List.of(), List.of(), chapters);
    }
}

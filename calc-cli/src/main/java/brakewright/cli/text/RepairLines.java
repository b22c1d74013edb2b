package brakewright.cli.text;

import brakewright.recording.Place;
import brakewright.recording.Repair;
import java.util.List;

/** Writes what of a recording was not taken as it stood. */
final class RepairLines {

    private static final int SHOWN = 3;
    private static final int LABEL = 34;

    private RepairLines() {}

    static void write(Page page, Ink ink, List<Repair> repairs) {
        page.line(ink.heading("left out or repaired"));
        if (repairs.isEmpty()) {
            page.note("nothing");
        }
        for (Repair repair : repairs) {
            page.paragraph(
                    "  "
                            + repair.count()
                            + " x "
                            + repair.rule().key()
                            + repair.quantity().map(quantity -> " " + quantity.key()).orElse(""),
                    LABEL,
                    repair.rule().meaning() + ": " + places(repair));
        }
    }

    private static String places(Repair repair) {
        StringBuilder text = new StringBuilder();
        String source = "";
        for (Place place : repair.places().subList(0, Math.min(SHOWN, repair.places().size()))) {
            text.append(text.isEmpty() ? "" : ", ");
            if (!place.source().equals(source)) {
                source = place.source();
                text.append(source).append(' ');
            }
            text.append("line ").append(place.line());
        }
        return text + (repair.count() > SHOWN ? ", ..." : "");
    }
}

package brakewright.cli.text;

import brakewright.cli.recording.ColumnNote;
import brakewright.cli.recording.FileNotes;
import brakewright.cli.recording.Inspection;
import brakewright.cli.recording.Recordings;

/** Writes what the columns of recordings were taken for. */
public final class InspectText {

    private static final int LABEL = 34;

    private final Inspection found;
    private final Ink ink;

    /**
     * Takes what was read.
     *
     * @param found in the files
     * @param ink how the page looks
     */
    public InspectText(Inspection found, Ink ink) {
        this.found = found;
        this.ink = ink;
    }

    /**
     * Returns the page.
     *
     * @return lines of text
     */
    public String text() {
        Page page = new Page(ink);
        for (FileNotes file : found.files()) {
            page.line(file.source());
            page.paragraph(
                    "",
                    2,
                    (file.rows() < 0 ? "rows not read" : file.rows() + " rows")
                            + "; "
                            + file.charset()
                            + "; fields parted by a "
                            + file.separator()
                            + "; decimal "
                            + file.decimalMark());
            for (ColumnNote column : file.columns()) {
                page.paragraph("  " + column.heading(), LABEL, told(column));
            }
            page.blank();
        }
        found.read().ifPresent(read -> readable(page, read));
        return page.text();
    }

    private void readable(Page page, Recordings read) {
        read.sign()
                .ifPresent(
                        sign ->
                                page.line(
                                        "Current: "
                                                + (sign.isOutPositive() ? "positive" : "negative")
                                                + " out of the pack in the files, "
                                                + sign.proof().meaning()
                                                + "."));
        RepairLines.write(page, ink, read.repairs().all());
    }

    private static String told(ColumnNote column) {
        return column.quantity()
                .map(
                        quantity ->
                                quantity.key()
                                        + (column.unit().isEmpty() ? "" : " in " + column.unit())
                                        + ": "
                                        + column.why())
                .orElse("not used: " + column.why());
    }
}

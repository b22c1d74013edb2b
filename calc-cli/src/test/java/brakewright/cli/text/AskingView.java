package brakewright.cli.text;

import brakewright.worksheet.Worksheet;

/** A view as none may be: it asks a model that the sheet was made with. */
public final class AskingView {

    private AskingView() {}

    /**
     * Breaks the rule.
     *
     * @param sheet what should hold the number
     * @return a text
     */
    public static String text(Worksheet sheet) {
        return "" + sheet.operation().topSpeed();
    }
}

package brakewright.cli.text;

import brakewright.spec.Build;
import brakewright.worksheet.Worksheet;

/** A view as none may be: it makes the sheet that it prints. */
public final class MakingView {

    private MakingView() {}

    /**
     * Breaks the rule.
     *
     * @param build the vehicle
     * @return a text
     */
    public static String text(Build build) {
        return "" + Worksheet.of(build).firstStops().size();
    }
}

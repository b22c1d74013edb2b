package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import java.util.OptionalDouble;

/** The rows in which a check puts the present settings beside the proposal. */
final class CheckRows {

    private static final String ROW = "  %-44s %16s %16s %16s";

    private final Page page;
    private final Ink ink;

    CheckRows(Page page, Ink ink) {
        this.page = page;
        this.ink = ink;
    }

    void heading(String text) {
        page.line(ink.heading(text));
    }

    void row(String name, String present, String proposed, String other) {
        page.row(
                ROW,
                ink.settle(name),
                ink.settle(present),
                ink.settle(proposed),
                ink.settle(other));
    }

    /** A pack current, and whether it is more than the pack may take. */
    static String flow(double current, boolean isExceeded) {
        return Numbers.nearest(current, 1) + " A" + (isExceeded ? " over" : "");
    }

    static String amperes(OptionalDouble value) {
        return value.isPresent() ? Numbers.nearest(value.getAsDouble(), 1) + " A" : "not set";
    }
}

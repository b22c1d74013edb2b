package brakewright.cli.text;

import brakewright.cli.words.Cautions;

/** What pages about a ride have in common: head, labelled rows, cautions at the foot. */
final class RidePage {

    private static final int LABEL = 26;

    private final Page page;
    private final Ink ink;

    RidePage(Page page, Ink ink) {
        this.page = page;
        this.ink = ink;
    }

    void begin(String title, String what) {
        page.line(ink.heading(title + ": " + what)).blank();
    }

    void section(String heading) {
        page.line(ink.heading(heading));
    }

    void row(String label, String text) {
        page.paragraph("  " + label, LABEL, text);
    }

    /** Ends the page. */
    String end() {
        page.blank();
        section("cautions");
        page.list(Cautions.brief());
        return page.text();
    }
}

package brakewright.cli.text;

import brakewright.cli.words.Initial;
import brakewright.cli.words.RideWord;

/** Explains a result of a recorded ride. */
public final class RideWordText {

    private final Ink ink;

    /**
     * Prepares the text.
     *
     * @param ink how to put it on the page
     */
    public RideWordText(Ink ink) {
        this.ink = ink;
    }

    /**
     * Writes what a result is.
     *
     * @param word its word
     * @return lines
     */
    public String text(RideWord word) {
        Page page = new Page(ink);
        page.line(ink.heading(word.key().replace('-', ' ')));
        page.paragraph("", 0, Initial.capital(word.meaning()));
        page.paragraph("", 0, word.how());
        page.paragraph("", 0, word.trust());
        return page.text();
    }
}

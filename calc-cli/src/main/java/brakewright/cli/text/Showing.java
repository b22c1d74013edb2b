package brakewright.cli.text;

import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.words.UnitSystem;
import brakewright.worksheet.Worksheet;

/**
 * What a section shows, and where.
 *
 * @param asked the worksheet with its verdicts and doubts
 * @param units for speeds and distances
 * @param ink how to put it on the page
 * @param page to which it is added
 */
record Showing(AskedSheet asked, UnitSystem units, Ink ink, Page page) {

    Worksheet sheet() {
        return asked.sheet();
    }

    /** The same on another page. */
    Showing on(Page other) {
        return new Showing(asked, units, ink, other);
    }
}

package brakewright.tables;

import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * Finds a cell by what is printed on its wrap, with or without its maker, whatever the blanks,
 * dashes and case.
 */
final class CellPrints {

    /** Assumption: our own choice; shorter prints are common to several makers' cells. */
    private static final int SHORTEST = 5;

    private CellPrints() {}

    /**
     * The cells of a print: those whose name ends with it, or is it; none where it is too short.
     */
    static List<CellEntry> find(String print, Collection<CellEntry> cells) {
        String wanted = bare(print);
        if (wanted.length() < SHORTEST) {
            return List.of();
        }
        return cells.stream()
                .filter(
                        cell ->
                                bare(cell.name()).endsWith(wanted)
                                        || bare(cell.id()).equals(wanted))
                .toList();
    }

    /** Letters and digits alone. */
    private static String bare(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }
}

package brakewright.cli;

import brakewright.cli.text.Ink;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/**
 * How wide lines may be: as a number says, or as the terminal does.
 *
 * @param columns empty where the terminal is asked, once something is printed
 */
record Width(OptionalInt columns) {

    /** Where no terminal tells its width. */
    static final Width USUAL = of(Ink.USUAL_COLUMNS);

    private static final int MOST_DIGITS = 4;

    /** So many columns. */
    static Width of(int columns) {
        return new Width(OptionalInt.of(columns));
    }

    /**
     * The width of the terminal.
     *
     * @param told what the environment says of it, which counts more; null where it says nothing
     */
    static Width ofTerminal(@Nullable String told) {
        if (told != null && told.matches("[1-9][0-9]{0," + (MOST_DIGITS - 1) + "}")) {
            return of(Integer.parseInt(told));
        }
        return System.console() == null ? USUAL : new Width(OptionalInt.empty());
    }

    /** Sets the width of help texts, which all other texts follow. */
    void givenTo(CommandLine commandLine) {
        commandLine.setUsageHelpWidth(
                Math.max(Ink.FEWEST_COLUMNS, columns.orElse(Ink.USUAL_COLUMNS)));
        commandLine.setUsageHelpAutoWidth(columns.isEmpty());
    }
}

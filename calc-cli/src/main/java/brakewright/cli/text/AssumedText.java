package brakewright.cli.text;

import brakewright.assembly.Resolved;
import brakewright.assembly.Value;
import brakewright.buildfile.BuildFile;
import brakewright.cli.words.Numbers;
import brakewright.spec.Input;
import java.util.Map;

/** What the build file does not say, and where it was taken from instead. */
final class AssumedText {

    private final BuildFile file;
    private final Ink ink;
    private final Page page;

    AssumedText(Showing showing) {
        this.file = showing.asked().file();
        this.ink = showing.ink();
        this.page = showing.page();
    }

    void print() {
        page.line(ink.heading("Assumed, because the build file does not say"));
        for (Map.Entry<String, Resolved> entry : file.named().entrySet()) {
            Resolved resolved = entry.getValue();
            if (resolved.from() == Resolved.From.ASSUMED) {
                page.row("  %-36s %-20s %s", entry.getKey(), value(resolved), origin(resolved));
            }
        }
        page.paragraph(
                "",
                2,
                "Sources are explained by id in the reference tables, edition "
                        + file.tableVersion()
                        + ".");
    }

    private static String value(Resolved resolved) {
        Input input = resolved.input();
        if (resolved.value() instanceof Value.Number number) {
            return Numbers.significant(number.quantity().value()) + unit(input);
        }
        if (resolved.value() instanceof Value.Pair pair) {
            return Numbers.significant(pair.first())
                    + " to "
                    + Numbers.significant(pair.second())
                    + unit(input);
        }
        if (resolved.value() instanceof Value.Word word) {
            return word.text();
        }
        return "curve";
    }

    /** As the build file spells it. */
    private static String unit(Input input) {
        return switch (input.unit()) {
            case NONE, RATIO -> "";
            default -> " " + input.unit().plain();
        };
    }

    private static String origin(Resolved resolved) {
        if (resolved.kind().isEmpty()) {
            return resolved.note();
        }
        return resolved.source().equals(resolved.kind())
                ? resolved.kind()
                : resolved.kind() + ": " + resolved.source();
    }
}

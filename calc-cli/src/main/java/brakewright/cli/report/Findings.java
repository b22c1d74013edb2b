package brakewright.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Parts what was found by how grave it is. */
final class Findings {

    private Findings() {}

    /** Dangers and warnings. */
    static Chapter grave(Chapter all) {
        return chosen("Dangers and warnings", "None.", all, each -> each == Gravity.BAD);
    }

    /** All else. */
    static Chapter others(Chapter all) {
        return chosen(
                "What else was found", "Nothing else was found.", all, each -> each != Gravity.BAD);
    }

    private static Chapter chosen(
            String heading, String none, Chapter all, Predicate<Gravity> wanted) {
        List<Block.Entry> entries = new ArrayList<>();
        for (Block block : all.blocks()) {
            if (block instanceof Block.Entries found) {
                found.entries().stream()
                        .filter(each -> wanted.test(each.gravity()))
                        .forEach(entries::add);
            }
        }
        return new Chapter(
                heading,
                List.of(
                        entries.isEmpty()
                                ? new Block.Sentences(none)
                                : new Block.Entries(entries)));
    }
}

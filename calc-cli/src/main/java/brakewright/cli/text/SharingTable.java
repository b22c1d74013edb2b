package brakewright.cli.text;

import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.operation.Sharing;
import brakewright.spec.Joining;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;

/** How several packs share the current, how to join them, and what happens when one is lost. */
final class SharingTable {

    private static final String ROW = "  %6s %6s %11s  %-9s %9s %10s %7s  %s";
    private static final int LABEL = 16;

    private final Worksheet sheet;
    private final Page page;

    SharingTable(Worksheet sheet, Page page) {
        this.sheet = sheet;
        this.page = page;
    }

    void print(Ink ink) {
        Sharing sharing = sheet.sharing();
        boolean parallel = sheet.build().battery().joining() == Joining.PARALLEL;
        page.line(ink.heading("The packs, one by one"));
        page.paragraph(
                "",
                2,
                sheet.build().battery().packs().size()
                        + " packs in "
                        + (parallel ? "parallel" : "series")
                        + ", cells at "
                        + Numbers.nearest(sheet.build().battery().temperatureC(), 0)
                        + " °C; the most that driving draws and braking returns");
        page.row(
                ROW,
                "all at",
                "pack",
                "itself at",
                "",
                "current",
                "may carry",
                "use",
                "held down by");
        row(sharing.loads(), true);
        row(sharing.loads(), false);
        sharing.hardest(true).ifPresent(this::first);
        sharing.hardest(false).ifPresent(this::first);
        joints(sharing.joints());
        losses(sharing.losses(), parallel);
    }

    private void row(List<Sharing.Load> loads, boolean draw) {
        for (Sharing.Load load : loads) {
            if (load.isDraw() == draw) {
                page.row(
                        ROW,
                        Numbers.percent(load.charge()),
                        load.pack(),
                        Numbers.percent(load.ownCharge()),
                        draw ? "drawn" : "returned",
                        Numbers.nearest(load.current(), 1) + " A",
                        Numbers.down(load.limit(), 1) + " A",
                        use(load),
                        LimitWords.brief(load.boundBy()));
            }
        }
    }

    private static String use(Sharing.Load load) {
        if (load.limit() > 0.0) {
            return Numbers.up(100.0 * load.use(), 0) + " %";
        }
        return load.current() > 0.0 ? "over" : "none";
    }

    private void first(Sharing.Load load) {
        page.paragraph(
                "",
                2,
                (load.isDraw() ? "In driving, pack " : "In braking, pack ")
                        + load.pack()
                        + (load.current() > load.limit()
                                ? " is furthest beyond its limit: "
                                : " is the first to come to its limit: ")
                        + Numbers.nearest(load.current(), 1)
                        + " A where "
                        + Numbers.down(load.limit(), 1)
                        + " A are permitted, at "
                        + Numbers.percent(load.charge())
                        + " charge ("
                        + LimitWords.of(load.boundBy())
                        + ").");
    }

    /** Of two packs either joint is the same. */
    private void joints(List<Sharing.Joint> joints) {
        for (Sharing.Joint joint : joints.size() == 2 ? joints.subList(0, 1) : joints) {
            page.paragraph(
                    "  joining",
                    LABEL,
                    (joints.size() == 2 ? "Join the packs" : "Join pack " + joint.pack())
                            + " only while the voltages at rest differ by less than "
                            + Numbers.down(joint.difference(), 2)
                            + " V: then no more than "
                            + Numbers.down(joint.permitted(), 1)
                            + " A flow, counted with the least resistance, which is that of the"
                            + " first instant. Between a full and an empty one "
                            + Numbers.up(joint.worst(), 0)
                            + " A would."
                            + told(joint));
        }
    }

    private static String told(Sharing.Joint joint) {
        return joint.current().isPresent()
                ? " At the charges that the file tells, "
                        + Numbers.up(joint.current().getAsDouble(), 1)
                        + " A flow "
                        + (joint.isCharged() ? "into" : "out of")
                        + " pack "
                        + joint.pack()
                        + (joint.isExceeded() ? ": too much." : ".")
                : "";
    }

    private void losses(List<Sharing.Loss> losses, boolean parallel) {
        if (!parallel) {
            if (!losses.isEmpty()) {
                page.paragraph("  one opens", LABEL, "The current of all is interrupted.");
            }
            return;
        }
        for (int pack = 1; pack <= sheet.build().battery().packs().size(); pack++) {
            List<String> both = new ArrayList<>();
            for (Sharing.Loss loss : losses) {
                if (loss.pack() == pack) {
                    both.add((loss.isDraw() ? "driving: " : "braking: ") + consequence(loss));
                }
            }
            page.paragraph(
                    "  pack " + pack + " opens",
                    LABEL,
                    both.isEmpty()
                            ? "Not while riding: its protection is on the charge lead alone."
                            : String.join("; ", both) + ".");
        }
    }

    private static String consequence(Sharing.Loss loss) {
        if (Double.isNaN(loss.greatestUse())) {
            return "not computed, for the trip currents of the others are not given";
        }
        String use =
                Numbers.up(100.0 * loss.greatestUse(), 0)
                        + " % of a trip current (at "
                        + Numbers.percent(loss.charge())
                        + " charge)";
        if (loss.isAllLost()) {
            return "the rest would carry " + use + " and opens too: nothing is left";
        }
        return loss.greatestUse() > 1.0
                ? "one more would carry " + use + " and opens too, but not all"
                : "the rest carries on at up to " + use;
    }
}

package brakewright.cli.text;

import brakewright.cli.buildfile.Tolerated;
import brakewright.cli.words.InputWords;
import brakewright.cli.words.MeasureWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.profile.Distribution;
import brakewright.profile.Quantity;
import brakewright.profile.Tolerances;
import brakewright.profile.Uncertain;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What is not known exactly, what it does to the results, and what to measure first. */
final class ToleranceTable {

    private static final String RESULT = "  %-28s %18s %18s %18s";
    private static final String INFLUENCE = "  %-32s %-28s %17s %17s";

    private final Tolerated tolerated;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;

    ToleranceTable(Tolerated tolerated, UnitSystem units, Ink ink, Page page) {
        this.tolerated = tolerated;
        this.units = units;
        this.ink = ink;
        this.page = page;
    }

    void print() {
        Tolerances tolerances = tolerated.tolerances();
        page.line(ink.heading("What is not known exactly"));
        page.paragraph(
                "",
                2,
                "Each result with its worst and best within the tolerances stated, each at its own"
                        + " corner of them. The verdict is taken at the corner that is worst for it: "
                        + corner(tolerances)
                        + ".");
        page.line(line(RESULT, "", "nominal", "worst", "best"));
        MeasureWords words = new MeasureWords(units);
        for (Tolerances.Spread spread : tolerances.spreads()) {
            Quantity quantity = spread.measure().quantity();
            page.line(
                    line(
                            RESULT,
                            words.label(spread.measure()),
                            words.value(quantity, spread.nominal()),
                            words.value(quantity, spread.worst()),
                            words.value(quantity, spread.best())));
        }
        page.blank();
        page.line(
                line(
                        INFLUENCE,
                        "what moves the verdict most",
                        "from .. to",
                        "worst check",
                        "safe to"));
        for (Tolerances.Influence influence : tolerances.influences()) {
            page.line(influence(words, influence));
        }
        page.paragraph("", 2, advice(tolerances));
        tolerated.distribution().ifPresent(this::cases);
    }

    /** Cells are settled before they are laid out, as plain letters may be longer. */
    private String line(String format, String... cells) {
        Object[] settled = Arrays.stream(cells).map(ink::settle).toArray();
        return String.format(Locale.ROOT, format, settled);
    }

    private String corner(Tolerances tolerances) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < tolerated.places().size(); i++) {
            text.append(i == 0 ? "" : ", ")
                    .append(InputWords.name(tolerated.places().get(i).name()))
                    .append(' ')
                    .append(
                            InputWords.nearest(
                                    tolerated.places().get(i).input(),
                                    tolerances.worst().values().get(i),
                                    units));
        }
        return text.toString();
    }

    private String influence(MeasureWords words, Tolerances.Influence influence) {
        Uncertain input = influence.input();
        String change =
                Numbers.significant(
                        100.0 * (influence.severityAtHigh() - influence.severityAtLow()));
        return line(
                INFLUENCE,
                name(input),
                InputWords.nearest(input.input(), input.low(), units)
                        + " .. "
                        + InputWords.nearest(input.input(), input.high(), units),
                Math.abs(influence.severityAtHigh() - influence.severityAtLow()) < 5e-5
                        ? "no change"
                        : (change.startsWith("-") ? "" : "+") + change + " points",
                words.value(Quantity.SAFE_CHARGE, OptionalDouble.of(influence.safeChargeAtLow()))
                        + " .. "
                        + words.value(
                                Quantity.SAFE_CHARGE,
                                OptionalDouble.of(influence.safeChargeAtHigh())));
    }

    private String name(Uncertain range) {
        for (int i = 0; i < tolerated.places().size(); i++) {
            if (tolerated.tolerances().inputs().get(i).equals(range)) {
                return tolerated.places().get(i).name();
            }
        }
        return range.input().key();
    }

    private String advice(Tolerances tolerances) {
        String deciding =
                tolerances.influences().stream()
                        .filter(Tolerances.Influence::decides)
                        .map(each -> name(each.input()))
                        .collect(Collectors.joining(", "));
        if (!deciding.isEmpty()) {
            return "Measure "
                    + deciding
                    + ": it decides. Known to be nominal, the verdict improves.";
        }
        Tolerances.Influence first = tolerances.influences().get(0);
        return first.weight() < 1e-4
                ? "None of these moves the verdict; better measurements change nothing here."
                : "None of these decides the verdict; "
                        + name(first.input())
                        + " moves it most, so measure that first.";
    }

    private void cases(Distribution distribution) {
        page.paragraph(
                "",
                2,
                "Of "
                        + distribution.points()
                        + " cases spread evenly over the tolerances (seed "
                        + distribution.seed()
                        + "): "
                        + share(distribution.within())
                        + " within limits, "
                        + share(distribution.conditional())
                        + " conditional, "
                        + share(distribution.outside())
                        + " outside.");
    }

    private static String share(double share) {
        return Numbers.nearest(100.0 * share, 1) + " %";
    }
}

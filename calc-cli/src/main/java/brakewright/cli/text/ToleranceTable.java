package brakewright.cli.text;

import brakewright.cli.doubt.Tolerated;
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
    private static final int NAME = 32;
    private static final int RANGE = 28;
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
        tolerances.influences().forEach(each -> influence(words, each));
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

    /** What stands too long beside the numbers stands above them. */
    private void influence(MeasureWords words, Tolerances.Influence influence) {
        Uncertain input = influence.input();
        String range =
                InputWords.nearest(input.input(), input.low(), units)
                        + " .. "
                        + InputWords.nearest(input.input(), input.high(), units);
        boolean fits = name(input).length() <= NAME && ink.settle(range).length() <= RANGE;
        if (!fits) {
            page.paragraph("", 2, name(input) + "  " + range);
        }
        page.line(
                line(
                        INFLUENCE,
                        fits ? name(input) : "",
                        fits ? range : "",
                        moved(influence),
                        safe(words, influence.safeChargeAtLow())
                                + " .. "
                                + safe(words, influence.safeChargeAtHigh())));
    }

    private static String moved(Tolerances.Influence influence) {
        double change = influence.severityChange();
        String points = Numbers.significant(100.0 * change);
        return Math.abs(change) < 5e-5
                ? "no change"
                : (change < 0.0 ? "" : "+") + points + " points";
    }

    private static String safe(MeasureWords words, double charge) {
        return words.value(Quantity.SAFE_CHARGE, OptionalDouble.of(charge));
    }

    private String name(Uncertain range) {
        return tolerated.name(range);
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
                ? "None of these moves the verdict; what else to measure is told below."
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

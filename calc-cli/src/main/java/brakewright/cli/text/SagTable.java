package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.operation.Sag;
import brakewright.spec.Use;
import brakewright.worksheet.PackRow;
import brakewright.worksheet.SagSheet;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;

/** The voltage that is left while the pack is drawn from, over its charge, and what it meets. */
final class SagTable {

    private static final String LABEL = "  %-14s";
    private static final String ENTRY = "%20s";

    private final Worksheet sheet;
    private final SagSheet sag;
    private final Page page;

    SagTable(Worksheet sheet, SagSheet sag, Page page) {
        this.sheet = sheet;
        this.sag = sag;
        this.page = page;
    }

    void print(Ink ink) {
        SagWords words = new SagWords(sheet, sag, page);
        List<Sag.Case> set = cases(sag, true);
        List<Sag.Case> recommended = cases(sag, false);
        page.line(ink.heading("The voltage under load"));
        legend(set, recommended);
        table(ink, set, ShownCharges.tens(sheet.build().use()));
        page.note("met at a charge of (the low-voltage taper as set)");
        words.meetings(set, true);
        if (!recommended.isEmpty()) {
            table(ink, recommended, ShownCharges.few(sheet.build().use()));
            if (recommended.stream().anyMatch(each -> each.first().isPresent())) {
                page.note("met at a charge of");
            }
            words.meetings(recommended, false);
        }
        words.print();
        TextPlot plot = new TextPlot(ink, page);
        if (plot.isShown()) {
            picture(plot, set);
        }
    }

    /** The voltage of all at rest, in a pulse and in a pull without end. */
    private void picture(TextPlot plot, List<Sag.Case> set) {
        Use use = sheet.build().use();
        double[] charges = TextPlot.columns(use.chargeTo(), use.chargeFrom());
        List<TextPlot.Course> courses = new ArrayList<>();
        courses.add(
                new TextPlot.Course(
                        "at rest",
                        '·',
                        '.',
                        sheet.packAt(charges).stream()
                                .mapToDouble(PackRow::openCircuitVoltage)
                                .toArray()));
        sheet.inEffect()
                .lowVoltageTaper()
                .ifPresent(
                        taper -> {
                            courses.add(level("taper begins", taper.begins()));
                            courses.add(level("ends", taper.ends()));
                        });
        char[] marks = {'•', '◦'};
        char[] plain = {'*', 'o'};
        for (int i = 0; i < Math.min(marks.length, set.size()); i++) {
            Sag.Draw draw = set.get(i).draw();
            courses.add(
                    new TextPlot.Course(
                            SagWords.name(draw),
                            marks[i],
                            plain[i],
                            Arrays.stream(charges)
                                    .map(charge -> sag.loaded(draw, charge).pack())
                                    .map(volts -> volts > 0.0 ? volts : Double.NaN)
                                    .toArray()));
        }
        plot.courses(
                "the voltage of all over the charge [V]",
                new String[] {Numbers.percent(use.chargeTo()), Numbers.percent(use.chargeFrom())},
                courses);
    }

    private static TextPlot.Course level(String name, double volts) {
        double[] level = new double[TextPlot.COLUMNS];
        Arrays.fill(level, volts);
        return new TextPlot.Course(name, '╌', '-', level);
    }

    /** What the marks mean, before they are met. */
    private void legend(List<Sag.Case> set, List<Sag.Case> recommended) {
        page.legend("!  below the lowest voltage that the maker of the cells permits");
        if (sheet.inEffect().lowVoltageTaper().isPresent()) {
            page.legend("~  by then the low-voltage taper lets less flow: the voltage is higher");
        }
        double lowest = sheet.build().use().chargeTo();
        if (Stream.concat(set.stream(), recommended.stream())
                .anyMatch(each -> !sag.loaded(each.draw(), lowest).isGiven())) {
            page.note("gone  the pack cannot give that current");
        }
    }

    /** Writes a line with one entry for each case. */
    static String row(String label, List<Sag.Case> cases, Function<Sag.Case, String> entry) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, LABEL, label));
        for (Sag.Case each : cases) {
            row.append(String.format(Locale.ROOT, ENTRY, entry.apply(each)));
        }
        return row.toString();
    }

    private static List<Sag.Case> cases(SagSheet sag, boolean set) {
        return sag.cases().stream().filter(each -> each.draw().isSet() == set).toList();
    }

    private void table(Ink ink, List<Sag.Case> cases, double[] charges) {
        page.paragraph(
                "",
                2,
                drawn(cases.get(0).draw())
                        + ": the voltage of all, and of a cell in the emptiest group"
                        + (sheet.build().battery().isOnePack()
                                ? " [V]"
                                : " of the worst pack [V]"));
        page.row(
                row("charge", cases, each -> ink.settle(SagWords.name(each.draw())) + "  "),
                parted(
                        "charge",
                        cases,
                        each ->
                                List.of(
                                        SagWords.name(each.draw()) + ": all",
                                        SagWords.name(each.draw()) + ": a cell")));
        for (double charge : charges) {
            page.row(
                    row(Numbers.percent(charge), cases, each -> entry(ink, each.draw(), charge)),
                    parted(
                            Numbers.percent(charge),
                            cases,
                            each -> parted(sag.loaded(each.draw(), charge))));
        }
    }

    private String drawn(Sag.Draw first) {
        String draw = Numbers.nearest(first.current(), 1) + " A";
        if (!first.isSet()) {
            return "while the recommended " + Numbers.down(first.current(), 1) + " A are drawn";
        }
        return sheet.build().settings().packDischargeCurrent().isPresent()
                ? "while the set " + draw + " are drawn"
                : "while " + draw + " are drawn (recommended, for none is set)";
    }

    /** Cells that hold one number each. */
    private static List<String> parted(
            String label, List<Sag.Case> cases, Function<Sag.Case, List<String>> entries) {
        List<String> parted = new ArrayList<>(List.of(label));
        cases.forEach(each -> parted.addAll(entries.apply(each)));
        return parted;
    }

    private static List<String> parted(SagSheet.Loaded loaded) {
        return loaded.isGiven()
                ? List.of(
                        Numbers.nearest(loaded.pack(), 1),
                        Numbers.nearest(loaded.cell(), 2) + " " + marks(loaded))
                : List.of("gone", "gone !");
    }

    private String entry(Ink ink, Sag.Draw drawn, double charge) {
        SagSheet.Loaded loaded = sag.loaded(drawn, charge);
        if (!loaded.isGiven()) {
            return "gone  !";
        }
        return String.format(
                Locale.ROOT,
                ink.isNarrow() ? "%s %5s %s" : "%s %7s %s",
                Numbers.nearest(loaded.pack(), 1),
                Numbers.nearest(loaded.cell(), 2),
                marks(loaded));
    }

    private static String marks(SagSheet.Loaded loaded) {
        return (loaded.isFading() ? "~" : " ") + (loaded.isBelowFloor() ? "!" : " ");
    }
}

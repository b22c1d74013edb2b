package brakewright.cli.text;

import brakewright.buildfile.KeyGuide;
import brakewright.cli.words.Numbers;
import brakewright.spec.Curve;
import brakewright.tables.CellEntry;
import brakewright.tables.CellQuantity;
import brakewright.tables.ChemistryEntry;
import brakewright.tables.CurveEntry;
import brakewright.tables.Figure;
import brakewright.tables.FuseFamily;
import brakewright.tables.PlugEntry;
import brakewright.tables.ReferenceTables;
import brakewright.tables.Source;
import brakewright.tables.SourceKind;
import brakewright.tables.WireEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the reference tables hold: their names, their rows, and one row with its sources. */
public final class TablesText {

    private static final String CELL = "  %-25s  %-29s  %4s  %5s  %5s  %4s  %-5s  %s";

    private static final int LABEL = 29;
    private static final int ID = 33;

    private final ReferenceTables tables;
    private final Ink ink;

    /**
     * Prepares the text.
     *
     * @param tables what is told
     * @param ink how to put it on the page
     */
    public TablesText(ReferenceTables tables, Ink ink) {
        this.tables = tables;
        this.ink = ink;
    }

    /**
     * Says which tables there are.
     *
     * @return its lines
     */
    public String overview() {
        Page page = new Page(ink);
        page.line(ink.heading("Reference tables, edition " + tables.version()));
        row(page, "cells", tables.cells().size(), "what makers rate cells for, and their curves");
        row(page, "chemistries", tables.chemistries().size(), "curves for cells without their own");
        row(page, "curves", tables.curves().size(), "rest voltage and resistance, point by point");
        row(page, "wires", tables.wires().size(), "resistance and ampacity by size");
        row(page, "plugs", tables.plugs().size(), "what plugs of the main path bear");
        row(page, "fuses", tables.fuseFamilies().size(), "what families of fuses interrupt");
        row(page, "sources", tables.sources().size(), "where figures were read");
        page.blank();
        page.paragraph(
                "",
                2,
                "brakewright tables cells lists them; brakewright tables samsung-30q, or another id,"
                        + " tells one row with its sources. What is taken for a key that is left"
                        + " out: brakewright keys KEY.");
        return page.text();
    }

    private static void row(Page page, String name, int count, String what) {
        page.line(String.format(Locale.ROOT, "  %-12s %4d   %s", name, count, what));
    }

    /**
     * Lists cells.
     *
     * @param cells which, in this order
     * @return its lines
     */
    public String cells(List<CellEntry> cells) {
        Page page = new Page(ink);
        page.line(
                String.format(
                        Locale.ROOT,
                        CELL,
                        "cell",
                        "print",
                        "Ah",
                        "A out",
                        "A in",
                        "mΩ",
                        "chem.",
                        "known"));
        for (CellEntry cell : cells) {
            page.line(
                    String.format(
                                    Locale.ROOT,
                                    CELL,
                                    cell.id(),
                                    cell.name(),
                                    value(cell, CellQuantity.CAPACITY, 1.0),
                                    value(cell, CellQuantity.DISCHARGE_CURRENT, 1.0),
                                    value(cell, CellQuantity.CHARGE_CURRENT, 1.0),
                                    value(cell, CellQuantity.RESISTANCE, 1e3),
                                    cell.chemistry(),
                                    cell.worstKind().text())
                            .stripTrailing());
        }
        page.paragraph(
                "",
                2,
                "A out, A in: continuous ratings of one cell, in open air. mΩ: after a pulse of about"
                        + " 10 s at mid charge and 25 °C."
                        + " known: the worst of what its figures are, as brakewright tables CELL tells"
                        + " of each."
                        + " What the datasheet of your own cell says counts more than this table.");
        return page.text();
    }

    private static String value(CellEntry cell, CellQuantity quantity, double factor) {
        return Numbers.significant(factor * cell.figure(quantity.key()).value());
    }

    /**
     * Lists the rows of another table.
     *
     * @param table one of those of {@link #overview}
     * @return an id and a name a line; empty where there is no such table
     */
    public Optional<String> rows(String table) {
        Page page = new Page(ink);
        switch (table) {
            case "cells" -> {
                return Optional.of(cells(tables.cells()));
            }
            case "chemistries" -> tables.chemistries().forEach(e -> pair(page, e.id(), e.name()));
            case "curves" -> tables.curves().forEach(e -> pair(page, e.id(), e.quantity().text()));
            case "wires" -> tables.wires().forEach(e -> pair(page, e.size(), wire(e)));
            case "plugs" -> tables.plugs().forEach(e -> pair(page, e.id(), plug(e)));
            case "fuses" -> tables.fuseFamilies().forEach(e -> pair(page, e.id(), fuse(e)));
            case "sources" -> tables.sources().forEach(e -> pair(page, e.id(), document(e)));
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(page.text());
    }

    private static void pair(Page page, String id, String text) {
        page.paragraph("  " + id, ID, text);
    }

    /**
     * Tells one row with its sources.
     *
     * @param id of a cell, also as it is printed on its wrap, chemistry, curve, wire, plug, family
     *     of fuses or source
     * @return its lines; empty where there is no such row
     */
    public Optional<String> one(String id) {
        return tables.cell(id)
                .map(this::cell)
                .or(() -> tables.chemistry(id).map(this::chemistry))
                .or(() -> tables.curve(id).map(this::curve))
                .or(
                        () ->
                                tables.plug(id)
                                        .map(
                                                e ->
                                                        simple(
                                                                e.id(),
                                                                plug(e),
                                                                cited(
                                                                        e.source(),
                                                                        e.kind(),
                                                                        e.note()))))
                .or(
                        () ->
                                tables.fuseFamily(id)
                                        .map(
                                                e ->
                                                        simple(
                                                                e.id(),
                                                                fuse(e),
                                                                cited(
                                                                        e.source(),
                                                                        e.kind(),
                                                                        e.note()))))
                .or(() -> tables.wire(id).map(this::wirePage))
                .or(() -> tables.source(id).map(e -> simple(e.id(), document(e), e.note())));
    }

    /**
     * Returns every id that {@link #one} and {@link #rows} know.
     *
     * @return tables first
     */
    public List<String> names() {
        List<String> names =
                new ArrayList<>(
                        List.of(
                                "cells",
                                "chemistries",
                                "curves",
                                "wires",
                                "plugs",
                                "fuses",
                                "sources"));
        tables.cells().forEach(each -> names.add(each.id()));
        tables.chemistries().forEach(each -> names.add(each.id()));
        tables.curves().forEach(each -> names.add(each.id()));
        tables.wires().forEach(each -> names.add(each.size()));
        tables.plugs().forEach(each -> names.add(each.id()));
        tables.fuseFamilies().forEach(each -> names.add(each.id()));
        tables.sources().forEach(each -> names.add(each.id()));
        return names;
    }

    private String cell(CellEntry cell) {
        Page page = new Page(ink);
        page.line(ink.heading(cell.name()));
        page.line("  cell = \"" + cell.id() + "\"   in [pack]");
        for (CellQuantity quantity : CellQuantity.values()) {
            cell.figureIfGiven(quantity.key())
                    .ifPresent(
                            figure ->
                                    page.paragraph(
                                            "  " + quantity.key().replace('_', ' '),
                                            LABEL,
                                            amount(figure)
                                                    + "; "
                                                    + cited(
                                                            figure.source(),
                                                            figure.kind(),
                                                            figure.note())));
        }
        page.paragraph("  rest voltage", LABEL, cell.openCircuitVoltage());
        page.paragraph("  resistance by charge", LABEL, cell.resistanceByCharge());
        page.paragraph("  and by temperature", LABEL, cell.resistanceByTemperature());
        cell.chargeCurrentByCharge()
                .ifPresent(curve -> page.paragraph("  charge current by charge", LABEL, curve));
        return page.text();
    }

    private static String amount(Figure figure) {
        return (Numbers.significant(figure.value()) + " " + KeyGuide.shownUnit(figure.unit()))
                .strip();
    }

    private String chemistry(ChemistryEntry entry) {
        Page page = new Page(ink);
        page.line(ink.heading(entry.id()));
        page.paragraph("  name", LABEL, entry.name());
        page.paragraph("  rest voltage", LABEL, entry.openCircuitVoltage());
        page.paragraph("  resistance by charge", LABEL, entry.resistanceByCharge());
        page.paragraph("  more in the cold", LABEL, entry.resistanceColdByCharge());
        page.paragraph("  and by temperature", LABEL, entry.resistanceByTemperature());
        page.paragraph("  why these", LABEL, cited(entry.source(), entry.kind(), entry.note()));
        return page.text();
    }

    private String curve(CurveEntry entry) {
        Page page = new Page(ink);
        page.line(ink.heading(entry.id()));
        page.paragraph("  tells", LABEL, entry.quantity().text().replace('-', ' '));
        Curve curve = entry.curve();
        double[] at = curve.abscissas();
        double[] values = curve.ordinates();
        for (int i = 0; i < at.length; i++) {
            page.paragraph(
                    i == 0 ? "  points" : "",
                    LABEL,
                    Numbers.significant(at[i]) + "  " + Numbers.significant(values[i]));
        }
        for (String source : entry.sources()) {
            page.paragraph("  source", LABEL, cited(source, entry.kind(), ""));
        }
        return page.text();
    }

    private String wirePage(WireEntry entry) {
        Page page = new Page(ink);
        page.line(ink.heading(entry.size()));
        page.paragraph("  copper", LABEL, Numbers.significant(entry.areaMm2()) + " mm²");
        Figure resistance = entry.resistancePerMetre();
        page.paragraph(
                "  resistance",
                LABEL,
                Numbers.significant(1e3 * resistance.value())
                        + " mΩ/m; "
                        + cited(resistance.source(), resistance.kind(), resistance.note()));
        Figure ampacity = entry.ampacity();
        page.paragraph(
                "  ampacity",
                LABEL,
                Numbers.significant(ampacity.value())
                        + " A; "
                        + cited(ampacity.source(), ampacity.kind(), ampacity.note()));
        return page.text();
    }

    private String simple(String id, String what, String where) {
        Page page = new Page(ink);
        page.line(ink.heading(id));
        page.paragraph("", 2, what);
        page.paragraph("", 2, where);
        return page.text();
    }

    private String cited(String source, SourceKind kind, String note) {
        String title =
                tables.source(source)
                        .filter(Source::isDocument)
                        .map(TablesText::document)
                        .map(text -> ": " + text)
                        .orElse("");
        return kind.text() + title + (note.isEmpty() ? "" : " (" + note + ")");
    }

    private static String document(Source source) {
        return source.title()
                + (source.organisation().isEmpty() ? "" : ", " + source.organisation())
                + (source.year().isEmpty() ? "" : ", " + source.year());
    }

    private static String wire(WireEntry entry) {
        return Numbers.significant(1e3 * entry.resistancePerMetre().value())
                + " mΩ/m, "
                + Numbers.significant(entry.ampacity().value())
                + " A";
    }

    private static String plug(PlugEntry entry) {
        return entry.name()
                + ": "
                + Numbers.significant(entry.current())
                + " A"
                + known(", for a short time ", entry.peakCurrent(), " A")
                + known(", up to ", entry.voltage(), " V")
                + (entry.isAntiSpark() ? ", anti-spark" : "");
    }

    private static String fuse(FuseFamily entry) {
        return "up to "
                + Numbers.significant(entry.voltageRating())
                + " V and "
                + Numbers.significant(entry.largestRating())
                + " A; interrupts "
                + Numbers.significant(entry.breakingCapacity())
                + " A";
    }

    private static String known(String before, OptionalDouble value, String unit) {
        return value.isEmpty() ? "" : before + Numbers.significant(value.getAsDouble()) + unit;
    }
}

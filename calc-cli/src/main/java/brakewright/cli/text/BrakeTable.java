package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.worksheet.BrakeRow;
import brakewright.worksheet.SettingsInEffect;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The brake over speed and charge, as a small map. */
final class BrakeTable {

    private static final int COLUMNS = 7;
    private static final int NARROW_COLUMNS = 6;
    private static final double[] CHARGES = {0.95, 0.9, 0.8, 0.7, 0.5, 0.3, 0.1};

    private final Worksheet sheet;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;
    private final SettingsInEffect set;
    private final double[] speeds;

    BrakeTable(Worksheet sheet, UnitSystem units, Ink ink, Page page) {
        this.sheet = sheet;
        this.units = units;
        this.ink = ink;
        this.page = page;
        this.set = sheet.inEffect();
        this.speeds =
                ShownSpeeds.upTo(units, set.topSpeed(), ink.isNarrow() ? NARROW_COLUMNS : COLUMNS);
    }

    void print() {
        page.line(ink.heading("The brake over speed and charge"));
        page.note(
                "current into the pack [A] at "
                        + Numbers.nearest(set.motorBrake(), 1)
                        + " A per motor and at most "
                        + Numbers.nearest(set.packRegen(), 1)
                        + " A into the pack");
        if (set.isHighVoltageTaperTrusted()) {
            page.note("(the high-voltage taper, which holds back more near its end, included)");
        } else if (set.isHighVoltageTaperLeftOut()) {
            page.note("(the high-voltage taper, too narrow to hold, is left out)");
        }
        if (set.brakeEndsBelow() > 0.0) {
            page.note(
                    "(below "
                            + units.speedText(set.brakeEndsBelow())
                            + " the controllers do not brake)");
        }
        StringBuilder head =
                new StringBuilder(String.format(Locale.ROOT, "  %6s %9s  |", "charge", "may take"));
        for (double speed : speeds) {
            head.append(
                    String.format(
                            Locale.ROOT, "%8s", ShownSpeeds.head(units, speed, set.topSpeed())));
        }
        List<String> heads = new ArrayList<>(List.of("charge", "may take"));
        for (double speed : speeds) {
            heads.add(ShownSpeeds.head(units, speed, set.topSpeed()) + " " + units.speedUnit());
        }
        page.row(head + "  " + units.speedUnit(), heads);
        sheet.brakeAt(ShownCharges.with(sheet.build().use(), CHARGES), speeds)
                .forEach(each -> page.row(row(each, "  ", 7), cells(each)));
        deceleration();
        page.legend("!  more than the pack may take     ~  held back by pack limit or taper");
        page.legend(
                "-  drawn from the pack             decel.: electric brake and road, all in m/s²");
        page.note(
                "Braking lightly still returns a little where braking in full draws: so what the pack"
                        + " may take can be passed at a lower speed than the first of this map.");
        TextPlot plot = new TextPlot(ink, page);
        if (plot.isShown()) {
            picture(plot);
        }
    }

    /** The same map as a picture, from the fullest pack down. */
    private void picture(TextPlot plot) {
        double[] charges = ShownCharges.tens(sheet.build().use());
        char[][] cells = TextPlot.blank(charges.length);
        String[] side = new String[charges.length];
        List<BrakeRow> rows = sheet.brakeAt(charges, TextPlot.columns(0.0, set.topSpeed()));
        for (int row = 0; row < charges.length; row++) {
            side[row] = Numbers.percent(charges[row]);
            for (int column = 0; column < TextPlot.COLUMNS; column++) {
                cells[row][column] = cell(rows.get(row), column);
            }
        }
        plot.map(
                "the same as a picture: charge over speed",
                side,
                cells,
                new String[] {"0", units.speedText(set.topSpeed())},
                List.of(
                        (ink.plain() ? '!' : '█') + " more than it may take",
                        (ink.plain() ? '~' : '▒') + " held back",
                        (ink.plain() ? '.' : '·') + " as asked"));
    }

    private char cell(BrakeRow brake, int column) {
        if (brake.isExceeded()[column]) {
            return ink.plain() ? '!' : '█';
        }
        if (brake.isHeldBack()[column]) {
            return ink.plain() ? '~' : '▒';
        }
        return brake.current()[column] < 0.0 ? ' ' : ink.plain() ? '.' : '·';
    }

    /**
     * A row of a map: the charge, what the pack may take, and at each speed what goes into it.
     *
     * @param gap before the bar
     * @param width of a number, its mark left out
     */
    static String row(BrakeRow brake, String gap, int width) {
        StringBuilder row =
                new StringBuilder(
                        String.format(
                                Locale.ROOT,
                                "  %6s %9s%s|",
                                Numbers.percent(brake.charge()),
                                Numbers.down(brake.mayTake(), 1) + " A",
                                gap));
        for (int i = 0; i < brake.current().length; i++) {
            row.append(
                    String.format(
                            Locale.ROOT,
                            "%" + width + "s%s",
                            Numbers.nearest(brake.current()[i], 1),
                            mark(brake, i)));
        }
        return row.toString();
    }

    private static List<String> cells(BrakeRow brake) {
        List<String> cells =
                new ArrayList<>(
                        List.of(
                                Numbers.percent(brake.charge()),
                                Numbers.down(brake.mayTake(), 1) + " A"));
        for (int i = 0; i < brake.current().length; i++) {
            cells.add(Numbers.nearest(brake.current()[i], 1) + " " + mark(brake, i));
        }
        return cells;
    }

    private static String mark(BrakeRow brake, int column) {
        return brake.isExceeded()[column] ? "!" : brake.isHeldBack()[column] ? "~" : " ";
    }

    private void deceleration() {
        StringBuilder row =
                new StringBuilder(
                        String.format(
                                Locale.ROOT,
                                "  %-17s|",
                                "decel. at " + Numbers.percent(sheet.build().use().chargeFrom())));
        List<String> cells =
                new ArrayList<>(
                        List.of(
                                "decel. at " + Numbers.percent(sheet.build().use().chargeFrom()),
                                ""));
        for (double slowing : sheet.brakeForce(speeds).deceleration()) {
            cells.add(Numbers.nearest(slowing, 2));
            row.append(String.format(Locale.ROOT, "%7s ", Numbers.nearest(slowing, 2)));
        }
        page.row(row.toString(), cells);
    }
}

package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.TopSpeed;
import brakewright.worksheet.DriveSheet;
import brakewright.worksheet.ThrustMap;
import brakewright.worksheet.Worksheet;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.DoubleStream;

/** The thrust over speed and charge, as a small map. */
final class ThrustTable {

    private static final int COLUMNS = 8;

    private final Worksheet sheet;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;

    ThrustTable(Worksheet sheet, UnitSystem units, Ink ink, Page page) {
        this.sheet = sheet;
        this.units = units;
        this.ink = ink;
        this.page = page;
    }

    /** At the charge states of the rows above. */
    void print(List<DriveSheet> above) {
        page.note("thrust of all driven wheels [N] and what rules there");
        double top = sheet.thrustTop();
        double[] moving = ShownSpeeds.upTo(units, top, COLUMNS);
        double[] speeds =
                DoubleStream.concat(DoubleStream.of(0.0), Arrays.stream(moving)).toArray();
        ThrustMap map =
                sheet.thrustAt(above.stream().mapToDouble(DriveSheet::charge).toArray(), speeds);
        page.line(
                row("charge", speeds, i -> ShownSpeeds.head(units, speeds[i], top) + " ")
                        + " "
                        + units.speedUnit());
        for (int place = 0; place < map.charges().length; place++) {
            DriveState[] pulls = map.pulls()[place];
            page.line(row(Numbers.percent(map.charges()[place]), speeds, i -> pulled(pulls[i])));
        }
        page.line(row("road takes", speeds, i -> Numbers.nearest(map.resistance()[i], 0) + " "));
        page.legend("m  motor current     p  pack current, taper included     v  pack voltage");
        TextPlot plot = new TextPlot(ink, page);
        if (plot.isShown()) {
            picture(plot, map.charges(), top);
        }
    }

    /** The thrust with the fullest and with the emptiest pack, against level road. */
    private void picture(TextPlot plot, double[] charges, double top) {
        double[] ends = {charges[0], charges[charges.length - 1]};
        ThrustMap map = sheet.thrustAt(ends, TextPlot.columns(0.0, top));
        plot.courses(
                "the same as a picture [N]",
                new String[] {"0", units.speedText(top)},
                List.of(
                        new TextPlot.Course("level road takes", '·', '.', map.resistance()),
                        course(map, 1, '◦', 'o'),
                        course(map, 0, '•', '*')));
    }

    private static TextPlot.Course course(ThrustMap map, int place, char mark, char plain) {
        return new TextPlot.Course(
                "thrust at " + Numbers.percent(map.charges()[place]),
                mark,
                plain,
                Arrays.stream(map.pulls()[place]).mapToDouble(DriveState::thrust).toArray());
    }

    private static String row(String label, double[] speeds, IntFunction<String> entry) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "  %10s |", label));
        for (int i = 0; i < speeds.length; i++) {
            row.append(String.format(Locale.ROOT, "%8s", entry.apply(i)));
        }
        return row.toString();
    }

    private static String pulled(DriveState pull) {
        return Numbers.nearest(pull.thrust(), 0) + letter(pull.holder());
    }

    private static String letter(TopSpeed.Holder holder) {
        return switch (holder) {
            case MOTOR_CURRENT -> "m";
            case PACK_CURRENT -> "p";
            case VOLTAGE -> "v";
            case STANDSTILL -> " ";
        };
    }
}

package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.replay.AgainstModel;
import brakewright.replay.Compared;
import brakewright.replay.Figure;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;

/** Writes what was measured beside what the model says of it. */
final class ModelTable {

    private static final String ROW = "  %-20s %13s %13s %13s %13s";
    private static final double HOUR = 3600.0;
    private static final double KILO = 1000.0;

    private final Page page;
    private final Ink ink;
    private final UnitSystem units;

    ModelTable(Page page, Ink ink, UnitSystem units) {
        this.page = page;
        this.ink = ink;
        this.units = units;
    }

    void write(AgainstModel model) {
        page.line(ink.heading("held against the model"));
        page.line(line("", "measured", "predicted", "difference", "explained"));
        model.figures().forEach(this::row);
        page.note(
                "Explained: the part of a difference that the tolerances stated in the build file"
                        + " make up for. Current and voltage are means of a second.");
        model.currentOff()
                .ifPresent(
                        current ->
                                page.note(
                                        "From second to second the current is off by "
                                                + Numbers.nearest(current, 1)
                                                + " A and the voltage by "
                                                + Numbers.nearest(model.voltageOff().orElse(0.0), 2)
                                                + " V (root of the mean square)."));
        tooWeak(model);
        page.note(
                (model.isHeightKnown()
                                ? "Slopes from the recorded height"
                                : "No height was recorded, so the road counts as level")
                        + (model.isChargeKnown()
                                ? "; the charge begins as recorded."
                                : "; no charge was recorded, so it begins at use.charge_from."));
        page.blank();
    }

    private void tooWeak(AgainstModel model) {
        if (model.pullTooWeak() > 0.0) {
            page.note(
                    "For "
                            + Numbers.time(model.pullTooWeak())
                            + " of "
                            + Numbers.time(model.seconds())
                            + " it pulled harder than the settings permit by the model.");
        }
        if (model.brakesTooWeak() > 0.0) {
            page.note(
                    "For "
                            + Numbers.time(model.brakesTooWeak())
                            + " of "
                            + Numbers.time(model.seconds())
                            + " it braked harder than its brakes do by the model.");
        }
    }

    private void row(Compared each) {
        page.line(
                line(
                        named(each.figure()),
                        text(each.figure(), each.measured(), false),
                        text(each.figure(), OptionalDouble.of(each.predicted()), false),
                        text(each.figure(), each.difference(), true),
                        text(each.figure(), each.explained(), true)));
    }

    private String line(String... cells) {
        Object[] settled = Arrays.stream(cells).map(ink::settle).toArray();
        return String.format(Locale.ROOT, ROW, settled).stripTrailing();
    }

    private static String named(Figure figure) {
        return switch (figure) {
            case ENERGY_OUT -> "energy out";
            case ENERGY_BACK -> "energy back";
            case CONSUMPTION -> "consumption";
            case CHARGE_OUT -> "charge out";
            case CHARGE_BACK -> "charge back";
            case CHARGE_USED -> "charge used";
            case CURRENT_OUT -> "highest current out";
            case CURRENT_BACK -> "highest current back";
            case LOWEST_VOLTAGE -> "lowest voltage";
            case WARMEST_CELLS -> "warmest cells";
            case TOP_SPEED -> "top speed";
            case HARDEST_STOP -> "hardest stop";
            case RANGE -> "range like this";
        };
    }

    private String text(Figure figure, OptionalDouble value, boolean isSigned) {
        return value.isEmpty()
                ? "-"
                : (isSigned && value.getAsDouble() > 0.0 ? "+" : "")
                        + text(figure, value.getAsDouble());
    }

    private String text(Figure figure, double value) {
        return switch (figure) {
            case ENERGY_OUT, ENERGY_BACK -> Numbers.nearest(value / HOUR, 1) + " Wh";
            case CONSUMPTION -> Numbers.nearest(value * KILO / HOUR, 1) + " Wh/km";
            case CHARGE_OUT, CHARGE_BACK -> Numbers.nearest(value / HOUR, 3) + " Ah";
            case CHARGE_USED -> Numbers.percent(value);
            case CURRENT_OUT, CURRENT_BACK -> Numbers.nearest(value, 1) + " A";
            case LOWEST_VOLTAGE -> Numbers.nearest(value, 1) + " V";
            case WARMEST_CELLS -> Numbers.nearest(value, 0) + " °C";
            case TOP_SPEED -> units.speedText(value);
            case HARDEST_STOP -> Numbers.nearest(value, 2) + " m/s²";
            case RANGE -> units.distanceMeasured(value);
        };
    }
}

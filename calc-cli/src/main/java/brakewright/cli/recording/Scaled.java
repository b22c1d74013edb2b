package brakewright.cli.recording;

import brakewright.buildfile.Problem;
import brakewright.recording.Cleaning;
import brakewright.recording.Quantity;
import brakewright.recording.Repairs;
import brakewright.recording.Speeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * A file with all its columns in their units, those that name none among them: found out, or a
 * problem.
 */
final class Scaled {

    /** Assumption: our own choice; farther apart no way between positions is straight [s]. */
    private static final double NEIGHBOURS = 30.0;

    private final RawFile file;
    private final Map<Quantity, double[]> columns;
    private final List<ColumnNote> notes = new ArrayList<>();
    private final List<Problem> problems;

    private Scaled(RawFile file, List<Problem> problems) {
        this.file = file;
        this.columns = new EnumMap<>(file.columns());
        this.problems = problems;
    }

    static Scaled of(RawFile file, List<Problem> problems) {
        Scaled scaled = new Scaled(file, problems);
        scaled.settle();
        return scaled;
    }

    RawFile file() {
        return file;
    }

    Map<Quantity, double[]> columns() {
        return columns;
    }

    /** In the order of the file, those that are not used among them. */
    List<ColumnNote> notes() {
        return notes;
    }

    private void settle() {
        Map<Integer, ColumnNote> byColumn = new TreeMap<>();
        for (Taken each : file.taken()) {
            String heading = file.layout().headings().get(each.column()).text();
            Scale scale = each.scale().orElse(Scale.SECONDS);
            String why = each.why();
            if (each.quantity() == Quantity.TIME) {
                why += ", written as " + file.format().words();
            }
            if (each.scale().isEmpty()) {
                Found found = found(each.quantity());
                scale = found.scale();
                why += found.why();
                scale(each.quantity(), scale);
            }
            String unit =
                    each.quantity() == Quantity.TIME && file.format() != TimeFormat.NUMBER
                            ? ""
                            : scale.unit();
            byColumn.put(
                    each.column(),
                    new ColumnNote(heading, Optional.of(each.quantity()), unit, why));
        }
        for (int column = 0; column < file.layout().headings().size(); column++) {
            Heading heading = file.layout().headings().get(column);
            notes.add(byColumn.getOrDefault(column, ColumnNote.unused(heading.text())));
        }
    }

    private void scale(Quantity quantity, Scale scale) {
        double[] written = columns.getOrDefault(quantity, new double[0]);
        columns.put(quantity, Arrays.stream(written).map(scale::value).toArray());
    }

    private record Found(Scale scale, String why) {}

    private Found found(Quantity quantity) {
        return switch (quantity) {
            case TIME -> time();
            case CHARGE -> charge();
            case WHEEL_SPEED, SATELLITE_SPEED -> speed(quantity);
            default -> refused(quantity, "it names no unit");
        };
    }

    private Found time() {
        Scale scale = RecordingFile.timeScale(file);
        return new Found(
                scale, file.format() == TimeFormat.NUMBER ? ", taken for " + scale.unit() : "");
    }

    /** Above 1 it can only be per cent. */
    private Found charge() {
        double most =
                Arrays.stream(columns.getOrDefault(Quantity.CHARGE, new double[0]))
                        .filter(Double::isFinite)
                        .max()
                        .orElse(1.0);
        return most > 1.0
                ? new Found(Scale.PER_CENT, ", no unit told: beyond 1, so per cent")
                : new Found(Scale.FRACTION, ", no unit told: never beyond 1, so a fraction");
    }

    /** The unit in which it agrees with the positions. */
    private Found speed(Quantity quantity) {
        Map<Quantity, double[]> tried = new EnumMap<>(columns);
        double[] written = columns.getOrDefault(quantity, new double[0]);
        tried.put(quantity, Arrays.stream(written).map(Scale.KILOMETRES_PER_HOUR::value).toArray());
        OptionalDouble ratio =
                Speeds.positionsOver(
                        Cleaning.of(file.source(), file.lines(), tried, new Repairs()),
                        NEIGHBOURS,
                        quantity);
        if (ratio.isEmpty()) {
            return refused(quantity, "it names no unit, and there are no positions to tell it");
        }
        Scale nearest = Scale.KILOMETRES_PER_HOUR;
        for (Scale scale : Scale.SPEEDS) {
            if (off(ratio.getAsDouble(), scale) < off(ratio.getAsDouble(), nearest)) {
                nearest = scale;
            }
        }
        double own = ratio.getAsDouble() * Scale.KILOMETRES_PER_HOUR.factor() / nearest.factor();
        return Speeds.agrees(own)
                ? new Found(
                        nearest,
                        String.format(
                                Locale.ROOT,
                                ", no unit told: so it agrees with the positions, which make"
                                        + " %.2f times its distance",
                                own))
                : refused(
                        quantity, "it names no unit, and in none does it agree with the positions");
    }

    private static double off(double ratio, Scale scale) {
        return Math.abs(Math.log(ratio * Scale.KILOMETRES_PER_HOUR.factor() / scale.factor()));
    }

    private Found refused(Quantity quantity, String wrong) {
        problems.add(
                new Problem(
                        file.layout().headerLine(),
                        file.source() + ", " + quantity.key(),
                        wrong,
                        "--column-units "
                                + quantity.key()
                                + "=UNIT, UNIT being one of "
                                + String.join(" ", Scale.spellings(quantity))));
        return new Found(Scale.FRACTION, "");
    }
}

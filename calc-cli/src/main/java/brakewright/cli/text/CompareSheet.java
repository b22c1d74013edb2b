package brakewright.cli.text;

import brakewright.buildfile.internal.Printable;
import brakewright.cli.words.MeasureWords;
import brakewright.cli.words.UnitSystem;
import brakewright.profile.Comparison;
import brakewright.profile.Profile;
import brakewright.profile.Quantity;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Profiles side by side, for other programs and pages: CSV and Markdown. */
public final class CompareSheet {

    private static final Pattern MARKUP = Pattern.compile("[\\\\|`*<>\\[\\]]");

    private CompareSheet() {}

    /**
     * Writes comma-separated values: a line for each row, SI units, six significant digits, empty
     * where there is no value, the verdict as its word.
     *
     * @param comparison the profiles
     * @return the lines, the names of the columns first
     */
    public static String csv(Comparison comparison) {
        StringWriter out = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(out)) {
            List<String> head = new ArrayList<>(List.of("row", "unit"));
            for (Profile profile : comparison.profiles()) {
                head.add(CsvText.field(profile.name()));
            }
            csv.writeRecord(head);
            for (Comparison.Row row : comparison.rows()) {
                List<String> line = new ArrayList<>();
                line.add(MeasureWords.key(row.measure()));
                boolean word = row.measure().quantity() == Quantity.VERDICT;
                line.add(word ? "" : row.measure().quantity().unit().plain());
                row.readings()
                        .forEach(
                                reading ->
                                        line.add(
                                                word
                                                        ? word(reading.value())
                                                        : CsvText.number(reading.value())));
                csv.writeRecord(line);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toString();
    }

    private static String word(OptionalDouble place) {
        return place.isPresent() ? MeasureWords.outcome(place.getAsDouble()).key() : "";
    }

    /**
     * Writes a table in Markdown.
     *
     * @param comparison the profiles
     * @param units for speeds and distances
     * @return the table
     */
    public static String markdown(Comparison comparison, UnitSystem units) {
        MeasureWords words = new MeasureWords(units);
        StringBuilder out = new StringBuilder("| |");
        comparison
                .profiles()
                .forEach(each -> out.append(' ').append(cell(each.name())).append(" |"));
        out.append("\n|---|").append("---|".repeat(comparison.profiles().size())).append('\n');
        for (Comparison.Row row : comparison.rows()) {
            out.append("| ").append(cell(words.label(row.measure()))).append(" |");
            for (int column = 0; column < row.readings().size(); column++) {
                String value =
                        words.value(row.measure().quantity(), row.readings().get(column).value());
                String difference =
                        column == 0
                                ? ""
                                : words.difference(
                                        row.measure().quantity(),
                                        row.readings().get(column).value(),
                                        row.readings().get(0).value());
                out.append(' ')
                        .append(row.isBest(column) ? "**" + value + "**" : value)
                        .append(difference.isEmpty() ? "" : " (" + difference + ")")
                        .append(" |");
            }
            out.append('\n');
        }
        return out.toString();
    }

    /** A name never ends its cell, and never becomes markup or a link. */
    private static String cell(String text) {
        return MARKUP.matcher(Printable.shown(text)).replaceAll("\\\\$0");
    }
}

package brakewright.cli.text;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.words.UnitSystem;
import brakewright.tables.ReferenceTables;
import brakewright.worksheet.Worksheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A worksheet as computed and as printed.
 *
 * @param sheet as computed
 * @param lines as printed
 */
record Printed(Worksheet sheet, List<String> lines) {

    static final String BOARD = example("vineyard-trail-board");
    static final String SCOOTER = example("ferry-dock-scooter");
    static final String TRIKE = example("parcel-trike");

    private static final ReferenceTables TABLES = ReferenceTables.load();

    private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z0-9])-?[0-9]+(\\.[0-9]+)?");

    static Printed of(String buildFile) {
        return of(buildFile, UnitSystem.SI, false);
    }

    static Printed of(String buildFile, UnitSystem units, boolean plain) {
        return of(asked(buildFile, units), units, plain);
    }

    /** One worksheet may be printed in several ways. */
    static Printed of(AskedSheet asked, UnitSystem units, boolean plain) {
        String text = new WorksheetText(asked, units, new Ink(false, plain)).all(false);
        return new Printed(asked.sheet(), text.lines().toList());
    }

    static AskedSheet asked(String buildFile, UnitSystem units) {
        try {
            return new AskedSheet(
                    BuildFile.read(buildFile.getBytes(StandardCharsets.UTF_8), TABLES),
                    Optional.empty(),
                    units.entry());
        } catch (BuildFileException problem) {
            throw new IllegalArgumentException(problem.getMessage(), problem);
        }
    }

    /**
     * The board with its pack in two: four cells side by side in the first, three in the second.
     */
    static String twoPacks(String more) {
        int from = BOARD.indexOf("[pack]");
        int to = BOARD.indexOf("[use]");
        String pack =
                BOARD.substring(from, to)
                        .replace("[pack]", "[[packs]]")
                        .replace("[pack.", "[packs.");
        return BOARD.substring(0, from)
                + pack
                + pack.replace("parallel = 4", "parallel = 3")
                + more
                + BOARD.substring(to);
    }

    /** The lines below a heading, up to the next blank line. */
    List<String> section(String heading) {
        int from = lines.indexOf(heading);
        if (from < 0) {
            throw new IllegalArgumentException("no " + heading);
        }
        List<String> section = new ArrayList<>();
        for (int i = from + 1; !lines.get(i).isEmpty(); i++) {
            section.add(lines.get(i));
        }
        return section;
    }

    /** A section as one line of single blanks. */
    String prose(String heading) {
        return String.join(" ", section(heading)).replaceAll(" +", " ");
    }

    /** The first line of a section that begins with a word, leading blanks left aside. */
    String line(String heading, String begin) {
        return section(heading).stream()
                .filter(line -> line.strip().startsWith(begin))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no " + begin));
    }

    static List<Double> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(text);
        while (matcher.find()) {
            numbers.add(Double.valueOf(matcher.group()));
        }
        return numbers;
    }

    private static String example(String name) {
        try {
            return Files.readString(Path.of("examples", name + ".toml"));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}

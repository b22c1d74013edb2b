package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No command prints a line that is too long, or tears the numbers of a table's row apart. */
class NarrowTablesTest {

    private static final int WIDE = 100;
    private static final List<Integer> NARROW = List.of(72, 80);

    private static final Pattern CELLS = Pattern.compile(" {2,}");
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d[\\d.]*");

    /** A cell that is a number, or two, with a unit, and words behind it at most in brackets. */
    private static final Pattern AMOUNT =
            Pattern.compile("[-+]?\\d[\\d.]*( (to|\\.\\.) \\d[\\d.]*)? ?[^ \\d]{0,6}");

    static Stream<String> commands() {
        List<String> commands = new ArrayList<>();
        String board = "examples/vineyard-trail-board.toml";
        String packs = "src/test/resources/brakewright/cli/vehicles/two-packs.toml";
        commands.add("worksheet " + board + " --show all");
        commands.add("worksheet " + packs + " --show all --doubts");
        commands.add("check " + packs + " --show all --with motor_brake_current=21A");
        commands.add("check " + board + " --with motor_brake_current=21A");
        commands.add("propose " + board);
        commands.add("compare " + board + " --with motor_brake_current=21A");
        commands.add(
                "solve " + board + " --for pack_regen_current --against charge_from=80%..90%/2");
        commands.add("explain " + board + " pack-regen-current");
        commands.add("explain " + packs + " sag");
        commands.add("tables");
        commands.add("tables cells");
        commands.add("tables plugs");
        commands.add("tables samsung-30q");
        commands.add("keys");
        commands.add("keys motor.resistance");
        Main.COMMANDS.forEach(each -> commands.add("help " + each));
        return commands.stream();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyLineFitsAndEveryRowStaysWhole(String command) {
        List<String> wide = lines(command, WIDE);
        fit(wide, WIDE);
        for (int columns : NARROW) {
            List<String> narrow = lines(command, columns);
            fit(narrow, columns);
            for (String row : wide) {
                List<String> amounts = amounts(row);
                if (amounts.size() > 1 && !isChosenByWidth(command, row)) {
                    assertThat(narrow.stream().anyMatch(line -> holds(numbers(line), amounts)))
                            .as("at %d columns a line with all of: %s", columns, row)
                            .isTrue();
                }
            }
        }
    }

    /** Maps have fewer speeds where lines are short, comparisons fewer profiles in a table. */
    private static boolean isChosenByWidth(String command, String row) {
        return row.contains("|") || command.startsWith("compare");
    }

    private static void fit(List<String> lines, int columns) {
        assertThat(lines.stream().filter(line -> line.codePointCount(0, line.length()) > columns))
                .as("lines that are wider than %d columns", columns)
                .isEmpty();
    }

    /** Whether a line has these numbers, in this order. */
    private static boolean holds(List<String> line, List<String> numbers) {
        int found = 0;
        for (String number : line) {
            found += found < numbers.size() && number.equals(numbers.get(found)) ? 1 : 0;
        }
        return found == numbers.size();
    }

    /** The numbers of the cells behind the first that are amounts. */
    private static List<String> amounts(String row) {
        List<String> cells = CELLS.splitAsStream(row.strip()).skip(1).toList();
        return cells.stream()
                .filter(cell -> AMOUNT.matcher(cell).matches())
                .flatMap(cell -> numbers(cell).stream())
                .toList();
    }

    private static List<String> numbers(String line) {
        return NUMBER.matcher(line).results().map(match -> match.group()).toList();
    }

    private static List<String> lines(String command, int columns) {
        StringWriter out = new StringWriter();
        Main.run(
                Width.of(columns),
                new PrintWriter(out),
                new PrintWriter(new StringWriter()),
                command.split(" "));
        return out.toString().lines().toList();
    }
}

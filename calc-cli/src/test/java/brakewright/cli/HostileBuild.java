package brakewright.cli;

import static brakewright.cli.PlausibleValue.any;

import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Build files that someone spoiled: an example, changed in some places. */
final class HostileBuild {

    /** Too small, too large, of no sign, or no numbers at all. */
    static final List<String> NUMBERS =
            List.of(
                    "0",
                    "-0",
                    "1",
                    "-1",
                    "1e-320",
                    "4.9e-324",
                    "1e-310",
                    "2.2e-308",
                    "1e-200",
                    "1e-100",
                    "1e-30",
                    "1e-12",
                    "1e-9",
                    "1e-6",
                    "0.001",
                    "0.1",
                    "0.5",
                    "0.999999999",
                    "1.000000001",
                    "2",
                    "3",
                    "7",
                    "20",
                    "99",
                    "100",
                    "999",
                    "5000",
                    "1e5",
                    "1e9",
                    "1e30",
                    "1e100",
                    "1e300",
                    "1.7976931348623157e308",
                    "1e309",
                    "-1e309",
                    "1e400",
                    "1e-400",
                    "nan",
                    "inf",
                    "-inf",
                    "0x10",
                    "1_000",
                    "1.",
                    "+3",
                    ".5",
                    "1e",
                    "0,5",
                    "\u0661\u0662",
                    "1 2",
                    "");

    /** Controls, changes of direction, what is not seen, half letters, formulas and markup. */
    static final List<String> TEXTS =
            List.of(
                    "\\u202e",
                    "\\u200b",
                    "\\ufeff",
                    "\\u0000",
                    "\\u001b[2J",
                    "\\u2028",
                    "\\n",
                    "\\U000e0001",
                    "\u202e",
                    "\u2066",
                    "\u200f",
                    "\u00ad",
                    "\u3164",
                    "=1+1",
                    "@a",
                    "-1",
                    "+1",
                    "|",
                    "`",
                    "<b>",
                    "%s%n%d",
                    "${x}",
                    "{0}",
                    "\\\\",
                    "'",
                    "\\\"",
                    "",
                    " ",
                    "\u00e9",
                    "\u5742",
                    "\ud83d\udef9",
                    "a\u0301\u0301\u0301",
                    "..",
                    "/",
                    "~");

    private static final List<String> TYPES =
            List.of(
                    "1",
                    "-1",
                    "1.5",
                    "nan",
                    "inf",
                    "true",
                    "[]",
                    "{}",
                    "[[]]",
                    "[1, \"a\"]",
                    "1979-05-27",
                    "07:32:00",
                    "\"\"",
                    "''",
                    "\"\"\"\n\n\"\"\"",
                    "[[0, 1], [0, 1]]",
                    "[[0, 3.0], [1e-320, 3.5], [1, 4.0]]",
                    "[\"1 V\", \"1 V\"]",
                    "[\"1 V\"]",
                    "9223372036854775807",
                    "9223372036854775808",
                    "0.1e-400",
                    "{a = 1}");

    private static final List<String> UNITS =
            List.of(
                    "A", "mA", "V", "kV", "ohm", "mohm", "\u03a9", "kg", "g", "lb", "m", "mm", "in",
                    "km/h", "mi/h", "m/s", "%", "degC", "degF", "K", "Ah", "Wh", "s", "min", "h",
                    "AWG", "mm2", "kg*m2", "\u00b0", "xyz", "");

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");

    private final SplittableRandom random;
    private final List<String> lines;

    private HostileBuild(String text, SplittableRandom random) {
        this.random = random;
        this.lines = new ArrayList<>(text.lines().toList());
    }

    /**
     * Spoils one of the examples; some stay as they are.
     *
     * @param sane whether only possible values are given, so that much is calculated
     */
    static String text(SplittableRandom random, boolean sane) {
        HostileBuild build = new HostileBuild(any(bases(), random), random);
        int changes = random.nextInt(6);
        for (int i = 0; i < changes; i++) {
            if (sane) {
                build.vary();
            } else {
                build.change();
            }
        }
        return String.join("\n", build.lines) + "\n";
    }

    private static List<String> bases() {
        List<String> bases = new ArrayList<>();
        for (Example example : Example.values()) {
            bases.add(example.text());
        }
        bases.add(TwoPacks.file("[battery]\njoining = \"parallel\"\n").text());
        bases.add(TwoPacks.file("[battery]\njoining = \"series\"\n").text());
        return bases;
    }

    private void change() {
        if (lines.isEmpty()) {
            return;
        }
        int kind = random.nextInt(100);
        if (kind < 50) {
            put(any(List.of(Input.values()), random));
        } else if (kind < 62) {
            value(any(NUMBERS, random), false);
        } else if (kind < 66) {
            value(any(NUMBERS, random), true);
        } else if (kind < 71) {
            odd();
        } else if (kind < 75) {
            setValue(any(TYPES, random));
        } else if (kind < 80) {
            lines.remove(line());
        } else if (kind < 83) {
            dropTable();
        } else if (kind < 86) {
            lines.add(line(), lines.get(line()));
        } else if (kind < 88) {
            lines.addAll(table(line()));
        } else if (kind < 93) {
            swapValues();
        } else if (kind < 96) {
            swapKeys();
        } else if (kind < 97) {
            setValue(any(List.of("[".repeat(2000), "{a = ".repeat(500), "[[".repeat(30)), random));
        } else if (kind < 98) {
            setValue('"' + any(List.of("9", "a", "\\u200b", " "), random).repeat(30_000) + '"');
        } else {
            garble();
        }
    }

    /** Another possible value for a key of a table that is there, or the same number scaled. */
    private void vary() {
        if (random.nextInt(4) == 0) {
            scale();
            return;
        }
        List<Input> fitting =
                Arrays.stream(Input.values())
                        .filter(input -> heading(table(input)) >= 0)
                        .filter(input -> !lines.contains("[pack]") || !isOfSeveral(input))
                        .toList();
        put(any(fitting, random));
    }

    private static boolean isOfSeveral(Input input) {
        return input.key().equals("pack.charge") || input.key().startsWith("battery.");
    }

    private void scale() {
        int line = keyLine();
        Matcher number = NUMBER.matcher(valueOf(lines.get(line)));
        if (number.find()) {
            double factor = Math.pow(10.0, 2.0 * random.nextDouble() - 1.0);
            double scaled = Double.parseDouble(number.group()) * factor;
            boolean isCount = !lines.get(line).contains(".") && !lines.get(line).contains("\"");
            String text = isCount ? String.valueOf((long) scaled) : String.valueOf(scaled);
            lines.set(line, key(lines.get(line)) + " = " + number.replaceFirst(text));
        }
    }

    private int line() {
        return random.nextInt(lines.size());
    }

    /** A line that gives a value; any line where none does. */
    private int keyLine() {
        for (int tries = 0; tries < 20; tries++) {
            int line = line();
            if (lines.get(line).contains(" = ") && !lines.get(line).startsWith("#")) {
                return line;
            }
        }
        return line();
    }

    private static String key(String line) {
        int equals = line.indexOf(" = ");
        return equals < 0 ? "title" : line.substring(0, equals);
    }

    private static String valueOf(String line) {
        int equals = line.indexOf(" = ");
        return equals < 0 ? "1" : line.substring(equals + 3);
    }

    private void setValue(String value) {
        int line = keyLine();
        lines.set(line, key(lines.get(line)) + " = " + value);
    }

    /** Another number in front of the same unit, or of another. */
    private void value(String number, boolean otherUnit) {
        int line = keyLine();
        String value = valueOf(lines.get(line));
        String changed =
                value.startsWith("\"")
                        ? otherUnit
                                ? '"' + number + " " + any(UNITS, random) + '"'
                                : value.replaceFirst("[0-9.]+", number)
                        : number.isEmpty() ? "0" : number;
        lines.set(line, key(lines.get(line)) + " = " + changed);
    }

    private void odd() {
        String text = any(TEXTS, random);
        if (random.nextInt(3) > 0) {
            setValue('"' + text + (random.nextBoolean() ? "a" : "") + any(TEXTS, random) + '"');
        } else {
            lines.add(line(), "[proposals.\"" + text + "\"]\nmotor_brake_current = \"20 A\"");
        }
    }

    /** Gives a key a value that is possible, in its own table. */
    private void put(Input input) {
        String table = table(input);
        String name = input.key().substring(input.key().lastIndexOf('.') + 1);
        String line = name + " = " + PlausibleValue.inFile(input, random);
        int at = heading(table);
        if (at >= 0) {
            remove(at, name);
            lines.add(at + 1, line);
            return;
        }
        lines.add("[" + table + "]");
        lines.add(line);
    }

    private static String table(Input input) {
        return input.key().substring(0, Math.max(0, input.key().lastIndexOf('.')));
    }

    /** The line of a table, of a pack the first of several; negative where there is none. */
    private int heading(String table) {
        for (String heading :
                List.of(
                        "[" + table + "]",
                        "[[" + table.replace("pack", "packs") + "]]",
                        "[" + table.replace("pack", "packs") + "]")) {
            if (lines.contains(heading)) {
                return lines.indexOf(heading);
            }
        }
        return -1;
    }

    private void remove(int heading, String key) {
        for (int i = heading + 1; i < lines.size() && !lines.get(i).startsWith("["); i++) {
            if (lines.get(i).startsWith(key + " =")) {
                lines.remove(i);
                return;
            }
        }
    }

    /** The lines of the table that a line belongs to. */
    private List<String> table(int line) {
        int from = line;
        while (from > 0 && !lines.get(from).startsWith("[")) {
            from--;
        }
        int to = from + 1;
        while (to < lines.size() && !lines.get(to).startsWith("[")) {
            to++;
        }
        return new ArrayList<>(lines.subList(from, to));
    }

    private void dropTable() {
        List<String> table = table(line());
        int at = Collections.indexOfSubList(lines, table);
        lines.subList(at, at + table.size()).clear();
    }

    private void swapValues() {
        int one = keyLine();
        int other = keyLine();
        String value = valueOf(lines.get(one));
        lines.set(one, key(lines.get(one)) + " = " + valueOf(lines.get(other)));
        lines.set(other, key(lines.get(other)) + " = " + value);
    }

    private void swapKeys() {
        int one = keyLine();
        int other = keyLine();
        String key = key(lines.get(one));
        lines.set(one, key(lines.get(other)) + " = " + valueOf(lines.get(one)));
        lines.set(other, key + " = " + valueOf(lines.get(other)));
    }

    private void garble() {
        int line = line();
        String old = lines.get(line);
        int at = random.nextInt(old.length() + 1);
        lines.set(line, old.substring(0, at) + any(TEXTS, random) + old.substring(at));
    }
}

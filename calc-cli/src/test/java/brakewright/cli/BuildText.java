package brakewright.cli;

import java.util.ArrayList;
import java.util.List;

/** The lines of a build file, to be changed one by one; lines are counted from 1. */
final class BuildText {

    private final List<String> lines;

    private BuildText(List<String> lines) {
        this.lines = lines;
    }

    static BuildText of(Example example) {
        return new BuildText(new ArrayList<>(example.text().lines().toList()));
    }

    /** An example whose {@code [pack]} and all its tables give way to other lines. */
    static BuildText withPacks(Example example, String packs) {
        List<String> lines = new ArrayList<>(example.text().lines().toList());
        int from = lines.indexOf("[pack]");
        int to = lines.indexOf("[use]");
        lines.subList(from, to).clear();
        lines.addAll(from, packs.lines().toList());
        return new BuildText(lines);
    }

    /** Finds the line that reads so, from the top, counted from 1. */
    int lineThatReads(String line, int occurrence) {
        int found = 0;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).equals(line) && ++found == occurrence) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException("no line \"" + line + "\" number " + occurrence);
    }

    /** Finds the line on which a key of a table stands; the empty table is the top of the file. */
    int lineOf(String table, String key) {
        String current = "";
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith("[")) {
                current = line.substring(1, line.indexOf(']'));
            }
            if (current.equals(table) && line.startsWith(key + " =")) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException("no " + key + " in [" + table + "]");
    }

    /** Writes another line in place of a key's; returns its number. */
    int replace(String table, String key, String line) {
        int number = lineOf(table, key);
        lines.set(number - 1, line);
        return number;
    }

    /** Adds a line below a key's; returns its number. */
    int addBelow(String table, String key, String line) {
        int number = lineOf(table, key);
        lines.add(number, line);
        return number + 1;
    }

    void remove(String table, String key) {
        lines.remove(lineOf(table, key) - 1);
    }

    String text() {
        return String.join("\n", lines) + "\n";
    }
}

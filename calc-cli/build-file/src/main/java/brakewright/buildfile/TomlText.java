package brakewright.buildfile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Takes TOML apart. */
final class TomlText {

    private TomlText() {}

    static WrittenText read(String text, List<Problem> problems) {
        TomlParseResult result = Toml.parse(text);
        Set<Integer> told = new HashSet<>();
        String[] lines = text.split("\n", -1);
        for (TomlParseError error : result.errors()) {
            int line = error.position().line();
            if (told.add(line)) {
                problems.add(problem(line, lines, error));
            }
        }
        return new WrittenText(
                table(result),
                result.hasErrors() ? TomlComments.NONE : TomlComments.of(text),
                result.errors().stream().map(error -> error.position().line()).toList(),
                Spelling.TOML);
    }

    /** Of what the parser says of one line the first is the mistake, the rest follows from it. */
    private static Problem problem(int line, String[] lines, TomlParseError error) {
        TomlMistake mistake =
                TomlMistake.of(
                        line > 0 && line <= lines.length ? lines[line - 1] : "",
                        WrittenText.firstLine(String.valueOf(error.getMessage())));
        return new Problem(line, "", mistake.wrong(), mistake.expected());
    }

    private static WrittenTable table(TomlTable table) {
        Map<String, WrittenTable.Item> items = new LinkedHashMap<>();
        for (String name : table.keySet()) {
            Object raw = table.get(List.of(name));
            if (raw != null) {
                items.put(name, item(raw, table.inputPositionOf(List.of(name))));
            }
        }
        return new WrittenTable(items);
    }

    private static WrittenTable.Row row(TomlArray array) {
        List<WrittenTable.Item> items = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            items.add(item(array.get(i), array.inputPositionOf(i)));
        }
        return new WrittenTable.Row(items);
    }

    private static WrittenTable.Item item(Object raw, @Nullable TomlPosition position) {
        Object plain =
                raw instanceof TomlTable table
                        ? table(table)
                        : raw instanceof TomlArray array ? row(array) : raw;
        return new WrittenTable.Item(plain, position == null ? 0 : position.line());
    }
}

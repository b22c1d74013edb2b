package brakewright.buildfile;

import brakewright.tables.ReferenceTables;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The text of a build file with some of its values replaced and all else as it stands. */
final class RewrittenBuild {

    private static final Pattern LINE_END = Pattern.compile("\\r?\\n");

    private RewrittenBuild() {}

    static String of(byte[] bytes, Map<String, String> values, ReferenceTables tables)
            throws BuildFileException {
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (FileKeys.parse(text, new ArrayList<>()).spelling() == Spelling.JSON) {
            throw new BuildFileException(
                    List.of(
                            new Problem(
                                    0,
                                    "",
                                    "a file of JSON is not replaced line by line",
                                    "a file of TOML")));
        }
        for (Map.Entry<String, String> each : values.entrySet()) {
            text = with(text, each.getKey(), each.getValue());
        }
        BuildFile.read(text.getBytes(StandardCharsets.UTF_8), tables);
        Map<String, Object> now = new LinkedHashMap<>();
        FileKeys.parse(text, new ArrayList<>())
                .values()
                .forEach((key, entry) -> now.put(key, entry.raw()));
        List<Problem> problems = new ArrayList<>();
        values.forEach(
                (key, value) -> {
                    if (!value.equals("\"" + now.get(key) + "\"")) {
                        problems.add(
                                new Problem(
                                        0, key, "it cannot be replaced where it stands", value));
                    }
                });
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
        return text;
    }

    private static String with(String text, String key, String value) {
        int dot = key.lastIndexOf('.');
        String table = key.substring(0, dot);
        String line = key.substring(dot + 1) + " = " + value;
        FileKeys keys = FileKeys.parse(text, new ArrayList<>());
        List<String> lines = new ArrayList<>(List.of(LINE_END.split(text)));
        WrittenTable.Item known = keys.values().get(key);
        Integer heading = keys.headings().get(table);
        if (known != null) {
            String beside = keys.comments().beside().get(known.line());
            lines.set(known.line() - 1, beside == null ? line : line + " " + beside);
        } else if (heading != null) {
            lines.add(heading, line);
        } else {
            lines.add("");
            lines.add("[" + table + "]");
            lines.add(line);
        }
        return String.join("\n", lines) + "\n";
    }
}

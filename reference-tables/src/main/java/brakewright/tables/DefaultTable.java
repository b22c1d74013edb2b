package brakewright.tables;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The defaults by key, and which of a key's rows holds for a build. */
final class DefaultTable {

    private final Map<String, List<Default>> byKey;

    private DefaultTable(Map<String, List<Default>> byKey) {
        this.byKey = byKey;
    }

    static DefaultTable of(List<TableRow> rows, Sources sources) {
        Map<String, List<Default>> byKey = new LinkedHashMap<>();
        for (TableRow row : rows) {
            String key = row.requiredText("key");
            String unit = row.requiredText("unit");
            Default entry =
                    new Default(
                            key, conditions(row), sources.figure(row, row.number("value"), unit));
            List<Default> ofKey = byKey.computeIfAbsent(key, any -> new ArrayList<>());
            for (Default earlier : ofKey) {
                if (earlier.rivals(entry)) {
                    throw row.fault("when", "conditions that exclude those of earlier rows");
                }
                if (!earlier.figure().unit().equals(unit)) {
                    throw row.fault("unit", earlier.figure().unit() + " as in earlier rows");
                }
            }
            ofKey.add(entry);
        }
        return new DefaultTable(byKey);
    }

    List<Default> all() {
        return byKey.values().stream().flatMap(List::stream).toList();
    }

    Optional<Default> find(String key, Map<String, String> facts) {
        Optional<Default> best = Optional.empty();
        for (Default entry : byKey.getOrDefault(key, List.of())) {
            int beaten = best.map(found -> found.when().size()).orElse(-1);
            if (entry.when().size() > beaten && entry.matches(facts)) {
                best = Optional.of(entry);
            }
        }
        return best;
    }

    private static Map<String, String> conditions(TableRow row) {
        String text = row.text("when");
        Map<String, String> conditions = new LinkedHashMap<>();
        int begin = 0;
        while (begin < text.length()) {
            int semicolon = text.indexOf(';', begin);
            int end = semicolon < 0 ? text.length() : semicolon;
            String condition = text.substring(begin, end).strip();
            int equals = condition.indexOf('=');
            if (equals < 1 || equals == condition.length() - 1) {
                throw row.fault("when", "nothing, or fact=value; several joined by a semicolon");
            }
            row.putNew(
                    conditions,
                    "when",
                    condition.substring(0, equals).strip(),
                    condition.substring(equals + 1).strip());
            begin = end + 1;
        }
        return Collections.unmodifiableMap(conditions);
    }
}

package brakewright.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** By what share of itself a value usually misses that was not measured. */
final class SpreadTable {

    private final Map<String, Figure> spreads;

    private SpreadTable(Map<String, Figure> spreads) {
        this.spreads = spreads;
    }

    static SpreadTable of(List<TableRow> rows, Sources sources) {
        Map<String, Figure> spreads = new LinkedHashMap<>();
        for (TableRow row : rows) {
            SourceKind kind =
                    SourceKind.parse(row.requiredText("of"))
                            .orElseThrow(() -> row.fault("of", "how well the value is known"));
            double spread = row.number("spread");
            if (!(spread > 0.0 && spread < 1.0)) {
                throw row.fault("spread", "a share between 0 and 1");
            }
            row.putNew(
                    spreads,
                    "key",
                    id(row.requiredText("key"), kind),
                    sources.figure(row, spread, "1"));
        }
        return new SpreadTable(spreads);
    }

    Optional<Figure> find(String key, String kind) {
        return SourceKind.parse(kind).map(each -> spreads.get(id(key, each)));
    }

    private static String id(String key, SourceKind kind) {
        return key + ' ' + kind.text();
    }
}

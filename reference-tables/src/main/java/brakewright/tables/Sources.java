package brakewright.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The table of sources, and the rule that no figure passes without one. */
final class Sources {

    private final Map<String, Source> byId;

    private Sources(Map<String, Source> byId) {
        this.byId = byId;
    }

    static Sources of(List<TableRow> rows) {
        Map<String, Source> byId = new LinkedHashMap<>();
        for (TableRow row : rows) {
            String id = row.requiredText("id");
            Source source =
                    new Source(
                            id,
                            row.requiredText("title"),
                            row.text("organisation"),
                            row.text("year"),
                            row.text("place"),
                            row.text("note"));
            if (source.isDocument() && source.place().isEmpty()) {
                throw row.fault("place", "where in the document the figures stand");
            }
            row.putNew(byId, "id", id, source);
        }
        return new Sources(byId);
    }

    Map<String, Source> byId() {
        return byId;
    }

    String sourceIn(TableRow row, String column) {
        String id = row.requiredText(column);
        if (!byId.containsKey(id)) {
            throw row.fault(column, "the id of a source");
        }
        return id;
    }

    SourceKind kindIn(TableRow row, String column, String source) {
        SourceKind kind =
                row.oneOf(
                        column,
                        SourceKind.parse(row.requiredText(column)),
                        "published, common-practice, from-memory or invented");
        Source document = byId.get(source);
        if (kind == SourceKind.PUBLISHED && (document == null || !document.isDocument())) {
            throw row.fault(column, "another kind, because " + source + " is no document");
        }
        return kind;
    }

    Figure figure(TableRow row, double value, String unit) {
        return figure(row, value, unit, "source", "kind");
    }

    Figure figure(TableRow row, double value, String unit, String sourceColumn, String kindColumn) {
        String source = sourceIn(row, sourceColumn);
        return new Figure(value, unit, source, kindIn(row, kindColumn, source), row.text("note"));
    }
}

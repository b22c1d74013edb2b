package brakewright.cli.json;

import brakewright.cli.history.Change;
import brakewright.cli.history.History;
import brakewright.cli.history.PastSheet;
import brakewright.cli.history.Watched;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Past worksheets as JSON: what stood in each, and what changed since the one before. */
public final class HistoryJson {

    private final JsonText json = new JsonText();
    private final History history;

    private HistoryJson(History history) {
        this.history = history;
    }

    /**
     * Writes them.
     *
     * @param history the worksheets
     * @return the document, ending in a line feed
     */
    public static String of(History history) {
        return new HistoryJson(history).text();
    }

    private String text() {
        json.startObject();
        json.text("schema", "brakewright.history/1");
        json.startArray("sheets");
        for (int place = 0; place < history.sheets().size(); place++) {
            sheet(place);
        }
        json.endArray();
        json.texts("left_out", history.leftOut());
        json.endObject();
        return json.finish();
    }

    private void sheet(int place) {
        PastSheet sheet = history.sheets().get(place);
        json.startObject();
        json.text("file", sheet.name());
        json.text("title", sheet.title());
        json.startArray("changes");
        if (place > 0) {
            history.changes(place, Watched.Kind.SETTING)
                    .forEach(each -> change("setting", each, Watched::path));
            history.inputs(place).forEach(each -> change("input", each, key -> key));
            history.changes(place, Watched.Kind.RESULT)
                    .forEach(each -> change("result", each, Watched::path));
        }
        json.endArray();
        json.endObject();
    }

    private <K> void change(String kind, Change<K> change, Function<K, String> name) {
        json.startObject();
        json.text("kind", kind);
        json.text("at", name.apply(change.what()));
        value("before", change.before());
        value("after", change.after());
        json.endObject();
    }

    private void value(String name, Optional<Object> value) {
        value.ifPresent(
                each -> {
                    if (each instanceof Double number) {
                        json.number(name, number);
                    } else {
                        json.text(name, flat(each));
                    }
                });
    }

    /** All of a list or a curve, one after another. */
    private static String flat(Object value) {
        return value instanceof List<?> all
                ? all.stream().map(HistoryJson::flat).collect(Collectors.joining(", "))
                : String.valueOf(value);
    }
}

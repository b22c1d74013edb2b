package brakewright.buildfile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The keys of a build file, flattened, each with its line. Tables that the schema does not know
 * stay whole, so that they are reported once.
 *
 * @param values by dotted key, in the order of the file; the keys of each of several packs under
 *     the name of its place
 * @param headings the lines of the tables that were taken apart
 * @param packs where the tables {@code [[packs]]} stand
 * @param comments of the text
 * @param unread what of the text was not understood
 * @param spelling of the form that the text has
 */
record FileKeys(
        Map<String, WrittenTable.Item> values,
        Map<String, Integer> headings,
        List<PackPlace> packs,
        TomlComments comments,
        UnreadText unread,
        Spelling spelling) {

    private static final String PROPOSALS = "proposals";

    /** Every table that holds a key of the schema. */
    static final Set<String> KNOWN_TABLES = knownTables();

    static FileKeys parse(String text, List<Problem> problems) {
        WrittenText written = WrittenText.of(text, problems);
        Flattening flat = new Flattening();
        flat.table(written.table(), new ArrayList<>());
        List<Integer> wrong = written.unreadLines();
        return new FileKeys(
                flat.values,
                flat.headings,
                flat.packs,
                written.comments(),
                wrong.isEmpty()
                        ? UnreadText.NONE
                        : new UnreadText(text, flat.values.keySet(), wrong),
                written.spelling());
    }

    /** Takes tables apart. */
    private static final class Flattening {

        private final Map<String, WrittenTable.Item> values = new LinkedHashMap<>();
        private final Map<String, Integer> headings = new LinkedHashMap<>();
        private final List<PackPlace> packs = new ArrayList<>();

        void table(WrittenTable table, List<String> path) {
            table.values()
                    .forEach(
                            (name, item) -> {
                                path.add(name);
                                item(item, path);
                                path.remove(path.size() - 1);
                            });
        }

        private void item(WrittenTable.Item item, List<String> path) {
            String key = String.join(".", path);
            if (item.raw() instanceof WrittenTable inner && isTakenApart(key, path)) {
                if (!isUseOfProposal(path)) {
                    headings.put(key, item.line());
                }
                table(inner, path);
            } else if (item.raw() instanceof WrittenTable.Row row && isPacks(key, row)) {
                packs(row);
            } else {
                values.put(key, item);
            }
        }

        private void packs(WrittenTable.Row row) {
            int number = 0;
            for (WrittenTable.Item item : row.items()) {
                number++;
                PackPlace place = PackPlace.several(number, item.line());
                packs.add(place);
                table((WrittenTable) item.raw(), new ArrayList<>(place.path()));
            }
        }

        private boolean isTakenApart(String key, List<String> path) {
            return KNOWN_TABLES.contains(PackPlace.schemaKey(key))
                    || RecordingKeys.TABLES.contains(key)
                    || isProposal(path)
                    || isUseOfProposal(path);
        }

        private static boolean isPacks(String key, WrittenTable.Row row) {
            return key.equals(PackPlace.SEVERAL)
                    && row.size() > 0
                    && row.items().stream().allMatch(item -> item.raw() instanceof WrittenTable);
        }
    }

    private static boolean isProposal(List<String> path) {
        return path.get(0).equals(PROPOSALS) && path.size() <= 2;
    }

    /** The keys of {@code use} that a proposal changes. */
    private static boolean isUseOfProposal(List<String> path) {
        return path.get(0).equals(PROPOSALS) && path.size() == 3 && path.get(2).equals("use");
    }

    private static Set<String> knownTables() {
        Set<String> tables = new TreeSet<>();
        tables.add(PROPOSALS);
        for (Schema.Entry entry : Schema.all()) {
            String key = entry.key();
            for (int dot = key.lastIndexOf('.'); dot > 0; dot = key.lastIndexOf('.', dot - 1)) {
                tables.add(key.substring(0, dot));
            }
        }
        return Collections.unmodifiableSet(tables);
    }
}

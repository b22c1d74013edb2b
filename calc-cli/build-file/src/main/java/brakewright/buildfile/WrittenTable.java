package brakewright.buildfile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a text says, whatever its form: a table of values, each with the line on which it stands.
 *
 * @param values by name, in the order of the text
 */
record WrittenTable(Map<String, Item> values) {

    /** A table in which nothing stands. */
    static final WrittenTable NOTHING = new WrittenTable(Map.of());

    /**
     * One value.
     *
     * @param raw a {@code String}, {@code Long}, {@code Double}, {@code Boolean}, list or table;
     *     anything else belongs behind no key, and says itself what it is
     * @param line from 1
     */
    record Item(Object raw, int line) {}

    /**
     * Several values in a row.
     *
     * @param items in the order of the text
     */
    record Row(List<Item> items) {

        /** Copies the values. */
        Row {
            items = List.copyOf(items);
        }

        int size() {
            return items.size();
        }

        Object raw(int index) {
            return items.get(index).raw();
        }
    }

    /** Copies the values. */
    WrittenTable {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
}

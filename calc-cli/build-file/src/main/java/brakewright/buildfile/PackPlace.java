package brakewright.buildfile;

import brakewright.assembly.PackKeys;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import java.util.List;

/**
 * Where a pack is described: in the table {@code [pack]}, or in one of several {@code [[packs]]}.
 * The keys of both are the same below the name of the table.
 *
 * @param table how its keys begin, {@code pack} or for example {@code packs.2}
 * @param line of its heading; 0 for {@code [pack]}, which may be missing
 */
record PackPlace(String table, int line) {

    /** The table of a single pack, and how the schema names the keys of every pack. */
    static final String ONE = "pack";

    /** The tables of several packs. */
    static final String SEVERAL = "packs";

    private static final String PREFIX = ONE + ".";

    static PackPlace one() {
        return new PackPlace(ONE, 0);
    }

    /** Returns the place of one of several packs, counted from 1. */
    static PackPlace several(int number, int line) {
        return new PackPlace(PackKeys.of(ONE, WhichPack.of(number)), line);
    }

    /** Returns whether an input is told of every pack. */
    static boolean holds(Input input) {
        return input.key().startsWith(PREFIX);
    }

    /** Returns the name that the schema has for a key; that of a key of no pack is its own. */
    static String schemaKey(String key) {
        return PackKeys.ofOne(key);
    }

    /** Returns whether a key stands in this place. */
    boolean contains(String key) {
        return key.startsWith(table + ".");
    }

    /** Returns what the key of an input is here. */
    String key(Input input) {
        return key(input.key());
    }

    /** Returns what a key of the schema is here. */
    String key(String schemaKey) {
        return schemaKey.startsWith(PREFIX) ? table + schemaKey.substring(ONE.length()) : schemaKey;
    }

    /** Returns the heading under which a table of the schema stands here. */
    String heading(String schemaTable) {
        boolean isOne = table.equals(ONE);
        return "["
                + (schemaTable.startsWith(PREFIX) && !isOne
                        ? SEVERAL + schemaTable.substring(ONE.length())
                        : schemaTable)
                + "]";
    }

    /** Returns the names of the tables that lead here. */
    List<String> path() {
        return List.of(table.split("\\."));
    }
}

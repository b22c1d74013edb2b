package brakewright.buildfile;

import brakewright.spec.Input;

/** How a form of build files writes what a problem says belongs there. */
enum Spelling {
    /** Keys below headings, each in a line of its own. */
    TOML("a table", "tables", "a list", "[[packs]]") {
        @Override
        String pair(String key, String value) {
            return change(key.substring(key.lastIndexOf('.') + 1), value);
        }

        @Override
        String change(String key, String value) {
            return key + " = " + value;
        }

        @Override
        String within(String key, String value) {
            return pair(key, value) + " in " + name(key.substring(0, key.lastIndexOf('.')));
        }

        @Override
        String table(PackPlace place, String table) {
            return "a table " + place.heading(table);
        }

        @Override
        String keysBelow(PackPlace place, String table) {
            return "a heading " + place.heading(table) + " with its keys below";
        }

        @Override
        String name(String table) {
            return "[" + table + "]";
        }

        @Override
        String packsBelow() {
            return "a heading [[packs]] for each pack with its keys below";
        }
    },

    /** Objects in objects. */
    JSON("an object", "objects", "an array", "\"packs\": [{ ... }, { ... }]") {
        @Override
        String pair(String key, String value) {
            return nested(key, value);
        }

        @Override
        String change(String key, String value) {
            return nested(key, value);
        }

        @Override
        String within(String key, String value) {
            return nested(key, value);
        }

        @Override
        String table(PackPlace place, String table) {
            return "an object " + name(place.key(table));
        }

        @Override
        String keysBelow(PackPlace place, String table) {
            return table(place, table);
        }

        @Override
        String name(String table) {
            return nested(table, "{ ... }");
        }

        @Override
        String packsBelow() {
            return "an object for each pack, " + eachPack();
        }
    };

    private final String aTable;
    private final String tables;
    private final String aRow;
    private final String eachPack;

    Spelling(String aTable, String tables, String aRow, String eachPack) {
        this.aTable = aTable;
        this.tables = tables;
        this.aRow = aRow;
        this.eachPack = eachPack;
    }

    /**
     * Writes a key with a value; where tables have headings, as it stands below that of its own.
     */
    abstract String pair(String key, String value);

    /** Writes a key of a proposal with a value, the key as proposals name it. */
    abstract String change(String key, String value);

    /** Writes a key with a value and the table in which it stands. */
    abstract String within(String key, String value);

    /** Says that a table stands in a place, which the schema calls so. */
    abstract String table(PackPlace place, String table);

    /** Says what the keys of such a table stand in or below. */
    abstract String keysBelow(PackPlace place, String table);

    /** Names a table. */
    abstract String name(String table);

    /** Says what the keys of several packs stand in or below. */
    abstract String packsBelow();

    /** Writes what holds each of several packs. */
    String eachPack() {
        return eachPack;
    }

    String aTable() {
        return aTable;
    }

    String tables() {
        return tables;
    }

    String aRow() {
        return aRow;
    }

    /** Writes an example of a key, under the name that it has in the file. */
    String example(Schema.Entry entry, String key) {
        return pair(key, literal(entry));
    }

    /** Writes an example of an input. */
    String example(Input input) {
        return example(Schema.of(input), input.key());
    }

    /** Writes an example value, which both forms write alike. */
    static String literal(Schema.Entry entry) {
        boolean bare =
                entry.kind() instanceof Kind.Count
                        || entry.kind() instanceof Kind.PlainNumber
                        || entry.kind() instanceof Kind.MeasuredPair
                        || entry.kind() instanceof Kind.Tabulated
                        || (entry.kind() instanceof Kind.Ratio && !entry.example().contains("%"));
        return bare ? entry.example() : '"' + entry.example() + '"';
    }

    /** Each of several packs is an object in an array. */
    private static String nested(String key, String value) {
        String[] names = key.split("\\.");
        int last = names.length - 1;
        String written = '"' + names[last] + "\": " + value;
        for (int i = last - 1; i >= 0; i--) {
            boolean isNumber = i > 0 && names[i - 1].equals(PackPlace.SEVERAL);
            String inner = written.startsWith("[") ? written : "{ " + written + " }";
            written = isNumber ? "[" + inner + "]" : '"' + names[i] + "\": " + inner;
        }
        return written;
    }
}

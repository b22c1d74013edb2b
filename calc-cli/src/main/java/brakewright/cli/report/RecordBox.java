package brakewright.cli.report;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is written down after the settings were entered: known, or left to be filled in by hand. */
public final class RecordBox {

    /** What is written down. */
    public enum Field {
        /** When. */
        DATE("Date", 1),
        /** Who entered it. */
        BY("Entered by", 1),
        /** What was entered, where it is not what the table says. */
        ENTERED("Entered otherwise than above", 2),
        /** What the first ride was like. */
        RIDE("First ride: ground, speeds, brake, warmth, noise", 3),
        /** What to look at next, and when. */
        NEXT("Next check", 1);

        private final String label;
        private final int lines;

        Field(String label, int lines) {
            this.label = label;
            this.lines = lines;
        }

        /**
         * Returns the name by which it is filled.
         *
         * @return lower case
         */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * Finds what a name means.
         *
         * @param key the name
         * @return empty where nothing is called so
         */
        public static Optional<Field> named(String key) {
            return Arrays.stream(values()).filter(each -> each.key().equals(key)).findFirst();
        }
    }

    private final Map<Field, String> known;

    /**
     * Takes what is known.
     *
     * @param known the others are left blank
     */
    public RecordBox(Map<Field, String> known) {
        this.known = new EnumMap<>(Field.class);
        this.known.putAll(known);
    }

    Chapter chapter() {
        List<Block.Field> fields =
                Arrays.stream(Field.values())
                        .map(
                                each ->
                                        new Block.Field(
                                                each.label,
                                                known.getOrDefault(each, ""),
                                                each.lines))
                        .toList();
        return new Chapter("Record", List.of(new Block.Form(fields)));
    }
}

package brakewright.assembly;

import brakewright.spec.Input;

/**
 * One input with its value and its origin.
 *
 * @param input which one
 * @param value in calculation units
 * @param from where it came from
 * @param source the id of the source in the reference tables, or what it was derived from
 * @param kind how far the source may be trusted; empty for what the file itself says
 * @param note what to know about it; may be empty
 */
public record Resolved(
        Input input, Value value, From from, String source, String kind, String note) {

    /** Where a value came from. */
    public enum From {
        /** The build file, or what was put in place of its value; the source tells which. */
        FILE("file"),
        /** A reference table, by an id that the build file names. */
        TABLE("table"),
        /** A default, because the build file says nothing. */
        ASSUMED("assumed");

        private final String key;

        From(String key) {
            this.key = key;
        }

        /**
         * Returns the word that worksheets use.
         *
         * @return lower case
         */
        public String key() {
            return key;
        }
    }

    /**
     * Returns whether it is believed published, and was not verified.
     *
     * @return false where the file says it, or a text that was read
     */
    public boolean isFromMemory() {
        return kind.equals("from-memory");
    }

    /**
     * Returns the number.
     *
     * @return the nominal value, in calculation units
     * @throws IllegalStateException if this is no number
     */
    public double number() {
        if (value instanceof Value.Number number) {
            return number.quantity().value();
        }
        throw new IllegalStateException(input.key() + " is no number");
    }
}

package brakewright.buildfile;

import brakewright.spec.Input;
import java.util.List;
import java.util.Map;

/**
 * Every key of a build file: its kind, whether it must be there, the range of what is physically
 * possible, an example, and what a person has to know about it. All of it stands in {@code
 * keys.csv}, which says in its first lines what its columns mean.
 */
final class Schema {

    /** Assumption: our own choice; no controller takes a current in finer steps than this [A]. */
    private static final double LEAST_CURRENT_SET = 1e-3;

    /**
     * Assumption: our own choice; what is smaller than this share of the largest possible value is
     * a slip of the keyboard, and near the end of what a computer can hold it no longer multiplies.
     */
    private static final double LEAST_SHARE = 1e-9;

    /** Whether a key must be there. */
    enum Need {
        REQUIRED("required"),
        /** Where the cell is no id of the tables. */
        OF_OWN_CELL("own cell"),
        OPTIONAL("optional");

        private final String text;

        Need(String text) {
            this.text = text;
        }

        String text() {
            return text;
        }
    }

    /**
     * One key.
     *
     * @param input which
     * @param kind of value
     * @param need whether it must be there
     * @param low lowest possible value, in calculation units; 0 for words and text
     * @param high highest possible value; 0 for words and text
     * @param example as a build file would write the value
     * @param what what it is, behind its name
     * @param found where a person finds it
     * @param leftOut what is taken where it is not given; empty where it is required
     */
    record Entry(
            Input input,
            Kind kind,
            Need need,
            double low,
            double high,
            String example,
            String what,
            String found,
            String leftOut) {

        String key() {
            return input.key();
        }

        boolean required() {
            return need == Need.REQUIRED;
        }

        /**
         * The smallest value above 0 that means something, for a key that may be 0; the lowest
         * possible one for others.
         */
        double least() {
            if (low != 0.0) {
                return low;
            }
            boolean isCurrentSet =
                    key().startsWith("settings.")
                            && kind instanceof Kind.Measured measured
                            && measured.dimension() == Dimension.CURRENT;
            return isCurrentSet ? LEAST_CURRENT_SET : LEAST_SHARE * high;
        }
    }

    private static final Map<Input, Entry> ENTRIES = KeyTable.load();
    private static final List<Entry> ALL = List.copyOf(ENTRIES.values());

    private Schema() {}

    static Entry of(Input input) {
        Entry entry = ENTRIES.get(input);
        if (entry == null) {
            throw new IllegalStateException("no schema for " + input);
        }
        return entry;
    }

    /** In the order of {@link Input}. */
    static List<Entry> all() {
        return ALL;
    }
}

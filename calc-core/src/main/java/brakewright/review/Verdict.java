package brakewright.review;

import java.util.List;

/**
 * The verdict on a whole worksheet.
 *
 * @param outcome in a word
 * @param conditions under which all is well, but for what is exceeded whatever they are
 */
public record Verdict(Outcome outcome, List<Condition> conditions) {

    /** Copies the conditions. */
    public Verdict {
        conditions = List.copyOf(conditions);
    }

    /** The verdict in a word, best first. */
    public enum Outcome {
        /** Every setting stays within its limits in all of the use described. */
        WITHIN_LIMITS("within-limits"),
        /** It does under conditions that the use described does not always meet. */
        CONDITIONAL("conditional"),
        /** A limit is exceeded whatever the charge state. */
        OUTSIDE_LIMITS("outside-limits");

        private final String key;

        Outcome(String key) {
            this.key = key;
        }

        /**
         * Returns the word that worksheets use.
         *
         * @return lower case with a hyphen
         */
        public String key() {
            return key;
        }
    }

    /**
     * Draws the verdict from findings.
     *
     * @param findings what was found
     * @return the verdict
     */
    static Verdict of(List<Finding> findings) {
        List<Condition> conditions =
                findings.stream().flatMap(each -> each.condition().stream()).toList();
        if (conditions.stream().anyMatch(Condition.Never.class::isInstance)) {
            return new Verdict(
                    Outcome.OUTSIDE_LIMITS,
                    conditions.stream()
                            .filter(each -> !(each instanceof Condition.Never))
                            .toList());
        }
        return conditions.isEmpty()
                ? new Verdict(Outcome.WITHIN_LIMITS, List.of())
                : new Verdict(Outcome.CONDITIONAL, conditions);
    }
}

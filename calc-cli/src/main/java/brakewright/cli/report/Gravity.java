package brakewright.cli.report;

import brakewright.limit.Signal;
import brakewright.review.BrakeVerdict;
import brakewright.review.Verdict;
import java.util.Locale;

/** How grave something is; a word says it too. */
public enum Gravity {
    /** As it should be. */
    GOOD,
    /** True under a condition, or not quite enough. */
    DOUBTFUL,
    /** Not permitted, or dangerous. */
    BAD,
    /** Only told. */
    PLAIN;

    static Gravity of(Verdict.Outcome outcome) {
        return switch (outcome) {
            case WITHIN_LIMITS -> GOOD;
            case CONDITIONAL -> DOUBTFUL;
            case OUTSIDE_LIMITS -> BAD;
        };
    }

    static Gravity of(BrakeVerdict.Word word) {
        return switch (word) {
            case ENOUGH -> GOOD;
            case WEAK -> DOUBTFUL;
            case NONE -> BAD;
        };
    }

    /** Of a signal word that stands before a sentence. */
    static Gravity ofLabel(String label) {
        for (Signal signal : Signal.values()) {
            if (label.equals(signal.key().toUpperCase(Locale.ROOT))) {
                return switch (signal) {
                    case DANGER, WARNING -> BAD;
                    case CAUTION -> DOUBTFUL;
                    case NOTICE -> PLAIN;
                };
            }
        }
        return PLAIN;
    }

    /**
     * Returns the class of what is shown.
     *
     * @return lower case
     */
    public String style() {
        return name().toLowerCase(Locale.ROOT);
    }
}

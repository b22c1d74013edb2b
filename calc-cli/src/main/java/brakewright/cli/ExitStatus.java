package brakewright.cli;

import brakewright.review.BrakeVerdict;
import brakewright.review.Verdict;

/** What the process tells its caller. */
final class ExitStatus {

    /** Within limits or conditional. */
    static final int FINE = 0;

    /** Outside limits. */
    static final int OUTSIDE = 1;

    /** The input cannot be used, or the result cannot be written. */
    static final int UNUSABLE = 2;

    /** A fault in the program itself. */
    static final int FAULT = 70;

    private ExitStatus() {}

    /**
     * Returns the status for a verdict.
     *
     * @param verdict the verdict
     * @param strict whether a conditional verdict counts as outside
     * @return the status
     */
    static int of(Verdict verdict, boolean strict) {
        return of(verdict.outcome(), strict);
    }

    /**
     * Returns the status for an outcome.
     *
     * @param outcome the outcome
     * @param strict whether a conditional one counts as outside
     * @return the status
     */
    static int of(Verdict.Outcome outcome, boolean strict) {
        return switch (outcome) {
            case WITHIN_LIMITS -> FINE;
            case CONDITIONAL -> strict ? OUTSIDE : FINE;
            case OUTSIDE_LIMITS -> OUTSIDE;
        };
    }

    /**
     * Returns the status for both verdicts.
     *
     * @param outcome on pack and parts
     * @param brake on the brake
     * @param strict whether a conditional outcome and a weak brake count as outside
     * @return the status
     */
    static int of(Verdict.Outcome outcome, BrakeVerdict.Word brake, boolean strict) {
        boolean isRefused =
                brake == BrakeVerdict.Word.NONE || strict && brake == BrakeVerdict.Word.WEAK;
        return isRefused ? OUTSIDE : of(outcome, strict);
    }
}

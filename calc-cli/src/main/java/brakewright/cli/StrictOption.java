package brakewright.cli;

import brakewright.review.BrakeVerdict;
import brakewright.review.Verdict;
import picocli.CommandLine.Option;

/** Which verdicts the process reports as a failure. */
final class StrictOption {

    @Option(
            names = "--strict",
            description = "End with status 1 also for a conditional verdict or a weak brake.")
    boolean strict;

    /** The status for both verdicts. */
    int status(Verdict.Outcome outcome, BrakeVerdict.Word brake) {
        return ExitStatus.of(outcome, brake, strict);
    }
}

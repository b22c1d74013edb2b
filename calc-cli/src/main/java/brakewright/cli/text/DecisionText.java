package brakewright.cli.text;

import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.profile.Recommendation;
import brakewright.profile.WetRoad;
import brakewright.review.BrakeVerdict;
import brakewright.review.Verdict;

/** Says both verdicts on a set of settings in one or two sentences. */
final class DecisionText {

    private final VerdictWords words;

    DecisionText(Recommendation set, UnitSystem units) {
        this.words = new VerdictWords(set.build(), units);
    }

    /** What becomes of pack and parts, and of the brake, with the whole set entered. */
    String of(Recommendation set) {
        return brief(set)
                + " "
                + words.of(set.brake())
                + (set.leavesOtherDanger()
                        ? " A danger of another kind is left, which check tells."
                        : "");
    }

    /** The two words for them. */
    String brief(Recommendation set) {
        String parts =
                switch (set.evaluation().outcome()) {
                    case WITHIN_LIMITS -> "pack and parts are within limits";
                    case CONDITIONAL, OUTSIDE_LIMITS ->
                            "pack and parts are "
                                    + set.evaluation().outcome().key().replace('-', ' ')
                                    + " ("
                                    + LimitWords.of(
                                            set.evaluation().worst(), set.evaluation().pack())
                                    + ")";
                };
        return parts
                + "; the brake is "
                + brake(set.brake())
                + "."
                + (set.drives() ? "" : " It does not drive: no current may leave the pack.");
    }

    /** What becomes of the brake on a wet road, with the current that it bears. */
    String wet(WetRoad wet) {
        return "On a wet road, with a motor brake current of "
                + Numbers.down(wet.enter(), 1)
                + " A, the brake is "
                + brake(wet.entered())
                + ". "
                + words.of(wet.entered());
    }

    /** The word for the brake. */
    static String brake(BrakeVerdict brake) {
        return switch (brake.word()) {
            case ENOUGH -> "enough";
            case WEAK -> "weak";
            case NONE -> "NONE where it is weakest";
        };
    }

    /** How grave an outcome looks. */
    static Ink.Tone tone(Verdict.Outcome outcome) {
        return switch (outcome) {
            case WITHIN_LIMITS -> Ink.Tone.GOOD;
            case CONDITIONAL -> Ink.Tone.DOUBTFUL;
            case OUTSIDE_LIMITS -> Ink.Tone.BAD;
        };
    }

    /** How grave a word for the brake looks. */
    static Ink.Tone tone(BrakeVerdict.Word word) {
        return switch (word) {
            case ENOUGH -> Ink.Tone.GOOD;
            case WEAK -> Ink.Tone.DOUBTFUL;
            case NONE -> Ink.Tone.BAD;
        };
    }
}

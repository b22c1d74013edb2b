package brakewright.cli.words;

import brakewright.buildfile.BuildFile;
import java.util.Optional;

/**
 * Says which numbers of a screen are at nominal values and which at the unfavourable corner of the
 * tolerances stated. Where a file states none there is nothing to tell apart.
 */
public final class CornerWords {

    private static final String CORNER = "at the unfavourable corner of the tolerances stated";

    private CornerWords() {}

    /**
     * Says it of details that stand below both verdicts.
     *
     * @param file the build file
     * @return a sentence; empty where the file states no tolerance
     */
    public static Optional<String> ofDetails(BuildFile file) {
        return where(file, "Verdicts are " + CORNER + ", what follows is at nominal values.");
    }

    /**
     * Says it of a result that is explained.
     *
     * @param file the build file
     * @return a sentence; empty where the file states no tolerance
     */
    public static Optional<String> ofWorking(BuildFile file) {
        return where(
                file,
                "Worked out at nominal values; verdicts and what to enter are " + CORNER + ".");
    }

    /**
     * Says it of what stands on the page that says what to do.
     *
     * @param file the build file
     * @return a sentence; empty where the file states no tolerance
     */
    public static Optional<String> ofPage(BuildFile file) {
        return where(file, "The map and the first stop are at nominal values.");
    }

    /**
     * Says it of a table of what a proposal changes.
     *
     * @param file the build file
     * @return a sentence; empty where the file states no tolerance
     */
    public static Optional<String> ofChanges(BuildFile file) {
        return where(file, "At nominal values; the answer above is " + CORNER + ".");
    }

    private static Optional<String> where(BuildFile file, String sentence) {
        return file.spreads().stated().isEmpty() ? Optional.empty() : Optional.of(sentence);
    }
}

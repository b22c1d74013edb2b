package brakewright.cli;

import java.io.File;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What the program says of files that no test changes, those of {@code examples}, {@code guide} and
 * the tests' own resources. Each question is asked once in a process: the same one gets the same
 * answer, as {@link AnswersTest} holds. Whoever asks whether a second run says the same, writes a
 * file or reads one that a test wrote, and whoever runs a {@code sweep}, which tells the time that
 * it took, runs the program with {@link CommandRun#of}.
 */
final class Answers {

    private static final Map<List<String>, CommandRun> GIVEN = new ConcurrentHashMap<>();

    private Answers() {}

    /**
     * What a command with its arguments gave.
     *
     * @throws IllegalArgumentException if a file is named by its absolute path, as those are that a
     *     test writes
     */
    static CommandRun of(String... arguments) {
        for (String argument : arguments) {
            if (new File(argument.substring(argument.indexOf('=') + 1)).isAbsolute()) {
                throw new IllegalArgumentException(
                        "a file that a test writes is asked about anew: " + argument);
            }
        }
        return GIVEN.computeIfAbsent(
                List.of(arguments), asked -> CommandRun.of(asked.toArray(String[]::new)));
    }
}

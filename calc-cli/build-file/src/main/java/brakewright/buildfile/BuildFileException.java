package brakewright.buildfile;

import java.util.Comparator;
import java.util.List;

/** A build file cannot be used; carries everything that is wrong with it. */
public final class BuildFileException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /**
     * Makes the exception.
     *
     * @param problems what is wrong, at least one thing
     */
    public BuildFileException(List<Problem> problems) {
        super(problems.size() + " problems");
        this.problems =
                problems.stream()
                        .sorted(Comparator.comparingInt(Problem::line).thenComparing(Problem::key))
                        .toList();
    }

    /**
     * Returns what is wrong.
     *
     * @return the problems in the order of the file
     */
    public List<Problem> problems() {
        return problems;
    }
}

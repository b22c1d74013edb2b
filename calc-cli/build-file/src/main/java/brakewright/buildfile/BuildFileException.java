package brakewright.buildfile;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** A build file cannot be used; carries everything that is wrong with it. */
public final class BuildFileException extends Exception {

    private static final long serialVersionUID = 1L;

    /** What is wrong, in the order of the file. */
    @SuppressWarnings("serial") // what toList gives is serializable
    private final List<Problem> problems;

    /**
     * Makes the exception.
     *
     * @param problems what is wrong, at least one thing
     */
    public BuildFileException(List<Problem> problems) {
        this.problems =
                problems.stream()
                        .sorted(Comparator.comparingInt(Problem::line).thenComparing(Problem::key))
                        .toList();
    }

    /**
     * Tells everything that is wrong, for a person.
     *
     * @return how many problems there are, and each below with its place, key and what is expected
     */
    @Override
    public String getMessage() {
        return count()
                + problems.stream()
                        .map(problem -> "\n  " + problem.told().replace("\n", "\n  "))
                        .collect(Collectors.joining());
    }

    /**
     * Tells how many problems there are.
     *
     * @return for example {@code 2 problems}
     */
    public String count() {
        return problems.size() + (problems.size() == 1 ? " problem" : " problems");
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

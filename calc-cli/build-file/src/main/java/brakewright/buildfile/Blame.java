package brakewright.buildfile;

import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Finds out which of several changes are to blame for what does not go together with them: what is
 * wrong is told under the key that was changed, not under the one that it contradicts.
 */
final class Blame {

    private final Given given;
    private final Changes changes;
    private final Examination examination;

    /** Looks for everything that is wrong. */
    interface Examination {
        List<Problem> of(Given given);
    }

    /**
     * Prepares the search.
     *
     * @param given without the changes
     * @param changes to be put in
     * @param examination tells what is wrong
     */
    Blame(Given given, Changes changes, Examination examination) {
        this.given = given;
        this.changes = changes;
        this.examination = examination;
    }

    /** Tells what is wrong with the changes put in, and was not without them. */
    List<Problem> problems() {
        List<Problem> found = examination.of(given.with(changes));
        if (found.isEmpty()) {
            return found;
        }
        List<Problem> before = examination.of(given);
        return found.stream()
                .filter(problem -> changed(problem).isPresent() || !before.contains(problem))
                .map(this::blamed)
                .toList();
    }

    private Problem blamed(Problem problem) {
        return changed(problem)
                .or(() -> cause(problem))
                .map(input -> changes.problem(input, problem.wrong(), given))
                .orElse(problem);
    }

    private Optional<Input> changed(Problem problem) {
        return Input.ofKey(problem.key()).filter(changes.all()::containsKey);
    }

    /** The last change without which this would not be wrong. */
    private Optional<Input> cause(Problem problem) {
        List<Input> latestFirst = new ArrayList<>(changes.all().keySet());
        Collections.reverse(latestFirst);
        return latestFirst.stream()
                .filter(
                        input ->
                                !examination
                                        .of(given.with(changes.without(input)))
                                        .contains(problem))
                .findFirst();
    }
}

package brakewright.buildfile;

import brakewright.assembly.Attempts;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Makes parts of a build; what a part refuses becomes a problem of the file.
 *
 * @param given where the keys to blame stand
 * @param problems to which it is added
 */
record NotedAttempts(Given given, List<Problem> problems) implements Attempts {

    @Override
    public <T> @Nullable T attempt(Supplier<T> part, String blamed) {
        try {
            return part.get();
        } catch (IllegalArgumentException wrong) {
            problems.add(
                    new Problem(
                            given.line(blamed),
                            blamed,
                            String.valueOf(wrong.getMessage()),
                            Consistency.expected(blamed, given.spelling())));
            return null;
        }
    }
}

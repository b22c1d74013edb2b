package brakewright.limit;

import brakewright.formula.Derivation;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * How the limit of a constraint follows from inputs. It is put into words when somebody reads it: a
 * search asks thousands of vehicles for the value alone. Threads that ask at once may each put it
 * into words, and find the same.
 */
final class Working {

    private final Supplier<Words> words;
    private volatile @Nullable Words found;

    /**
     * The words.
     *
     * @param steps that lead to it, in order
     * @param derivation how it follows from their results and from inputs
     */
    record Words(List<Step> steps, Derivation derivation) {

        /** Copies the steps. */
        Words {
            steps = List.copyOf(steps);
        }

        Words(Steps steps, Derivation derivation) {
            this(steps.all(), derivation);
        }
    }

    private Working(Supplier<Words> words) {
        this.words = words;
    }

    /** A working that is put into words when it is read. */
    static Working when(Supplier<Words> words) {
        return new Working(words);
    }

    /** A working that is in words already. */
    static Working of(List<Step> steps, Derivation derivation) {
        Words words = new Words(steps, derivation);
        return new Working(() -> words);
    }

    /** The same working, one more step behind the others. */
    Working and(Step step) {
        return when(
                () -> {
                    List<Step> steps = new ArrayList<>(words().steps());
                    steps.add(step);
                    return new Words(steps, words().derivation());
                });
    }

    Words words() {
        Words there = found;
        if (there == null) {
            there = words.get();
            found = there;
        }
        return there;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Working working && words().equals(working.words());
    }

    @Override
    public int hashCode() {
        return words().hashCode();
    }

    @Override
    public String toString() {
        return words().toString();
    }
}

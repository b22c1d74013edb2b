package brakewright.worksheet;

import java.util.function.Function;

/**
 * The same of the present settings and of a proposal.
 *
 * @param <T> what is told of either
 * @param present of the present settings
 * @param proposed of the proposal
 */
public record Both<T>(T present, T proposed) {

    /**
     * Derives something of either.
     *
     * @param <R> what is derived
     * @param of how
     * @return the same of both
     */
    public <R> Both<R> map(Function<? super T, ? extends R> of) {
        return new Both<>(of.apply(present), of.apply(proposed));
    }
}

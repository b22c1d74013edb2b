package brakewright.spec;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;

/**
 * What of a battery something is about: the whole, as it always is where there is a single pack, or
 * one of several packs.
 *
 * @param number of the pack, from 1; empty where it is about the whole
 */
public record WhichPack(OptionalInt number) {

    /** The whole battery. */
    public static final WhichPack WHOLE = new WhichPack(OptionalInt.empty());

    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is below one
     */
    public WhichPack {
        number.ifPresent(each -> Require.atLeastOne("number of a pack", each));
    }

    /**
     * Makes one of several packs.
     *
     * @param number of the pack, from 1
     * @return that pack
     * @throws IllegalArgumentException if the number is below one
     */
    public static WhichPack of(int number) {
        return new WhichPack(OptionalInt.of(number));
    }

    /**
     * Returns whether this is about the whole.
     *
     * @return false for one of several packs
     */
    public boolean isWhole() {
        return number.isEmpty();
    }

    /**
     * Returns this where it is one of several packs.
     *
     * @param other what is meant where it is the whole
     * @return this or the other
     */
    public WhichPack or(WhichPack other) {
        return isWhole() ? other : this;
    }

    /**
     * Returns what follows from the number of a pack.
     *
     * @param <T> of what is returned
     * @param byNumber makes it from the number, from 1
     * @return empty where this is about the whole
     */
    public <T> Optional<T> map(IntFunction<T> byNumber) {
        return number.isPresent()
                ? Optional.of(byNumber.apply(number.getAsInt()))
                : Optional.empty();
    }
}

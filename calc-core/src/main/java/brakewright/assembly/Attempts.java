package brakewright.assembly;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Makes parts of a build, and notes what a part refuses. */
public interface Attempts {

    /**
     * Makes a part.
     *
     * @param <T> what is made
     * @param part makes it, or throws an {@link IllegalArgumentException} where its values do not
     *     go together
     * @param blamed the dotted key to which a refusal is noted
     * @return the part; null where it was refused
     */
    <T> @Nullable T attempt(Supplier<T> part, String blamed);
}

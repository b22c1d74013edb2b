package brakewright.assembly;

import brakewright.spec.Input;
import java.util.Map;
import java.util.Optional;

/** Tables of what is taken where nothing is told; they come in as data. */
public interface Defaults {

    /** Tables in which nothing stands: then everything has to be told. */
    Defaults NONE =
            new Defaults() {
                @Override
                public Optional<Taken> defaultOf(String key, Map<String, String> facts) {
                    return Optional.empty();
                }

                @Override
                public Optional<Map<Input, Taken>> ofCell(String id) {
                    return Optional.empty();
                }

                @Override
                public Optional<Map<Input, Taken>> ofChemistry(String id) {
                    return Optional.empty();
                }
            };

    /**
     * Finds the number that is taken for a key.
     *
     * @param key the dotted key of an input, or of a figure that a rule of {@link Completion} uses
     * @param facts what is known of the build, for example {@code stance} is {@code seated}
     * @return the number; empty where nothing is taken
     */
    Optional<Taken> defaultOf(String key, Map<String, String> facts);

    /**
     * Finds what is known of a cell.
     *
     * @param id of the cell
     * @return its figures and curves; empty where there is no such cell
     */
    Optional<Map<Input, Taken>> ofCell(String id);

    /**
     * Finds the curves that stand for a chemistry.
     *
     * @param id of the chemistry
     * @return the curves; empty where there is no such chemistry
     */
    Optional<Map<Input, Taken>> ofChemistry(String id);
}

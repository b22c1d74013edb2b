package brakewright.buildfile;

import brakewright.spec.Input;
import brakewright.spec.WhichPack;

/**
 * Where one number of a build file stands.
 *
 * @param input which input
 * @param pack of which of several packs, or of the whole, as with a single one
 * @param part which number of it
 */
public record InputPlace(Input input, WhichPack pack, Part part) {

    /** Which number of an input. */
    public enum Part {
        /** The only one. */
        WHOLE,
        /** The first of a pair. */
        FIRST,
        /** The second of a pair. */
        SECOND
    }

    /**
     * Returns the name of the number.
     *
     * @return the key as the build file has it, and which of a pair
     */
    public String name() {
        String key = BuildFile.nameOf(input, pack);
        return switch (part) {
            case WHOLE -> key;
            case FIRST -> key + " (first)";
            case SECOND -> key + " (second)";
        };
    }
}

package brakewright.tables;

import java.util.Set;

/**
 * A document that figures were taken from, or the statement that there is none.
 *
 * @param id short name used by the other tables
 * @param title of the document; paraphrased where the note says so
 * @param organisation author or publisher; empty if not known
 * @param year of the edition; empty if not known
 * @param place where in the document the figures stand
 * @param note how it was read, and what of this entry is from memory
 */
public record Source(
        String id, String title, String organisation, String year, String place, String note) {

    private static final Set<String> NO_DOCUMENT =
            Set.of("common-practice", "from-memory", "own-choice");

    /**
     * Returns whether this names a document that can be looked up.
     *
     * @return false for common practice, memory and working assumptions of this project
     */
    public boolean isDocument() {
        return !NO_DOCUMENT.contains(id);
    }
}

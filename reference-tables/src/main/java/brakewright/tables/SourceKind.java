package brakewright.tables;

import java.util.Optional;

/** How well a figure is known, best first. */
public enum SourceKind {
    /** Read in a named document, or in a named text that quotes it. */
    PUBLISHED("published"),
    /** A fact of the trade without a source, or a working assumption that says so. */
    COMMON_PRACTICE("common-practice"),
    /** Believed published, not verified. */
    FROM_MEMORY("from-memory"),
    /** Made up, for demonstrations only. */
    INVENTED("invented");

    private final String text;

    SourceKind(String text) {
        this.text = text;
    }

    /**
     * Returns the word used for this kind in tables and on worksheets.
     *
     * @return the word
     */
    public String text() {
        return text;
    }

    static Optional<SourceKind> parse(String text) {
        for (SourceKind kind : values()) {
            if (kind.text.equals(text)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    static SourceKind weaker(SourceKind one, SourceKind other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}

package brakewright.cli;

import picocli.CommandLine.Option;

/** In which form a result is told, for commands that know a page and JSON. */
final class FormatOption {

    /** A page to read, or a document for programs. */
    enum Format {
        TEXT,
        JSON
    }

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "One of ${COMPLETION-CANDIDATES} (default: text).")
    Format format = Format.TEXT;

    boolean isJson() {
        return format == Format.JSON;
    }
}

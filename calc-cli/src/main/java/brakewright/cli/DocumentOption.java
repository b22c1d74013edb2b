package brakewright.cli;

import brakewright.cli.html.HtmlText;
import brakewright.cli.markdown.MarkdownText;
import brakewright.cli.report.Report;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** In which form a result is told, for commands that know documents, too. */
final class DocumentOption {

    /** A page to read, a document for programs, or one to keep. */
    enum Format {
        TEXT,
        JSON,
        HTML,
        MARKDOWN
    }

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description =
                    "One of ${COMPLETION-CANDIDATES} (default: text); html is one file with pictures"
                            + " to keep and to print.")
    Format format = Format.TEXT;

    boolean isJson() {
        return format == Format.JSON;
    }

    boolean isText() {
        return format == Format.TEXT;
    }

    /** The result in the form that is asked for; nothing is made for the others. */
    String told(Supplier<String> text, Supplier<String> json, Supplier<Report> report) {
        return switch (format) {
            case TEXT -> text.get();
            case JSON -> json.get();
            case HTML -> HtmlText.of(report.get());
            case MARKDOWN -> MarkdownText.of(report.get());
        };
    }
}

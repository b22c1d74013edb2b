package brakewright.cli;

import brakewright.cli.text.Ink;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a result goes. */
final class OutputOptions {

    @Option(
            names = "--output",
            paramLabel = "FILE",
            description = "Write to a file instead of standard output, whole or not at all.")
    @Nullable Path file;

    @Option(names = "--force", description = "Replace the output file if it exists.")
    boolean force;

    /** A file never holds colour. */
    Ink ink(PageOptions page) {
        return file == null ? page.ink() : new Ink(false, page.plain);
    }

    /** Makes sure before long work that the file may be written. */
    void claim() {
        if (file == null) {
            return;
        }
        if (Files.isDirectory(file)) {
            throw new Unusable(file + ": this is a folder, not a file");
        }
        if (Files.exists(file) && !force) {
            throw new Unusable(file + ": the file exists; --force replaces it");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new Unusable(file + ": there is no such folder");
        }
    }

    /** Writes a text. */
    void write(String text, PrintWriter out) {
        if (file == null) {
            out.print(text);
            return;
        }
        claim();
        try {
            replace(text, file.toAbsolutePath());
        } catch (IOException unwritable) {
            throw new Unusable(file + ": the file cannot be written", unwritable);
        }
    }

    private static void replace(String text, Path target) throws IOException {
        Path folder = target.getParent();
        if (folder == null) {
            throw new IOException("no folder");
        }
        Path draft =
                folder.resolve(
                        "."
                                + target.getFileName()
                                + "."
                                + ProcessHandle.current().pid()
                                + ".draft");
        try {
            Files.writeString(draft, text, StandardCharsets.UTF_8);
            Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }
}

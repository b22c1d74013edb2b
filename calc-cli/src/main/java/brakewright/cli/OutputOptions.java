package brakewright.cli;

import brakewright.cli.text.Ink;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a result goes. */
final class OutputOptions {

    @Option(
            names = "--output",
            paramLabel = "FILE",
            description = "Write to a file instead of standard output, whole or not at all.")
    @Nullable Path file;

    @Option(
            names = "--force",
            description = "Replace the output file if it exists; never one that was read.")
    boolean force;

    @Spec(Spec.Target.MIXEE)
    CommandSpec command = CommandSpec.create();

    /** A file never holds colour. */
    Ink ink(PageOptions page) {
        return file == null ? page.ink() : new Ink(false, page.plain);
    }

    /** Makes sure before long work that the file may be written. */
    void claim() {
        if (file != null) {
            claim(file);
        }
    }

    /** Makes sure that another file of the same command may be written, too. */
    void claim(Path target) {
        if (Files.isDirectory(target)) {
            throw new Unusable(target + ": this is a folder, not a file");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new Unusable(target + ": this is no ordinary file");
        }
        for (Path read : otherFiles(target)) {
            if (isSame(target, read)) {
                throw new Unusable(
                        target
                                + ": this is a build file that was read, which is never replaced;"
                                + " name another, for example --output worksheet.txt");
            }
        }
        if (Files.exists(target) && !force) {
            throw new Unusable(target + ": the file exists; --force replaces it");
        }
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new Unusable(target + ": there is no such folder");
        }
    }

    /** Every other file that the command was given: it reads them. */
    private List<Path> otherFiles(Path target) {
        return command.args().stream()
                .filter(argument -> argument.getValue() != target)
                .map(ArgSpec::<Object>getValue)
                .flatMap(
                        value ->
                                value instanceof Collection<?> several
                                        ? several.stream()
                                        : Stream.ofNullable(value))
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .toList();
    }

    /** Whether two names lead to one file, by whatever links. */
    private static boolean isSame(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException unreadable) {
            throw new Unusable(one + ": the file cannot be looked at", unreadable);
        }
    }

    /** Writes a text. */
    void write(String text, PrintWriter out) {
        if (file == null) {
            out.print(text);
            return;
        }
        write(file, draft -> draft.write(text));
    }

    /** Writes what a file is to hold. */
    interface Content {
        void writeTo(Writer draft) throws IOException;
    }

    /** Writes another file of the same command, whole or not at all. */
    void write(Path target, Content content) {
        claim(target);
        try {
            replace(content, target.toAbsolutePath());
        } catch (IOException | UncheckedIOException unwritable) {
            throw new Unusable(target + ": the file cannot be written", unwritable);
        }
    }

    private static void replace(Content content, Path target) throws IOException {
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
            try (Writer writer = Files.newBufferedWriter(draft, StandardCharsets.UTF_8)) {
                content.writeTo(writer);
            }
            Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }
}

package brakewright.cli;

import brakewright.cli.text.Ink;
import java.io.IOException;
import java.io.PrintWriter;
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
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a result goes. */
final class OutputOptions {

    private static final String OUTPUT = "--output";

    @Option(
            names = OUTPUT,
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
        if (file == null) {
            return;
        }
        if (Files.isDirectory(file)) {
            throw new Unusable(file + ": this is a folder, not a file");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new Unusable(file + ": this is no ordinary file");
        }
        for (Path read : otherFiles()) {
            if (isSame(file, read)) {
                throw new Unusable(
                        file
                                + ": this is a build file that was read, which is never replaced;"
                                + " name another, for example --output worksheet.txt");
            }
        }
        if (Files.exists(file) && !force) {
            throw new Unusable(file + ": the file exists; --force replaces it");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new Unusable(file + ": there is no such folder");
        }
    }

    /** Every other file that the command was given: it reads them. */
    private List<Path> otherFiles() {
        return command.args().stream()
                .filter(argument -> !isOutput(argument))
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

    private static boolean isOutput(ArgSpec argument) {
        return argument instanceof OptionSpec option && option.longestName().equals(OUTPUT);
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

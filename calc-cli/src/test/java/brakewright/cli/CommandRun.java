package brakewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What one run of the command line gave.
 *
 * @param status the exit status
 * @param out standard output
 * @param err standard error
 */
record CommandRun(int status, String out, String err) {

    /** Runs a command with its arguments. */
    static CommandRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        PrintWriter outPrinter = new PrintWriter(out);
        PrintWriter errPrinter = new PrintWriter(err);
        int status = Main.run(outPrinter, errPrinter, arguments);
        return new CommandRun(status, out.toString(), err.toString());
    }

    /** Runs {@code worksheet} on a text. */
    static CommandRun worksheet(String buildFile, String... options) {
        return worksheet(buildFile.getBytes(StandardCharsets.UTF_8), options);
    }

    /** Runs {@code worksheet} on bytes, in a file that exists only for that time. */
    static CommandRun worksheet(byte[] buildFile, String... options) {
        try {
            Path file = Files.createTempFile("build", ".toml");
            try {
                Files.write(file, buildFile);
                List<String> arguments = new ArrayList<>(List.of("worksheet", file.toString()));
                arguments.addAll(List.of(options));
                return of(arguments.toArray(String[]::new));
            } finally {
                Files.delete(file);
            }
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    List<String> outLines() {
        return out.lines().toList();
    }
}

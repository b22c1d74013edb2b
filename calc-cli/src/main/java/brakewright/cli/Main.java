package brakewright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Starts the command line. */
public final class Main {

    private Main() {}

    /**
     * Runs a command and ends the process with its status.
     *
     * @param arguments of the command line
     */
    public static void main(String[] arguments) {
        Ahead.begin();
        PrintWriter out = utf8(FileDescriptor.out);
        PrintWriter err = utf8(FileDescriptor.err);
        int status = commandLine(out, err).execute(arguments);
        out.flush();
        err.flush();
        System.exit(status);
    }

    /**
     * Sets up the command line.
     *
     * @param out for results
     * @param err for everything else
     * @return the command line
     */
    static CommandLine commandLine(PrintWriter out, PrintWriter err) {
        CommandLine commandLine = new CommandLine(new BrakewrightCommand());
        commandLine.setOut(out);
        commandLine.setErr(err);
        commandLine.setExecutionExceptionHandler(new Complaints());
        commandLine.setCaseInsensitiveEnumValuesAllowed(true);
        return commandLine;
    }

    private static PrintWriter utf8(FileDescriptor descriptor) {
        return new PrintWriter(
                new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
    }
}

package brakewright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;

/** Starts the command line. */
public final class Main {

    static final List<String> COMMANDS =
            List.of(
                    "worksheet",
                    "new",
                    "check",
                    "compare",
                    "propose",
                    "solve",
                    "sweep",
                    "explain",
                    "ride",
                    "history",
                    "keys",
                    "tables",
                    "help");

    private static final Set<String> VERSION = Set.of("--version", "-V");

    private Main() {}

    /**
     * Runs a command and ends the process with its status.
     *
     * @param arguments of the command line
     */
    public static void main(String[] arguments) {
        if (arguments.length == 0 || !VERSION.contains(arguments[0])) {
            Ahead.begin();
        }
        Terminal.look();
        PrintWriter out = new PrintWriter(utf8(FileDescriptor.out));
        Writer complaints = utf8(FileDescriptor.err);
        PrintWriter err =
                new PrintWriter(Terminal.isPlain() ? Terminal.spelling(complaints) : complaints);
        int status = run(Width.ofTerminal(System.getenv("COLUMNS")), out, err, arguments);
        System.exit(status);
    }

    /** Runs a command where no terminal tells its width. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return run(Width.USUAL, out, err, arguments);
    }

    /**
     * Runs a command. What does not arrive, because a disk is full or a reader has gone, is no
     * result.
     *
     * @param width of the lines
     * @param out for results
     * @param err for everything else
     * @param arguments of the command line
     * @return the exit status
     */
    static int run(Width width, PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine commandLine = commandLine(out, err, named(arguments));
        width.givenTo(commandLine);
        int status = executed(commandLine, err, arguments);
        if (out.checkError()) {
            err.println(
                    "standard output: the result cannot be written, or not whole; is the disk full,"
                            + " or the reader gone?");
            status = Math.max(status, ExitStatus.UNUSABLE);
        }
        err.flush();
        return status;
    }

    /** All rows of a recording are held, so a long one may be more than the memory bears. */
    private static int executed(CommandLine commandLine, PrintWriter err, String... arguments) {
        try {
            return commandLine.execute(arguments);
        } catch (OutOfMemoryError full) {
            err.println(
                    "not enough memory for what was given: a recording takes some 120 bytes a row;"
                            + " allow more, as with JAVA_TOOL_OPTIONS=-Xmx2g, or give shorter pieces");
            return ExitStatus.UNUSABLE;
        }
    }

    /**
     * Only the command that is named need be set up; where none is, or help is, all are, and for
     * the version none.
     */
    private static List<String> named(String[] arguments) {
        if (arguments.length == 1 && VERSION.contains(arguments[0])) {
            return List.of();
        }
        return arguments.length > 0
                        && !arguments[0].equals("help")
                        && COMMANDS.contains(arguments[0])
                ? List.of(arguments[0])
                : COMMANDS;
    }

    /** The commands as the parser knows them. */
    static CommandLine commands(List<String> names) {
        CommandLine commandLine = new CommandLine(new BrakewrightCommand());
        for (String name : names) {
            CommandLine command = new CommandLine(make(name));
            command.getCommandSpec().version(commandLine.getCommandSpec().version());
            commandLine.addSubcommand(name, command);
        }
        return commandLine;
    }

    private static CommandLine commandLine(PrintWriter out, PrintWriter err, List<String> names) {
        CommandLine commandLine = commands(names);
        commandLine.setOut(out);
        commandLine.setErr(err);
        Complaints complaints = new Complaints();
        commandLine.setExecutionExceptionHandler(complaints);
        commandLine.setParameterExceptionHandler(complaints);
        commandLine.setCaseInsensitiveEnumValuesAllowed(true);
        return commandLine;
    }

    private static Object make(String command) {
        return switch (command) {
            case "worksheet" -> new WorksheetCommand();
            case "new" -> new NewCommand();
            case "check" -> new CheckCommand();
            case "compare" -> new CompareCommand();
            case "propose" -> new ProposeCommand();
            case "solve" -> new SolveCommand();
            case "sweep" -> new SweepCommand();
            case "explain" -> new ExplainCommand();
            case "ride" -> new RideCommand();
            case "history" -> new HistoryCommand();
            case "keys" -> new KeysCommand();
            case "tables" -> new TablesCommand();
            case "help" -> new CommandLine.HelpCommand();
            default -> throw new IllegalArgumentException(command);
        };
    }

    private static Writer utf8(FileDescriptor descriptor) {
        return new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8);
    }
}

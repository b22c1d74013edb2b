package brakewright.cli;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Printable;
import brakewright.buildfile.Problem;
import brakewright.cli.doubt.Vehicles;
import java.io.PrintWriter;
import picocli.CommandLine;

/** Says what went wrong, without a stack trace. */
final class Complaints
        implements CommandLine.IExecutionExceptionHandler, CommandLine.IParameterExceptionHandler {

    /** Assumption: our own choice; the longest list of the tables is shorter. */
    private static final int LONGEST = 1000;

    @Override
    public int handleExecutionException(
            Exception problem, CommandLine commandLine, CommandLine.ParseResult parsed) {
        PrintWriter err = commandLine.getErr();
        if (problem instanceof Unusable unusable) {
            print(unusable, err);
            return ExitStatus.UNUSABLE;
        }
        if (problem instanceof Vehicles.Impossible impossible) {
            print(
                    new Unusable(
                            "the tolerances reach values that do not go together",
                            impossible.why()),
                    err);
            return ExitStatus.UNUSABLE;
        }
        err.println("This is a fault in the program, not in your input:");
        err.println(
                "  "
                        + problem.getClass().getSimpleName()
                        + ": "
                        + printable(String.valueOf(problem.getMessage())));
        err.println("Please report it together with the build file.");
        return ExitStatus.FAULT;
    }

    /** What the command line's own parser does not understand. */
    @Override
    public int handleParseException(CommandLine.ParameterException wrong, String[] arguments) {
        CommandLine commandLine = wrong.getCommandLine();
        PrintWriter err = commandLine.getErr();
        err.println(printable(String.valueOf(wrong.getMessage())));
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err)) {
            commandLine.usage(err);
        }
        return ExitStatus.UNUSABLE;
    }

    private static void print(Unusable unusable, PrintWriter err) {
        if (!(unusable.getCause() instanceof BuildFileException file)) {
            err.println(printable(String.valueOf(unusable.getMessage())));
            return;
        }
        int count = file.problems().size();
        err.println(
                printable(String.valueOf(unusable.getMessage()))
                        + ": "
                        + count
                        + (count == 1 ? " problem" : " problems"));
        for (Problem each : file.problems()) {
            err.println();
            String place = each.line() > 0 ? "line " + each.line() : "";
            String key = each.key().isEmpty() ? "" : printable(each.key()) + ": ";
            err.println(
                    "  " + place + (place.isEmpty() ? "" : "  ") + key + printable(each.wrong()));
            if (!each.expected().isEmpty()) {
                err.println("      expected: " + printable(each.expected()));
            }
        }
    }

    /** Keeps what a broken file contains from moving the cursor, and off the whole screen. */
    private static String printable(String text) {
        if (text.codePointCount(0, text.length()) > LONGEST) {
            return printable(text.substring(0, text.offsetByCodePoints(0, LONGEST - 1))) + "…";
        }
        return Printable.shown(text);
    }
}

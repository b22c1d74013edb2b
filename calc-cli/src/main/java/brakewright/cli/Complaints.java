package brakewright.cli;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Problem;
import brakewright.buildfile.internal.Printable;
import brakewright.cli.doubt.Vehicles;
import java.io.PrintWriter;
import java.util.Optional;
import picocli.CommandLine;

/** Says what went wrong, without a stack trace. */
final class Complaints
        implements CommandLine.IExecutionExceptionHandler, CommandLine.IParameterExceptionHandler {

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
                        + Printable.shortened(String.valueOf(problem.getMessage())));
        err.println("Please report it together with the build file.");
        return ExitStatus.FAULT;
    }

    /** What the command line's own parser does not understand. */
    @Override
    public int handleParseException(CommandLine.ParameterException wrong, String[] arguments) {
        CommandLine commandLine = wrong.getCommandLine();
        PrintWriter err = commandLine.getErr();
        Optional<String> misspelt = Misspelt.told(wrong);
        err.println(Printable.shortened(misspelt.orElse(String.valueOf(wrong.getMessage()))));
        if (misspelt.isPresent()) {
            err.println("All options: " + commandLine.getCommandSpec().qualifiedName() + " --help");
        } else if (!CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err)) {
            commandLine.usage(err);
        }
        return ExitStatus.UNUSABLE;
    }

    private static void print(Unusable unusable, PrintWriter err) {
        if (!(unusable.getCause() instanceof BuildFileException file)) {
            err.println(Printable.shortened(String.valueOf(unusable.getMessage())));
            return;
        }
        err.println(
                Printable.shortened(String.valueOf(unusable.getMessage())) + ": " + file.count());
        for (Problem each : file.problems()) {
            err.println();
            err.println("  " + each.told().replace("\n", System.lineSeparator() + "  "));
        }
    }
}

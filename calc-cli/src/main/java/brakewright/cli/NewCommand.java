package brakewright.cli;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Problem;
import brakewright.buildfile.internal.Printable;
import brakewright.cli.describe.AnswersFile;
import brakewright.cli.describe.Conversation;
import brakewright.cli.describe.Description;
import brakewright.cli.describe.Interview;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a build file by asking. */
@Command(
        name = "new",
        description = {
            "Make a build file: asks for what is on the labels and under the ruler, and takes \"don't"
                    + " know\" for most of it.",
            "What is left unfinished is kept in FILE.answers and gone on with the next time."
        },
        mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "FILE",
            description = "The build file to write (default: vehicle.toml).")
    Path file = Path.of("vehicle.toml");

    @Option(
            names = "--from",
            paramLabel = "ANSWERS",
            description =
                    "Take the answers from a file instead of asking: lines like motor.kv = 170 rpm/V,"
                            + " or = don't know.")
    @Nullable Path answers;

    @Option(names = "--force", description = "Replace the build file if it exists.")
    boolean force;

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        to(file, force).claim();
        Interview interview = new Interview(Ahead.tables());
        if (answers != null) {
            takeAll(interview, answers);
            write(interview);
            return ExitStatus.FINE;
        }
        if (System.console() == null) {
            throw new Unusable(
                    "new asks questions and needs a terminal; without one give --from ANSWERS, a"
                            + " file with lines like motor.kv = 170 rpm/V");
        }
        try (Terminal terminal = TerminalBuilder.builder().system(true).build()) {
            return converse(interview, terminal);
        } catch (IOException unusable) {
            throw new Unusable("the terminal cannot be used; give --from ANSWERS", unusable);
        }
    }

    /** Asks at a terminal, and keeps what is not finished. */
    int converse(Interview interview, Terminal terminal) throws IOException {
        Path draft = draft();
        if (Files.isRegularFile(draft)) {
            List<Problem> problems = AnswersFile.read(text(draft), interview);
            terminal.writer().println("Going on from " + draft + ".");
            problems.forEach(
                    each ->
                            terminal.writer()
                                    .println("  not taken: " + Printable.shown(each.key())));
        }
        boolean isDone = new Conversation(interview, terminal).hold();
        to(draft, true).write(AnswersFile.text(interview), spec.commandLine().getOut());
        if (!isDone) {
            terminal.writer()
                    .println(
                            "Kept in "
                                    + draft
                                    + "; brakewright new "
                                    + file
                                    + " goes on from there.");
            terminal.writer().flush();
            return ExitStatus.FINE;
        }
        write(interview);
        Files.deleteIfExists(draft);
        return ExitStatus.FINE;
    }

    /** Whole or not at all, as every command writes a file. */
    private static OutputOptions to(Path path, boolean replaces) {
        OutputOptions output = new OutputOptions();
        output.file = path;
        output.force = replaces;
        return output;
    }

    private static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException unreadable) {
            throw new Unusable(path + ": the file cannot be read", unreadable);
        }
    }

    private Path draft() {
        return file.resolveSibling(file.getFileName() + ".answers");
    }

    private static void takeAll(Interview interview, Path from) {
        List<Problem> problems = new ArrayList<>(AnswersFile.read(text(from), interview));
        problems.addAll(AnswersFile.missing(interview));
        if (!problems.isEmpty()) {
            throw new Unusable(from.toString(), new BuildFileException(problems));
        }
    }

    private void write(Interview interview) {
        try {
            to(file, force).write(new Description(interview).text(), spec.commandLine().getOut());
        } catch (BuildFileException wrong) {
            throw new Unusable("the answers do not go together", wrong);
        }
        PrintWriter out = spec.commandLine().getOut();
        out.println("Written to " + file + ". What it says for your vehicle:");
        out.println("  brakewright worksheet " + file);
        out.println("What was not known stands in the file with how to find it;");
        out.println("the worksheet says what to measure first.");
    }
}

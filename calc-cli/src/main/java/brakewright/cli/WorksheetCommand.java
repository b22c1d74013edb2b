package brakewright.cli;

import brakewright.cli.buildfile.BuildFile;
import brakewright.cli.json.WorksheetJson;
import brakewright.cli.text.WorksheetText;
import brakewright.worksheet.Worksheet;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the worksheet of a build file. */
@Command(
        name = "worksheet",
        description = "Print what to enter into the controllers, and what holds each number down.",
        mixinStandardHelpOptions = true)
final class WorksheetCommand implements Callable<Integer> {

    /** In which form the worksheet is printed. */
    enum Format {
        TEXT,
        JSON
    }

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "BUILD",
            description = "The build file; left out, a built-in example is used.")
    @Nullable Path build;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "One of ${COMPLETION-CANDIDATES} (default: text).")
    Format format = Format.TEXT;

    @Option(names = "--strict", description = "End with status 1 also for a conditional verdict.")
    boolean strict;

    @Mixin OutputOptions output = new OutputOptions();

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        BuildFile file = build == null ? BuildArgument.example() : BuildArgument.read(build);
        Worksheet sheet = Worksheet.of(file.build());
        String text =
                format == Format.JSON
                        ? new WorksheetJson(file, sheet).text()
                        : new WorksheetText(file, sheet, page.units, output.ink(page)).text();
        output.write(text, spec.commandLine().getOut());
        return ExitStatus.of(sheet.review().verdict(), strict);
    }
}

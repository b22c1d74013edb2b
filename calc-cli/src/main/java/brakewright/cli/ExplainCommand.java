package brakewright.cli;

import brakewright.cli.buildfile.BuildFile;
import brakewright.cli.text.ExplainText;
import brakewright.limit.LimitId;
import brakewright.worksheet.Worksheet;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints how one limit came about. */
@Command(
        name = "explain",
        description = "Print how one limit came about: formula, numbers, result and source.",
        mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "BUILD", description = "The build file.")
    Path build = Path.of("");

    @Parameters(
            index = "1",
            paramLabel = "LIMIT",
            description =
                    "One of motor-drive-current, motor-brake-current, pack-discharge-current,"
                            + " pack-regen-current, low-voltage-taper, high-voltage-taper,"
                            + " speed-cap.")
    String limit = "";

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        LimitId id =
                LimitId.ofKey(limit.replace('_', '-'))
                        .orElseThrow(
                                () ->
                                        new Unusable(
                                                "\""
                                                        + limit
                                                        + "\" is no limit; there are "
                                                        + Arrays.stream(LimitId.values())
                                                                .map(LimitId::key)
                                                                .collect(
                                                                        Collectors.joining(", "))));
        BuildFile file = BuildArgument.read(build);
        Worksheet sheet = Worksheet.of(file.build());
        spec.commandLine().getOut().print(new ExplainText(file, sheet, page.ink()).text(id));
        return ExitStatus.FINE;
    }
}

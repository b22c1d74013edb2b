package brakewright.cli;

import brakewright.cli.buildfile.BuildFile;
import brakewright.cli.buildfile.BuildFileException;
import brakewright.cli.buildfile.Judged;
import brakewright.cli.buildfile.SettingReader;
import brakewright.cli.buildfile.Situations;
import brakewright.cli.buildfile.Tolerated;
import brakewright.cli.json.CheckJson;
import brakewright.cli.text.CheckText;
import brakewright.profile.Headrooms;
import brakewright.profile.Situation;
import brakewright.spec.Settings;
import brakewright.worksheet.CheckSheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts a proposal beside the present settings. */
@Command(
        name = "check",
        description = "Say whether other settings are safe, and what they buy.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

    /** In which form the check is printed. */
    enum Format {
        TEXT,
        JSON
    }

    @Parameters(index = "0", paramLabel = "BUILD", description = "The build file.")
    Path build = Path.of("");

    @Option(
            names = "--with",
            paramLabel = "SETTING=VALUE",
            description =
                    "A setting to try, for example motor_brake_current=42A; may be repeated. Pairs"
                            + " are written with a comma: high_voltage_taper=40V,42V.")
    List<String> changes = new ArrayList<>();

    @Option(
            names = "--proposal",
            paramLabel = "NAME",
            description = "Try the settings of [proposals.NAME] in the build file.")
    @Nullable String proposal;

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
        BuildFile file = BuildArgument.read(build);
        Settings changes = proposed(file);
        CheckSheet check = CheckSheet.of(file.build(), changes);
        Optional<Tolerated> tolerated = tolerated(file, changes);
        Situation situation = Situations.of(file);
        Headrooms headrooms =
                Headrooms.of(
                        situation,
                        check.present().build().settings(),
                        check.proposed().build().settings());
        Judged judged = Judged.of(situation, check.proposed(), tolerated);
        output.write(
                format == Format.JSON
                        ? CheckJson.of(file, check, headrooms, judged)
                        : new CheckText(
                                        file,
                                        check,
                                        headrooms,
                                        judged,
                                        page.units,
                                        output.ink(page))
                                .text(),
                spec.commandLine().getOut());
        return ExitStatus.of(judged.review().verdict().outcome(), judged.brake().word(), strict);
    }

    private static Optional<Tolerated> tolerated(BuildFile file, Settings changes) {
        try {
            return Tolerated.of(file, changes, 0, 0);
        } catch (BuildFileException wrong) {
            throw new Unusable("the tolerances reach values that do not go together", wrong);
        }
    }

    private Settings proposed(BuildFile file) {
        if (changes.isEmpty() && proposal == null) {
            throw new Unusable(
                    "nothing to check: give --with SETTING=VALUE, for example --with"
                            + " motor_brake_current=42A, or --proposal NAME");
        }
        Settings settings = Settings.NONE;
        if (proposal != null) {
            Settings named = file.proposals().get(proposal);
            if (named == null) {
                throw new Unusable(
                        "\""
                                + proposal
                                + "\" is no proposal of the file; there are: "
                                + String.join(", ", file.proposals().keySet()));
            }
            settings = named;
        }
        try {
            return settings.overlaidBy(SettingReader.read(changes));
        } catch (BuildFileException wrong) {
            throw new Unusable("--with", wrong);
        }
    }
}

package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.doubt.Judged;
import brakewright.cli.doubt.Tolerated;
import brakewright.cli.json.WorksheetJson;
import brakewright.cli.report.RecordBox;
import brakewright.cli.report.Report;
import brakewright.cli.report.SheetReport;
import brakewright.cli.text.SheetSection;
import brakewright.cli.text.WorksheetText;
import brakewright.profile.Entry;
import java.nio.file.Path;
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

/** Prints the worksheet of a build file. */
@Command(
        name = "worksheet",
        description = {
            "Print what to enter into the controllers, and what holds each number down.",
            "One page says what to do; --show prints what it rests on."
        },
        mixinStandardHelpOptions = true)
final class WorksheetCommand implements Callable<Integer> {

    /** Assumption: our own choice; more cases tell nothing more. */
    private static final int MOST_CASES = 1_000_000;

    /** Nobody shall take the example for their own vehicle. */
    private static final String EXAMPLE =
            "No build file is named: this is the built-in example, an invented board.\n";

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "BUILD",
            description =
                    "The build file; - is standard input; left out, a built-in example is used.")
    @Nullable Path build;

    @Mixin DocumentOption form = new DocumentOption();

    @Mixin StrictOption strict = new StrictOption();

    @Option(
            names = "--cases",
            paramLabel = "N",
            description =
                    "Count in N cases, spread evenly over the tolerances, how many are within"
                            + " limits.")
    @Nullable Integer cases;

    @Option(
            names = "--seed",
            paramLabel = "SEED",
            description =
                    "The seed of these cases; the same seed gives the same cases (default: 1).")
    long seed = 1;

    @Option(
            names = "--doubts",
            description =
                    "Tell what to measure first of all that the build file leaves to tables and"
                            + " assumptions; told anyway where it states a tolerance.")
    boolean doubts;

    @Mixin ShowOptions.OfSheet show = new ShowOptions.OfSheet();

    @Mixin RecordOptions notes = new RecordOptions();

    @Mixin SituationOptions situation = new SituationOptions();

    @Mixin OutputOptions output = new OutputOptions();

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        show.settle(form.isText());
        RecordBox record = notes.box(form);
        BuildFile file =
                situation.applied(
                        build == null ? BuildArgument.example() : BuildArgument.read(build));
        Optional<Tolerated> tolerated = tolerated(file);
        AskedSheet asked =
                new AskedSheet(file, tolerated, form.isJson() ? Entry.METRIC : page.units.entry());
        output.write(
                form.told(() -> text(asked), () -> json(asked), () -> report(asked, record)),
                spec.commandLine().getOut());
        Judged judged = asked.judged();
        return strict.status(judged.review().verdict().outcome(), judged.brake().word());
    }

    private String json(AskedSheet asked) {
        return new WorksheetJson(
                        asked.file(),
                        asked.sheet(),
                        asked.tolerated(),
                        doubts || asked.tolerated().isPresent()
                                ? asked.unmeasured()
                                : Optional.empty(),
                        asked.judged(),
                        asked.recommended(),
                        asked.wet())
                .text();
    }

    private Report report(AskedSheet asked, RecordBox record) {
        Report report = new SheetReport(asked, page.units, doubts, record).report();
        return build == null ? report.saying(EXAMPLE.strip()) : report;
    }

    /** What was asked for in particular stands below the page. */
    private String text(AskedSheet asked) {
        return (build == null ? EXAMPLE : "") + textOf(asked);
    }

    private String textOf(AskedSheet asked) {
        WorksheetText text = new WorksheetText(asked, page.units, output.ink(page));
        if (show.isAll()) {
            return text.all(doubts);
        }
        return show.isNone()
                ? text.onePage(doubts || cases != null ? List.of(SheetSection.DOUBTS) : List.of())
                : text.some(show.chosen());
    }

    private Optional<Tolerated> tolerated(BuildFile file) {
        int count = cases == null ? 0 : cases;
        if (count < 0 || count > MOST_CASES || (cases != null && count == 0)) {
            throw new Unusable(
                    "--cases must be from 1 to "
                            + MOST_CASES
                            + ", was "
                            + count
                            + "; for example --cases 4096, or leave it out");
        }
        try {
            Optional<Tolerated> tolerated = Tolerated.of(file, count, seed);
            if (count > 0 && tolerated.isEmpty()) {
                throw new Unusable(
                        "--cases needs a tolerance in the build file, for example resistance ="
                                + " \"68 mΩ ± 10 %\"");
            }
            return tolerated;
        } catch (BuildFileException wrong) {
            throw new Unusable("the tolerances reach values that do not go together", wrong);
        }
    }
}

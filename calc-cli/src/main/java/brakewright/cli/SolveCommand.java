package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.Changes;
import brakewright.buildfile.InputPlace;
import brakewright.cli.json.SolveJson;
import brakewright.cli.text.SolveText;
import brakewright.cli.words.InputWords;
import brakewright.profile.FrontierRow;
import brakewright.profile.Solution;
import brakewright.profile.SolveSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Works backwards to the value that just keeps a vehicle within limits. */
@Command(
        name = "solve",
        description = "Find the value of a key that just keeps the vehicle within limits.",
        mixinStandardHelpOptions = true)
final class SolveCommand implements Callable<Integer> {

    /** Assumption: our own choice; a longer table is no table. */
    private static final int MOST_ROWS = 1000;

    @Mixin BuildArgument build = new BuildArgument();

    @Option(
            names = "--for",
            paramLabel = "KEY",
            required = true,
            completionCandidates = Offered.Sought.class,
            description =
                    "What to solve for: a current of the settings or speed_cap for the highest value,"
                            + " charge_from for the fullest pack, parallel for the fewest cells.")
    String key = "";

    @Option(
            names = "--against",
            paramLabel = "KEY=LOW..HIGH/N",
            description =
                    "Solve at N values of another key, for example charge_from=80%%..100%%/5, and"
                            + " print the frontier as a table.")
    @Nullable String against;

    @Mixin FormatOption form = new FormatOption();

    @Mixin SituationOptions situation = new SituationOptions();

    @Mixin OutputOptions output = new OutputOptions();

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        BuildFile file = situation.applied(build.read());
        SolveProblem problem = new SolveProblem(file, SoughtKey.of(file, key));
        situation.refuse(problem.key().places(), "--for");
        return against == null ? answer(problem) : frontier(problem, against);
    }

    private int answer(SolveProblem problem) {
        SolveSheet sheet = problem.sheet();
        output.write(
                form.isJson()
                        ? SolveJson.of(
                                problem.file().title(),
                                problem.key().place().name(),
                                problem.key().place().input().unit(),
                                held(problem),
                                sheet)
                        : text(problem).text(problem.file().title(), sheet),
                spec.commandLine().getOut());
        return sheet.answer().counting() instanceof Solution.None
                ? ExitStatus.OUTSIDE
                : ExitStatus.FINE;
    }

    private int frontier(SolveProblem problem, String text) {
        KeyRange held = KeyRange.parse(problem.file().variations(), text);
        if (held.count() > MOST_ROWS) {
            throw new Unusable("--against takes at most " + MOST_ROWS + " values");
        }
        if (problem.key().places().contains(held.place())) {
            throw new Unusable("--against must name another key than --for");
        }
        situation.refuse(List.of(held.place()), "--against");
        List<FrontierRow> rows = new ArrayList<>();
        for (int i = 0; i < held.count(); i++) {
            double value = held.at(i);
            SolveProblem.Held there =
                    new SolveProblem.Held(List.of(held.place()), new double[] {value});
            rows.add(new FrontierRow(value, problem.answer(there)));
        }
        InputPlace place = problem.key().place();
        output.write(
                form.isJson()
                        ? SolveJson.frontier(
                                problem.file().title(),
                                place.name(),
                                place.input().unit(),
                                held(problem),
                                held.place().name(),
                                held.place().input().unit(),
                                rows)
                        : text(problem)
                                .frontier(
                                        problem.file().title(),
                                        held.place().input(),
                                        InputWords.name(held.place().name()),
                                        rows),
                spec.commandLine().getOut());
        return rows.stream().allMatch(row -> row.answer().counting() instanceof Solution.None)
                ? ExitStatus.OUTSIDE
                : ExitStatus.FINE;
    }

    /** What was put in and stays; what is solved for does not. */
    private static Changes held(SolveProblem problem) {
        Changes held = problem.file().changes();
        for (InputPlace place : problem.key().places()) {
            held = held.without(place.input());
        }
        return held;
    }

    private SolveText text(SolveProblem problem) {
        return new SolveText(
                problem.key().place().input(),
                InputWords.name(problem.key().place().name()),
                problem.key().isCount(),
                held(problem),
                page.units,
                output.ink(page));
    }
}

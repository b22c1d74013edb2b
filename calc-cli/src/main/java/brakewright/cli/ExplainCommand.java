package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.internal.Nearest;
import brakewright.cli.text.ExplainText;
import brakewright.cli.text.RideWordText;
import brakewright.cli.text.WorkingText;
import brakewright.cli.words.RideWord;
import brakewright.explain.ResultId;
import brakewright.explain.Workings;
import brakewright.limit.LimitId;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints how one limit or one result came about. */
@Command(
        name = "explain",
        description =
                "Print how one limit or result came about: formula, numbers, result and source.",
        mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {

    @Mixin BuildArgument build = new BuildArgument();

    @Parameters(
            index = "1",
            paramLabel = "LIMIT|RESULT",
            completionCandidates = Offered.Explained.class,
            description = {
                "A limit: motor-drive-current, motor-brake-current, pack-discharge-current,"
                        + " pack-regen-current, low-voltage-taper, high-voltage-taper, speed-cap.",
                "Or a result: top-speed, launch, climb, time-to-cruise, sag, range, town-range,"
                        + " consumption, continuous-current, pull-time, recovery, pack-warming,"
                        + " pack-sharing, joining, first-stop-trip, hard-pull-trip,"
                        + " short-circuit-current.",
                "Or what a recorded ride tells, in words: ride-held-speed, ride-both-ways,"
                        + " ride-energy, ride-hard-changes, ride-limits-exceeded,"
                        + " ride-against-model, ride-pack-resistance, ride-capacity,"
                        + " ride-idle-power, ride-wheel-diameter, ride-rolling-and-drag,"
                        + " ride-coasting, ride-motor-kv, ride-regen-plateau."
            })
    String subject = "";

    @Mixin SituationOptions situation = new SituationOptions();

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        String key = subject.replace('_', '-');
        Optional<LimitId> limit = LimitId.ofKey(key);
        Optional<ResultId> result = ResultId.ofKey(key);
        Optional<RideWord> ridden = RideWord.ofKey(key);
        if (ridden.isPresent()) {
            build.read();
            spec.commandLine().getOut().print(new RideWordText(page.ink()).text(ridden.get()));
            return ExitStatus.FINE;
        }
        if (limit.isEmpty() && result.isEmpty()) {
            throw new Unusable(
                    "\""
                            + subject
                            + "\" is no limit and no result"
                            + nearest(key)
                            + ". All of them: brakewright explain --help");
        }
        BuildFile file = situation.applied(build.read());
        Worksheet sheet = Worksheet.of(file.build());
        spec.commandLine()
                .getOut()
                .print(
                        limit.isPresent()
                                ? new ExplainText(file, sheet, page.units, page.ink())
                                        .text(limit.get())
                                : new WorkingText(file, page.units, page.ink())
                                        .text(Workings.of(sheet, result.orElseThrow())));
        return ExitStatus.FINE;
    }

    /** The three names that are most like a misspelt one, where one is like it at all. */
    private static String nearest(String key) {
        List<String> names = new Offered.Explained().words().toList();
        List<String> first = Nearest.first(key, names);
        return Nearest.to(key, names).isEmpty()
                ? ""
                : "; the nearest are "
                        + first.get(0)
                        + ", "
                        + first.get(1)
                        + " and "
                        + first.get(2);
    }
}

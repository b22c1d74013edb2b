package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.cli.text.SweepText;
import brakewright.cli.text.SweptCase;
import brakewright.cli.words.Numbers;
import brakewright.profile.Measure;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.IntConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Evaluates a vehicle over every combination of varied keys. */
@Command(
        name = "sweep",
        description = "Evaluate the vehicle over every combination of varied keys.",
        mixinStandardHelpOptions = true)
final class SweepCommand implements Callable<Integer> {

    /** In which form the results are written. */
    enum Format {
        CSV,
        JSON
    }

    /** Assumption: our own choice; more would not fit the memory of a small machine. */
    private static final int MOST = 4_000_000;

    /** Shorter runs say nothing of speed [s]; our own choice. */
    private static final double TOLD_FROM = 1.0;

    @Mixin BuildArgument build = new BuildArgument();

    @Option(
            names = "--vary",
            paramLabel = "KEY=LOW..HIGH/N",
            required = true,
            description =
                    "A key and the values it takes, for example motor_brake_current=20A..60A/41;"
                            + " may be repeated. The first varies slowest.")
    List<String> vary = new ArrayList<>();

    @Option(
            names = "--report",
            paramLabel = "RESULT[@SPEED]",
            split = ",",
            completionCandidates = Offered.Results.class,
            description =
                    "Results to write besides the verdict, rows of a comparison, for example"
                            + " stop-dry@20km/h,range@24km/h,launch.")
    List<String> report = new ArrayList<>();

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "One of ${COMPLETION-CANDIDATES} (default: csv).")
    Format format = Format.CSV;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "How many threads work (default: one for each processor).")
    int threads = Runtime.getRuntime().availableProcessors();

    @Mixin SituationOptions situation = new SituationOptions();

    @Mixin OutputOptions output = new OutputOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws InterruptedException {
        BuildFile file = situation.applied(build.read());
        List<KeyRange> varied = KeyRange.parseAll("--vary", file.variations(), vary);
        situation.refuse(varied.stream().map(KeyRange::place).toList(), "--vary");
        if (threads < 1 || threads > 1024) {
            throw new Unusable("--threads must be from 1 to 1024, was " + threads);
        }
        List<Measure> reported =
                report.stream().map(each -> MeasureOption.read("--report", each)).toList();
        Sweep sweep = new Sweep(file, varied, reported);
        if (sweep.count() > MOST) {
            throw new Unusable(
                    "--vary asks for too many combinations; at most "
                            + MOST
                            + " are possible: take fewer values or fewer keys, for example"
                            + " motor_brake_current=20A..60A/41");
        }
        output.claim();
        long began = System.nanoTime();
        Duration before = processorTime();
        SweptCase[] results = swept(sweep);
        double wall = (System.nanoTime() - began) / 1e9;
        double busy = processorTime().minus(before).toNanos() / 1e9;
        List<String> names = varied.stream().map(each -> each.place().name()).toList();
        List<String> units =
                varied.stream().map(each -> each.place().input().unit().plain()).toList();
        SweepText text =
                new SweepText(
                        names,
                        units,
                        reported.stream().map(MeasureOption::column).toList(),
                        sweep::values,
                        results);
        output.write(
                format == Format.JSON ? text.json(file.title(), file.changes()) : text.csv(),
                spec.commandLine().getOut());
        report(sweep.count(), wall, busy);
        return ExitStatus.FINE;
    }

    private SweptCase[] swept(Sweep sweep) throws InterruptedException {
        if (System.console() == null) {
            return sweep.run(threads, done -> {});
        }
        try (ProgressBar bar =
                new ProgressBarBuilder()
                        .setTaskName("sweep")
                        .setInitialMax(sweep.count())
                        .setStyle(ProgressBarStyle.ASCII)
                        .build()) {
            IntConsumer done = bar::stepTo;
            return sweep.run(threads, done);
        }
    }

    /** To standard error, so that results can be piped on. */
    private void report(int count, double wall, double busy) {
        PrintWriter err = spec.commandLine().getErr();
        err.printf(Locale.ROOT, "%d cases in %s by %d threads", count, Numbers.time(wall), threads);
        if (wall >= TOLD_FROM) {
            err.printf(
                    Locale.ROOT,
                    ", %.0f us each; %.2f processors kept busy",
                    1e6 * wall / count,
                    busy / wall);
        }
        err.println();
        err.flush();
    }

    private static Duration processorTime() {
        return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    }
}

package brakewright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;

/**
 * A spoiled command line about a spoiled build file, and what the program must make of any such: an
 * answer or a message, in time.
 *
 * @param seed from which it was drawn
 * @param build the text of the build file
 * @param arguments with words in place of paths
 * @param recording the text of a recording
 */
record HostileCase(long seed, String build, List<String> arguments, String recording) {

    /** Longer than this nobody waits for one answer [s]. */
    private static final double LONGEST = 2.0;

    /** A case that takes longer will not end at all [s]. */
    private static final long HANGS = 120;

    /** So many times a slow case is run again. */
    private static final int AGAIN = 5;

    /** So many runs are spent on making a case smaller. */
    private static final int MOST_SHRINKS = 400;

    private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b|∞|\ufffd");

    private static final Pattern TRACE = Pattern.compile("\tat |Exception");

    private static final String OTHER_NAME = "=other\u202e|\n.toml";

    /** What a case came to. */
    record Outcome(double seconds, Optional<String> fault) {

        private boolean isSlow() {
            return fault.isEmpty() && seconds > LONGEST;
        }
    }

    static HostileCase draw(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        boolean sane = random.nextInt(3) > 0;
        String build = HostileBuild.text(random, sane);
        List<String> arguments = HostileArguments.draw(random, sane);
        return new HostileCase(seed, build, arguments, HostileRecording.text(random));
    }

    /** Runs it, however long it takes. */
    Outcome run(Path folder) {
        return runOnce(folder);
    }

    /** Runs it; a slow one some times more, as the first of its kind is compiled on the way. */
    Outcome runInTime(Path folder) {
        Outcome outcome = runOnce(folder);
        for (int again = 0; again < AGAIN && outcome.isSlow(); again++) {
            outcome = runOnce(folder);
        }
        return outcome.isSlow()
                ? new Outcome(outcome.seconds(), Optional.of("slower than 2 s"))
                : outcome;
    }

    private Outcome runOnce(Path folder) {
        String[] real = written(folder);
        try {
            return inTime(() -> timed(real));
        } catch (ExecutionException thrown) {
            Throwable cause = thrown.getCause() == null ? thrown : thrown.getCause();
            return new Outcome(
                    0.0,
                    isOfTheTomlLibrary(cause)
                            ? Optional.empty()
                            : Optional.of("threw " + cause + " " + place(cause)));
        } catch (TimeoutException hung) {
            return new Outcome(HANGS, Optional.of("does not end"));
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    /** Processor time of this process: what else a machine is busy with does not count. */
    private Outcome timed(String[] real) {
        Duration began = processorTime();
        CommandRun run = CommandRun.of(real);
        return new Outcome(processorTime().minus(began).toNanos() / 1e9, fault(run));
    }

    private static Duration processorTime() {
        return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    }

    private static Outcome inTime(Callable<Outcome> run)
            throws ExecutionException, TimeoutException, InterruptedException {
        ExecutorService thread =
                Executors.newSingleThreadExecutor(
                        work -> {
                            Thread made = new Thread(work, "hostile-case");
                            made.setDaemon(true);
                            return made;
                        });
        try {
            return thread.submit(run).get(HANGS, TimeUnit.SECONDS);
        } finally {
            thread.shutdownNow();
        }
    }

    /**
     * The TOML library's own assertions are on in tests only, and say nothing about the program.
     */
    private static boolean isOfTheTomlLibrary(Throwable cause) {
        return cause instanceof AssertionError
                && cause.getStackTrace().length > 0
                && cause.getStackTrace()[0].getClassName().startsWith("org.tomlj.");
    }

    private static String place(Throwable cause) {
        StackTraceElement[] trace = cause.getStackTrace();
        return trace.length == 0 ? "" : "at " + trace[0];
    }

    private String[] written(Path folder) {
        try {
            Path build = Files.writeString(folder.resolve("build.toml"), build());
            Path other = folder.resolve(OTHER_NAME);
            if (!Files.exists(other)) {
                Files.writeString(other, Example.TRIKE.text());
            }
            Path ride = Files.writeString(folder.resolve("ride.csv"), recording());
            Path output = folder.resolve("output");
            Files.deleteIfExists(output);
            return arguments.stream()
                    .map(
                            each ->
                                    each.replaceFirst("BUILD$", build.toString())
                                            .replaceFirst("OTHER$", other.toString())
                                            .replaceFirst("RECORDING$", ride.toString())
                                            .replaceFirst("OUTPUT$", output.toString()))
                    .toArray(String[]::new);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private Optional<String> fault(CommandRun run) {
        if (run.status() < 0 || run.status() > 2) {
            return Optional.of("status " + run.status() + ": " + run.err().replace('\n', ' '));
        }
        for (String printed : List.of(run.out(), run.err())) {
            Optional<String> fault = faultOfText(printed);
            if (fault.isPresent()) {
                return fault;
            }
        }
        if (run.status() == 2) {
            return run.err().isBlank()
                    ? Optional.of("refused without a message")
                    : run.out().isEmpty() || arguments.contains("--inspect")
                            ? Optional.empty()
                            : Optional.of("refused, but printed");
        }
        if (!run.err().isEmpty() && !arguments.get(0).equals("sweep")) {
            return Optional.of("answered, with a message: " + run.err());
        }
        return run.out().startsWith("{") ? faultOfJson(run.out()) : Optional.empty();
    }

    private Optional<String> faultOfText(String printed) {
        if (TRACE.matcher(printed).find()) {
            return Optional.of("speaks of an exception: " + printed);
        }
        var noNumber = NO_NUMBER.matcher(printed);
        if (noNumber.find() && !String.join(" ", arguments).contains(noNumber.group())) {
            int at = noNumber.start();
            return Optional.of(
                    "prints "
                            + printed.substring(
                                    Math.max(0, at - 60), Math.min(printed.length(), at + 40)));
        }
        return printed.replace("\r\n", "\n")
                .codePoints()
                .filter(point -> point != '\n')
                .filter(
                        point ->
                                Character.isISOControl(point)
                                        || Character.getType(point) == Character.FORMAT)
                .mapToObj(point -> "prints U+" + Integer.toHexString(point))
                .findFirst();
    }

    private static Optional<String> faultOfJson(String json) {
        try {
            JsonMaps.read(json);
            return Optional.empty();
        } catch (UncheckedIOException | AssertionError wrong) {
            return Optional.of("is no JSON: " + wrong.getMessage());
        }
    }

    /** The smallest case found that fails alike: fewer arguments, then fewer lines. */
    HostileCase shrunk(Path folder, String fault) {
        HostileCase least = this;
        int tries = 0;
        boolean progress = true;
        while (progress && tries < MOST_SHRINKS) {
            progress = false;
            for (HostileCase smaller : least.smaller()) {
                if (++tries > MOST_SHRINKS) {
                    break;
                }
                Optional<String> own = smaller.runInTime(folder).fault();
                if (own.isPresent() && kind(own.get()).equals(kind(fault))) {
                    least = smaller;
                    progress = true;
                    break;
                }
            }
        }
        return least;
    }

    private List<HostileCase> smaller() {
        List<HostileCase> all = new ArrayList<>();
        for (int i = arguments.size() - 1; i > 0; i--) {
            List<String> fewer = new ArrayList<>(arguments);
            if (fewer.get(i).startsWith("--") && i + 1 < fewer.size()) {
                fewer.remove(i + 1);
            }
            fewer.remove(i);
            all.add(new HostileCase(seed, build, fewer, recording));
        }
        List<String> lines = build.lines().toList();
        for (int count = lines.size() / 2; count > 0; count /= 2) {
            for (int from = 0; from < lines.size(); from += count) {
                List<String> fewer = new ArrayList<>(lines);
                fewer.subList(from, Math.min(fewer.size(), from + count)).clear();
                all.add(
                        new HostileCase(
                                seed, String.join("\n", fewer) + "\n", arguments, recording));
            }
        }
        List<String> rows = recording.lines().toList();
        for (int count = rows.size() / 2; count > 0; count /= 2) {
            for (int from = 0; from < rows.size(); from += count) {
                List<String> fewer = new ArrayList<>(rows);
                fewer.subList(from, Math.min(fewer.size(), from + count)).clear();
                all.add(new HostileCase(seed, build, arguments, String.join("\n", fewer) + "\n"));
            }
        }
        return all;
    }

    /** What faults of one cause have in common. */
    static String kind(String fault) {
        return fault.replaceAll("[0-9.e+-]+", "#").replaceAll("(?s)(.{60}).*", "$1");
    }

    /** How to see it again. */
    String told() {
        String text = build.length() > 4000 ? build.substring(0, 4000) + "…" : build;
        return "seed "
                + seed
                + " (mvn -Pexplore -Dtest=HostileInputExplore -Dbrakewright.fuzz.cases=1"
                + " -Dbrakewright.explore.seed="
                + seed
                + ")\narguments "
                + arguments
                + "\n"
                + text
                + (arguments.contains(HostileArguments.RECORDING) ? "\n" + recording : "");
    }
}

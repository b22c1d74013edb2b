package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputNumber;
import brakewright.buildfile.Problem;
import brakewright.cli.doubt.Vehicles;
import brakewright.cli.json.InspectJson;
import brakewright.cli.json.RideJson;
import brakewright.cli.json.RouteJson;
import brakewright.cli.recording.ColumnChoice;
import brakewright.cli.recording.Inspection;
import brakewright.cli.recording.Recordings;
import brakewright.cli.recording.RouteFile;
import brakewright.cli.recording.SeriesFile;
import brakewright.cli.recording.WrittenNumber;
import brakewright.cli.report.RideReport;
import brakewright.cli.text.Ink;
import brakewright.cli.text.InspectText;
import brakewright.cli.text.Manuscript;
import brakewright.cli.text.RideText;
import brakewright.cli.text.RouteText;
import brakewright.cli.words.FitWords;
import brakewright.fitting.Fit;
import brakewright.fitting.Fits;
import brakewright.limit.Signal;
import brakewright.recording.CellVolts;
import brakewright.recording.Exceeded;
import brakewright.recording.HeldLimits;
import brakewright.recording.Quantity;
import brakewright.recording.Ride;
import brakewright.replay.AgainstModel;
import brakewright.replay.RecordedRoad;
import brakewright.replay.Route;
import brakewright.replay.RouteEnd;
import brakewright.replay.RouteRide;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Settings;
import brakewright.tables.ReferenceTables;
import brakewright.worksheet.Worksheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what a recorded ride was, and where it went beyond the limits of the vehicle. */
@Command(
        name = "ride",
        description = {
            "Tell what a recorded ride was, and where it went beyond the limits of the vehicle.",
            "Several files are pieces of one ride on one charge. With --route it predicts a ride."
        },
        mixinStandardHelpOptions = true)
final class RideCommand implements Callable<Integer> {

    /** A list of pairs is parted only before a name and its sign: heads may have commas. */
    private static final String PAIRS = ",(?=[A-Za-z_-]+=)";

    private static final double LEAST_HOLD = 0.1;
    private static final double MOST_HOLD = 3600.0;
    private static final double LONGEST_PIECE = 1e7;

    /** Which way the current of the files counts. */
    enum Sign {
        OUT_OF_PACK_POSITIVE,
        OUT_OF_PACK_NEGATIVE;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    @Parameters(
            index = "0..*",
            arity = "1..*",
            paramLabel = "BUILD|FILE",
            description =
                    "The build file, then one or more recordings (CSV); with --inspect the build file"
                            + " (.toml, .json or -) may be left out.")
    List<Path> files = new ArrayList<>();

    @Option(
            names = "--inspect",
            description =
                    "Print what each column of the recordings is taken for, and why; behind a build"
                            + " file as its table [recording] tells.")
    boolean inspect;

    @Option(
            names = "--columns",
            paramLabel = "QUANTITY=HEAD[,QUANTITY=HEAD...]",
            hideParamSyntax = true,
            split = PAIRS,
            description =
                    "Which column holds a quantity, for example"
                            + " time=Timestamp,wheel_speed=\"Velocity [km/h]\"; may be repeated.")
    List<String> columns = new ArrayList<>();

    @Option(
            names = "--column-units",
            paramLabel = "QUANTITY=UNIT[,QUANTITY=UNIT...]",
            hideParamSyntax = true,
            split = PAIRS,
            description = "In which unit a column is, for example wheel_speed=km/h.")
    List<String> units = new ArrayList<>();

    @Option(
            names = "--current-sign",
            paramLabel = "SIGN",
            description =
                    "How the files count the pack current, one of ${COMPLETION-CANDIDATES}"
                            + " (default: as braking and the voltage show it).")
    @Nullable Sign sign;

    @Option(
            names = "--piece",
            paramLabel = "DISTANCE",
            description =
                    "A part of the ride that was not recorded and of which only the distance is"
                            + " known, for example 5.3km; may be repeated.")
    List<String> pieces = new ArrayList<>();

    @Option(
            names = "--hold",
            paramLabel = "TIME",
            description = "How long a speed must last to count as held (default: 3s).")
    String hold = "3s";

    @Option(
            names = "--route",
            paramLabel = "FILE",
            description =
                    "Predict a ride instead: a CSV file with columns distance, altitude, speed and"
                            + " perhaps stop, their units in brackets; or a recording, whose own"
                            + " speeds are then allowed.")
    @Nullable Path route;

    @Option(
            names = "--charge",
            paramLabel = "CHARGE",
            description = "With --route: the charge at its beginning (default: use.charge_from).")
    @Nullable String charge;

    @Option(
            names = "--rider",
            paramLabel = "MASS",
            description = "With --route: the mass of the rider, for example 95kg.")
    @Nullable String rider;

    @Option(
            names = "--series",
            paramLabel = "FILE",
            description =
                    "Write the cleaned and joined recording as CSV; with --route the predicted ride.")
    @Nullable Path series;

    @Option(
            names = "--write",
            paramLabel = "FILE",
            description =
                    "Write a new build file with what the ride says of the vehicle; the one that"
                            + " was read stays as it is.")
    @Nullable Path write;

    @Mixin DocumentOption form = new DocumentOption();

    @Mixin SituationOptions situation = new SituationOptions();

    @Mixin OutputOptions output = new OutputOptions();

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        if (route != null) {
            return predicted(route);
        }
        if (charge != null || rider != null) {
            throw new Unusable("--charge and --rider belong to --route");
        }
        if (inspect && write != null) {
            throw new Unusable("--write belongs to a ride, not to --inspect");
        }
        return inspect ? inspected() : ridden();
    }

    private int predicted(Path road) {
        if (inspect || write != null || !pieces.isEmpty() || files.size() != 1) {
            throw new Unusable(
                    "--route takes a build file alone, for example brakewright ride board.toml"
                            + " --route road.csv: no recording, --inspect, --write or --piece");
        }
        BuildFile file = situation.applied(BuildArgument.read(files.get(0)));
        claim();
        Build build = changed(file.build());
        RouteRide ride = RouteRide.of(build, route(file, road));
        Path target = series;
        if (target != null) {
            output.write(target, draft -> SeriesFile.write(ride, draft));
        }
        output.write(
                form.told(
                        () ->
                                new RouteText(file.title(), ride, page.units, output.ink(page))
                                        .text(),
                        () -> new RouteJson(file.title(), ride).text(),
                        () -> {
                            Manuscript written = new Manuscript();
                            new RouteText(file.title(), ride, page.units, written.ink()).text();
                            return RideReport.predicted(
                                    file.title(),
                                    written.pieces(),
                                    ride,
                                    Worksheet.of(build),
                                    page.units);
                        }),
                spec.commandLine().getOut());
        return ride.end() == RouteEnd.ARRIVES && ride.beyond().isEmpty()
                ? ExitStatus.FINE
                : ExitStatus.OUTSIDE;
    }

    private Build changed(Build build) {
        Build changed = build;
        try {
            if (rider != null) {
                double mass = InputNumber.read("--rider", Input.RIDER_MASS, rider);
                changed = changed.withRider(build.rider().withMass(mass));
            }
            if (charge != null) {
                double from = InputNumber.read("--charge", Input.USE_CHARGE_FROM, charge);
                if (!(from > build.use().chargeTo())) {
                    throw new Unusable("--charge is not above use.charge_to");
                }
                changed = changed.withUse(build.use().withChargeFrom(from));
            }
        } catch (BuildFileException wrong) {
            throw new Unusable("the command line", wrong);
        }
        return changed;
    }

    private Route route(BuildFile file, Path road) {
        requireFile(road);
        ColumnChoice choice = choice(file, told());
        try {
            return RouteFile.isRecording(road, choice)
                    ? recorded(road, choice)
                    : RouteFile.read(road);
        } catch (IOException unreadable) {
            throw new Unusable(road + ": the file cannot be read", unreadable);
        } catch (BuildFileException wrong) {
            throw new Unusable(road.toString(), wrong);
        }
    }

    private Route recorded(Path road, ColumnChoice choice) {
        Recordings read = recordings(List.of(road), choice);
        return Ride.of(read.recording(), told().hold(), 0.0, read.repairs())
                .flatMap(RecordedRoad::of)
                .orElseThrow(() -> new Unusable(road + ": nothing was ridden there"));
    }

    private int inspected() {
        if (!form.isText() && !form.isJson()) {
            throw new Unusable("--inspect is told as text or json");
        }
        boolean hasBuild = isBuild(files.get(0));
        List<Path> recordings = hasBuild ? files.subList(1, files.size()) : files;
        if (recordings.isEmpty()) {
            throw new Unusable(
                    "no recording is named; --inspect wants one or more, for example brakewright"
                            + " ride --inspect straight.csv");
        }
        Told told = told();
        Inspection found =
                inspected(
                        recordings,
                        hasBuild
                                ? choice(situation.applied(BuildArgument.read(files.get(0))), told)
                                : told.choice());
        if (found.read().isPresent() || output.file == null) {
            output.write(
                    form.isJson()
                            ? new InspectJson(found).text()
                            : new InspectText(found, output.ink(page)).text(),
                    spec.commandLine().getOut());
        }
        usable(found, recordings);
        return ExitStatus.FINE;
    }

    /** Recordings are CSV; what ends as build files do, or is standard input, is one. */
    private static boolean isBuild(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".toml") || name.endsWith(".json") || name.equals("-");
    }

    private int ridden() {
        if (files.size() < 2) {
            throw new Unusable(
                    "no recording is named; behind the build file one or more are wanted, for"
                            + " example brakewright ride board.toml straight.csv");
        }
        BuildFile file = situation.applied(BuildArgument.read(files.get(0)));
        Told told = told();
        claim();
        Recordings read = recordings(files.subList(1, files.size()), choice(file, told));
        Ride ride =
                Ride.of(
                                CellVolts.leftOut(
                                        read.recording(), file.build().battery(), read.repairs()),
                                told.hold(),
                                told.unrecorded(),
                                read.repairs())
                        .orElseThrow(
                                () ->
                                        new Unusable(
                                                "no speed, no position and no distance is left in"
                                                        + " the recording"));
        HeldLimits held = HeldLimits.of(file.build(), ride);
        Vehicles vehicles = Vehicles.of(file);
        Optional<AgainstModel> model =
                AgainstModel.of(
                        file.build(), ride, vehicles.ranges(), vehicles.under(Settings.NONE));
        Fits fits = Fits.of(file.build(), ride);
        writeBuild(fits);
        Path target = series;
        if (target != null) {
            output.write(target, draft -> SeriesFile.write(ride.recording(), draft));
        }
        output.write(
                form.told(
                        () -> text(file, read, ride, held, model, fits, output.ink(page)),
                        () -> new RideJson(file.title(), read, ride, held, model, fits).text(),
                        () -> {
                            Manuscript written = new Manuscript();
                            text(file, read, ride, held, model, fits, written.ink());
                            return RideReport.recorded(
                                    file.title(),
                                    written.pieces(),
                                    ride,
                                    model,
                                    Worksheet.of(file.build()),
                                    page.units);
                        }),
                spec.commandLine().getOut());
        return held.exceeded().stream().anyMatch(RideCommand::isOutside)
                ? ExitStatus.OUTSIDE
                : ExitStatus.FINE;
    }

    private String text(
            BuildFile file,
            Recordings read,
            Ride ride,
            HeldLimits held,
            Optional<AgainstModel> model,
            Fits fits,
            Ink ink) {
        return new RideText(file.title(), read, ride, held, model, fits, page.units, ink).text();
    }

    /** Nothing is written where the ride says nothing that a build file holds. */
    private void writeBuild(Fits fits) {
        Path target = write;
        if (target == null) {
            return;
        }
        Map<String, String> values = new LinkedHashMap<>();
        for (Fit.Found fit : fits.preferred()) {
            FitWords.key(fit.what()).ifPresent(key -> values.put(key, FitWords.literal(fit)));
        }
        if (values.isEmpty()) {
            throw new Unusable(
                    target + ": not written, the ride says nothing that a build file holds");
        }
        try {
            String text =
                    BuildFile.rewritten(
                            Files.readAllBytes(files.get(0)), values, ReferenceTables.load());
            output.write(target, draft -> draft.write(text));
        } catch (IOException unreadable) {
            throw new Unusable(files.get(0) + ": the file cannot be read again", unreadable);
        } catch (BuildFileException wrong) {
            throw new Unusable(target + ": not written", wrong);
        }
    }

    /** A caution bears on no verdict. */
    private static boolean isOutside(Exceeded exceeded) {
        return exceeded.boundBy().filter(by -> by.signal() == Signal.CAUTION).isEmpty();
    }

    private void claim() {
        output.claim();
        Set<Path> claimed = new HashSet<>();
        for (Path target :
                Stream.of(output.file, series, write).filter(Objects::nonNull).toList()) {
            if (!claimed.add(target.toAbsolutePath().normalize())) {
                throw new Unusable(target + ": --series, --write and --output name one file");
            }
            output.claim(target);
        }
    }

    /**
     * What options tell.
     *
     * @param unrecorded of parts of the ride [m]
     * @param hold how long a speed must last [s]
     * @param choice of columns
     */
    private record Told(double unrecorded, double hold, ColumnChoice choice) {}

    private Told told() {
        List<Problem> problems = new ArrayList<>();
        double unrecorded = 0.0;
        for (String piece : pieces) {
            unrecorded += number("--piece", Quantity.DISTANCE, 0.0, LONGEST_PIECE, piece, problems);
        }
        double seconds = number("--hold", Quantity.TIME, LEAST_HOLD, MOST_HOLD, hold, problems);
        ColumnChoice choice = ColumnChoice.NONE;
        try {
            choice = ColumnChoice.read(columns, units);
        } catch (BuildFileException wrong) {
            problems.addAll(wrong.problems());
        }
        if (!problems.isEmpty()) {
            throw new Unusable("the command line", new BuildFileException(problems));
        }
        return new Told(unrecorded, seconds, choice);
    }

    /** NaN where the text is none, which is then among the problems. */
    private static double number(
            String option,
            Quantity quantity,
            double least,
            double most,
            String text,
            List<Problem> problems) {
        try {
            return WrittenNumber.read(option, quantity, least, most, text);
        } catch (BuildFileException wrong) {
            problems.addAll(wrong.problems());
            return Double.NaN;
        }
    }

    private static void requireFile(Path path) {
        if (!Files.isRegularFile(path) || path.toString().isEmpty()) {
            throw new Unusable(
                    (path.toString().isEmpty() ? "\"\"" : path)
                            + (Files.exists(path)
                                    ? ": this is no ordinary file"
                                    : ": there is no such file"));
        }
    }

    /** What options tell goes before what the build file tells. */
    private ColumnChoice choice(BuildFile file, Told told) {
        if (sign == null) {
            sign =
                    Optional.ofNullable(file.recording().get("current_sign"))
                            .map(
                                    word ->
                                            Sign.valueOf(
                                                    word.replace('-', '_')
                                                            .toUpperCase(Locale.ROOT)))
                            .orElse(null);
        }
        return ColumnChoice.ofBuild(file.recording()).overlaidBy(told.choice());
    }

    private Recordings recordings(List<Path> paths, ColumnChoice choice) {
        return usable(inspected(paths, choice), paths);
    }

    private static Recordings usable(Inspection found, List<Path> paths) {
        try {
            return found.usable();
        } catch (BuildFileException wrong) {
            throw new Unusable(
                    paths.size() == 1 ? paths.get(0).toString() : "the recordings", wrong);
        }
    }

    private Inspection inspected(List<Path> paths, ColumnChoice choice) {
        paths.forEach(RideCommand::requireFile);
        try {
            return Inspection.of(
                    paths,
                    choice,
                    Optional.ofNullable(sign).map(Sign.OUT_OF_PACK_POSITIVE::equals));
        } catch (IOException unreadable) {
            throw new Unusable("the recording cannot be read", unreadable);
        }
    }
}

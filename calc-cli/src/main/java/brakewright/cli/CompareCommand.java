package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Changes;
import brakewright.buildfile.InputNumber;
import brakewright.buildfile.internal.Nearest;
import brakewright.cli.doubt.Tolerated;
import brakewright.cli.doubt.Vehicles;
import brakewright.cli.html.HtmlText;
import brakewright.cli.json.ComparisonJson;
import brakewright.cli.report.SetsReport;
import brakewright.cli.text.CompareSheet;
import brakewright.cli.text.CompareText;
import brakewright.cli.text.Ink;
import brakewright.cli.text.Manuscript;
import brakewright.cli.words.MeasureWords;
import brakewright.profile.Comparison;
import brakewright.profile.JudgedProfile;
import brakewright.profile.Measure;
import brakewright.profile.Profile;
import brakewright.spec.Input;
import brakewright.worksheet.Worksheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts several profiles side by side. */
@Command(
        name = "compare",
        description = {
            "Put the present settings, proposals and other build files side by side.",
            "Keys of [use] given by --with hold for every column; settings given by --with, and"
                    + " --proposal, make a column of their own, \"as asked\"."
        },
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {

    /** In which form the comparison is printed. */
    enum Format {
        TEXT,
        JSON,
        MARKDOWN,
        HTML,
        CSV
    }

    private static final String PRESENT = "present";

    /** The column of what the command line asks for. */
    private static final String ASKED = "as asked";

    @Mixin BuildArgument build = new BuildArgument();

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "NAME",
            description = "Proposals of the build file; left out, all of them.")
    List<String> names = new ArrayList<>();

    @Option(
            names = "--also",
            paramLabel = "FILE",
            description =
                    "Another build file as a column of its own, for another motor, pack or wheel;"
                            + " may be repeated.")
    List<Path> others = new ArrayList<>();

    @Option(
            names = "--only",
            paramLabel = "ROW",
            split = ",",
            completionCandidates = Offered.Results.class,
            description = "Show these rows only, for example stop-dry,top-speed,range@20km/h.")
    List<String> only = new ArrayList<>();

    @Option(
            names = "--charge",
            paramLabel = "CHARGE",
            description =
                    "The charge at which stops begin, for example 70%%; left out, the fullest pack in"
                            + " use of each column.")
    @Nullable String charge;

    @Option(
            names = "--sort",
            paramLabel = "ROW",
            completionCandidates = Offered.Results.class,
            description = "Order the columns by a row, best first; left out, as given.")
    @Nullable String sort;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "One of ${COMPLETION-CANDIDATES} (default: text).")
    Format format = Format.TEXT;

    @Mixin StrictOption strict = new StrictOption();

    @Mixin SituationOptions situation = new SituationOptions();

    @Mixin OutputOptions output = new OutputOptions();

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        BuildFile file = build.read();
        List<Column> columns = columns(file);
        OptionalDouble stopCharge = stopCharge();
        Comparison whole =
                Comparison.ofJudged(
                        columns.stream().map(Column::judged).toList(),
                        stopCharge,
                        only.stream()
                                .flatMap(word -> MeasureOption.ifAny(word).stream())
                                .filter(measure -> measure.speed().isPresent())
                                .toList());
        Comparison comparison = chosen(sorted(whole));
        List<Column> ordered = inOrder(columns, comparison);
        List<JudgedProfile> judged = ordered.stream().map(Column::judged).toList();
        List<Changes> changes = ordered.stream().map(Column::changes).toList();
        output.write(
                switch (format) {
                    case TEXT ->
                            text(file, comparison, judged, changes, stopCharge, output.ink(page));
                    case HTML -> {
                        Manuscript written = new Manuscript();
                        text(file, comparison, judged, changes, stopCharge, written.ink());
                        yield HtmlText.of(
                                SetsReport.of(
                                        file.title(),
                                        "Profiles side by side",
                                        written.pieces(),
                                        sheets(comparison.profiles()),
                                        page.units));
                    }
                    case JSON -> ComparisonJson.of(file.title(), comparison, judged, changes);
                    case MARKDOWN ->
                            output.ink(page).settle(CompareSheet.markdown(comparison, page.units));
                    case CSV -> CompareSheet.csv(comparison);
                },
                spec.commandLine().getOut());
        return status(columns);
    }

    private String text(
            BuildFile file,
            Comparison comparison,
            List<JudgedProfile> judged,
            List<Changes> changes,
            OptionalDouble stopCharge,
            Ink ink) {
        return new CompareText(
                        file.title(), comparison, judged, changes, stopCharge, page.units, ink)
                .text();
    }

    /** As they are drawn, each by a name of its own. */
    private static Map<String, Worksheet> sheets(List<Profile> profiles) {
        Map<String, Worksheet> sheets = new LinkedHashMap<>();
        for (Profile profile : profiles) {
            String name = profile.name();
            while (sheets.containsKey(name)) {
                name += "'";
            }
            sheets.put(name, Worksheet.of(profile.build()));
        }
        return sheets;
    }

    /**
     * One column.
     *
     * @param judged the profile with its verdict
     * @param changes what was put in place of values of its file
     */
    private record Column(JudgedProfile judged, Changes changes) {}

    /** The worst of all verdicts decides. */
    private int status(List<Column> columns) {
        return columns.stream()
                .map(Column::judged)
                .mapToInt(each -> strict.status(each.evaluation().outcome(), each.brake().word()))
                .max()
                .orElse(ExitStatus.FINE);
    }

    /** In the order of the comparison, which may have been sorted. */
    private static List<Column> inOrder(List<Column> columns, Comparison comparison) {
        return comparison.profiles().stream()
                .map(
                        profile ->
                                columns.stream()
                                        .filter(column -> column.judged().profile() == profile)
                                        .findFirst()
                                        .orElseThrow())
                .toList();
    }

    private static Column column(String name, BuildFile file) {
        Profile profile = new Profile(name, file.build());
        try {
            return new Column(
                    new JudgedProfile(
                            profile,
                            Vehicles.of(file).situation(),
                            Tolerated.worst(file).orElse(profile.build())),
                    file.changes());
        } catch (BuildFileException wrong) {
            throw new Unusable("the tolerances reach values that do not go together", wrong);
        }
    }

    /** A use that was typed holds for every column; settings, and a proposal, make one more. */
    private List<Column> columns(BuildFile file) {
        Changes use = situation.typed().ofUse();
        List<Column> columns = new ArrayList<>();
        columns.add(column(PRESENT, SituationOptions.applied(file, use)));
        for (String name : names.isEmpty() ? List.copyOf(file.proposals().keySet()) : names) {
            Changes changes = SituationOptions.proposal(file, name).overlaidBy(use);
            columns.add(column(name, SituationOptions.applied(file, changes)));
        }
        Changes asked = situation.changes(file);
        if (situation.proposal != null || !asked.ofSettings().isNone()) {
            columns.add(column(ASKED, SituationOptions.applied(file, asked)));
        }
        for (Path other : others) {
            columns.add(
                    column(named(other), SituationOptions.applied(BuildArgument.read(other), use)));
        }
        if (columns.size() == 1) {
            throw new Unusable(
                    "nothing to compare with: the file has no [proposals.NAME]; add one, give"
                            + " --with SETTING=VALUE, or name another build file with --also FILE");
        }
        return columns;
    }

    private static String named(Path path) {
        String name = String.valueOf(path.getFileName());
        return name.endsWith(".toml") ? name.substring(0, name.length() - 5) : name;
    }

    private OptionalDouble stopCharge() {
        if (charge == null) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(InputNumber.read("--charge", Input.USE_CHARGE_FROM, charge));
        } catch (BuildFileException wrong) {
            throw new Unusable("--charge", wrong);
        }
    }

    private Comparison sorted(Comparison comparison) {
        if (sort == null) {
            return comparison;
        }
        return comparison.sortedBy(rows(comparison, sort).get(0).measure());
    }

    private Comparison chosen(Comparison comparison) {
        if (only.isEmpty()) {
            return comparison;
        }
        Set<Comparison.Row> rows = new LinkedHashSet<>();
        for (String key : only) {
            rows.addAll(rows(comparison, key));
        }
        return new Comparison(comparison.profiles(), List.copyOf(rows));
    }

    /** The rows that a word means: one, or those of all speeds. */
    private static List<Comparison.Row> rows(Comparison comparison, String word) {
        String key = word.strip();
        Optional<Measure> named = MeasureOption.ifAny(key);
        List<Comparison.Row> rows =
                comparison.rows().stream()
                        .filter(
                                row ->
                                        MeasureWords.key(row.measure()).equals(key)
                                                || row.measure().quantity().key().equals(key)
                                                || named.filter(row.measure()::equals).isPresent())
                        .toList();
        if (rows.isEmpty()) {
            Set<String> known =
                    comparison.rows().stream()
                            .map(row -> MeasureWords.key(row.measure()))
                            .collect(Collectors.toCollection(TreeSet::new));
            throw new Unusable(
                    "\""
                            + key
                            + "\" is no row; "
                            + Nearest.to(key, known)
                                    .map(nearest -> "the nearest is " + nearest + "; ")
                                    .orElse("")
                            + "there are "
                            + String.join(", ", known));
        }
        return rows;
    }
}

package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Profiles side by side, through the command line. */
class CompareCommandTest {

    private static final String BOARD = Example.TRAIL_BOARD.path();

    @TempDir Path folder = Path.of("");

    private BuildFolder builds = new BuildFolder(folder);

    @BeforeEach
    void openFolder() {
        builds = new BuildFolder(folder);
    }

    private static CommandRun compare(String build, String... options) {
        return CommandRun.of(
                Stream.concat(Stream.of("compare", build), Stream.of(options))
                        .toArray(String[]::new));
    }

    private static List<String> columns(CommandRun json) {
        return JsonMaps.objects(JsonMaps.read(json.out()), "profiles").stream()
                .map(profile -> JsonMaps.text(profile, "name"))
                .toList();
    }

    private static List<String> rows(CommandRun json) {
        return JsonMaps.objects(JsonMaps.read(json.out()), "rows").stream()
                .map(row -> JsonMaps.text(row, "id"))
                .toList();
    }

    private static List<Map<String, Object>> told(CommandRun json) {
        return JsonMaps.objects(JsonMaps.read(json.out()), "rows");
    }

    private static List<CsvRecord> records(String csv) throws IOException {
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(csv)) {
            return reader.stream().toList();
        }
    }

    @Test
    void showsEveryProposalUnlessSomeAreNamed() {
        assertThat(columns(compare(BOARD, "--format", "json")))
                .containsExactly("present", "firmer-brake", "firmer-brake-more-regen");
        assertThat(columns(compare(BOARD, "firmer-brake-more-regen", "--format", "json")))
                .containsExactly("present", "firmer-brake-more-regen");
        assertThat(
                        columns(
                                compare(
                                        BOARD,
                                        "firmer-brake-more-regen",
                                        "firmer-brake",
                                        "--format",
                                        "json")))
                .containsExactly("present", "firmer-brake-more-regen", "firmer-brake");
    }

    @Test
    void showsAnotherFileAsAColumnNamedAfterIt() {
        CommandRun run =
                compare(
                        BOARD,
                        "firmer-brake",
                        "--also",
                        Example.TRIKE.path(),
                        "--also",
                        BuildFolder.TOUR_BOARD,
                        "--format",
                        "json");
        assertThat(columns(run))
                .containsExactly("present", "firmer-brake", "parcel-trike", "salt-flat-tour-board");
    }

    @Test
    void aFileWithoutProposalsIsHeldAgainstAnother() {
        CommandRun run = compare(Example.TRIKE.path(), "--also", BOARD, "--format", "json");
        assertThat(columns(run)).containsExactly("present", "vineyard-trail-board");
        assertThat(run.status()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "firmer, firmer-brake",
        "present, firmer-brake",
        "'', firmer-brake",
        "FIRMER-BRAKE, firmer-brake-more-regen"
    })
    void refusesAProposalThatIsNotThereAndTellsThoseThatAre(String name, String told) {
        CommandRun run = compare(BOARD, name);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("\"" + name + "\"", told);
    }

    /** A profile outside limits has no best value; what it buys is not to be had. */
    @Test
    void nothingIsBestInAColumnOutsideLimits() {
        CommandRun run = compare(BuildFolder.TOUR_BOARD, "--only", "stop-dry,launch");
        assertThat(run.out())
                .contains("firm: not ranked, as it is outside limits")
                .containsPattern("present: stop from 12 km/h, dry; .*launch");
        for (Map<String, Object> row : told(compare(BuildFolder.TOUR_BOARD, "--format", "json"))) {
            assertThat(JsonMaps.objects(row, "readings").get(2)).doesNotContainKey("best");
        }
    }

    /** Safe for the pack, as it hardly brakes: that is best at nothing. */
    @Test
    void nothingIsBestInAColumnWhoseBrakeIsNone() throws IOException {
        String board = Files.readString(Path.of(BOARD));
        String path =
                builds.put(
                        "tapered",
                        board
                                + """

                                [proposals.tapered]
                                motor_brake_current = "38.5 A"
                                high_voltage_taper = ["38.9 V", "41.8 V"]
                                """);
        CommandRun run = compare(path, "tapered", "--only", "brake-weakest,stop-dry");
        assertThat(run.out())
                .containsPattern("none at 100 %")
                .contains("tapered: not ranked, as its brake is NONE where it is weakest");
        for (Map<String, Object> row : told(compare(path, "tapered", "--format", "json"))) {
            assertThat(JsonMaps.objects(row, "readings").get(1)).doesNotContainKey("best");
        }
    }

    /** 9.15 m less 10.74 m are -1.59 m; whoever reads 9.2 m and 10.7 m takes 1.5 m from them. */
    @Test
    void aDifferenceIsThatOfTheNumbersBesideIt() {
        Pattern row =
                Pattern.compile("(?m)^  stop from .*?([0-9.]+) m +([0-9.]+) m \\(([-0-9.]+)\\)");
        Matcher stops =
                row.matcher(compare(BOARD, "firmer-brake", "--only", "stop-dry,stop-wet").out());
        int told = 0;
        while (stops.find()) {
            told++;
            assertThat(new BigDecimal(stops.group(3)))
                    .isEqualTo(
                            new BigDecimal(stops.group(2))
                                    .subtract(new BigDecimal(stops.group(1))));
        }
        assertThat(told).isEqualTo(6);
    }

    /** Near full the high-voltage taper leaves less of the brake. */
    @Test
    void stopsBeginAtTheChargeAskedFor() {
        String[] half = {"--charge", "50%", "--only", "stop-dry@24km/h", "--format", "json"};
        Map<String, Object> row = told(compare(BuildFolder.TOUR_BOARD, half)).get(0);
        assertThat(JsonMaps.number(row, "speed_m_per_s")).isCloseTo(24.0 / 3.6, within(1e-12));
        List<Map<String, Object>> readings = JsonMaps.objects(row, "readings");
        assertThat(readings).allSatisfy(each -> assertThat(each.get("charge")).isEqualTo(0.5));
        String[] full = {"--charge", "100%", "--only", "stop-dry@24km/h", "--format", "json"};
        Map<String, Object> first =
                JsonMaps.objects(told(compare(BuildFolder.TOUR_BOARD, full)).get(0), "readings")
                        .get(0);
        assertThat(JsonMaps.number(first, "value"))
                .isGreaterThan(JsonMaps.number(readings.get(0), "value"));
        assertThat(compare(BOARD, "--charge", "50%").out()).contains("stops at 50 % charge");
        assertThat(compare(BOARD, "--charge", "120%").err()).contains("--charge", "for example");
    }

    /** A profile with a use of its own is measured there, too, and is not ranked by it. */
    @Test
    void eachColumnIsMeasuredAtItsOwnSpeed() throws IOException {
        String slow =
                "\n[proposals.slow]\nspeed_cap = \"15 km/h\"\nuse.speed_max = \"15 km/h\"\nuse.cruise_speed = \"12 km/h\"\n";
        Path file = Files.writeString(folder.resolve("own.toml"), Example.TRIKE.text() + slow);
        List<Map<String, Object>> rows = told(compare(file.toString(), "--format", "json"));
        Map<String, Object> own =
                rows.stream()
                        .filter(row -> "stop-dry@own".equals(row.get("id")))
                        .findFirst()
                        .orElseThrow();
        List<Map<String, Object>> readings = JsonMaps.objects(own, "readings");
        assertThat(JsonMaps.number(readings.get(1), "speed_m_per_s")).isEqualTo(15.0 / 3.6);
        assertThat(JsonMaps.number(readings.get(0), "speed_m_per_s")).isGreaterThan(15.0 / 3.6);
        assertThat(JsonMaps.number(readings.get(1), "value"))
                .isLessThan(JsonMaps.number(readings.get(0), "value"));
        assertThat(readings.get(1)).doesNotContainKey("best");
        assertThat(rows).anySatisfy(row -> assertThat(row.get("id")).isEqualTo("range@own"));
        assertThat(compare(file.toString()).out())
                .contains("stop from own speed, dry", "at 15.0 km/h");
    }

    @Test
    void refusesToCompareWithNothing() {
        CommandRun run = compare(Example.TRIKE.path());
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("[proposals.", "--also");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--only", "--sort"})
    void refusesARowThatIsNotThereAndTellsTheNearest(String option) {
        CommandRun run = compare(BOARD, option, "top-sped");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("\"top-sped\"", "nearest is top-speed", "safe-charge");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "stop-dry@", "@32", "stop-dry@999", "Verdict", "verdict;range"})
    void refusesOddRows(String row) {
        CommandRun run = compare(BOARD, "--only", row);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("verdict");
    }

    @ParameterizedTest
    @ValueSource(strings = {"no-such-file.toml", ""})
    void refusesAnotherFileThatIsNotThere(String path) {
        CommandRun run = compare(BOARD, "--also", path);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("no such file");
    }

    @Test
    void tellsEveryProblemOfAnotherFile() {
        CommandRun run = compare(BOARD, "--also", builds.put("other", "title = 1\n"));
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("other.toml", "problems", "motor.kv");
    }

    @Test
    void picksRowsByQuantityAndBySpeedInTheOrderAsked() {
        assertThat(rows(compare(BOARD, "--only", "range@32,verdict,stop-dry", "--format", "json")))
                .containsExactly(
                        "range@32", "verdict", "stop-dry@11", "stop-dry@21", "stop-dry@32");
        assertThat(
                        rows(
                                compare(
                                        BOARD,
                                        "--only",
                                        " top-speed",
                                        "--only",
                                        "launch",
                                        "--format",
                                        "json")))
                .containsExactly("top-speed", "launch");
    }

    @ParameterizedTest
    @ValueSource(strings = {"stop-dry", "range@32", "safe-charge", "verdict", "top-speed"})
    void sortsColumnsBestFirst(String row) {
        String[] options = {
            "--also", Example.TRIKE.path(), "--also", Example.SCOOTER.path(), "--format", "json"
        };
        CommandRun asGiven = compare(BOARD, options);
        CommandRun sorted =
                compare(
                        BOARD,
                        Stream.concat(Stream.of("--sort", row), Stream.of(options))
                                .toArray(String[]::new));
        assertThat(columns(sorted)).containsExactlyInAnyOrderElementsOf(columns(asGiven));
        Map<String, Object> first =
                JsonMaps.objects(JsonMaps.read(sorted.out()), "rows").stream()
                        .filter(each -> JsonMaps.text(each, "id").startsWith(row))
                        .findFirst()
                        .orElseThrow();
        List<Double> values =
                JsonMaps.objects(first, "readings").stream()
                        .filter(each -> each.containsKey("value"))
                        .map(each -> JsonMaps.number(each, "value"))
                        .toList();
        assertThat(values)
                .hasSizeGreaterThan(2)
                .isSortedAccordingTo(
                        JsonMaps.text(first, "better").equals("higher")
                                ? (one, other) -> Double.compare(other, one)
                                : Double::compare);
        assertThat(sorted.status()).isEqualTo(asGiven.status());
    }

    @Test
    void sortingMovesWholeColumns() {
        Map<String, List<Double>> before = byColumn(compare(BOARD, "--format", "json"));
        Map<String, List<Double>> after =
                byColumn(compare(BOARD, "--sort", "stop-dry@32", "--format", "json"));
        assertThat(after).isEqualTo(before);
    }

    /** The values of each column, those of rows without one left out. */
    private static Map<String, List<Double>> byColumn(CommandRun run) {
        Map<String, Object> json = JsonMaps.read(run.out());
        List<String> names = columns(run);
        Map<String, List<Double>> all = new TreeMap<>();
        for (int i = 0; i < names.size(); i++) {
            int column = i;
            all.put(
                    names.get(i),
                    JsonMaps.objects(json, "rows").stream()
                            .map(row -> JsonMaps.objects(row, "readings").get(column))
                            .filter(reading -> reading.containsKey("value"))
                            .map(reading -> JsonMaps.number(reading, "value"))
                            .toList());
        }
        return all;
    }

    @Test
    void theWorstVerdictDecidesTheStatus() {
        String mild = builds.withProposals("mild", "more");
        assertThat(compare(mild).status()).isZero();
        assertThat(compare(mild, "--strict").status()).isEqualTo(1);
        assertThat(compare(mild, "--only", "range").status()).isZero();
        assertThat(compare(mild, "--also", Example.TRIKE.path()).status()).isZero();
        assertThat(compare(mild, "--also", Example.SCOOTER.path()).status()).isEqualTo(1);
        assertThat(compare(BOARD).status()).isEqualTo(1);
        assertThat(compare(Example.TRIKE.path(), "--also", Example.TRIKE.path(), "--strict"))
                .extracting(CommandRun::status)
                .isEqualTo(0);
    }

    /** Urethane on a wet road holds a quarter of the load, these tyres a twentieth. */
    @Test
    void theBrakeStandsThereForBothRoads() {
        BuildText board = BuildFolder.exactBoard();
        board.replace("vehicle", "drag_area", "drag_area = \"0.6 m²\"\ngrip_wet = 0.05");
        CommandRun run =
                compare(
                        builds.put("smooth", board),
                        "firmer-brake",
                        "--only",
                        "brake-weakest,brake-weakest-wet");
        assertThat(run.out())
                .containsPattern("weakest brake +1\\.12 m/s².*\n +weak at 25 %")
                .containsPattern("weakest brake, wet +0\\.51 m/s².*\n +none at 25 %");
    }

    /** Within limits, as it hardly brakes: 0.30 m/s² of the 1.54 wanted, as road and drag take. */
    @Test
    void aColumnWithoutABrakeIsRefused() {
        CommandRun soft =
                compare(BuildFolder.TOUR_BOARD, "gentle", "--with", "motor_brake_current=2A");
        assertThat(soft.out()).contains("none at 92 %").doesNotContain("as asked: OUTSIDE");
        assertThat(soft.status()).isEqualTo(1);
        assertThat(compare(BuildFolder.TOUR_BOARD, "gentle").status()).isZero();
        assertThat(compare(BuildFolder.TOUR_BOARD, "gentle", "--strict").status()).isEqualTo(1);
    }

    /** The tyres hold 32.66 A at nominal inputs and 31.55 A at the unfavourable corner. */
    @Test
    void theStatusIsThatOfTheUnfavourableCorner() {
        String near =
                builds.tourBoard(
                        "near", "motor_brake_current = \"20 A\"", "motor_brake_current = \"32 A\"");
        CommandRun run = compare(near, "gentle", "--only", "verdict");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out())
                .contains("gentle: OUTSIDE LIMITS, at the unfavourable corner of the tolerances");
        String exact = builds.put("exact", read(near).replaceAll(" ± [0-9]+ (%|kg)", ""));
        assertThat(compare(exact, "gentle").status()).isZero();
    }

    private static String read(String path) {
        try {
            return Files.readString(Path.of(path));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    @Test
    void sheetsHaveTheSameNumbers() throws IOException {
        String[] also = {"--also", Example.TRIKE.path(), "--also", BuildFolder.TOUR_BOARD};
        Map<String, Object> json = JsonMaps.read(format("json", also).out());
        List<CsvRecord> csv = records(format("csv", also).out());
        assertThat(csv.get(0).getFields())
                .startsWith("row", "unit")
                .endsWith(columns(format("json", also)).toArray(String[]::new));
        List<Map<String, Object>> rows = JsonMaps.objects(json, "rows");
        assertThat(csv).hasSize(rows.size() + 1);
        for (int i = 0; i < rows.size(); i++) {
            List<String> fields = csv.get(i + 1).getFields();
            assertThat(fields.get(0)).isEqualTo(JsonMaps.text(rows.get(i), "id"));
            boolean word = fields.get(0).equals("verdict");
            assertThat(fields.get(1)).isEqualTo(word ? "" : JsonMaps.text(rows.get(i), "unit"));
            List<Map<String, Object>> readings = JsonMaps.objects(rows.get(i), "readings");
            assertThat(fields).hasSize(readings.size() + 2);
            for (int column = 0; column < readings.size(); column++) {
                String field = fields.get(column + 2);
                if (word) {
                    assertThat(field).isEqualTo(readings.get(column).get("word"));
                    continue;
                }
                if (field.isEmpty()) {
                    assertThat(readings.get(column)).doesNotContainKey("value");
                    continue;
                }
                double value = JsonMaps.number(readings.get(column), "value");
                // half a unit of the sixth digit
                assertThat(Double.parseDouble(field))
                        .as("%s", fields.get(0))
                        .isCloseTo(value, within(5e-6 * Math.abs(value)));
            }
        }
    }

    private static CommandRun format(String format, String... also) {
        return compare(
                BOARD,
                Stream.concat(Stream.of("--format", format), Stream.of(also))
                        .toArray(String[]::new));
    }

    @Test
    void differencesAreToThePresentAndTheBestIsMarked() {
        Map<String, Object> json =
                JsonMaps.read(format("json", "--also", Example.TRIKE.path()).out());
        List<Boolean> outside =
                JsonMaps.objects(json, "profiles").stream()
                        .map(profile -> JsonMaps.text(profile, "verdict").equals("outside-limits"))
                        .toList();
        int marked = 0;
        for (Map<String, Object> row : JsonMaps.objects(json, "rows")) {
            List<Map<String, Object>> readings = JsonMaps.objects(row, "readings");
            List<Double> values = new ArrayList<>();
            for (Map<String, Object> reading : readings) {
                if (reading.containsKey("value")) {
                    int column = readings.indexOf(reading);
                    if (!outside.get(column)) {
                        values.add(JsonMaps.number(reading, "value"));
                    }
                    if (readings.get(0).containsKey("value")) {
                        assertThat(JsonMaps.number(reading, "difference"))
                                .isEqualTo(
                                        JsonMaps.number(reading, "value")
                                                - JsonMaps.number(readings.get(0), "value"));
                    }
                }
            }
            String better = JsonMaps.text(row, "better");
            for (Map<String, Object> reading : readings) {
                if (reading.containsKey("best")) {
                    marked++;
                    double best =
                            values.stream()
                                    .mapToDouble(Double::doubleValue)
                                    .reduce(better.equals("higher") ? Math::max : Math::min)
                                    .orElseThrow();
                    assertThat(better).isNotEqualTo("none");
                    // a part in a thousand million counts as alike
                    assertThat(JsonMaps.number(reading, "value"))
                            .isCloseTo(best, within(1e-9 * Math.abs(best)));
                }
            }
        }
        assertThat(marked).isGreaterThan(8);
    }

    @Test
    void aVehicleAgainstItselfDiffersInNothing() {
        CommandRun run = compare(BOARD, "firmer-brake", "firmer-brake", "--format", "json");
        assertThat(columns(run)).containsExactly("present", "firmer-brake", "firmer-brake");
        CommandRun same = compare(Example.TRIKE.path(), "--also", Example.TRIKE.path());
        assertThat(same.out().lines().filter(line -> line.contains("*")))
                .as("only the legend has a star")
                .hasSize(1);
        assertThat(same.out()).doesNotContain("(+", "(-");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 7})
    void tablesStayWithinAHundredColumns(int proposals) {
        String[] names =
                IntStream.range(0, proposals)
                        .mapToObj(i -> i + "-a-name-that-is-longer-than-any-column")
                        .toArray(String[]::new);
        String path = builds.withProposals("long", names);
        for (String units : List.of("si", "imperial")) {
            CommandRun run = compare(path, "--units", units);
            assertThat(run.outLines()).allMatch(line -> line.length() <= 100);
            assertThat(run.err()).isEmpty();
            for (String name : names) {
                assertThat(run.out()).contains(name);
                assertThat(
                                run.outLines().stream()
                                        .filter(
                                                line ->
                                                        line.contains(
                                                                " " + name.charAt(0) + "-a-name")))
                        .as("in the head of a table, among what is best and among the verdicts")
                        .hasSize(3);
            }
        }
    }

    /** The scooter goes no faster than 20 km/h. */
    @Test
    void whatAVehicleNeverReachesIsNotTold() {
        CommandRun run = format("json", "--also", Example.SCOOTER.path());
        Map<String, Object> json = JsonMaps.read(run.out());
        int scooter = columns(run).indexOf("ferry-dock-scooter");
        for (Map<String, Object> row : JsonMaps.objects(json, "rows")) {
            String id = JsonMaps.text(row, "id");
            if ((id.startsWith("stop-") || id.startsWith("range@")) && !id.endsWith("@own")) {
                boolean reached = 3.6 * JsonMaps.number(row, "speed_m_per_s") < 20.51;
                assertThat(JsonMaps.objects(row, "readings").get(scooter).containsKey("value"))
                        .as(id)
                        .isEqualTo(reached);
            }
        }
    }

    @Test
    void nothingIsCutInFourColumns() {
        CommandRun run =
                compare(
                        BOARD,
                        "firmer-brake",
                        "--also",
                        Example.TRIKE.path(),
                        "--also",
                        BuildFolder.TOUR_BOARD);
        int table = run.out().indexOf("VERDICTS");
        String text = run.out().substring(0, table);
        Map<String, Object> json =
                JsonMaps.read(
                        compare(
                                        BOARD,
                                        "firmer-brake",
                                        "--also",
                                        Example.TRIKE.path(),
                                        "--also",
                                        BuildFolder.TOUR_BOARD,
                                        "--format",
                                        "json")
                                .out());
        long best =
                JsonMaps.objects(json, "rows").stream()
                        .flatMap(row -> JsonMaps.objects(row, "readings").stream())
                        .filter(reading -> reading.containsKey("best"))
                        .count();
        assertThat(text.chars().filter(letter -> letter == '*').count() - 1)
                .isGreaterThanOrEqualTo(best);
    }

    @Test
    void plainTextIsAscii() {
        CommandRun run = compare(builds.withProposals("umlaut", "überhöht", "雪"), "--plain");
        assertThat(run.status()).isZero();
        assertThat(run.out()).matches("[\\x20-\\x7e\\n]+");
    }

    @Test
    void markdownIsOneTable() {
        String path = builds.withProposals("marks", "one.two", "plain", "a - b");
        CommandRun run = compare(path, "--format", "markdown", "--also", Example.TRIKE.path());
        List<String> lines = run.outLines();
        assertThat(lines).hasSizeGreaterThan(20);
        assertThat(lines.get(1)).matches("\\|(---\\|){6}");
        assertThat(lines).allMatch(line -> line.startsWith("|") && line.endsWith("|"));
        assertThat(lines)
                .allMatch(
                        line -> line.replace("\\|", "").chars().filter(c -> c == '|').count() == 7);
        assertThat(lines.get(0)).contains("one.two");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "json", "markdown", "csv"})
    void aFileHoldsWhatStandardOutputWouldShow(String format) {
        Path file = folder.resolve("sheet");
        CommandRun shown = compare(BOARD, "--format", format);
        CommandRun run = compare(BOARD, "--format", format, "--output", file.toString());
        assertThat(run).isEqualTo(new CommandRun(1, "", ""));
        assertThat(file).hasContent(shown.out());
        assertThat(builds.files()).containsExactly("sheet");
    }

    @Test
    void aFileIsReplacedOnlyWithForce() throws IOException {
        Path file = Files.writeString(folder.resolve("sheet"), "mine");
        CommandRun refused = compare(BOARD, "--output", file.toString());
        assertThat(refused).isEqualTo(new CommandRun(2, "", refused.err()));
        assertThat(refused.err()).contains("--force");
        assertThat(file).hasContent("mine");
        assertThat(compare(BOARD, "--output", file.toString(), "--force").status()).isEqualTo(1);
        assertThat(file).hasContent(compare(BOARD).out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"xml", "", "jsonx"})
    void refusesAFormatThatIsNotThere(String format) {
        CommandRun run = compare(BOARD, "--format", format);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
    }
}

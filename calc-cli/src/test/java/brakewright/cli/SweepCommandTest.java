package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every combination of varied keys, through the command line. */
class SweepCommandTest {

    private static final String TRIKE = Example.TRIKE.path();
    private static final String BRAKE = "motor_brake_current=20A..60A/5";
    private static final String CHARGE = "charge_from=20%..90%/4";

    @TempDir Path folder = Path.of("");

    private BuildFolder builds = new BuildFolder(folder);

    @BeforeEach
    void openFolder() {
        builds = new BuildFolder(folder);
    }

    private static CommandRun sweep(String build, String... options) {
        return CommandRun.of(
                Stream.concat(Stream.of("sweep", build), Stream.of(options))
                        .toArray(String[]::new));
    }

    private static List<CsvRecord> records(String csv) throws IOException {
        try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(csv)) {
            return reader.stream().toList();
        }
    }

    private void refuses(String told, String... options) {
        Path file = folder.resolve("cases");
        String[] all =
                Stream.concat(Stream.of(options), Stream.of("--output", file.toString()))
                        .toArray(String[]::new);
        CommandRun run = sweep(TRIKE, all);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains(told);
        assertThat(builds.files()).isEmpty();
    }

    /** 1200 cases are five batches, so that threads do take turns. */
    @Test
    void theOrderDoesNotDependOnTheThreads() {
        String[] vary = {
            "--vary", "motor_brake_current=20A..60A/40", "--vary", "pack_regen_current=1A..30A/30"
        };
        String one = sweep(TRIKE, with("1", vary)).out();
        assertThat(one.lines()).hasSize(1201);
        assertThat(sweep(TRIKE, with("2", vary)).out()).isEqualTo(one);
        assertThat(sweep(TRIKE, with("8", vary)).out()).isEqualTo(one);
        assertThat(sweep(TRIKE, vary).out()).isEqualTo(one);
    }

    private static String[] with(String threads, String... vary) {
        return Stream.concat(Stream.of(vary), Stream.of("--threads", threads))
                .toArray(String[]::new);
    }

    @Test
    void valuesAreExactAtBothEnds() throws IOException {
        List<CsvRecord> cases =
                records(sweep(TRIKE, "--vary", "motor_brake_current=0.1A..0.7A/7").out());
        assertThat(cases.get(1).getField(0)).isEqualTo("0.1");
        assertThat(cases.get(7).getField(0)).isEqualTo("0.7");
        List<CsvRecord> down =
                records(sweep(TRIKE, "--vary", "motor_brake_current=0.7A..0.1A/7").out());
        assertThat(down.get(1).getField(0)).isEqualTo("0.7");
        assertThat(down.get(7).getField(0)).isEqualTo("0.1");
        assertThat(cases.subList(2, 7)).allMatch(each -> inside(each.getField(0)));
    }

    private static boolean inside(String field) {
        return Double.parseDouble(field) > 0.1 && Double.parseDouble(field) < 0.7;
    }

    @Test
    void theFirstKeyVariesSlowest() throws IOException {
        List<CsvRecord> cases =
                records(
                        sweep(TRIKE, "--vary", BRAKE, "--vary", CHARGE, "--vary", "parallel=3..4/2")
                                .out());
        assertThat(cases).hasSize(41);
        assertThat(cases.get(0).getFields())
                .startsWith("settings.motor_brake_current_A", "use.charge_from", "pack.parallel");
        for (int i = 0; i < 40; i++) {
            assertThat(cases.get(i + 1).getFields())
                    .startsWith(
                            Double.toString(20.0 + 10.0 * (i / 8)),
                            cases.get(1 + i % 8).getField(1),
                            Double.toString(3.0 + i % 2));
        }
    }

    @Test
    void bothFormatsHoldTheSame() throws IOException {
        String[] vary = {"--vary", BRAKE, "--vary", CHARGE};
        List<CsvRecord> csv = records(sweep(TRIKE, vary).out());
        CommandRun run = sweep(TRIKE, "--vary", BRAKE, "--vary", CHARGE, "--format", "json");
        Map<String, Object> json = JsonMaps.read(run.out());
        assertThat(JsonMaps.text(json, "schema")).isEqualTo("brakewright.sweep/1");
        List<Map<String, Object>> cases = JsonMaps.objects(json, "cases");
        assertThat(cases).hasSize(20).hasSize(csv.size() - 1);
        List<String> names = csv.get(0).getFields();
        for (int i = 0; i < cases.size(); i++) {
            for (int column = 0; column < names.size(); column++) {
                String field = csv.get(i + 1).getField(column);
                Object value = cases.get(i).get(names.get(column));
                if (value == null) {
                    assertThat(field).as(names.get(column)).isIn("", "0");
                } else if (value instanceof Double number) {
                    // half a unit of the sixth digit
                    assertThat(Double.parseDouble(field))
                            .isCloseTo(number, within(5e-6 * Math.abs(number)));
                } else {
                    assertThat(field).isEqualTo(value);
                }
            }
        }
    }

    @Test
    void eachCaseIsTheVerdictOfItsBuildFile() throws IOException {
        List<CsvRecord> cases =
                records(sweep(TRIKE, "--vary", BRAKE, "--vary", "parallel=1..4/2").out());
        for (CsvRecord each : cases.subList(1, cases.size())) {
            BuildText trike = BuildText.of(Example.TRIKE);
            trike.replace(
                    "settings",
                    "motor_brake_current",
                    "motor_brake_current = \"" + each.getField(0) + " A\"");
            trike.replace(
                    "pack", "parallel", "parallel = " + (int) Double.parseDouble(each.getField(1)));
            CommandRun sheet = CommandRun.worksheet(trike.text(), "--format", "json");
            assertThat(JsonMaps.text(JsonMaps.read(sheet.out()), "verdict"))
                    .as("%s", each)
                    .isEqualTo(each.getField(2));
        }
    }

    @Test
    void standardErrorTellsHowManyCasesAndHowLong() {
        CommandRun run = sweep(TRIKE, "--vary", BRAKE);
        assertThat(run.status()).isZero();
        assertThat(run.err()).startsWith("5 cases in ").contains("threads");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "motor_brake_current; expected: KEY=LOW..HIGH/N",
                "motor_brake_current=20A; expected: KEY=LOW..HIGH/N",
                "motor_brake_current=20A..60A; expected: KEY=LOW..HIGH/N",
                "motor_brake_current=20A..60A/; expected: KEY=LOW..HIGH/N",
                "motor_brake_current=20A..60A/-3; expected: KEY=LOW..HIGH/N",
                "motor_brake_current=20A..60A/2.5; expected: KEY=LOW..HIGH/N",
                "motor_brake_current=20A..60A/99999999; at most 4000000",
                "motor_brake_current=20A..60A/2000000000; at most 4000000",
                "motor_brake_current=20A..60A/99999999999999999999; at most 4000000",
                "motor_brake_current=20A..20A/3; two different values",
                "parallel=1..4/7; at most 4 values",
                "parallel=4..1/5; at most 4 values",
                "parallel=1.5..4/2; no whole number",
                "motor_brake_current=20A±1A..60A/3; tolerance",
                "motor_brake_current=..60A/3; expected: KEY=LOW..HIGH/N",
                "=20A..60A/3; expected: KEY=LOW..HIGH/N",
                "''; expected: KEY=LOW..HIGH/N",
                "☃; expected: KEY=LOW..HIGH/N",
                "motor_brake_current=20A..60A/0; at least 2 values",
                "motor_brake_current=20A..60A/1; at least 2 values",
                "motor_brake_current=20..60/3; no unit",
                "motor_brake_current=20V..60V/3; unit of a voltage",
                "motor_brake_current=20 ☃..60A/3; unit",
                "motor_brake_current=-5A..60A/3; outside what is possible",
                "motor_brake_current=5A..1e300A/3; outside what is possible",
                "motor_brake_current=5A..1e999A/3; too large",
                "motor_brake_current=5A..NaN A/3; does not read as a number",
                "motor_brake_current=5,5 A..6A/3; comma",
                "charge_from=20%..101%/3; outside what is possible",
                "parallel=0..3/4; outside what is possible",
                "low_voltage_taper=30V..31V/3; single number",
                "rider.stance=1..2/2; single number",
                "nothing=1..2/2; single number"
            })
    void refusesWhatIsNoVariationAndWritesNoFile(String vary, String told) {
        refuses(told, "--vary", vary);
    }

    @Test
    void tellsAllThatIsWrongInOneGo() {
        CommandRun run =
                sweep(TRIKE, "--vary", "parallel=1..4/7", "--vary", "speed_cap=1A..5,5km/h/3");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err())
                .contains("--vary: 3 problems")
                .contains("at most 4 values", "unit of a current", "comma")
                .doesNotContain("in quotes");
    }

    @Test
    void refusesAKeyThatComesTwice() {
        refuses("twice", "--vary", BRAKE, "--vary", BRAKE);
        refuses("twice", "--vary", BRAKE, "--vary", "settings.motor_brake_current=1A..2A/2");
    }

    @Test
    void refusesMoreCombinationsThanFitTheMemory() {
        refuses(
                "combinations",
                "--vary",
                "motor_brake_current=5A..6A/9999999",
                "--vary",
                "motor_drive_current=5A..6A/9999999",
                "--vary",
                "pack_regen_current=5A..6A/9999999",
                "--vary",
                "pack_discharge_current=5A..6A/9999999");
        refuses(
                "combinations",
                "--vary",
                "motor_brake_current=5A..6A/2001",
                "--vary",
                "motor_drive_current=5A..6A/2000");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "1025", "x", "", "2147483648"})
    void refusesANumberOfThreadsThatMakesNoSense(String threads) {
        refuses("--threads", "--vary", BRAKE, "--threads", threads);
    }

    @Test
    void aCaseThatCannotBeWritesNothing() {
        refuses("use.charge_to", "--vary", "charge_from=10%..90%/9");
        refuses("must ascend", "--vary", BRAKE, "--vary", "charge_from=90%..10%/9");
    }

    @Test
    void anExistingFileIsRefusedBeforeAnyWork() throws IOException {
        Path file = Files.writeString(folder.resolve("cases"), "mine");
        // a later case is impossible: that it is not complained of shows that none was worked out
        CommandRun run =
                sweep(TRIKE, "--vary", "charge_from=10%..90%/9", "--output", file.toString());
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("--force").doesNotContain("charge_to");
        assertThat(file).hasContent("mine");
    }

    @Test
    void aFailingCaseLeavesTheOldFileEvenWithForce() throws IOException {
        Path file = Files.writeString(folder.resolve("cases"), "mine");
        CommandRun run =
                sweep(
                        TRIKE,
                        "--vary",
                        "charge_from=90%..10%/9",
                        "--output",
                        file.toString(),
                        "--force");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(file).hasContent("mine");
        assertThat(builds.files()).containsExactly("cases");
    }

    @ParameterizedTest
    @ValueSource(strings = {"csv", "json"})
    void aFileHoldsWhatStandardOutputWouldShow(String format) {
        Path file = folder.resolve("cases");
        CommandRun run =
                sweep(TRIKE, "--vary", BRAKE, "--format", format, "--output", file.toString());
        assertThat(run).isEqualTo(new CommandRun(0, "", run.err()));
        assertThat(file).hasContent(sweep(TRIKE, "--vary", BRAKE, "--format", format).out());
        assertThat(builds.files()).containsExactly("cases");
    }

    @ParameterizedTest
    @ValueSource(strings = {"no-such-file.toml", ""})
    void refusesAMissingFile(String path) {
        CommandRun run = sweep(path, "--vary", BRAKE);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("no such file");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "xml", ""})
    void refusesAFormatThatIsNotThere(String format) {
        CommandRun run = sweep(TRIKE, "--vary", BRAKE, "--format", format);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
    }

    /** The same numbers as in the comparison, whose rows they are. */
    @Test
    void anyRowOfAComparisonIsReported() throws IOException {
        String rows =
                "stop-dry@20km/h,stop-dry@20,launch,range,stop-wet@own,time-to-cruise@200km/h";
        List<CsvRecord> csv =
                records(
                        sweep(TRIKE, "--vary", "motor_brake_current=10A..20A/2", "--report", rows)
                                .out());
        assertThat(csv.get(0).getFields().subList(7, 13))
                .containsExactly(
                        "stop_dry_at_20_km_per_h_m",
                        "stop_dry_at_20_km_per_h_m",
                        "launch_m_per_s2",
                        "range_at_own_speed_m",
                        "stop_wet_at_own_speed_m",
                        "time_to_cruise_at_200_km_per_h_s");
        CommandRun compared =
                CommandRun.of(
                        "compare",
                        TRIKE,
                        "--with",
                        "motor_brake_current=20A",
                        "--only",
                        "stop-dry@20km/h,launch,range",
                        "--format",
                        "csv");
        List<CsvRecord> rowsOfIt = records(compared.out());
        assertThat(List.of(csv.get(2).getField(7), csv.get(2).getField(9), csv.get(2).getField(10)))
                .containsExactly(
                        rowsOfIt.get(1).getField(3),
                        rowsOfIt.get(2).getField(3),
                        rowsOfIt.get(3).getField(3));
        assertThat(csv.get(2).getField(8)).isEqualTo(csv.get(2).getField(7));
        assertThat(csv.get(2).getField(12)).as("a speed that is never reached").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "stop-dri@20km/h, the nearest is stop-dry",
        "launch@20km/h, belongs to no speed",
        "stop-dry@, speed",
        "stop-dry@20kg, speed",
        "'', is no result"
    })
    void refusesAReportThatIsNoRow(String report, String told) {
        CommandRun run = sweep(TRIKE, "--vary", BRAKE, "--report", report);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("--report", told);
    }

    @Test
    void oneOfTwoPacksIsVaried() throws IOException {
        List<CsvRecord> cases =
                records(sweep(BuildFolder.TOUR_BOARD, "--vary", "packs.2.parallel=1..3/3").out());
        assertThat(cases.stream().map(each -> each.getField(0)))
                .containsExactly("packs.2.parallel", "1.0", "2.0", "3.0");
    }
}

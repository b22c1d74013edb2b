package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Questions asked backwards, through the command line. */
class SolveCommandTest {

    private static final String SPARING = "pack_regen_current = \"12 A\"";

    private static final String TRIKE = Example.TRIKE.path();

    @TempDir Path folder = Path.of("");

    private BuildFolder builds = new BuildFolder(folder);

    @BeforeEach
    void openFolder() {
        builds = new BuildFolder(folder);
    }

    private static CommandRun solve(String build, String... options) {
        return CommandRun.of(
                Stream.concat(Stream.of("solve", build), Stream.of(options))
                        .toArray(String[]::new));
    }

    private static Map<String, Object> json(String build, String key) {
        CommandRun run = solve(build, "--for", key, "--format", "json");
        assertThat(run.err()).isEmpty();
        return JsonMaps.read(run.out());
    }

    private static double found(Map<String, Object> json, String which) {
        assertThat(JsonMaps.text(JsonMaps.object(json, which), "answer")).isEqualTo("found");
        return JsonMaps.number(JsonMaps.object(json, which), "value");
    }

    private static String verdict(String build) {
        return JsonMaps.text(
                JsonMaps.read(CommandRun.of("worksheet", build, "--format", "json").out()),
                "verdict");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "motor_drive_current",
                "motor_brake_current",
                "pack_discharge_current",
                "pack_regen_current"
            })
    void theHighestCurrentIsWithinLimitsAndATenthOfAPerCentMoreIsNot(String key) {
        double highest = found(json(TRIKE, key), "nominal");
        BuildText trike = BuildText.of(Example.TRIKE);
        trike.replace("settings", key, key + " = \"" + highest + " A\"");
        assertThat(verdict(builds.put("at", trike))).isEqualTo("within-limits");
        trike.replace("settings", key, key + " = \"" + 1.001 * highest + " A\"");
        assertThat(verdict(builds.put("beyond", trike))).isNotEqualTo("within-limits");
        CommandRun check = CommandRun.of("check", TRIKE, "--with", key + "=" + highest + "A");
        assertThat(check.status()).isZero();
        assertThat(
                        CommandRun.of(
                                        "check",
                                        TRIKE,
                                        "--strict",
                                        "--with",
                                        key + "=" + 1.001 * highest + "A")
                                .status())
                .isEqualTo(1);
    }

    @Test
    void aCurrentIsSolvedForAgainstTheEmptiestCharge() {
        CommandRun run =
                solve(TRIKE, "--for", "motor_brake_current", "--against", "charge_to=5%..20%/2");
        assertThat(run).isEqualTo(new CommandRun(0, run.out(), ""));
        assertThat(run.out()).contains("   5 % ", "  20 % ");
    }

    @Test
    void theFullestChargeIsWithinLimitsAndATenthOfAPerCentMoreIsNot() {
        BuildText board = BuildFolder.exactBoard();
        double fullest = found(json(builds.put("board", board), "charge_from"), "nominal");
        assertThat(fullest).isBetween(0.1, 1.0);
        board.replace("use", "charge_from", "charge_from = " + fullest);
        assertThat(verdict(builds.put("at", board))).isEqualTo("within-limits");
        board.replace("use", "charge_from", "charge_from = " + 1.001 * fullest);
        assertThat(verdict(builds.put("beyond", board))).isNotEqualTo("within-limits");
    }

    @Test
    void theFewestCellsAreWithinLimitsAndOneLessIsNot() {
        BuildText board = BuildFolder.exactBoard();
        board.replace("use", "charge_from", "charge_from = \"85 %\"");
        double fewest = found(json(builds.put("board", board), "parallel"), "nominal");
        assertThat(fewest).isGreaterThan(4.0).isEqualTo(Math.rint(fewest));
        board.replace("pack", "parallel", "parallel = " + (int) fewest);
        assertThat(verdict(builds.put("at", board))).isEqualTo("within-limits");
        board.replace("pack", "parallel", "parallel = " + ((int) fewest - 1));
        assertThat(verdict(builds.put("beyond", board))).isNotEqualTo("within-limits");
    }

    /** The highest speed in use goes with the cap. */
    @Test
    void theHighestSpeedCapIsWithinLimitsAndATenthOfAPerCentMoreIsNot() {
        BuildText board = BuildFolder.exactBoard();
        board.replace("use", "charge_from", "charge_from = \"90 %\"");
        double highest = found(json(builds.put("board", board), "speed_cap"), "nominal");
        assertThat(verdict(builds.put("at", capped(board, highest)))).isEqualTo("within-limits");
        assertThat(verdict(builds.put("beyond", capped(board, 1.001 * highest))))
                .isNotEqualTo("within-limits");
    }

    private static BuildText capped(BuildText board, double speed) {
        board.replace("settings", "speed_cap", "speed_cap = \"" + speed + " m/s\"");
        board.replace("use", "speed_max", "speed_max = \"" + speed + " m/s\"");
        return board;
    }

    @ParameterizedTest
    @ValueSource(strings = {"charge_from"})
    void saysThatEveryValueIsWithinLimitsWhereItIs(String key) {
        CommandRun run = solve(TRIKE, "--for", key);
        assertThat(run).isEqualTo(new CommandRun(0, run.out(), ""));
        assertThat(run.out()).contains("value asked about");
        assertThat(JsonMaps.text(JsonMaps.object(json(TRIKE, key), "nominal"), "answer"))
                .isEqualTo("all");
    }

    /** A cap above the present one is an answer, and so are fewer cells than there are. */
    @Test
    void looksBeyondWhatIsSetNow() {
        Map<String, Object> cap = json(TRIKE, "speed_cap");
        assertThat(JsonMaps.number(cap, "asked_to")).isGreaterThan(JsonMaps.number(cap, "now"));
        assertThat(found(cap, "nominal")).isGreaterThan(JsonMaps.number(cap, "now"));
        assertThat(JsonMaps.text(JsonMaps.object(cap, "nominal"), "bound_by"))
                .isEqualTo("pack-back-emf");
        Map<String, Object> cells = json(spared(), "parallel");
        assertThat(cells).containsEntry("asked_from", 1.0);
        double fewest = JsonMaps.number(JsonMaps.object(cells, "nominal"), "value");
        assertThat(fewest).isLessThan(JsonMaps.number(cells, "now"));
        BuildText trike = BuildText.of(Example.TRIKE);
        trike.replace("settings", "pack_regen_current", SPARING);
        trike.replace("pack", "parallel", "parallel = " + (int) fewest);
        assertThat(verdict(builds.put("fewest", trike))).isEqualTo("within-limits");
    }

    /** A trike that asks less of its cells than they bear. */
    private String spared() {
        BuildText trike = BuildText.of(Example.TRIKE);
        trike.replace("settings", "pack_regen_current", SPARING);
        return builds.put("spared", trike);
    }

    @Test
    void tellsWhatTheCellsWeighWhereTheMassIsHeld() {
        String out = solve(spared(), "--for", "parallel").out().replaceAll("\\s+", " ");
        assertThat(out)
                .contains("The mass of the vehicle is held at")
                .containsPattern("weigh [0-9.]+ kg in cells alone, against [0-9.]+ kg now");
    }

    /** The regen current that is set is over the trip: it is named, and the brake is answered. */
    @ParameterizedTest
    @ValueSource(strings = {"motor_brake_current", "pack_discharge_current"})
    void isAnsweredWhateverAnotherSettingExceeds(String key) {
        CommandRun run = solve(Example.SCOOTER.path(), "--for", key);
        assertThat(run).isEqualTo(new CommandRun(0, run.out(), ""));
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains(
                        "Mend that, too, which is no part of this answer: ",
                        "the pack regen current is beyond what the protection's charge trip"
                                + " permits");
        Map<String, Object> json = json(Example.SCOOTER.path(), key);
        assertThat(JsonMaps.text(JsonMaps.object(json, "nominal"), "answer")).isEqualTo("found");
        assertThat(JsonMaps.objects(json, "beside"))
                .anySatisfy(
                        each ->
                                assertThat(each)
                                        .containsEntry("setting", "pack-regen-current")
                                        .containsEntry("bound_by", "protection-charge-trip")
                                        .containsEntry("value", 12.0)
                                        .containsEntry("limit", 9.0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"parallel", "speed_cap"})
    void saysWhyNoValueWorks(String key) {
        CommandRun run = solve(Example.SCOOTER.path(), "--for", key);
        assertThat(run).isEqualTo(new CommandRun(1, run.out(), ""));
        assertThat(run.out()).contains("No value works, because");
        Map<String, Object> nominal = JsonMaps.object(json(Example.SCOOTER.path(), key), "nominal");
        assertThat(JsonMaps.text(nominal, "answer")).isEqualTo("none");
        assertThat(JsonMaps.text(nominal, "bound_by")).isNotEmpty();
        assertThat(nominal).doesNotContainKey("value");
    }

    @ParameterizedTest
    @CsvSource({
        "low_voltage_taper, pair",
        "high_voltage_taper, pair",
        "settings.low_voltage_taper, pair",
        "motor_brake_curent, nearest is motor_brake_current",
        "charge_to, charge_from",
        "motor.kv, motor_brake_current",
        "rider.stance, speed_cap",
        "packs.0.parallel, parallel",
        "packs.parallel, parallel",
        "'', parallel",
        "' ', parallel",
        "☃, parallel",
        "settings., parallel"
    })
    void refusesWhatCannotBeSolvedFor(String key, String told) {
        CommandRun run = solve(TRIKE, "--for", key);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains(told);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "motor_brake_current=1A..2A/2",
                "charge_from",
                "charge_from=80%..100%",
                "charge_from=80%..100%/1",
                "charge_from=80%..120%/3",
                "charge_from=80A..90A/3",
                "charge_from=..90%/3",
                "nothing=1..2/3",
                "low_voltage_taper=30V..31V/3",
                ""
            })
    void refusesAMalformedOtherKey(String against) {
        CommandRun run = solve(TRIKE, "--for", "motor_brake_current", "--against", against);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).isNotBlank();
    }

    @Test
    void refusesAMissingKeyAndAMissingFile() {
        assertThat(solve(TRIKE).status()).isEqualTo(2);
        CommandRun run = solve("no-such-file.toml", "--for", "parallel");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("no such file");
    }

    @Test
    void aFullerPackNeverPermitsMoreBrake() {
        String board = builds.put("board", BuildFolder.exactBoard());
        List<Map<String, Object>> rows = frontier(board, "charge_from=70%..100%/7");
        assertThat(rows).hasSize(7);
        // 70 % is read as 70 times 0.01, an ulp above 0.7
        assertThat(JsonMaps.number(rows.get(0), "held")).isCloseTo(0.7, within(Math.ulp(0.7)));
        assertThat(rows.get(6)).containsEntry("held", 1.0);
        List<Double> values = rows.stream().map(row -> JsonMaps.number(row, "value")).toList();
        assertThat(values)
                .isSortedAccordingTo((one, other) -> Double.compare(other, one))
                .first()
                .isNotEqualTo(values.get(6));
    }

    @Test
    void eachRowOfAFrontierIsTheAnswerWithTheOtherKeyInTheFile() {
        BuildText board = BuildFolder.exactBoard();
        List<Map<String, Object>> rows =
                frontier(builds.put("board", board), "charge_from=80%..90%/2");
        board.replace("use", "charge_from", "charge_from = \"80 %\"");
        assertThat(JsonMaps.number(rows.get(0), "value"))
                .isEqualTo(
                        found(json(builds.put("eighty", board), "motor_brake_current"), "nominal"));
    }

    private static List<Map<String, Object>> frontier(String build, String against) {
        CommandRun run =
                solve(
                        build,
                        "--for",
                        "motor_brake_current",
                        "--against",
                        against,
                        "--format",
                        "json");
        assertThat(run.err()).isEmpty();
        Map<String, Object> json = JsonMaps.read(run.out());
        assertThat(JsonMaps.text(json, "for")).isEqualTo("settings.motor_brake_current");
        assertThat(JsonMaps.text(json, "against")).isEqualTo("use.charge_from");
        return JsonMaps.objects(json, "frontier");
    }

    @Test
    void aFrontierWithoutAnyAnswerEndsWithStatusOne() {
        CommandRun run =
                solve(
                        Example.SCOOTER.path(),
                        "--for",
                        "parallel",
                        "--against",
                        "ambient=10degC..15degC/2");
        assertThat(run).isEqualTo(new CommandRun(1, run.out(), ""));
        assertThat(run.out()).contains("none");
    }

    @Test
    void packsAreAskedAboutOneByOne() {
        CommandRun run = solve(BuildFolder.TOUR_BOARD, "--for", "packs.2.parallel");
        assertThat(run).isEqualTo(new CommandRun(0, run.out(), ""));
        assertThat(run.out()).contains("CELLS IN PARALLEL OF PACK 2");
        CommandRun which = solve(BuildFolder.TOUR_BOARD, "--for", "parallel");
        assertThat(which).isEqualTo(new CommandRun(2, "", which.err()));
        assertThat(which.err()).contains("packs.1.parallel");
    }

    /** With 12 A from each controller a single cell is charged beyond its rating. */
    @Test
    void theFewestCellsOfOneOfTwoPacksAreWithinLimitsAndOneLessIsNot() throws IOException {
        String weak =
                exact(Files.readString(Path.of(BuildFolder.TOUR_BOARD)))
                        .replace("parallel = 2\n", "parallel = 1\n")
                        .replace("pack_regen_current = \"7 A\"", "pack_regen_current = \"12 A\"");
        double fewest = found(json(builds.put("weak", weak), "packs.2.parallel"), "nominal");
        assertThat(fewest).isGreaterThan(1.0);
        assertThat(verdict(builds.put("at", with(weak, (int) fewest)))).isEqualTo("within-limits");
        assertThat(verdict(builds.put("beyond", with(weak, (int) fewest - 1))))
                .isNotEqualTo("within-limits");
    }

    private static String exact(String text) {
        return text.replaceAll(" ± [0-9]+ (%|kg)", "");
    }

    private static String with(String text, int parallel) {
        return text.replace("parallel = 1\n", "parallel = " + parallel + "\n");
    }

    @Test
    void tolerancesLowerTheAnswer() {
        Map<String, Object> json = json(BuildFolder.TOUR_BOARD, "motor_brake_current");
        double nominal = found(json, "nominal");
        double unfavourable = found(json, "unfavourable");
        assertThat(unfavourable).isLessThan(nominal);
        String at =
                builds.tourBoard(
                        "at",
                        "motor_brake_current = \"26 A\"",
                        "motor_brake_current = \"" + unfavourable + " A\"");
        assertThat(verdict(at)).isEqualTo("within-limits");
        String beyond =
                builds.tourBoard(
                        "beyond",
                        "motor_brake_current = \"26 A\"",
                        "motor_brake_current = \"" + 1.001 * unfavourable + " A\"");
        assertThat(verdict(beyond)).isNotEqualTo("within-limits");
    }

    @Test
    void theAnswerIsShownRoundedDown() {
        String board = builds.put("board", BuildFolder.exactBoard());
        double nominal = found(json(board, "motor_brake_current"), "nominal");
        assertThat(solve(board, "--for", "motor_brake_current").out())
                .contains(
                        String.format(Locale.ROOT, "%.2f A", Math.floor(100.0 * nominal) / 100.0));
    }

    /** As many cells as the board would need at full charge weigh more than the board. */
    @Test
    void moreCellsThanTheVehicleWeighsAreNoAnswer() {
        String board = builds.put("board", BuildFolder.exactBoard());
        CommandRun run = solve(board, "--for", "parallel");
        assertThat(run).isEqualTo(new CommandRun(1, run.out(), ""));
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("No value works", "their cells would weigh more than the whole vehicle");
    }

    @ParameterizedTest
    @ValueSource(strings = {"motor_brake_current", "speed_cap", "charge_from", "parallel"})
    void textStaysWithinAHundredColumnsAndPlainTextIsAscii(String key) {
        CommandRun run = solve(Example.TRAIL_BOARD.path(), "--for", key, "--plain");
        assertThat(run.status()).isIn(0, 1);
        assertThat(run.outLines()).allMatch(line -> line.length() <= 100);
        assertThat(run.out()).matches("[\\x20-\\x7e\\n]+");
    }

    @Test
    void aFileHoldsWhatStandardOutputWouldShow() {
        Path file = folder.resolve("answer");
        CommandRun run = solve(TRIKE, "--for", "parallel", "--output", file.toString());
        assertThat(run).isEqualTo(new CommandRun(0, "", ""));
        assertThat(file).hasContent(solve(TRIKE, "--for", "parallel").out());
        CommandRun again = solve(TRIKE, "--for", "parallel", "--output", file.toString());
        assertThat(again).isEqualTo(new CommandRun(2, "", again.err()));
    }
}

package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What changed between worksheets that were kept. */
class HistoryCommandTest {

    private static final String BOARD = Example.TRAIL_BOARD.path();

    @TempDir Path folder = Path.of("");

    private String keep(String name, String... options) {
        String file = folder.resolve(name).toString();
        String[] all = new String[options.length + 6];
        System.arraycopy(options, 0, all, 6, options.length);
        System.arraycopy(
                new String[] {"worksheet", BOARD, "--format", "json", "--output", file},
                0,
                all,
                0,
                6);
        assertThat(CommandRun.of(all).err()).isEmpty();
        return file;
    }

    private void keepAnother(String name) {
        CommandRun run =
                CommandRun.of(
                        "worksheet",
                        Example.SCOOTER.path(),
                        "--format",
                        "json",
                        "--output",
                        folder.resolve(name).toString());
        assertThat(run.status()).as(run.err()).isIn(0, 1);
    }

    private CommandRun history(String... options) {
        String[] all = new String[options.length + 2];
        all[0] = "history";
        all[1] = folder.toString();
        System.arraycopy(options, 0, all, 2, options.length);
        return CommandRun.of(all);
    }

    @Test
    void tellsWhatChangedInTheOrderOfTheNames() {
        keep(
                "2026-05-09.json",
                "--with",
                "motor_brake_current=38A",
                "--with",
                "use.charge_from=75%");
        keep("2026-05-02.json");
        keep(
                "2026-05-16.json",
                "--with",
                "motor_brake_current=38A",
                "--with",
                "use.charge_from=75%");
        CommandRun run = history();
        assertThat(run.status()).isZero();
        String told = run.out();
        assertThat(told.indexOf("2026-05-02.json")).isBetween(0, told.indexOf("2026-05-09.json"));
        assertThat(told)
                .containsPattern("motor brake current, per motor +30.0 A +38.0 A")
                .containsPattern("use.charge_from +1 +0.75\\n")
                .containsPattern("pack and parts +conditional +within limits")
                .contains("nothing changed");
        assertThat(told).doesNotContain("motor drive current");
    }

    /** A curve is no list of all its numbers, and they stand in its order. */
    @Test
    void aCurveIsToldByItsEnds() {
        keep("a.json");
        keepAnother("b.json");
        assertThat(history().out())
                .containsPattern("pack.cell.open_circuit_voltage +12 points, 2.52 to 4.175 V")
                .containsPattern("criteria.deceleration_min +1.54 m/s² +3.5 m/s²")
                .containsPattern("use.pack_temperature +12, 38 °C");
    }

    /** Which build a sheet is of stands at each, and no title stands for all. */
    @Test
    void sheetsOfSeveralBuildsSayWhichOnes() {
        keep("a.json");
        keepAnother("b.json");
        keep("c.json");
        assertThat(history().out())
                .startsWith("2 BUILDS: WHAT CHANGED")
                .contains("3 worksheets, in the order of their names; they are of 2 builds")
                .containsPattern("b.json\\n +of Ferry-dock folding scooter\\n")
                .containsPattern("c.json\\n +of Vineyard trail board\\n");
        assertThat(history("--format", "html").out()).contains("<h1>2 builds</h1>");
    }

    /** So many numbers are no curve; what holds a list for each point is one. */
    @Test
    void aListIsNoCurveHoweverLong() throws IOException {
        for (String name : List.of("a", "b")) {
            Files.writeString(
                    folder.resolve(name + ".json"),
                    "{\"schema\": \"brakewright.worksheet/1\", \"inputs\": {"
                            + "\"list\": {\"value\": [1, 2, 3, 4, "
                            + name.length()
                            + (name.equals("a") ? "5" : "6")
                            + "], \"unit\": \"m2\"}, \"curve\": {\"value\": [[0, "
                            + (name.equals("a") ? "1.5" : "1.7")
                            + "]], \"unit\": \"ell\"}}}");
        }
        assertThat(history().out())
                .containsPattern("list +1, 2, 3, 4, 15 m² +1, 2, 3, 4, 16 m²")
                .containsPattern("curve +1 point, 1.5 to 1.5 ell");
        assertThat(history("--format", "json").out()).contains("\"1.0, 2.0, 3.0, 4.0, 15.0\"");
    }

    @Test
    void jsonTellsTheSame() {
        keep("a.json");
        keep("b.json", "--with", "motor_brake_current=38A");
        Map<String, Object> json = JsonMaps.read(history("--format", "json").out());
        assertThat(json).containsEntry("schema", "brakewright.history/1");
        List<?> sheets = (List<?>) json.get("sheets");
        assertThat(((Map<?, ?>) sheets.get(0)).get("changes")).isEqualTo(List.of());
        Map<String, Object> raised =
                Map.of(
                        "kind",
                        "setting",
                        "at",
                        "limits/motor-brake-current/set",
                        "before",
                        30.0,
                        "after",
                        38.0);
        List<?> changes = (List<?>) ((Map<?, ?>) sheets.get(1)).get("changes");
        assertThat(changes.stream().filter(raised::equals)).hasSize(1);
    }

    @Test
    void aDocumentShowsTheBrakeFromSheetToSheet() {
        keep("a.json");
        keep("b.json", "--with", "motor_brake_current=38A");
        assertThat(history("--format", "html").out())
                .contains("Where the brake is weakest", "<td class=\"n\">38.0 A</td>");
        assertThat(history("--format", "markdown").out())
                .contains("| motor brake current, per motor | 30.0 A | 38.0 A |");
    }

    @Test
    void whatIsNoWorksheetIsLeftOutAndNamed() throws IOException {
        keep("a.json");
        Files.writeString(folder.resolve("b.json"), "{\"schema\": \"brakewright.worksheet/1\"");
        Files.writeString(folder.resolve("c.json"), "[".repeat(100_000));
        Files.writeString(folder.resolve("d.json"), "{\"schema\": \"another\"}");
        Files.writeString(folder.resolve("e.txt"), "{}");
        assertThat(history().out())
                .contains(
                        "1 worksheet, in",
                        "left out, as they are no worksheets: b.json, c.json, d.json");
    }

    /** A sheet that was tampered with: words where numbers stand, names that run. */
    @Test
    void aHostileSheetDoesNothing() throws IOException {
        String evil = "</title><script>alert(1)</script>\\u001b[2J\\u202e";
        for (String name : List.of("a.json", "b.json")) {
            Files.writeString(
                    folder.resolve(name),
                    "{\"schema\": \"brakewright.worksheet/1\", \"title\": \""
                            + evil
                            + "\", \"verdict\": 7, \"brake_verdict\": {\"word\": \""
                            + evil
                            + name
                            + "\"}, \"inputs\": {\"a.b\": {\"value\": \""
                            + name
                            + evil
                            + "\", \"unit\": \""
                            + evil
                            + "\"}, \"c\": 3, \"d\": {\"e\": 1}}}");
        }
        for (String form : List.of("text", "json", "html", "markdown")) {
            CommandRun run = history("--format", form);
            assertThat(run.status()).as(run.err()).isZero();
            assertThat(run.out().codePoints())
                    .noneMatch(
                            point ->
                                    (Character.isISOControl(point) && point != '\n')
                                            || Character.getType(point) == Character.FORMAT);
            if (form.equals("html") || form.equals("markdown")) {
                assertThat(run.out()).doesNotContain("<script");
            }
        }
    }

    @Test
    void aFolderWithoutAnySaysWhatToDo() {
        assertThat(history().err()).contains("no worksheet was kept here; for example");
        assertThat(CommandRun.of("history", folder.resolve("none").toString()).err())
                .contains("there is no such folder");
    }
}

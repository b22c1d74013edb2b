package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A document is one file that runs nothing, fetches nothing and can be followed by its headings.
 */
class DocumentTest {

    private static final int MOST_BYTES = 200_000;

    private static final Pattern HEADING = Pattern.compile("<h([1-6])");

    @ParameterizedTest
    @EnumSource
    void aWorksheetIsOneSmallFileThatNeedsNothing(Example example) {
        CommandRun run = Answers.of("worksheet", example.path(), "--format", "html");
        assertThat(run.status()).isEqualTo(example.status());
        assertThat(run.err()).isEmpty();
        assertAlone(run.out());
        assertThat(run.out().getBytes(StandardCharsets.UTF_8).length).isLessThan(MOST_BYTES);
        assertThat(count(run.out(), "<figure>")).isBetween(6L, 9L);
        assertThat(count(run.out(), "<svg ")).isEqualTo(count(run.out(), "<figure>"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check examples/vineyard-trail-board.toml --with motor_brake_current=38A",
                "compare examples/vineyard-trail-board.toml",
                "propose examples/vineyard-trail-board.toml",
                "ride examples/vineyard-trail-board.toml guide/straight.csv",
                "ride examples/vineyard-trail-board.toml --route guide/route.csv",
            })
    void whatIsAskedOfSettingsIsADocumentToo(String command) {
        CommandRun run = Answers.of((command + " --format html").split(" "));
        assertThat(run.status()).isLessThan(ExitStatus.UNUSABLE);
        assertThat(run.err()).isEmpty();
        assertAlone(run.out());
        assertThat(run.out().getBytes(StandardCharsets.UTF_8).length).isLessThan(MOST_BYTES);
        assertThat(count(run.out(), "<svg ")).isGreaterThanOrEqualTo(2);
        assertThat(Answers.of((command + " --format markdown").split(" ")).out())
                .containsPattern("(?m)^\\|( ?-{3} ?\\|)+$");
    }

    @ParameterizedTest
    @EnumSource
    void everyDocumentOfAnyVehicleIsSmall(Example example) {
        for (String command :
                List.of(
                        "check %s --with motor_brake_current=25A",
                        "compare %s --also examples/vineyard-trail-board.toml",
                        "propose %s",
                        "ride %s --route guide/route.csv")) {
            String[] asked = (String.format(command, example.path()) + " --format html").split(" ");
            String document = Answers.of(asked).out();
            assertThat(document).as(command).contains("</html>");
            assertThat(document.getBytes(StandardCharsets.UTF_8).length)
                    .as(command)
                    .isLessThan(MOST_BYTES);
        }
    }

    private static void assertAlone(String html) {
        assertThat(html)
                .startsWith("<!doctype html>\n<html lang=\"en\">")
                .contains("<meta name=\"viewport\"")
                .contains("default-src 'none'")
                .doesNotContain(
                        "<script", "http://", "https://", " src=", "@import", "javascript:");
        List<Integer> levels =
                HEADING.matcher(html)
                        .results()
                        .map(heading -> Integer.valueOf(heading.group(1)))
                        .toList();
        assertThat(levels.get(0)).isEqualTo(1);
        assertThat(levels.subList(1, levels.size())).isNotEmpty().containsOnly(2);
        assertThat(count(html, "<table>")).isEqualTo(count(html, "<caption"));
        assertThat(Pattern.compile("<th(?! scope=\"(?:row|col)\")[ >]").matcher(html).find())
                .isFalse();
    }

    private static long count(String text, String part) {
        return Pattern.compile(Pattern.quote(part)).matcher(text).results().count();
    }

    /** The same numbers stand in the text. */
    @Test
    void tellsTheNumbersOfTheText() {
        String html = Answers.of("worksheet", "--format", "html").out();
        String text =
                unspaced(
                        Answers.of("worksheet").out()
                                + Answers.of("worksheet", "--show", "all").out());
        List<String> cells =
                Pattern.compile("<td[^>]*>([^<]+)</td>")
                        .matcher(html.replaceAll("(?s)<details>.*?</details>", ""))
                        .results()
                        .map((MatchResult cell) -> unspaced(cell.group(1).replace("&#39;", "'")))
                        .filter(cell -> !cell.isEmpty())
                        .toList();
        assertThat(cells).hasSizeGreaterThan(200).allMatch(text::contains);
    }

    /** A mark stands right behind its number in a line. */
    private static String unspaced(String text) {
        return text.replaceAll("\\s", "");
    }

    /** A reader of the screen says a cell at a time. */
    @Test
    void aCellOfTheLoadedVoltageHoldsOneNumber() {
        for (String form : List.of("html", "markdown")) {
            String told = Answers.of("worksheet", "--format", form).out();
            String sag = told.substring(told.indexOf("The voltage under load"));
            String table = sag.substring(sag.indexOf("While the set"), sag.indexOf("Met at"));
            List<String> cells =
                    Pattern.compile("(?:<td[^>]*>|\\| )([0-9.]+[^<|:]*)(?=<| \\|)")
                            .matcher(table)
                            .results()
                            .map(cell -> cell.group(1).strip())
                            .toList();
            assertThat(cells)
                    .as(form)
                    .hasSizeGreaterThan(50)
                    .allMatch(cell -> cell.matches("[0-9.]+( %)?( (\\\\?[~!])+)?"));
        }
    }

    /** What a picture says beside it is the number that the table has. */
    @Test
    void aRideIsOffByTheSameInPictureAndText() {
        String ride = "ride examples/vineyard-trail-board.toml guide/straight.csv";
        String text = Answers.of(ride.split(" ")).out().replaceAll("\\s+", " ");
        String html = Answers.of((ride + " --format html").split(" ")).out();
        List<String> off =
                Pattern.compile("The model is off by ([0-9.]+).([AV]) on the whole")
                        .matcher(html)
                        .results()
                        .map(each -> each.group(1) + " " + each.group(2))
                        .distinct()
                        .toList();
        assertThat(off).hasSize(2);
        assertThat(text)
                .contains("current is off by " + off.get(0) + " and the voltage by " + off.get(1));
    }

    /** Lines for the build file are copied as they are, with blanks that its reader knows. */
    @Test
    void linesToPasteStandInTheirOwnBox() {
        String ride = "ride examples/vineyard-trail-board.toml guide/straight.csv --format html";
        assertThat(Answers.of(ride.split(" ")).out())
                .containsPattern(
                        "<pre>\\[use\\]\nidle_power = (\"|&#34;)[0-9.]+ W ± [0-9.]+ %(\"|&#34;)\n");
    }

    @Test
    void nobodyTakesTheExampleForTheirOwn() {
        String said = "this is the built-in example, an invented board.";
        assertThat(Answers.of("worksheet", "--format", "html").out()).contains(said);
        assertThat(Answers.of("worksheet", "--format", "markdown").out()).contains(said);
        assertThat(Answers.of("worksheet", Example.TRAIL_BOARD.path(), "--format", "html").out())
                .doesNotContain(said);
    }

    @Test
    void theRecordIsBlankUnlessItIsFilled() {
        String blank = Answers.of("worksheet", "--format", "html").out();
        assertThat(blank).contains("Entered by</b>\n<i></i>");
        String filled =
                Answers.of(
                                "worksheet",
                                "--format",
                                "html",
                                "--note",
                                "brakes well <wet>",
                                "--note",
                                "by=R. & S.",
                                "--note",
                                "a second line")
                        .out();
        assertThat(filled)
                .contains("<p>brakes well &lt;wet&gt;\na second line</p>")
                .contains("<p>R. &amp; S.</p>")
                .contains("Next check</b>\n<i></i>");
    }

    @Test
    void aNoteWithoutARecordOrAFieldIsRefused() {
        assertThat(Answers.of("worksheet", "--note", "any").err())
                .contains("--note fills in the record of --format html or markdown");
        assertThat(Answers.of("worksheet", "--format", "html", "--note", "rides=any").err())
                .contains("the record has no \"rides\"; did you mean ride?");
    }

    @Test
    void hostileTitlesAndNotesAreText() throws Exception {
        String evil = "</title></p><script>alert(1)</script><img src=x onerror=alert(2)>${1+1}";
        String board =
                Files.readString(Path.of(Example.TRAIL_BOARD.path()))
                        .replaceFirst(
                                "title = .*",
                                Matcher.quoteReplacement("title = '''" + evil + "'''"))
                        .replaceFirst("(?m)^notes = .*$", "");
        CommandRun html = CommandRun.worksheet(board, "--format", "html", "--note", evil);
        assertThat(html.err()).isEmpty();
        assertThat(html.out()).doesNotContain("<script", "<img", " src=x>").contains("${1+1}");
        CommandRun markdown = CommandRun.worksheet(board, "--format", "markdown", "--note", evil);
        assertThat(markdown.out()).doesNotContain("<script", "<img").contains("&lt;script&gt;");
    }

    /** The name of a file stands beside what was found in it. */
    @Test
    void hostileNamesOfFilesAndColumnsAreText() throws Exception {
        Path recording = Files.createTempFile("<script>\u202e[x](y)", ".csv");
        try {
            StringBuilder rows =
                    new StringBuilder(
                            "time [s],speed [km/h],<script>alert(1)</script> \u202e[x]\n");
            for (int row = 0; row < 60; row++) {
                rows.append(row).append(',').append(10 + row % 7).append(",1\n");
            }
            Files.writeString(recording, rows);
            for (String form : List.of("html", "markdown")) {
                CommandRun run =
                        CommandRun.of(
                                "ride",
                                Example.TRAIL_BOARD.path(),
                                recording.toString(),
                                "--format",
                                form);
                assertThat(run.err()).isEmpty();
                assertThat(run.out())
                        .contains("&lt;script&gt;")
                        .doesNotContain("<script", "\u202e");
            }
        } finally {
            Files.delete(recording);
        }
    }

    @Test
    void markdownTellsTheSameChapters() {
        String markdown = Answers.of("worksheet", "--format", "markdown").out();
        String html = Answers.of("worksheet", "--format", "html").out();
        List<String> chapters =
                Pattern.compile("(?m)^## (.*)$")
                        .matcher(markdown)
                        .results()
                        .map(each -> each.group(1))
                        .toList();
        assertThat(chapters)
                .hasSizeGreaterThan(10)
                .allMatch(each -> html.contains("<h2>" + each + "</h2>"));
        for (String line : markdown.lines().filter(each -> each.startsWith("|")).toList()) {
            assertThat(line).endsWith("|");
        }
    }
}

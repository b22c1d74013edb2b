package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever an input is called, it neither moves the cursor nor hides. */
class HostileTextTest {

    private static final String REVERSED = "\u202e";
    private static final String UNSEEN = "\u200b";
    private static final String BOARD = Example.TRAIL_BOARD.path();

    @TempDir Path folder = Path.of("");

    private static void assertSeen(CommandRun run) {
        // lines of CSV end in both
        for (String printed : List.of(run.out().replace("\r\n", "\n"), run.err())) {
            assertThat(
                            printed.codePoints()
                                    .filter(point -> point != '\n')
                                    .filter(
                                            point ->
                                                    Character.isISOControl(point)
                                                            || Character.getType(point)
                                                                    == Character.FORMAT)
                                    .mapToObj(Integer::toHexString))
                    .as(printed)
                    .isEmpty();
        }
    }

    @Test
    void isShownEscapedInMessages() {
        for (List<String> arguments :
                List.of(
                        List.of("check", BOARD, "--with", REVERSED + "=1A"),
                        List.of("check", BOARD, "--with", "speed_cap=" + REVERSED + "\u001b[2J"),
                        List.of("check", BOARD, "--proposal", "a" + REVERSED + "\nb"),
                        List.of("compare", BOARD, UNSEEN),
                        List.of("compare", BOARD, "--only", UNSEEN),
                        List.of("compare", BOARD, "--sort", REVERSED),
                        List.of("solve", BOARD, "--for", REVERSED),
                        List.of("solve", BOARD, "--for", "speed_cap", "--against", REVERSED),
                        List.of("sweep", BOARD, "--vary", REVERSED + "=1A..2A/2"),
                        List.of("explain", BOARD, REVERSED),
                        List.of("worksheet", REVERSED + "\u001b[2J.toml"),
                        List.of("worksheet", BOARD, "--output", REVERSED + "/a"),
                        List.of("worksheet", BOARD, "--format", REVERSED),
                        List.of("worksheet", BOARD, "--" + REVERSED),
                        List.of("worksheet", BOARD, "two", REVERSED + "\u0007"),
                        List.of("worksheet", BOARD, "--cases", REVERSED),
                        List.of(REVERSED),
                        List.of("worksheet", BOARD, "@|red " + REVERSED + "|@"))) {
            CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
            assertThat(run.status()).as(arguments.toString()).isEqualTo(2);
            assertThat(run.out()).isEmpty();
            assertThat(run.err()).containsAnyOf("\\u202E", "\\u200B");
            assertSeen(run);
        }
    }

    @Test
    void isShownEscapedInMessagesAboutAFile() {
        CommandRun run =
                CommandRun.worksheet(
                        "title = \"a\"\n[rider]\n\"m\u200b\" = 1\nstance = \"\u202e\"\n\u202e");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("\\u202E", "\\u200B");
        assertSeen(run);
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "json"})
    void isShownEscapedInAWorksheet(String format) {
        BuildText file = BuildText.of(Example.TRAIL_BOARD);
        file.replace("", "title", "title = \"Board \\u200B\\U000E0041\"");
        CommandRun run = CommandRun.worksheet(file.text(), "--format", format);
        assertThat(run.status()).isZero();
        assertThat(run.out()).containsIgnoringCase("board \\u200B");
        assertSeen(run);
        if (format.equals("json")) {
            assertThat(JsonMaps.read(run.out())).containsEntry("title", "Board \u200b\udb40\udc41");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "json", "markdown", "csv"})
    void isShownEscapedInAComparison(String format) {
        BuildFolder builds = new BuildFolder(folder);
        String other = builds.put("x\u001b[2J\n" + REVERSED, BuildText.of(Example.TRIKE));
        CommandRun run = CommandRun.of("compare", BOARD, "--also", other, "--format", format);
        assertThat(run.status()).as(run.err()).isIn(0, 1);
        assertSeen(run);
        // a narrow column may break the name
        assertThat(run.out().replaceAll("\\s", "")).contains("u202E", "u001B[2J".substring(0, 5));
        if (format.equals("json")) {
            assertThat(JsonMaps.read(run.out()).toString()).contains("x\u001b[2J\n" + REVERSED);
        }
    }

    /** A spreadsheet would take the name for a formula. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\uff1d1"})
    void isNoFormulaInCsv(String name) {
        String other = new BuildFolder(folder).put(name, BuildText.of(Example.TRIKE));
        CommandRun run = CommandRun.of("compare", BOARD, "--also", other, "--format", "csv");
        String head = run.outLines().get(0);
        assertThat(head).endsWith(",'" + name);
        // numbers stay numbers, whatever their sign
        assertThat(run.out()).doesNotContain(",'0").doesNotContain(",'-0");
    }

    /** A file may be called so; a table of Markdown keeps its columns. */
    @Test
    void keepsTheColumnsOfMarkdown() {
        String other = new BuildFolder(folder).put("a\\|b`<i>", BuildText.of(Example.TRIKE));
        CommandRun run = CommandRun.of("compare", BOARD, "--also", other, "--format", "markdown");
        assertThat(run.outLines().get(0)).endsWith(" a\\\\\\|b\\`\\<i\\> |");
    }
}

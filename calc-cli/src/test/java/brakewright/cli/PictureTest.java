package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.doubt.Tolerated;
import brakewright.cli.text.Ink;
import brakewright.cli.text.WorksheetText;
import brakewright.cli.words.UnitSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** README's picture is the page as it is printed now; {@code bin/picture} draws it. */
class PictureTest {

    private static final Path PICTURE = GuidePage.FOLDER.resolve("worksheet.svg");

    private static final Pattern TEXT = Pattern.compile("<text[^>]*>(.*)</text>");

    private static String page = "";

    @BeforeAll
    static void printThePage() throws Exception {
        BuildFile file =
                BuildFile.read(
                        Files.readAllBytes(Path.of(Example.TRAIL_BOARD.path())), Ahead.tables());
        page =
                new WorksheetText(
                                new AskedSheet(
                                        file, Tolerated.of(file, 0, 0), UnitSystem.SI.entry()),
                                UnitSystem.SI,
                                new Ink(true, false))
                        .onePage(List.of());
    }

    private static String drawn() {
        return TerminalPicture.of(
                "The worksheet of the vineyard trail board in a terminal",
                "One page of text: two verdicts, what to enter into the controllers, the brake over"
                        + " speed and charge, the first stop after a full charge, dangers and"
                        + " warnings, what to measure first, cautions. Verdicts and signal words are"
                        + " coloured.",
                "brakewright worksheet calc-cli/examples/vineyard-trail-board.toml",
                page);
    }

    /** Frozen output; {@code -Dbrakewright.guide=write} draws it anew. */
    @Test
    @Tag("frozen")
    void theCommittedPictureIsTheOneThatIsDrawn() throws Exception {
        GuidePage picture = new GuidePage(PICTURE, drawn());
        assertThat(picture.keptFor(new GuidePage(PICTURE, "")).text())
                .as("drawn anew by bin/picture")
                .isEqualTo(drawn());
    }

    @Test
    void itsTextIsWhatTheCommandPrints() {
        String read =
                TEXT.matcher(drawn())
                        .results()
                        .skip(1)
                        .map(text -> text.group(1).replaceAll("<[^>]*>", ""))
                        .map(text -> text.replace("&lt;", "<").replace("&gt;", ">"))
                        .map(text -> text.replace("&amp;", "&") + "\n")
                        .collect(Collectors.joining());
        String printed = CommandRun.of("worksheet", Example.TRAIL_BOARD.path()).out();
        assertThat(read)
                .isEqualTo(
                        printed.lines()
                                .filter(line -> !line.isBlank())
                                .map(line -> line.strip() + "\n")
                                .collect(Collectors.joining()));
    }

    @Test
    void whatStandsOutIsTinted() {
        assertThat(drawn())
                .contains("<tspan class=\"bad\">DANGER</tspan>", "<rect class=\"tint bad\"")
                .contains("<tspan class=\"heading\">CAUTIONS</tspan>")
                .contains("prefers-color-scheme: dark")
                .doesNotContain("\u001b");
    }
}

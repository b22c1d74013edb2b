package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.doubt.Tolerated;
import brakewright.cli.report.Block;
import brakewright.cli.report.RecordBox;
import brakewright.cli.report.SheetReport;
import brakewright.cli.text.Ink;
import brakewright.cli.text.WorksheetText;
import brakewright.cli.words.UnitSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * README's pictures are what is printed now: the page in a terminal, the map of the brake, and the
 * document that it leads to; {@code bin/picture} draws them.
 */
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

    /** The first picture of a worksheet's document. */
    private static String map() throws Exception {
        BuildFile file =
                BuildFile.read(
                        Files.readAllBytes(Path.of(Example.TRAIL_BOARD.path())), Ahead.tables());
        return new SheetReport(
                        new AskedSheet(file, Optional.empty(), UnitSystem.SI.entry()),
                        UnitSystem.SI,
                        false,
                        new RecordBox(Map.of()))
                .report().chapters().stream()
                        .flatMap(chapter -> chapter.blocks().stream())
                        .filter(Block.Picture.class::isInstance)
                        .map(block -> ((Block.Picture) block).chart().document())
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    @Tag("frozen")
    void theCommittedMapAndDocumentAreThoseThatAreMade() throws Exception {
        for (Map.Entry<String, String> made :
                Map.of(
                                "brake.svg",
                                map(),
                                "board.html",
                                Answers.of(
                                                "worksheet",
                                                Example.TRAIL_BOARD.path(),
                                                "--format",
                                                "html")
                                        .out())
                        .entrySet()) {
            Path path = GuidePage.FOLDER.resolve(made.getKey());
            GuidePage kept = new GuidePage(path, made.getValue()).keptFor(new GuidePage(path, ""));
            assertThat(kept.text().equals(made.getValue()))
                    .as(made.getKey() + " is as bin/picture makes it")
                    .isTrue();
        }
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
        String printed = Answers.of("worksheet", Example.TRAIL_BOARD.path()).out();
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

package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Documents as a browser lays them out: wide and narrow, light and dark, on screen and on paper.
 */
class SeenTest {

    private static final String CHECK =
            "check examples/vineyard-trail-board.toml --with motor_brake_current=38A";

    private static final int DESK = 1100;
    private static final int PHONE = 360;

    /** A4 and Letter [in]; source: ISO 216, ANSI/ASME Y14.1. */
    private static final Map<String, double[]> PAPERS =
            Map.of("worksheet", new double[] {8.27, 11.69}, CHECK, new double[] {8.5, 11.0});

    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b");

    private static final List<String> DOCUMENTS =
            List.of(
                    "worksheet",
                    "worksheet examples/ferry-dock-scooter.toml --units imperial",
                    "worksheet examples/parcel-trike.toml --doubts",
                    "worksheet examples/salt-flat-tour-board.toml",
                    CHECK,
                    "compare examples/vineyard-trail-board.toml",
                    "propose examples/vineyard-trail-board.toml",
                    "ride examples/vineyard-trail-board.toml guide/straight.csv",
                    "ride examples/vineyard-trail-board.toml --route guide/route.csv");

    @Test
    void everyDocumentIsReadOnAnyScreenAndOnPaper() throws IOException {
        Path profile = Files.createTempDirectory("browser");
        Optional<Browser> started = Browser.start(profile);
        if (started.isEmpty()) {
            System.out.println("NOT CHECKED: there is no browser (chromium) to look at documents");
        }
        assumeTrue(started.isPresent(), "there is no browser to look at documents");
        try (Browser browser = started.orElseThrow()) {
            List<String> wrong = new ArrayList<>();
            for (String command : DOCUMENTS) {
                CommandRun run = Answers.of((command + " --format html").split(" "));
                Path file = profile.resolve("document-" + DOCUMENTS.indexOf(command) + ".html");
                look(browser, Files.writeString(file, run.out()), command, wrong);
                if (PAPERS.containsKey(command)) {
                    assertPrinted(browser, PAPERS.get(command));
                }
            }
            lookAtHostile(browser, profile, wrong);
            assertThat(wrong).isEmpty();
            assertThat(browser.complaints()).isEmpty();
            assertAFaultIsSeen(browser, profile.resolve("faults.html"));
        } finally {
            Browser.forget(profile);
        }
    }

    private static void look(Browser browser, Path file, String command, List<String> wrong)
            throws IOException {
        String script = script();
        browser.look(DESK, false, false);
        browser.open(file);
        told(command + ", light", browser.value(script), wrong);
        browser.look(PHONE, true, false);
        told(command + ", dark on a phone", browser.value(script), wrong);
        browser.look(DESK, true, true);
        told(command + ", on paper", browser.value(script), wrong);
        assertThat(browser.value("getComputedStyle(document.querySelector('figure')).breakInside"))
                .isEqualTo("avoid");
    }

    /**
     * Title, notes, and the names of a proposal, a file and whoever entered it: with what could be
     * markup, from right to left, and in words that no line holds. Each stays within its own box.
     */
    private static void lookAtHostile(Browser browser, Path folder, List<String> wrong)
            throws IOException {
        String word = "W".repeat(300);
        String evil =
                "</title></h1><script>console.log(1)</script><svg onload=console.log(2)>]]> &amp;"
                        + " &#60;b> | ` * _ [l](javascript:x) \u05e9\u05dc\u05d5\u05dd -->"
                        + word;
        BuildText file = BuildText.of(Example.TRAIL_BOARD);
        file.replace("", "title", "title = \"" + evil + "\"");
        file.replace("", "notes", "notes = \"" + evil + "\\n\\n# head\\n- item\"");
        Path build = folder.resolve("build.toml");
        Files.writeString(
                build,
                file.text()
                        .replace(
                                "[proposals.firmer-brake]",
                                "[proposals." + word.substring(0, 40) + "]"));
        Path other = folder.resolve("<svg onload=console.log(3)>" + word.substring(0, 200));
        Files.writeString(other, file.text());
        for (List<String> command :
                List.of(
                        List.of("worksheet", build.toString(), "--note", "by=" + evil),
                        List.of("compare", build.toString(), "--also", other.toString()))) {
            List<String> asked = new ArrayList<>(command);
            asked.addAll(List.of("--format", "html"));
            CommandRun run = CommandRun.of(asked.toArray(String[]::new));
            assertThat(run.err()).isEmpty();
            Path page = folder.resolve("hostile-" + command.get(0) + ".html");
            look(browser, Files.writeString(page, run.out()), "hostile " + command.get(0), wrong);
            assertThat(
                            browser.value(
                                    "document.querySelectorAll('script,main h1,svg [onload]').length"))
                    .isEqualTo("0");
        }
    }

    /** In so many pages as a person leafs through. */
    private static void assertPrinted(Browser browser, double[] paper) throws IOException {
        byte[] printed = browser.printed(paper[0], paper[1]);
        assertThat(PAGE.matcher(new String(printed, StandardCharsets.ISO_8859_1)).results().count())
                .isBetween(2L, 16L);
    }

    private static void told(String where, String said, List<String> wrong) {
        said.lines().map(line -> where + ": " + line).forEach(wrong::add);
    }

    /** A page with faults of each kind, so that nobody looks in vain. */
    private static void assertAFaultIsSeen(Browser browser, Path file) throws IOException {
        Files.writeString(
                file,
                "<!doctype html><style>body{background:#fff;color:#999}</style>"
                        + "<p style='width:3000px'>wide and pale</p><figure>"
                        + "<svg viewBox='0 0 400 200' width='400'><text x='9' y='50'>one</text>"
                        + "<text x='12' y='50'>other</text><text x='390' y='90'>outside</text></svg>"
                        + "<span class='says'></span></figure><script>console.log('any')</script>");
        browser.look(DESK, false, false);
        browser.open(file);
        assertThat(browser.value(script()))
                .contains(
                        "scrolls sideways",
                        "contrast 2.8",
                        "\"other\" lies on \"one\"",
                        "\"outside\" is outside",
                        "is not told",
                        "does not say what to see");
        assertThat(browser.complaints()).hasSize(1);
    }

    private static String script() throws IOException {
        try (InputStream in = SeenTest.class.getResourceAsStream("look.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replaceFirst("(?s)^(//[^\\n]*\\n)+", "");
        }
    }
}

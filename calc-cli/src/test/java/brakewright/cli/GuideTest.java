package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/**
 * Holds README.md and the guide to what the program does: every command that is shown is run, and
 * what is shown of its output is what it prints.
 */
class GuideTest {

    private static final int LINES_OF_README = 200;

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]*)(?:#([^)]*))?\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");
    private static final Pattern SPAN = Pattern.compile("`([^`\n]+)`");
    private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--[a-z]+(?:-[a-z]+)*");

    private static final Set<String> NOT_OURS = Set.of("--help", "--version");

    @TempDir Path folder;

    static List<GuidePage> pages() {
        return GuidePage.all();
    }

    /** Frozen output; {@code -Dbrakewright.guide=write} writes it anew. */
    @ParameterizedTest
    @MethodSource("pages")
    @Tag("frozen")
    void whatAPageShowsIsWhatIsPrinted(GuidePage page) throws IOException {
        GuidePage expected = page.with(new Samples(new GuideShell(folder))::anew);
        assertThat(expected.keptFor(page).text())
                .as("written anew with -Dbrakewright.guide=write")
                .isEqualTo(expected.text());
    }

    /** The blocks of one page, from the first to the last. */
    private static final class Samples {

        private final GuideShell shell;
        private String printed = "";

        Samples(GuideShell shell) {
            this.shell = shell;
        }

        /** A block with what the commands above it print. */
        GuidePage.Block anew(GuidePage.Block block) {
            try {
                return new GuidePage.Block(block.mark(), block.language(), lines(block));
            } catch (IOException unusable) {
                throw new UncheckedIOException(unusable);
            }
        }

        private String lines(GuidePage.Block block) throws IOException {
            if (block.isCommands()) {
                printed = shell.run(block.lines());
                return block.lines();
            }
            if (block.mark().startsWith("file: ")) {
                lay(block.mark().substring("file: ".length()), block.lines());
                return block.lines();
            }
            if (block.language().equals("java")) {
                assertThat(block.mark()).startsWith("snippet: ");
                return block.lines();
            }
            assertThat(block.language().equals("toml") && block.mark().isEmpty())
                    .as("a piece of a build file without a mark would be overwritten with output")
                    .isFalse();
            assertThat(printed).as("output to show as\n%s", block.lines()).isNotEmpty();
            String[] mark = block.mark().split(", for ", 2);
            String shown =
                    switch (mark[0]) {
                        case "" -> printed;
                        case "first lines" -> first(block.lines().lines().count(), printed);
                        case "some lines" -> some(block.lines());
                        default -> throw new AssertionError("no such mark: " + block.mark());
                    };
            if (mark.length == 2) {
                lay(mark[1], shown);
            }
            return shown;
        }

        /** A file that the reader is told to write, as it is or at the end of an example. */
        private void lay(String place, String lines) throws IOException {
            String[] names = place.split(" after ");
            String before =
                    names.length == 1
                            ? ""
                            : Files.readString(Path.of(names[1].replaceFirst("calc-cli/", "")))
                                    + "\n";
            shell.lay(names[0], before + lines);
        }

        private static String first(long count, String text) {
            return text.lines().limit(count).map(line -> line + "\n").collect(Collectors.joining());
        }

        /** From the line that is shown first, as many as are shown. */
        private String some(String shown) {
            String begin = shown.lines().findFirst().orElseThrow() + "\n";
            assertThat(printed).contains(begin);
            return first(shown.lines().count(), printed.substring(printed.indexOf(begin)));
        }
    }

    @Test
    void readmeIsShortAndLeadsToTheGuide() {
        GuidePage readme = GuidePage.read(GuidePage.README);
        assertThat(readme.text().lines()).hasSizeLessThan(LINES_OF_README);
        assertThat(readme.prose()).contains("(calc-cli/guide/README.md)", "(DEVELOPERS.md)");
    }

    @Test
    void theIndexLeadsToEveryPage() {
        String index = GuidePage.read(GuidePage.INDEX).prose();
        for (GuidePage page : pages()) {
            Path name = page.path().getFileName();
            if (!name.equals(GuidePage.INDEX.getFileName())) {
                assertThat(index).contains("](" + name + ")");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkLeadsSomewhere(GuidePage page) {
        List<MatchResult> links = LINK.matcher(page.prose()).results().toList();
        assertThat(links).isNotEmpty();
        for (MatchResult link : links) {
            Path target =
                    link.group(1).isEmpty()
                            ? page.path()
                            : page.path().resolveSibling(link.group(1)).normalize();
            assertThat(target).as("%s in %s", link.group(), page).exists();
            if (link.group(2) != null) {
                assertThat(anchors(GuidePage.read(target).prose())).contains(link.group(2));
            }
        }
    }

    private static List<String> anchors(String page) {
        return HEADING.matcher(page)
                .results()
                .map(found -> found.group(1).toLowerCase(Locale.ROOT))
                .map(heading -> heading.replaceAll("[^a-z0-9 -]", "").replace(' ', '-'))
                .toList();
    }

    /** Commands and options between the lines, too, are those of the program. */
    @ParameterizedTest
    @MethodSource("pages")
    void everyCommandAndOptionThatIsNamedExists(GuidePage page) {
        Map<String, CommandLine> commands = Main.commands(Main.COMMANDS).getSubcommands();
        Set<String> everywhere = new TreeSet<>(NOT_OURS);
        commands.values().forEach(command -> everywhere.addAll(options(command)));
        SPAN.matcher(page.prose())
                .results()
                .map(span -> span.group(1))
                .forEach(
                        span -> {
                            Set<String> known = everywhere;
                            if (span.startsWith("brakewright ")) {
                                CommandLine named = commands.get(span.split(" ")[1]);
                                assertThat(named).as("the command of `%s`", span).isNotNull();
                                known = new TreeSet<>(options(named));
                                known.addAll(NOT_OURS);
                            }
                            assertThat(known)
                                    .as("the options of `%s`", span)
                                    .containsAll(named(span));
                        });
    }

    @Test
    void everyCommandIsRunAndEveryOptionNamed() {
        String all = pages().stream().map(GuidePage::text).collect(Collectors.joining("\n"));
        String commands =
                pages().stream()
                        .flatMap(page -> page.blocks().stream())
                        .filter(GuidePage.Block::isCommands)
                        .map(GuidePage.Block::lines)
                        .collect(Collectors.joining("\n"));
        Main.commands(Main.COMMANDS)
                .getSubcommands()
                .forEach(
                        (name, command) -> {
                            if (!name.equals("help")) {
                                assertThat(commands).contains("brakewright " + name);
                                assertThat(named(all)).containsAll(options(command));
                            }
                        });
    }

    /** Those that every command has apart. */
    private static Set<String> options(CommandLine command) {
        Set<String> options =
                command.getCommandSpec().options().stream()
                        .map(CommandLine.Model.OptionSpec::longestName)
                        .collect(Collectors.toCollection(TreeSet::new));
        options.removeAll(NOT_OURS);
        return options;
    }

    private static Set<String> named(String text) {
        return OPTION.matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}

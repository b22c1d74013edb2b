package brakewright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A page of the guide, README.md among them: what is shown on it is held to what the program does,
 * or written anew where {@code -Dbrakewright.guide=write} asks for it.
 *
 * @param path where it is
 * @param text what stands on it
 */
public record GuidePage(Path path, String text) {

    /** Where the pages are, README.md apart. */
    static final Path FOLDER = Path.of("guide");

    static final Path INDEX = FOLDER.resolve("README.md");

    static final Path README = Path.of("..", "README.md");

    /** A fence with what it says of its lines, and the mark above it. */
    private static final Pattern BLOCK =
            Pattern.compile("(?ms)^(?:<!-- ([^>]*?) -->\n)?```(\\w+)\n(.*?)^```$");

    /**
     * What a fence holds.
     *
     * @param mark the comment above it, empty where there is none
     * @param language what it says of its lines
     * @param lines what it holds
     */
    record Block(String mark, String language, String lines) {

        boolean isCommands() {
            return language.equals("sh");
        }
    }

    /** Reads one page of the guide. */
    public static GuidePage of(String name) {
        return read(FOLDER.resolve(name));
    }

    /** README.md and every page of the guide. */
    static List<GuidePage> all() {
        try (Stream<Path> pages = Files.list(FOLDER)) {
            return Stream.concat(Stream.of(README), pages.sorted())
                    .filter(path -> path.toString().endsWith(".md"))
                    .map(GuidePage::read)
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static GuidePage read(Path path) {
        try {
            return new GuidePage(path, Files.readString(path));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    List<Block> blocks() {
        return BLOCK.matcher(text).results().map(GuidePage::block).toList();
    }

    private static Block block(MatchResult found) {
        String mark = found.group(1);
        return new Block(mark == null ? "" : mark, found.group(2), found.group(3));
    }

    /** What stands outside all fences. */
    String prose() {
        return BLOCK.matcher(text).replaceAll("");
    }

    /** The page with what a change makes of each block. */
    GuidePage with(UnaryOperator<Block> change) {
        Matcher matcher = BLOCK.matcher(text);
        StringBuilder changed = new StringBuilder();
        while (matcher.find()) {
            String whole = matcher.group();
            int from = matcher.start(3) - matcher.start();
            int to = matcher.end(3) - matcher.start();
            String lines = change.apply(block(matcher.toMatchResult())).lines();
            matcher.appendReplacement(
                    changed,
                    Matcher.quoteReplacement(
                            whole.substring(0, from) + lines + whole.substring(to)));
        }
        return new GuidePage(path, matcher.appendTail(changed).toString());
    }

    /**
     * The page with other lines between two marks, {@code <!-- NAME begins -->} and {@code <!--
     * NAME ends -->}.
     */
    public GuidePage withPart(String name, String lines) {
        String begin = "<!-- " + name + " begins -->\n";
        int from = text.indexOf(begin) + begin.length();
        int to = text.indexOf("<!-- " + name + " ends -->", from);
        if (from < begin.length() || to < 0) {
            throw new AssertionError("no place for the " + name + " in " + path);
        }
        return new GuidePage(path, text.substring(0, from) + lines + text.substring(to));
    }

    /**
     * What is on the disk, written first where that is asked for.
     *
     * @param before what was read; where nothing changes, nothing is written, as other tests write
     *     other parts of a page
     */
    public GuidePage keptFor(GuidePage before) throws IOException {
        if ("write".equals(System.getProperty("brakewright.guide")) && !equals(before)) {
            Files.writeString(path, text);
        }
        return read(path);
    }

    @Override
    public String toString() {
        return path.startsWith(FOLDER) ? path.toString() : path.getFileName().toString();
    }
}

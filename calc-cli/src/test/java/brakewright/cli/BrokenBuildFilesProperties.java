package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.LimitId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever stands in a build file, the answer is a worksheet or a message. */
class BrokenBuildFilesProperties {

    private static final Pattern TOKEN =
            Pattern.compile("[A-Za-z_]+|[0-9]+(?:\\.[0-9]+)?|[^\\sA-Za-z0-9_]");

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");

    private static void assertAnswered(CommandRun run) {
        assertThat(run.status()).as(run.err()).isIn(0, 1, 2);
        assertThat(run.err()).doesNotContain("\tat ").doesNotContain("Exception");
        if (run.status() == 2) {
            assertThat(run.err()).isNotBlank();
            assertThat(run.out()).isEmpty();
        } else {
            assertThat(run.err()).isEmpty();
            assertThat(run.out()).contains("Pack and parts: ", "Brake: ", "CAUTIONS");
        }
    }

    /**
     * Runs a text. The TOML library's own assertions are on in tests only; where one of them fails
     * the run says nothing about the program.
     */
    private static CommandRun run(String text, String... options) {
        try {
            return CommandRun.worksheet(text, options);
        } catch (AssertionError inLibrary) {
            Assume.that(!inLibrary.getStackTrace()[0].getClassName().startsWith("org.tomlj."));
            throw inLibrary;
        }
    }

    @Property(tries = 200)
    void bytesAreAnswered(@ForAll byte[] bytes) {
        CommandRun run = CommandRun.worksheet(bytes);
        assertAnswered(run);
        assertThat(run.status()).isEqualTo(2);
    }

    @Property(tries = 200)
    void textIsAnswered(@ForAll String text) {
        CommandRun run = run(text);
        assertAnswered(run);
        assertThat(run.status()).isEqualTo(2);
    }

    @Provide
    Arbitrary<String> nearlyToml() {
        return Arbitraries.of(
                        "[",
                        "]",
                        "[[",
                        "]]",
                        "{",
                        "}",
                        "=",
                        " = ",
                        ".",
                        ",",
                        "\"",
                        "\"\"\"",
                        "'",
                        "'''",
                        "#",
                        "\n",
                        "\n",
                        "\n",
                        "\r\n",
                        " ",
                        "\t",
                        "\\",
                        "\\u0000",
                        "\0",
                        "title",
                        "rider",
                        "mass",
                        "pack",
                        "cell",
                        "use",
                        "settings",
                        "proposals",
                        "pack.cell",
                        "\"92 kg\"",
                        "\"a\"",
                        "1",
                        "-1",
                        "1e400",
                        "nan",
                        "inf",
                        "true",
                        "0x",
                        "1979-05-27",
                        "07:32:00",
                        "[rider]\n",
                        "[proposals.a]\n",
                        "[proposals.a.b.c]\n",
                        "proposals = 1\n",
                        "[pack.cell]\n",
                        "[pack]\n",
                        "[packs]\n",
                        "[[packs]]\n",
                        "[[packs]]\n",
                        "[packs.cell]\n",
                        "[[packs.cell]]\n",
                        "packs = []\n",
                        "packs = [{series = 1}, {}]\n",
                        "[battery]\n",
                        "joining = \"series\"\n",
                        "cell = \"samsung-30q\"\n",
                        "\"\" = 1\n",
                        "\ufeff",
                        "\u2028")
                .list()
                .ofMaxSize(60)
                .map(parts -> String.join("", parts));
    }

    @Property(tries = 400)
    void textThatIsNearlyTomlIsAnswered(@ForAll("nearlyToml") String text) {
        CommandRun run = run(text);
        assertAnswered(run);
        assertThat(run.status()).isEqualTo(2);
    }

    /** A change of one place in a file; places and words are drawn from large numbers. */
    private record Change(int what, int where, int other) {

        String of(String file) {
            List<String> lines = new ArrayList<>(file.lines().toList());
            if (lines.isEmpty()) {
                return file;
            }
            int line = where % lines.size();
            int second = other % lines.size();
            switch (what) {
                case 0 -> lines.remove(line);
                case 1 -> lines.add(second, lines.get(line));
                case 2 -> lines.set(line, lines.get(second));
                case 3 -> lines.set(line, garbled(lines.get(line)));
                case 4 -> lines.subList(line, lines.size()).clear();
                case 5 -> {
                    return replaced(file, TOKEN, token(file));
                }
                default -> {
                    return replaced(file, NUMBER, number());
                }
            }
            return String.join("\n", lines) + "\n";
        }

        private String garbled(String line) {
            char letter = (char) (32 + other % 95);
            int at = line.isEmpty() ? 0 : other % line.length();
            return line.substring(0, at) + letter + line.substring(Math.min(line.length(), at + 1));
        }

        private String token(String file) {
            List<String> tokens = TOKEN.matcher(file).results().map(each -> each.group()).toList();
            return tokens.isEmpty() ? "" : tokens.get(other % tokens.size());
        }

        private String number() {
            List<String> numbers =
                    List.of(
                            "0", "1", "2", "3", "0.001", "0.01", "0.1", "0.5", "1.0", "5", "7",
                            "16", "20", "37.5", "60", "99", "100", "250", "999", "5000", "1e5",
                            "-1");
            return numbers.get(other % numbers.size());
        }

        private String replaced(String file, Pattern pattern, String by) {
            int count = (int) pattern.matcher(file).results().count();
            if (count == 0) {
                return file;
            }
            Matcher matcher = pattern.matcher(file);
            for (int i = 0; i <= where % count; i++) {
                matcher.find();
            }
            return file.substring(0, matcher.start()) + by + file.substring(matcher.end());
        }
    }

    /** The examples, and the trail board with two packs. */
    private static List<String> bases() {
        List<String> bases = new ArrayList<>();
        for (var example : brakewright.cli.Example.values()) {
            bases.add(example.text());
        }
        bases.add(TwoPacks.file("[battery]\njoining = \"parallel\"\n").text());
        return bases;
    }

    private static Arbitrary<String> changed(int... kinds) {
        Arbitrary<Integer> place = Arbitraries.integers().between(0, 100_000);
        Arbitrary<Integer> kind = Arbitraries.of(Arrays.stream(kinds).boxed().toList());
        return Combinators.combine(
                        Arbitraries.of(bases()),
                        Combinators.combine(kind, place, place)
                                .as(Change::new)
                                .list()
                                .ofMinSize(1)
                                .ofMaxSize(5))
                .as(
                        (base, changes) -> {
                            String text = base;
                            for (Change change : changes) {
                                text = change.of(text);
                            }
                            return text;
                        });
    }

    @Provide
    Arbitrary<String> changedExamples() {
        return changed(0, 1, 2, 3, 4, 5, 6);
    }

    @Property(tries = 150)
    void changedExamplesAreAnswered(@ForAll("changedExamples") String text) {
        assertAnswered(run(text));
    }

    @Provide
    Arbitrary<String> examplesWithOtherNumbers() {
        return changed(6);
    }

    @Property(tries = 150)
    void examplesWithOtherNumbersAreAnswered(@ForAll("examplesWithOtherNumbers") String text) {
        assertAnswered(run(text));
    }

    @Property(tries = 60)
    void examplesWithOtherNumbersGiveSoundJson(@ForAll("examplesWithOtherNumbers") String text) {
        CommandRun run = run(text, "--format", "json");
        assertThat(run.status()).as(run.err()).isIn(0, 1, 2);
        if (run.status() == 2) {
            assertThat(run.out()).isEmpty();
        } else {
            assertThat(run.out()).doesNotContain("NaN").doesNotContain("Infinity");
            assertThat(JsonMaps.read(run.out())).containsKeys("limits", "brake_map", "findings");
        }
    }

    @Property(tries = 60)
    void everyLimitOfExamplesWithOtherNumbersIsExplained(
            @ForAll("examplesWithOtherNumbers") String text, @ForAll LimitId limit)
            throws IOException {
        Path file = Files.createTempFile("build", ".toml");
        try {
            Files.writeString(file, text);
            CommandRun run = CommandRun.of("explain", file.toString(), limit.key());
            assertThat(run.status()).as(run.err()).isIn(0, 2);
            assertThat(run.out().isEmpty()).isEqualTo(run.status() == 2);
        } finally {
            Files.delete(file);
        }
    }

    @Example
    void deepNestingIsAnswered() {
        for (String text :
                List.of(
                        "a = " + "[".repeat(100_000),
                        "a = " + "[".repeat(100_000) + "]".repeat(100_000),
                        "[".repeat(100_000),
                        "a = " + "{a = ".repeat(20_000) + "1" + "}".repeat(20_000),
                        "a" + ".a".repeat(20_000) + " = 1\n",
                        "[a" + ".a".repeat(20_000) + "]\nb = 1\n",
                        "[proposals" + ".a".repeat(20_000) + "]\nb = 1\n")) {
            CommandRun run = run(text);
            assertAnswered(run);
            assertThat(run.status())
                    .as(text.substring(0, 20).toLowerCase(Locale.ROOT))
                    .isEqualTo(2);
        }
    }

    @Example
    void longWordsAreAnswered() {
        for (String text :
                List.of(
                        "a".repeat(500_000) + " = 1\n",
                        "title = \"" + "a".repeat(500_000) + "\"\n",
                        "[rider]\nmass = \"" + "1".repeat(500_000) + " kg\"\n",
                        "[rider]\nmass = \"1" + " ".repeat(300_000) + "x\"\n",
                        "[rider]\nmass = \"1 " + "m".repeat(300_000) + " ± 1\"\n")) {
            CommandRun run = run(text);
            assertAnswered(run);
            assertThat(run.status()).isEqualTo(2);
        }
    }
}

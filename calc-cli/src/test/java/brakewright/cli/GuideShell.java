package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Runs the commands of a page as a reader would type them at the top of the project. */
final class GuideShell {

    /** What builds and installs is no command of the program; {@code .ci/run} runs what tests. */
    private static final Set<String> OUTSIDE = Set.of("mvn", "man", "source", "export");

    private static final Pattern COMMAND =
            Pattern.compile(
                    "(?:COLUMNS=(\\d+) )?(?:calc-cli/bin/)?brakewright(.*?)(?: < (\\S+))?(; echo \\$\\?)?");

    private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|[^\\s\"])+");
    private static final Pattern OWN_FILE =
            Pattern.compile("[\\w-]+\\.(toml|txt|html|md|csv|json)");

    private final Path folder;

    GuideShell(Path folder) {
        this.folder = folder;
    }

    /** Lays a file where the commands look for it. */
    void lay(String name, String lines) throws IOException {
        Files.writeString(folder.resolve(name), lines);
    }

    /** What all lines of a block print; what is told beside a result counts where there is none. */
    String run(String lines) throws IOException {
        StringBuilder printed = new StringBuilder();
        for (String line : lines.replaceAll("\\\\\n\\s*", "").lines().toList()) {
            if (!OUTSIDE.contains(line.split(" ", 2)[0])) {
                printed.append(runLine(line));
            }
        }
        return printed.toString();
    }

    private String runLine(String line) throws IOException {
        Matcher command = COMMAND.matcher(line);
        assertThat(command.matches()).as("a command of ours: %s", line).isTrue();
        Width width =
                command.group(1) == null
                        ? Width.USUAL
                        : Width.of(Integer.parseInt(command.group(1)));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        InputStream before = System.in;
        int status;
        try {
            if (command.group(3) != null) {
                System.setIn(
                        new ByteArrayInputStream(
                                Files.readAllBytes(Path.of(found(command.group(3))))));
            }
            status =
                    Main.run(
                            width,
                            new PrintWriter(out, true),
                            new PrintWriter(err, true),
                            words(command.group(2)).toArray(String[]::new));
        } finally {
            System.setIn(before);
        }
        boolean isStatusShown = command.group(4) != null;
        if (!isStatusShown) {
            assertThat(status)
                    .as("status of %s, which is not shown: %s", line, err)
                    .isLessThan(ExitStatus.UNUSABLE);
        }
        return (out + (status < ExitStatus.UNUSABLE ? "" : err.toString()))
                        .replace(folder + "/", "")
                + (isStatusShown ? status + "\n" : "");
    }

    private List<String> words(String typed) {
        return WORD.matcher(typed)
                .results()
                .map(word -> found(word.group().replace("\"", "")))
                .toList();
    }

    /** Where a file is that a reader names from the top of the project. */
    private String found(String word) {
        if (word.equals(".")) {
            return folder.toString();
        }
        return OWN_FILE.matcher(word).matches()
                ? folder.resolve(word).toString()
                : word.replaceFirst("^calc-cli/", "");
    }
}

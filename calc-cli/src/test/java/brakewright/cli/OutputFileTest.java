package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFileTest {

    @TempDir Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"text", "json"})
    void holdsWhatStandardOutputWouldShow(String format) throws IOException {
        Path file = folder.resolve("sheet");
        CommandRun run =
                CommandRun.of("worksheet", "--format", format, "--output", file.toString());
        assertThat(run).isEqualTo(new CommandRun(0, "", ""));
        assertThat(file).hasContent(Answers.of("worksheet", "--format", format).out());
        assertThat(leftInFolder()).containsExactly("sheet");
    }

    @ParameterizedTest
    @EnumSource
    void keepsTheStatusOfTheVerdict(Example example) {
        Path file = folder.resolve("sheet");
        CommandRun run = CommandRun.of("worksheet", example.path(), "--output", file.toString());
        assertThat(run.status()).isEqualTo(example.status());
        assertThat(file).exists();
    }

    @Test
    void isNotReplacedUnasked() throws IOException {
        Path file = Files.writeString(folder.resolve("sheet"), "mine");
        CommandRun run = CommandRun.of("worksheet", "--output", file.toString());
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains(file.toString(), "--force");
        assertThat(file).hasContent("mine");
        assertThat(leftInFolder()).containsExactly("sheet");
    }

    @Test
    void isReplacedWithForce() throws IOException {
        Path file = Files.writeString(folder.resolve("sheet"), "mine".repeat(100_000));
        CommandRun run = CommandRun.of("worksheet", "--output", file.toString(), "--force");
        assertThat(run).isEqualTo(new CommandRun(0, "", ""));
        assertThat(file).hasContent(Answers.of("worksheet").out());
        assertThat(leftInFolder()).containsExactly("sheet");
    }

    /** Others may read it where they may read any other new file. */
    @Test
    void hasThePermissionsOfAnyNewFile() throws IOException {
        assumeTrue(
                Files.getFileStore(folder).supportsFileAttributeView("posix"),
                "NOT CHECKED: no permissions on this file system");
        Path other = Files.createFile(folder.resolve("other"));
        Path file = folder.resolve("sheet");
        CommandRun.of("worksheet", "--output", file.toString());
        assertThat(Files.getPosixFilePermissions(file))
                .isEqualTo(Files.getPosixFilePermissions(other));
    }

    @Test
    void isNotWrittenIntoAFolderThatIsNotThere() throws IOException {
        Path file = folder.resolve("nowhere").resolve("sheet");
        CommandRun run = CommandRun.of("worksheet", "--output", file.toString());
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains(file.toString());
        assertThat(leftInFolder()).isEmpty();
    }

    @Test
    void isNotWrittenBelowAFile() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine").resolve("sheet");
        CommandRun run = CommandRun.of("worksheet", "--output", file.toString());
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains(file.toString());
        assertThat(leftInFolder()).containsExactly("file");
    }

    @Test
    void doesNotReplaceAFolderEvenWithForce() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        CommandRun run = CommandRun.of("worksheet", "--output", other.toString(), "--force");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(other).isEmptyDirectory();
        assertThat(leftInFolder()).containsExactly("other");
    }

    @Test
    void isNotWrittenForAnUnusableBuildFile() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.toml"), "title = 1\n");
        Path file = Files.writeString(folder.resolve("sheet"), "mine");
        CommandRun run =
                CommandRun.of("worksheet", bad.toString(), "--output", file.toString(), "--force");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(file).hasContent("mine");
        assertThat(leftInFolder()).containsExactlyInAnyOrder("bad.toml", "sheet");
    }

    /** Neither under its own name nor through a link, in either direction. */
    @Test
    void isNeverABuildFileThatWasRead() throws IOException {
        String board = Example.TRAIL_BOARD.text();
        Path build = Files.writeString(folder.resolve("board.toml"), board);
        Path link = Files.createSymbolicLink(folder.resolve("link.toml"), build);
        Path other = Path.of(Example.TRIKE.path());
        for (List<String> arguments :
                List.of(
                        List.of("worksheet", build.toString(), "--output", build.toString()),
                        List.of("worksheet", build.toString(), "--output", link.toString()),
                        List.of("worksheet", link.toString(), "--output", build.toString()),
                        List.of(
                                "sweep",
                                build.toString(),
                                "--vary",
                                "speed_cap=20km/h..30km/h/2",
                                "--output",
                                folder.resolve(".").resolve("board.toml").toString()),
                        List.of(
                                "compare",
                                other.toString(),
                                "--also",
                                build.toString(),
                                "--output",
                                build.toString()))) {
            List<String> forced = new ArrayList<>(arguments);
            forced.add("--force");
            CommandRun run = CommandRun.of(forced.toArray(String[]::new));
            assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
            assertThat(run.err()).contains("a build file that was read");
            assertThat(build).hasContent(board);
            assertThat(link).isSymbolicLink();
        }
    }

    private List<String> leftInFolder() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}

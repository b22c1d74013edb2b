package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A second implementation, in another language, recomputes the worksheets from their inputs. */
class RecomputeTest {

    private static final Path SCRIPT = Path.of("src", "test", "python", "recompute.py");

    @ParameterizedTest
    @EnumSource
    void agreesWithTheSecondImplementation(Example example, @TempDir Path folder)
            throws IOException, InterruptedException {
        assumeTrue(Files.isRegularFile(SCRIPT), "NOT CHECKED: " + SCRIPT + " is missing");
        assumeTrue(hasPython(), "NOT CHECKED: there is no python3 to run " + SCRIPT);
        Path sheet = folder.resolve("sheet.json");
        Files.writeString(sheet, example.json());
        Path report = folder.resolve("report.txt");
        Process process =
                new ProcessBuilder("python3", SCRIPT.toString(), sheet.toString())
                        .redirectErrorStream(true)
                        .redirectOutput(report.toFile())
                        .start();
        try {
            assertThat(process.waitFor(2, TimeUnit.MINUTES)).as("ended in time").isTrue();
        } finally {
            process.destroyForcibly();
        }
        assertThat(process.exitValue())
                .as(Files.readString(report, StandardCharsets.UTF_8))
                .isZero();
    }

    private static boolean hasPython() throws InterruptedException {
        try {
            Process process =
                    new ProcessBuilder("python3", "-c", "pass")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start();
            return process.waitFor() == 0;
        } catch (IOException missing) {
            return false;
        }
    }
}

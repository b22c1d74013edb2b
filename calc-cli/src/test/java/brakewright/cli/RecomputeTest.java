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
import org.junit.jupiter.params.provider.ValueSource;

/** A second implementation, in another language, recomputes the worksheets from their inputs. */
class RecomputeTest {

    private static final Path VEHICLES =
            Path.of("src", "test", "resources", "brakewright", "cli", "vehicles");
    private static final Path SCRIPT = Path.of("src", "test", "python", "recompute.py");

    @ParameterizedTest
    @EnumSource
    void agreesWithTheSecondImplementation(Example example, @TempDir Path folder)
            throws IOException, InterruptedException {
        agrees(example.json(), folder);
    }

    /** Vehicles at which one of both implementations was once wrong. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "two-packs",
                "slowing-ride",
                "cascading-packs",
                "idle-near-empty",
                "idle-beside-the-last-power",
                "slowing-ride-on-two-packs",
                "climb-held-by-grip",
                "corner-in-the-thrust",
                "trip-near-empty",
                "cruise-never-reached"
            })
    void agreesAboutAwkwardVehicles(String name, @TempDir Path folder)
            throws IOException, InterruptedException {
        Path vehicle = VEHICLES.resolve(name + ".toml");
        agrees(CommandRun.of("worksheet", vehicle.toString(), "--format", "json").out(), folder);
    }

    private static void agrees(String json, Path folder) throws IOException, InterruptedException {
        assumeTrue(Files.isRegularFile(SCRIPT), "NOT CHECKED: " + SCRIPT + " is missing");
        assumeTrue(hasPython(), "NOT CHECKED: there is no python3 to run " + SCRIPT);
        Path sheet = folder.resolve("sheet.json");
        Files.writeString(sheet, json);
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

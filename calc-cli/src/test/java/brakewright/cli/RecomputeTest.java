package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A second implementation, in another language, recomputes the worksheets from their inputs; it is
 * started once for all of them.
 */
class RecomputeTest {

    private static final Path VEHICLES =
            Path.of("src", "test", "resources", "brakewright", "cli", "vehicles");
    private static final Path SCRIPT = Path.of("src", "test", "python", "recompute.py");

    /** Vehicles at which one of both implementations was once wrong, or that no example is like. */
    private static final List<String> AWKWARD =
            List.of(
                    "two-packs",
                    "slowing-ride",
                    "cascading-packs",
                    "idle-near-empty",
                    "idle-beside-the-last-power",
                    "slowing-ride-on-two-packs",
                    "climb-held-by-grip",
                    "corner-in-the-thrust",
                    "trip-near-empty",
                    "cruise-never-reached",
                    "charged-fast-to-a-charge",
                    "effective-currents",
                    "guarded-on-the-charge-lead",
                    "brake-that-ends",
                    "cap-above-use",
                    "late-regen-limiter",
                    "quick-trips");

    @Test
    void agreesWithTheSecondImplementation(@TempDir Path folder)
            throws IOException, InterruptedException {
        requirePython();
        List<String> command = new ArrayList<>(List.of("python3", SCRIPT.toString()));
        for (Example example : Example.values()) {
            command.add(sheet(folder, example.name(), example.json()));
        }
        for (String name : AWKWARD) {
            String vehicle = VEHICLES.resolve(name + ".toml").toString();
            CommandRun run = CommandRun.of("worksheet", vehicle, "--format", "json");
            command.add(sheet(folder, name, run.out()));
        }
        Path report = folder.resolve("report.txt");
        Process process =
                new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(report.toFile())
                        .start();
        try {
            assertThat(process.waitFor(10, TimeUnit.MINUTES)).as("ended in time").isTrue();
        } finally {
            process.destroyForcibly();
        }
        String text = Files.readString(report, StandardCharsets.UTF_8);
        assertThat(process.exitValue()).as(text).isZero();
        assertThat(text.lines().filter(line -> line.endsWith(".json")))
                .hasSize(Example.values().length + AWKWARD.size());
    }

    private static String sheet(Path folder, String name, String json) throws IOException {
        return Files.writeString(folder.resolve(name + ".json"), json).toString();
    }

    /** Without it the test is skipped, and says so where a quiet build shows it, too. */
    private static void requirePython() throws InterruptedException {
        boolean there = hasPython();
        if (!there) {
            System.out.println("NOT CHECKED: there is no python3 to run " + SCRIPT);
        }
        assumeTrue(there, "there is no python3 to run " + SCRIPT);
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

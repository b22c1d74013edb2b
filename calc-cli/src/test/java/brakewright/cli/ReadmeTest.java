package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.cli.buildfile.BuildFile;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.PackLimit;
import brakewright.powertrain.PackState;
import brakewright.tables.ReferenceTables;
import brakewright.worksheet.Worksheet;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Holds README.md to what the program does. */
class ReadmeTest {

    private static final Path README = Path.of("..", "README.md");

    /** Frozen output: the sample is what the program prints, up to the table of settings. */
    @Test
    @Tag("frozen")
    void showsTheWorksheetAsItIsPrinted() throws IOException {
        String sample = block("<!-- sample: worksheet -->");
        assertThat(sample).contains("Verdict").contains("Speed cap");
        assertThat(run("worksheet")).startsWith(sample);
    }

    /** Frozen output: the sample is what the program prints, up to the pack currents. */
    @Test
    @Tag("frozen")
    void showsTheCheckAsItIsPrinted() throws IOException {
        String sample = block("<!-- sample: check -->");
        assertThat(sample).contains("Answer").contains("useless");
        assertThat(
                        run(
                                "check",
                                "examples/vineyard-trail-board.toml",
                                "--with",
                                "motor_brake_current=38A"))
                .startsWith(sample);
    }

    @Test
    void itsLibrarySnippetRuns() throws Exception {
        Path path = Path.of("examples", "vineyard-trail-board.toml");
        BuildFile file = BuildFile.read(Files.readAllBytes(path), ReferenceTables.load());
        Worksheet sheet = Worksheet.of(file.build());

        Limit brake = sheet.limits().motorBrake();
        double perMotor = brake.value(); // A, in the controller's current basis
        ConstraintId heldBy = brake.binding().id(); // why not more

        PackLimit regen = sheet.limits().packRegen();
        double now = regen.valueAt(0.93, 11.0); // A, at 93 % charge, cells at 11 °C
        double fades =
                sheet.operation()
                        .brake()
                        .fadeSpeed(
                                PackState.of(
                                        new BatteryModel(file.build().battery()),
                                        0.93,
                                        11.0)); // m/s

        assertThat(perMotor).isPositive();
        assertThat(heldBy).isEqualTo(ConstraintId.GRIP);
        assertThat(now).isPositive().isLessThan(regen.valueAt(0.5, 20.0));
        assertThat(fades).isPositive();
        assertThat(squeezed(block("<!-- snippet: library -->")))
                .contains("BuildFile.read(Files.readAllBytes(path), ReferenceTables.load())")
                .contains("regen.valueAt(0.93, 11.0)")
                .contains("sheet.limits().motorBrake()");
    }

    private static String run(String... arguments) {
        StringWriter out = new StringWriter();
        PrintWriter printer = new PrintWriter(out);
        Main.commandLine(printer, printer).execute(arguments);
        printer.flush();
        return out.toString();
    }

    private static String block(String marker) throws IOException {
        String text = Files.readString(README);
        int from = text.indexOf('\n', text.indexOf("```", text.indexOf(marker))) + 1;
        return text.substring(from, text.indexOf("```", from));
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", " ");
    }
}

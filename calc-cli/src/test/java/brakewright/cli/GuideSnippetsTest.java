package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.buildfile.BuildFile;
import brakewright.cli.recording.ColumnChoice;
import brakewright.cli.recording.Recordings;
import brakewright.fitting.Fit;
import brakewright.fitting.Fits;
import brakewright.fitting.Fitted;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.PackLimit;
import brakewright.live.Horizon;
import brakewright.live.LiveLimits;
import brakewright.live.MeasuringDoubt;
import brakewright.powertrain.PackState;
import brakewright.profile.Comparison;
import brakewright.profile.Profile;
import brakewright.profile.Solution;
import brakewright.profile.Solver;
import brakewright.recording.Exceeded;
import brakewright.recording.HeldLimits;
import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.RecordedRows;
import brakewright.recording.Repairs;
import brakewright.recording.Ride;
import brakewright.replay.AgainstModel;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.tables.ReferenceTables;
import brakewright.worksheet.Worksheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The snippets of Java in the guide are the lines that run here; that of README.md is compiled as a
 * program of its own by the tests of build files.
 */
class GuideSnippetsTest {

    @Test
    void everySnippetIsOneOfThese() {
        assertThat(GuidePage.all().stream().flatMap(page -> page.blocks().stream()))
                .filteredOn(block -> block.language().equals("java"))
                .extracting(GuidePage.Block::mark)
                .containsExactlyInAnyOrder(
                        "snippet: steps",
                        "snippet: library",
                        "snippet: compare",
                        "snippet: live",
                        "snippet: ride");
    }

    @Test
    void theLibrarySnippetRuns() throws Exception {
        Path path = Path.of("examples", "vineyard-trail-board.toml");
        // snippet library begins
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
        // snippet library ends

        assertThat(perMotor).isPositive();
        assertThat(heldBy).isEqualTo(ConstraintId.GRIP);
        assertThat(now).isPositive().isLessThan(regen.valueAt(0.5, 20.0));
        assertThat(fades).isPositive();
        assertThat(squeezed(snippet("library"))).isEqualTo(ownSource("library"));
    }

    /** A session that brakes near full: the model takes less than is sent, and says so in time. */
    @Test
    void theLiveSnippetRuns() throws Exception {
        Path path = Path.of("examples", "vineyard-trail-board.toml");
        double voltage = 49.4;
        double current = 6.0;
        double speed = 6.0;
        // snippet live begins
        Build board = BuildFile.read(Files.readAllBytes(path), ReferenceTables.load()).build();
        LiveLimits live = LiveLimits.of(board); // once, before the ride
        MeasuringDoubt doubt = new MeasuringDoubt(0.1, 0.5, 0.2); // 0.1 V, 0.5 A, a fifth of R

        // many times a second, with what is measured
        double fullest = live.greatestCharge(voltage, current, 18.0, doubt);
        double regen = live.permittedRegenOrZeroA(fullest, 18.0); // A, all controllers together
        double brake = live.permittedBrakeOrZeroA(speed, fullest, 18.0); // A per motor
        double further = live.furtherRegenA(voltage, 18.0, Horizon.TEN_SECONDS); // A besides
        // snippet live ends

        assertThat(fullest).isBetween(live.charge(voltage, current, 18.0), 1.0);
        assertThat(regen).isPositive().isLessThan(live.permittedRegenA(0.5, 18.0));
        assertThat(brake).isPositive();
        assertThat(further).isNotNegative();
        assertThat(squeezed(snippet("live"))).isEqualTo(ownSource("live"));
    }

    @Test
    void theRideSnippetRuns() throws Exception {
        Path path = Path.of("examples", "vineyard-trail-board.toml");
        Piece recorded =
                Recordings.read(
                                List.of(Path.of("guide", "straight.csv")),
                                ColumnChoice.NONE,
                                Optional.empty())
                        .recording()
                        .pieces()
                        .get(0);
        double[] time = recorded.column(Quantity.TIME);
        double[] speed = recorded.column(Quantity.WHEEL_SPEED);
        double[] voltage = recorded.column(Quantity.PACK_VOLTAGE);
        double[] charge = recorded.column(Quantity.CHARGE);
        double[] current = recorded.column(Quantity.PACK_CURRENT);
        // snippet ride begins
        Build board = BuildFile.read(Files.readAllBytes(path), ReferenceTables.load()).build();
        RecordedRows rows =
                RecordedRows.of("my logger", time) // s
                        .with(Quantity.WHEEL_SPEED, speed) // m/s
                        .with(Quantity.PACK_VOLTAGE, voltage) // V
                        .with(Quantity.CHARGE, charge) // 0 to 1; else from use.charge_from
                        .with(Quantity.PACK_CURRENT, current); // A, positive out of the pack
        Repairs repairs = new Repairs(); // what is not taken as it stands
        Ride ride = Ride.of(rows.recorded(repairs), 3.0, 0.0, repairs).orElseThrow();
        List<Exceeded> beyond = HeldLimits.of(board, ride).exceeded();
        Optional<AgainstModel> predicted = AgainstModel.of(board, ride);
        List<Fit.Found> better = Fits.of(board, ride).preferred(); // what the ride says of it
        // snippet ride ends

        assertThat(beyond).isEmpty();
        assertThat(predicted).isPresent();
        assertThat(better).extracting(Fit.Found::what).contains(Fitted.ROLLING_RESISTANCE);
        assertThat(squeezed(snippet("ride"))).isEqualTo(ownSource("ride"));
    }

    @Test
    void theComparingSnippetRuns() throws Exception {
        PrintStream console = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try {
            compares();
        } finally {
            System.setOut(console);
        }
        assertThat(printed.toString(StandardCharsets.UTF_8).lines()).hasSizeGreaterThan(20);
    }

    private static void compares() throws Exception {
        Path path = Path.of("examples", "vineyard-trail-board.toml");
        // snippet compare begins
        Build board = BuildFile.read(Files.readAllBytes(path), ReferenceTables.load()).build();
        Settings firmer = board.settings().withMotorBrakeCurrent(38.0);
        Comparison comparison =
                Comparison.of(
                        new Profile("now", board),
                        new Profile("firmer", board.withSettings(firmer)));
        for (Comparison.Row row : comparison.rows()) {
            System.out.println(
                    row.measure().quantity().key()
                            + " "
                            + row.readings().get(0).value()
                            + " "
                            + row.readings().get(1).value());
        }
        Solution highest =
                Solver.highest(
                        current ->
                                Evaluation.of(
                                        board.withSettings(firmer.withMotorBrakeCurrent(current))),
                        0.0,
                        100.0);
        // snippet compare ends
        assertThat(comparison.rows()).hasSizeGreaterThan(20);
        assertThat(highest).isInstanceOf(Solution.Found.class);
        String snippet = snippet("compare");
        assertThat(squeezed(snippet)).isEqualTo(ownSource("compare"));
        assertThat(snippet.lines().count()).isLessThan(15);
    }

    private static String snippet(String name) {
        return GuidePage.of("embed.md").blocks().stream()
                .filter(block -> block.mark().equals("snippet: " + name))
                .findFirst()
                .orElseThrow()
                .lines();
    }

    /** Without comments and white space, which the formatter and the page lay out differently. */
    private static String squeezed(String text) {
        return text.replaceAll("//[^\n]*", "").replaceAll("\\s+", "");
    }

    /** What stands between the marks of a snippet in this file. */
    private static String ownSource(String name) throws IOException {
        String source =
                Files.readString(
                        Path.of(
                                "src",
                                "test",
                                "java",
                                "brakewright",
                                "cli",
                                "GuideSnippetsTest.java"));
        String begin = "// snippet " + name + " begins\n";
        int from = source.indexOf(begin) + begin.length();
        return squeezed(source.substring(from, source.indexOf("// snippet " + name + " ends")));
    }
}

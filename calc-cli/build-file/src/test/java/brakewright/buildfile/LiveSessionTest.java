package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.limit.PackLimit;
import brakewright.live.LiveLimits;
import brakewright.live.MeasuringDoubt;
import brakewright.spec.Build;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An invented ride, row by row: what was permitted beside what was measured. */
class LiveSessionTest {

    private static final Path BOARD = Path.of("..", "examples", "vineyard-trail-board.toml");
    private static final Path RIDE = Path.of("examples", "invented-ride.csv");
    private static final MeasuringDoubt DOUBT = new MeasuringDoubt(0.1, 0.3, 0.2);

    @TempDir Path folder;

    private static List<double[]> rows() throws IOException {
        return Files.readAllLines(RIDE).stream()
                .filter(line -> Character.isDigit(line.charAt(0)))
                .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble))
                .map(row -> row.toArray())
                .toList();
    }

    /** The tables are the full model, at every row and at both ends of what is not known. */
    @Test
    void whatIsPermittedIsWhatTheFullModelSays() throws Exception {
        Build board = Vehicles.read(Vehicles.text(BOARD)).build();
        LiveLimits live = LiveLimits.of(board);
        PackLimit regen = Limits.of(board).packRegen();
        PackLimit draw = Limits.of(board).packDischarge();
        for (double[] row : rows()) {
            double fullest = live.greatestCharge(row[2], -row[3], row[4], DOUBT);
            double emptiest = live.leastCharge(row[2], -row[3], row[4], DOUBT);
            assertThat(emptiest).isLessThanOrEqualTo(live.charge(row[2], -row[3], row[4]));
            assertThat(fullest).isGreaterThanOrEqualTo(live.charge(row[2], -row[3], row[4]));
            double mayTake = regen.valueAt(fullest, row[4]);
            double mayGive = draw.valueAt(emptiest, row[4]);
            assertThat(live.permittedRegenOrZeroA(fullest, row[4]))
                    .isCloseTo(mayTake, within(LiveLimits.DEPARTURE * mayTake));
            assertThat(live.permittedDrawOrZeroA(emptiest, row[4]))
                    .isCloseTo(mayGive, within(LiveLimits.DEPARTURE * mayGive));
        }
    }

    /** The example as a reader runs it. */
    @Test
    void theExampleTellsWhereMoreFlowedThanWasPermitted() throws Exception {
        EmbeddingTest.compile(
                folder, Path.of("examples", "LiveSession.java"), "-cp", EmbeddingTest.buildFile());
        List<String> printed =
                EmbeddingTest.java(
                        List.of(
                                "-cp",
                                EmbeddingTest.with(folder, EmbeddingTest.buildFile()),
                                "LiveSession",
                                BOARD.toString(),
                                RIDE.toString()));
        LiveLimits live = LiveLimits.of(Vehicles.read(Vehicles.text(BOARD)).build());
        List<double[]> rows = rows();
        assertThat(printed).hasSize(rows.size() + 2);
        int beyond = 0;
        for (int i = 0; i < rows.size(); i++) {
            double[] row = rows.get(i);
            double into = Math.max(0.0, -row[3]);
            double fullest = live.greatestCharge(row[2], -row[3], row[4], DOUBT);
            double mayTake = live.permittedRegenA(fullest, row[4]);
            assertThat(printed.get(i + 2))
                    .contains(
                            String.format(
                                    Locale.ROOT,
                                    "| %9.1f %10.2f %s |",
                                    into,
                                    mayTake,
                                    into > mayTake ? "!!" : "  "));
            beyond += into > mayTake ? 1 : 0;
        }
        assertThat(beyond).isBetween(1, rows.size() / 2);
    }
}

package brakewright.cli.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.fitting.Fit;
import brakewright.fitting.Fits;
import brakewright.fitting.Fitted;
import brakewright.recording.CurrentSign;
import brakewright.recording.Energy;
import brakewright.recording.Quantity;
import brakewright.recording.Repair;
import brakewright.recording.Ride;
import brakewright.spec.Build;
import brakewright.tables.ReferenceTables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Recordings that others published: three drives of an electric car (Steinstraeter, Buberger,
 * Trifonov, Battery and Heating Data in Real Driving Cycles, IEEE DataPort, 2020) and rides of a
 * scooter (DualEMobilityData-datasets, Dublin City University, 2023). They are looked for beside
 * the project and are no part of it.
 */
class PublishedRecordingsTest {

    private static final Path FOLDER = Path.of("..", "..", "shared", "data", "rides");

    @BeforeEach
    void lookForThem() {
        assumeTrue(
                Files.isDirectory(FOLDER),
                "SKIPPED: the published recordings are not at " + FOLDER.toAbsolutePath());
    }

    private static Recordings read(String file, ColumnChoice choice) throws Exception {
        return Recordings.read(List.of(FOLDER.resolve(file)), choice, Optional.empty());
    }

    /** Whatever the vehicle is: nothing of it is asked for a capacity. */
    private static Fit capacity(Ride ride) throws Exception {
        Build any =
                BuildFile.read(
                                Files.readAllBytes(
                                        Path.of("examples", "vineyard-trail-board.toml")),
                                ReferenceTables.load())
                        .build();
        return Fits.of(any, ride).all().stream()
                .filter(fit -> fit.what() == Fitted.CAPACITY)
                .findFirst()
                .orElseThrow();
    }

    private static Ride ride(Recordings read) {
        return Ride.of(read.recording(), 3.0, 0.0, read.repairs()).orElseThrow();
    }

    /**
     * Expected: left-hand sums over the rows. Ours are straight between rows, which differs by less
     * than half a thousandth; a speed counts as held over a full 3 s, not over thirty rows, which
     * span 2.9 s, so that it is up to 0.2 km/h lower.
     */
    @ParameterizedTest
    @CsvSource({
        "TripA04, 10.727, 5.835, 0.674, 2160, 261, 136.9, 135.7",
        "TripA13, 4.573, 2.289, 0.503, 888, 197, 49.3, 48.6",
        "TripA17, 12.971, 6.217, 0.732, 2345, 286, 130.7, 128.3"
    })
    void carDrivesGiveTheirSums(
            String drive,
            double kilometres,
            double outAh,
            double backAh,
            double outWh,
            double backWh,
            double highest,
            double held)
            throws Exception {
        Recordings read = read("car/" + drive + ".csv", ColumnChoice.NONE);
        Ride ride = ride(read);
        Energy energy = ride.energy().orElseThrow();

        assertThat(read.sign()).contains(new CurrentSign(false, CurrentSign.Proof.BRAKING));
        assertThat(ride.ways().bySpeed() / 1000.0).isCloseTo(kilometres, within(0.0005));
        assertThat(energy.outAh()).isCloseTo(outAh, within(0.001));
        assertThat(energy.backAh()).isCloseTo(backAh, within(0.001));
        assertThat(energy.outWh().orElseThrow()).isCloseTo(outWh, within(0.5));
        assertThat(energy.backWh().orElseThrow()).isCloseTo(backWh, within(0.7));
        assertThat(energy.wholeChargeAh().orElseThrow()).isCloseTo(61.5, within(0.615));
        assertThat(3.6 * ride.pace().held().orElseThrow().value())
                .isBetween(held - 0.2, held + 0.05);
        assertThat(capacity(ride))
                .isInstanceOfSatisfying(
                        Fit.Found.class,
                        found -> {
                            assertThat(found.value()).isCloseTo(61.5, within(0.615));
                            assertThat(found.doubt()).isLessThan(0.615);
                        });
        assertThat(ride.extremes().values()).isNotEmpty();
        assertThat(ride.repairs()).isEmpty();
    }

    /** Whose rows are near enough to each other that nearly all of the way lies between them. */
    @ParameterizedTest
    @CsvSource({"3, 2.4", "17, 1.2", "19, 0.8", "23, 1.0", "25, 1.3", "27, 2.0", "29, 1.8"})
    void scooterRidesGoAsFarAsTheirPublisherSays(int trip, double kilometres) throws Exception {
        Ride ride = ride(read("scooter/trip_" + trip + ".csv", ColumnChoice.NONE));

        double way = ride.ways().byPosition().orElseThrow() + ride.ways().acrossGaps();

        assertThat(way / 1000.0).isCloseTo(kilometres, within(0.05 + 0.1));
    }

    @Test
    void aSpeedThatContradictsThePositionsInEveryUnitIsRefused() {
        assertThatThrownBy(() -> read("scooter/trip_5.csv", ColumnChoice.NONE))
                .isInstanceOfSatisfying(
                        BuildFileException.class,
                        wrong ->
                                assertThat(wrong.problems())
                                        .singleElement()
                                        .satisfies(
                                                each ->
                                                        assertThat(each.wrong())
                                                                .contains("in none does it")));
    }

    @Test
    void andInAUnitThatIsToldItGivesWayToThePositions() throws Exception {
        Ride ride =
                ride(
                        read(
                                "scooter/trip_5.csv",
                                new ColumnChoice(
                                        Map.of(),
                                        Map.of(Quantity.WHEEL_SPEED, "km/h"),
                                        Optional.empty())));

        assertThat(ride.repairs())
                .anySatisfy(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.SPEED_CONTRADICTED);
                            assertThat(repair.count()).isEqualTo(81);
                        });
        assertThat(ride.speed()).isEqualTo(Quantity.SATELLITE_SPEED);
    }

    /** Its charge falls from 61 % to 6 % and is 59 % a minute later: a digit is missing. */
    @Test
    void aChargeThatLostADigitIsLeftOutAndTold() throws Exception {
        Ride ride = ride(read("scooter/trip_15.csv", ColumnChoice.NONE));

        assertThat(ride.repairs())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.CHARGE_LEAP);
                            assertThat(repair.places().get(0).line()).isEqualTo(6);
                        });
    }
}

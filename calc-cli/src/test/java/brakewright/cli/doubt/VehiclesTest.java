package brakewright.cli.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputPlace;
import brakewright.buildfile.Problem;
import brakewright.spec.ArrheniusCurve;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.tables.ReferenceTables;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The vehicles of a file at the corners of its tolerances, under other settings. */
class VehiclesTest {

    private static final ReferenceTables TABLES = ReferenceTables.load();
    private static final String RESISTANCE = "resistance = \"68 mΩ\"";
    private static final String CHARGE = "charge_from = \"100 %\"";
    private static final String SPEED = "speed_max = \"32 km/h\"\n";
    private static final String CAP = "speed_cap = \"32 km/h\"";

    private static String board = "";

    @BeforeAll
    static void readTheExample() throws IOException {
        board = Files.readString(Path.of("examples", "vineyard-trail-board.toml"));
        assertThat(board).contains(RESISTANCE, CHARGE, SPEED, CAP);
    }

    private static BuildFile read(String text) throws BuildFileException {
        return BuildFile.read(text.getBytes(StandardCharsets.UTF_8), TABLES);
    }

    private static BuildFile doubtful() throws BuildFileException {
        return read(
                board.replace(RESISTANCE, "resistance = \"68 mΩ ± 10 %\"")
                        .replace(CHARGE, "charge_from = \"90 % ± 5 %\"")
                        .replace(SPEED, ""));
    }

    private static Settings capped(double kilometresPerHour) {
        return new Settings(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(kilometresPerHour / 3.6));
    }

    @Test
    void aCornerUnderOtherSettingsIsTheVehicleOfAFileThatSaysSo() throws BuildFileException {
        Vehicles vehicles = Vehicles.of(doubtful());
        assertThat(vehicles.isExact()).isFalse();
        assertThat(vehicles.places())
                .extracting(InputPlace::name)
                .containsExactly("motor.resistance", "use.charge_from");
        Build corner =
                vehicles.at(
                        new double[] {0.075, 0.855},
                        Settings.NONE.withMotorBrakeCurrent(38.0).overlaidBy(capped(20.0)));
        Build written =
                read(board.replace(RESISTANCE, "resistance = \"75 mΩ\"")
                                .replace(CHARGE, "charge_from = 0.855")
                                .replace(SPEED, "")
                                .replace(CAP, "speed_cap = \"20 km/h\"")
                                .replace(
                                        "motor_brake_current = \"30 A\"",
                                        "motor_brake_current = \"38 A\""))
                        .build();
        assertThat(corner)
                .usingRecursiveComparison()
                .withEqualsForType(ArrheniusCurve::equals, ArrheniusCurve.class)
                .isEqualTo(written);
        assertThat(corner.use().speedMax()).isCloseTo(20.0 / 3.6, within(1e-12));
    }

    @Test
    void theNominalVehicleFollowsTheSpeedCapToo() throws BuildFileException {
        BuildFile file = doubtful();
        Vehicles vehicles = Vehicles.of(file);
        assertThat(vehicles.with(Settings.NONE)).isSameAs(file.build());
        Build slow = vehicles.with(capped(20.0));
        assertThat(slow.use().speedMax()).isCloseTo(20.0 / 3.6, within(1e-12));
        assertThat(slow.use().riding().cruiseSpeed()).isCloseTo(12.0 / 3.6, within(1e-12));
        assertThat(slow.use().chargeFrom()).isEqualTo(file.build().use().chargeFrom());
        assertThat(slow.settings().motorBrakeCurrent())
                .isEqualTo(file.build().settings().motorBrakeCurrent());
    }

    @Test
    void aHighestSpeedThatTheFileTellsStays() throws BuildFileException {
        Vehicles vehicles = Vehicles.of(read(board));
        assertThat(vehicles.isExact()).isTrue();
        Build slow = vehicles.with(capped(20.0));
        assertThat(slow.use().speedMax()).isCloseTo(32.0 / 3.6, within(1e-12));
        assertThat(slow.settings().speedCap().orElseThrow()).isCloseTo(20.0 / 3.6, within(1e-12));
    }

    @Test
    void whatDiffersInSettingsAloneIsMadeOnce() throws BuildFileException {
        Vehicles vehicles = Vehicles.of(doubtful());
        double[] values = {0.065, 0.9};
        Build first = vehicles.at(values, Settings.NONE.withMotorBrakeCurrent(20.0));
        Build second = vehicles.at(values.clone(), Settings.NONE.withMotorBrakeCurrent(21.0));
        assertThat(second.battery()).isSameAs(first.battery());
        assertThat(second.settings()).isNotEqualTo(first.settings());
        values[0] = 0.066;
        assertThat(vehicles.at(values, Settings.NONE).motor().resistanceAt20C()).isEqualTo(0.066);
    }

    @Test
    void valuesThatDoNotGoTogetherAreTold() throws BuildFileException {
        Vehicles vehicles =
                Vehicles.of(
                        read(
                                board.replace(CHARGE, "charge_from = \"20 % ± 50 %\"")
                                        .replace("charge_to = \"25 %\"", "charge_to = \"15 %\"")));
        assertThatExceptionOfType(Vehicles.Impossible.class)
                .isThrownBy(() -> vehicles.at(new double[] {0.1}, Settings.NONE))
                .satisfies(
                        impossible ->
                                assertThat(impossible.why().problems())
                                        .extracting(Problem::key)
                                        .isEqualTo(List.of("use.charge_to")));
    }
}

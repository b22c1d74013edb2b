package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Settings far from anything sensible still get a worksheet, in either form. */
class ExtremeSettingsTest {

    private static final String WINDY =
            """
            title = "Parcel trike"
            [rider]
            mass = "78 kg"
            stance = "seated"
            [vehicle]
            wheel_diameter = "0.04 m"
            mass = "64 kg"
            mass_centre_from_front = "0.085 m"
            driven_axle = "rear"
            [drive]
            motors = 1
            reduction = 9.5
            [motor]
            kv = "65 rpm/V"
            resistance = "55 mΩ"

            [controller]
            current_basis = "dc-equivalent"
            motor_current_rating = "60 A"
            pack_current_rating = "45 A"
            voltage_rating = "75 V"
            [pack]
            series = 16
            parallel = 4

            [pack.cell]
            chemistry = "lfp"
            capacity = "6.0 Ah"
            discharge_current = "18 A"
            charge_current = "6 A"
            voltage_max = "3.65 V"
            voltage_min = "2.5 V"
            resistance = "9 mΩ"
            mass = "145 g"
            [use]
            headwind = "0.1 m/s ± 30 %"
            """;

    private static void assertWorksheet(String buildFile) {
        CommandRun text = CommandRun.worksheet(buildFile);
        assertThat(text.err()).isEmpty();
        assertThat(text.status()).isIn(0, 1);
        assertThat(text.out()).contains("CAUTIONS").doesNotContain("NaN");
        assertThat(CommandRun.worksheet(buildFile, "--show", "all").out())
                .contains("CAUTIONS")
                .doesNotContain("NaN");
        CommandRun json = CommandRun.worksheet(buildFile, "--format", "json");
        assertThat(json.status()).isEqualTo(text.status());
        assertThat(json.out()).doesNotContain("NaN").doesNotContain("Infinity");
        assertThat(JsonMaps.read(json.out())).containsKey("brake_map");
    }

    @ParameterizedTest
    @CsvSource({
        "motor_drive_current, 0 A",
        "motor_brake_current, 0 A",
        "pack_discharge_current, 0 A",
        "pack_regen_current, 0 A",
        "motor_drive_current, 999 A",
        "pack_discharge_current, 5000 A",
        "pack_regen_current, 1000 A",
        "pack_regen_current, 5000 A",
        "speed_cap, 0.1 m/s",
        "speed_cap, 100 m/s"
    })
    void getAWorksheet(String setting, String value) {
        for (Example example : Example.values()) {
            BuildText file = BuildText.of(example);
            file.replace("settings", setting, setting + " = \"" + value + "\"");
            // with tolerances many vehicles are looked at: one setting of each kind does
            boolean isLong = file.text().contains("±") && !value.startsWith("0");
            assertWorksheet(isLong ? known(file.text()) : file.text());
        }
    }

    /** The same file without its tolerances. */
    private static String known(String text) {
        return text.replaceAll(" ± [^\"]*", "");
    }

    /** So little is a slip of the keyboard; nothing is what is written as nothing. */
    @ParameterizedTest
    @CsvSource({
        "motor_brake_current, 1e-320A, 0.001 A",
        "pack_regen_current, 1e-310A, 0.001 A",
        "motor_drive_current, 0.0009A, 0.001 A",
        "pack_discharge_current, 1e-400A, too small",
        "motor_brake_current, -1e-400A, too small"
    })
    void isRefusedBelowWhatAControllerCanHold(String setting, String value, String told) {
        String path = Example.TRAIL_BOARD.path();
        CommandRun run = CommandRun.of("check", path, "--with", setting + "=" + value);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(setting, "too small", told);
        for (String held : new String[] {"0A", "-0A", "0e-400A", "0.001A"}) {
            CommandRun fine = Answers.of("check", path, "--with", setting + "=" + held);
            assertThat(fine.status()).as(fine.err()).isIn(0, 1);
            assertThat(fine.out()).doesNotContain("-0 A", "Infinity", "NaN");
        }
    }

    /** More than the pack could ever supply: braking draws power near standstill. */
    @ParameterizedTest
    @ValueSource(strings = {"250 A", "300 A", "5000 A"})
    void aBrakeCurrentThatThePackCannotSupplyGetsAWorksheet(String value) {
        BuildText file = BuildText.of(Example.SCOOTER);
        file.replace("settings", "motor_brake_current", "motor_brake_current = \"" + value + "\"");
        assertWorksheet(file.text());
    }

    /** Far above any motor of the class, but within what a build file may say. */
    @ParameterizedTest
    @ValueSource(strings = {"1 ohm", "2 ohm", "2.9 ohm"})
    void aWindingOfHighResistanceGetsAWorksheet(String value) {
        BuildText file = BuildText.of(Example.SCOOTER);
        file.replace("motor", "resistance", "resistance = \"" + value + "\"");
        assertWorksheet(file.text());
    }

    /** A headwind that is not known exactly narrows neither charge nor temperature. */
    @Test
    void anUncertainHeadwindAloneNarrowsNoUse(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("windy.toml");
        Files.writeString(file, WINDY);
        String[] asked = {"check", file.toString(), "--with", "motor_brake_current=5000A"};
        assertThat(CommandRun.of(asked).status()).isEqualTo(1);
    }
}

package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.words.UnitSystem;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Vehicles far from anything sensible still get a calm page. */
class OddWorksheetsTest {

    static Stream<String> odd() {
        String board = Printed.BOARD;
        return Stream.of(
                board,
                Printed.SCOOTER,
                Printed.TRIKE,
                board.substring(0, board.indexOf("[settings]")),
                set("motor_drive_current", "48 A", "3 A"),
                set("motor_drive_current", "48 A", "0 A"),
                set("motor_drive_current", "48 A", "900 A"),
                set("pack_discharge_current", "18 A", "0 A"),
                set("pack_discharge_current", "18 A", "5000 A"),
                set("speed_cap", "32 km/h", "100 m/s"),
                set("ambient", "20 °C", "-30 °C"),
                set("ambient", "20 °C", "48 °C"),
                set("slope_max", "14 %", "90 %"),
                set("slope_length", "180 m", "0 m"),
                set("charge_to", "25 %", "98 %"),
                set("hard_brake", "6 s", "6 s\"\nheadwind = \"-30 m/s"),
                set("hard_brake", "6 s", "6 s\"\nheadwind = \"30 m/s"),
                set("hard_brake", "6 s", "6 s\"\ncruise_speed = \"200 km/h"),
                set("resistance_spread", "10 %", "10 %\"\nto_air = \"0.01 K/W"),
                board.replaceAll("low_voltage_taper.*", ""),
                board.replaceAll("(?s)\\[pack.protection].*?\n\n", ""),
                board.replaceAll("(winding_to_case|winding_heat_capacity).*", ""),
                Printed.twoPacks(""),
                Printed.twoPacks("[battery]\njoining = \"series\"\n\n"));
    }

    private static String set(String key, String from, String to) {
        String line = key + " = \"" + from + "\"";
        assertThat(Printed.BOARD).contains(line);
        return Printed.BOARD.replace(line, key + " = \"" + to + "\"");
    }

    @ParameterizedTest
    @MethodSource("odd")
    void areFreeOfWhatIsNoNumberAndKeepTheirColumns(String buildFile) {
        for (UnitSystem units : UnitSystem.values()) {
            AskedSheet asked = Printed.asked(buildFile, units);
            for (boolean plain : new boolean[] {false, true}) {
                Printed printed = Printed.of(asked, units, plain);
                String text = String.join("\n", printed.lines());
                assertThat(text)
                        .doesNotContain("NaN")
                        .doesNotContain("Infinity")
                        .doesNotContainPattern("-0(\\.0*)?(?![.0-9])")
                        .contains("DRIVING", "THE VOLTAGE", "RANGE", "HEAT", "CAUTIONS");
                assertThat(printed.lines())
                        .allSatisfy(line -> assertThat(line.length()).isLessThan(101));
                if (plain) {
                    assertThat(text).matches("[\\n\\x20-\\x7e]*").doesNotContain("?");
                }
            }
        }
    }
}

package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each mistake is put into the trail board's file, which is right otherwise. */
class BuildFileMistakesTest {

    private final BuildText file = BuildText.of(Example.TRAIL_BOARD);

    private static final String MISSING = "this required key is missing";

    private static void assertUnusable(CommandRun run) {
        assertThat(run.out()).isEmpty();
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).isNotBlank().doesNotContain("\tat ").doesNotContain("Exception");
    }

    /** The problem that names a key, with what was expected. */
    private static String problem(CommandRun run, int line, String key) {
        String start = String.format(Locale.ROOT, "  line %d  %s: ", line, key);
        List<String> lines = run.err().lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(start)) {
                return lines.get(i) + (i + 1 < lines.size() ? "\n" + lines.get(i + 1) : "");
            }
        }
        throw new AssertionError("no problem starts with \"" + start + "\" in\n" + run.err());
    }

    /** What is no TOML is told in plain words, with the line as it would be right. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    # line             | what is wrong                    | what belongs there
                    mass = "82 kg      | the closing quote is missing     | mass = "82 kg"
                    mass = "82 kg'     | the closing quote is missing     | mass = "82 kg"
                    mass = 82 kg"      | no quotes around it              | mass = "82 kg"
                    mass = 82 kg       | no quotes around it              | mass = "82 kg"
                    mass = 82kg # me   | no quotes around it              | mass = "82kg"
                    mass = heavy       | a word has no quotes             | mass = "heavy"
                    mass "82 kg"       | no = stands between              | mass = "82 kg"
                    mass: 82 kg        | no = stands between              | mass = "82 kg"
                    mass =             | nothing stands behind =          | mass = "92 kg"
                    mass = 82,5        | a number has a comma             | mass = 82.5
                    mass = 82,5 kg     | a number has a comma             | mass = "82.5 kg"
                    mass = “82 kg”     | typographic                      | mass = "82 kg"
                    mass = "82" kg     | behind the closing quote         | mass = "82 kg"
                    rider mass = "8 kg"| the key "rider mass" has a space | wheel_diameter
                    mass = "82\\qkg"   | a backslash                      | mass = "82/qkg"
                    mass = ["8 kg" "9"]| no comma stands between          | mass = ["8 kg", "9"]
                    mass = ["8 kg"     | has no closing bracket           | ] behind its last
                    [motor             | the heading has no closing       | [motor]
                    [rider]            | [rider] stands here again; it was begun in line 6 | each heading once
                    mass = "80 kg"\\nmass = "90 kg" | mass stands here again; it was set in line 8 | each key once
                    """)
    void whatIsNoTomlIsToldInPlainWords(String line, String wrong, String expected) {
        String text = "\n\n\n\n\n[rider]\n\n" + line.replace("\\n", "\n") + "\n";
        CommandRun run = CommandRun.worksheet(text);
        assertUnusable(run);
        assertThat(
                        run.err()
                                .lines()
                                .filter(
                                        each ->
                                                each.startsWith("  line 8")
                                                        || each.startsWith("  line 9"))
                                .toList())
                .hasSize(1)
                .allSatisfy(each -> assertThat(each).contains(wrong));
        assertThat(run.err())
                .contains("expected: ")
                .contains(expected)
                .doesNotContain("Unexpected");
    }

    @Test
    void aTabIsASpaceLikeAnyOther() {
        file.replace("rider", "mass", "\tmass\t=\t\"82\tkg\"");
        assertThat(CommandRun.worksheet(file.text()).err()).isEmpty();
    }

    @ParameterizedTest(name = "[{0}] {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    # table | key replaced | line | key reported | what is wrong | what belongs there
                    rider   | mass        | mass = 82          | rider.mass  | bare number 82 has no unit | mass = "92 kg"
                    rider   | mass        | mass = 82.5        | rider.mass  | bare number 82.5 has no unit | mass = "92 kg"
                    rider   | mass        | mass = "82"        | rider.mass  | "82" has no unit     | mass = "92 kg"
                    rider   | mass        | mass = "82 A"      | rider.mass  | "A" is the unit of a current | mass = "92 kg"
                    rider   | mass        | mass = "82 ston"   | rider.mass  | unit "ston" is not known | mass = "92 kg"
                    rider   | mass        | mass = "82 KG"     | rider.mass  | unit "KG" is not known | mass = "92 kg"
                    rider   | mass        | mass = "82,5 kg"   | rider.mass  | has a comma          | mass = "92 kg"
                    rider   | mass        | mass = "-82 kg"    | rider.mass  | "-82 kg" is outside what is possible, 10 to 250 kg | mass = "92 kg"
                    rider   | mass        | mass = "82000 kg"  | rider.mass  | "82000 kg" is outside what is possible, 10 to 250 kg | mass = "92 kg"
                    rider   | mass        | mass = "1e999 kg"  | rider.mass  | too large            | mass = "92 kg"
                    rider   | mass        | mass = "NaN kg"    | rider.mass  | "NaN kg" does not read as a number | mass = "92 kg"
                    rider   | mass        | mass = ""          | rider.mass  | does not read as a number | mass = "92 kg"
                    rider   | mass        | mass = true        | rider.mass  | true                 | mass = "92 kg"
                    rider   | mass        | mass = 2020-01-01  | rider.mass  | 2020-01-01           | mass = "92 kg"
                    rider   | mass        | mass = ["82 kg"]   | rider.mass  | a list of 1          | mass = "92 kg"
                    rider   | mass        | mass = { a = 1 }   | rider.mass  | a table              | mass = "92 kg"
                    rider   | stance      | stance = "hovering" | rider.stance | "hovering"         | standing-sideways, standing-forward, seated
                    vehicle | wheelbase   | wheelbas = "0.95 m" | vehicle.wheelbas | not known     | vehicle.wheelbase
                    vehicle | wheelbase   | wheel_base = "0.95 m" | vehicle.wheel_base | not known | vehicle.wheelbase
                    vehicle | rolling_resistance | rolling_resistance = nan | vehicle.rolling_resistance | no number | rolling_resistance = 0.025
                    vehicle | rolling_resistance | rolling_resistance = "2.8 m" | vehicle.rolling_resistance | "m" does not belong here | rolling_resistance = 0.025
                    drive   | reduction   | reduction = inf    | drive.reduction | no number        | reduction = 3.2
                    drive   | motors      | motors = 1.5       | drive.motors    | 1.5 is no whole number | motors = 2
                    drive   | motors      | motors = "2"       | drive.motors    | no whole number  | motors = 2
                    drive   | motors      | motors = 0         | drive.motors    | outside          | motors = 2
                    drive   | efficiency  | efficiency = "940 %" | drive.efficiency | "940 %" is outside what is possible, 30 to 100 % | efficiency = "95 %"
                    drive   | efficiency  | efficiency = 9.4   | drive.efficiency | 9.4 is outside what is possible, 0.3 to 1 | efficiency = "95 %"
                    rider   | mass        | mass = "820 lb"    | rider.mass  | "820 lb" is outside what is possible, 22.0462 to 551.156 lb | mass = "92 kg"
                    rider   | mass        | mass = "820 lb ± 2 lb" | rider.mass | "820 lb ± 2 lb" is outside what is possible, 22.0462 to 551.156 lb | mass = "92 kg"
                    rider   | mass        | mass = "82 kg ± 2,5 kg" | rider.mass | has a comma; decimals take a point | mass = "92 kg"
                    rider   | mass        | mass = "1,500 kg"  | rider.mass  | thousands no mark    | mass = "92 kg"
                    motor   | winding_limit | winding_limit = "20 °F" | motor.winding_limit | "20 °F" is outside what is possible, 104 to 482 °F | winding_limit = "120 °C"
                    motor   | pole_pairs  | pole_pairs = 0     | motor.pole_pairs | 0 is outside what is possible, 1 to 100 | pole_pairs = 7
                    pack    | cell        | cell = "x\\u001b"    | pack.cell   | control character U+001B | cell = "samsung-30q"
                    pack    | series      | wrie = "8 AWG"     | pack.wrie   | not known            | pack.wiring.wire
                    pack    | series      | wobble = 3         | pack.wobble | not known            | see brakewright keys
                    pack    | series      | protecton = 3      | pack.protecton | not known         | pack.protection
                    pack.wiring | plug    | plug = "x\\u0007"    | pack.wiring.plug | control character U+0007 | plug = "xt90"
                    use     | speed_max   | speed_max = "300000 km/h" | use.speed_max | "300000 km/h" is outside what is possible, 0.36 to 360 km/h | speed_max = "25 km/h"
                    use     | pack_temperature | pack_temperature = ["12 °C", "99 degC"] | use.pack_temperature | "99 degC" is outside what is possible, -40 to 80 degC | ["5 °C", "35 °C"]
                    use     | hard_brake  | stops_per_km = 200 | use.stops_per_km | 200 is outside what is possible, 0 to 100 1/km | stops_per_km = 2.5
                    proposals.firmer-brake | motor_brake_current | motor_brake_curent = "9 A" | proposals.firmer-brake.motor_brake_curent | not known | the nearest known one is proposals.firmer-brake.motor_brake_current
                    motor   | resistance  | resistance = "68 mΩ ± 10 V" | motor.resistance | "V" is the unit of a voltage | resistance = "68 mΩ"
                    motor   | resistance  | resistance = "68 mΩ ± 120 %" | motor.resistance | tolerance | resistance = "68 mΩ"
                    motor   | resistance  | resistance = "68 mΩ ± -1 mΩ" | motor.resistance | tolerance | resistance = "68 mΩ"
                    motor   | kv          | kv = "170 V/rpm"   | motor.kv        | "V/rpm" is not known | kv = "170 rpm/V"
                    pack    | cell        | cell = "samsung-31q" | pack.cell     | "samsung-31q" is no cell | samsung-30q
                    pack    | cell        | cell = 30          | pack.cell       | must be text     | cell = "samsung-30q"
                    pack    | series      | series = 10.0      | pack.series     | no whole number  | series = 10
                    pack    | series      | series = "10 V"    | pack.series     | no whole number  | series = 10
                    pack.wiring | wire    | wire = "11 furlongs" | pack.wiring.wire | "11 furlongs" is no wire | 10 AWG
                    pack.wiring | plug    | plug = "xt91"      | pack.wiring.plug | "xt91" is no plug | xt90
                    pack.wiring | fuse_family | fuse_family = "blade-12v" | pack.wiring.fuse_family | "blade-12v" is no family of fuses | blade-58v
                    pack.wiring | fuse    | fuse = "125 A"     | pack.wiring.fuse | 125 A is above the largest fuse of the family blade-58v, 100 A | fuse_family = "blade-58v"
                    use     | pack_temperature | pack_temperature = "12 °C" | use.pack_temperature | no pair | ["5 °C", "35 °C"]
                    use     | pack_temperature | pack_temperature = ["12 °C"] | use.pack_temperature | a list of 1 is no pair | ["5 °C", "35 °C"]
                    use     | pack_temperature | pack_temperature = [12, 38] | use.pack_temperature | bare number 12 | ["5 °C", "35 °C"]
                    use     | pack_temperature | pack_temperature = ["12 °C", "380 °C"] | use.pack_temperature | "380 °C" is outside what is possible, -40 to 80 °C | ["5 °C", "35 °C"]
                    settings | speed_cap  | speed_cap = "32 km" | settings.speed_cap | "km" is the unit of a length | speed_cap = "25 km/h"
                    proposals.firmer-brake | motor_brake_current | motor_break_current = "42 A" | proposals.firmer-brake.motor_break_current | not known | motor_brake_current
                    proposals.firmer-brake | motor_brake_current | motor_brake_current = 42 | proposals.firmer-brake.motor_brake_current | bare number 42 | "30 A"
                    proposals.firmer-brake | motor_brake_current | use.charge_form = "88 %" | proposals.firmer-brake.use.charge_form | not known | the nearest known one is proposals.firmer-brake.use.charge_from
                    proposals.firmer-brake | motor_brake_current | charge_from = "88 %" | proposals.firmer-brake.charge_from | not known | the nearest known one is proposals.firmer-brake.use.charge_from
                    proposals.firmer-brake | motor_brake_current | use.speed_max = 20 | proposals.firmer-brake.use.speed_max | bare number 20 | use.speed_max = "25 km/h"
                    proposals.firmer-brake | motor_brake_current | use = 20 | proposals.firmer-brake.use | not known | see brakewright keys
                    proposals.firmer-brake | motor_brake_current | use.charge_from = "5 %" | proposals.firmer-brake.use.charge_from | must ascend | use.charge_from = "100 %"
                    proposals.firmer-brake | motor_brake_current | use.measured_speed = "20 km/h" | proposals.firmer-brake.use.measured_speed | no effect without use.measured_consumption | use.measured_speed =
                    proposals.firmer-brake | motor_brake_current | use.pack_temperature = ["30 °C", "10 °C"] | proposals.firmer-brake.use.pack_temperature | warmest pack must be from 30.0 to 80.0 | use.pack_temperature =
                    ''      | title       | title = 7          | title           | must be text     | title = "
                    ''      | title       | title = "a\\u001b[2Jb" | title        | control character U+001B | title = "
                    ''      | title       | title = "a\\nb"     | title           | more than one line | title = "
                    ''      | title       | title = "a\\u202eb" | title           | control character U+202E | title = "
                    ''      | notes       | notes = "a\\u001bb" | notes           | control character U+001B | notes = "
                    ''      | notes       | notes = "a\\tb"     | notes           | control character U+0009 | notes = "
                    """)
    void isToldWithLineKeyReasonAndExample(
            String table, String key, String line, String reported, String wrong, String expected) {
        int number = file.replace(table.equals("''") ? "" : table, key, line);
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        String[] problem = problem(run, number, reported).split("\n");
        assertThat(problem[0]).contains(wrong);
        assertThat(problem[1]).startsWith("      expected: ").contains(expected);
    }

    @ParameterizedTest(name = "[{0}] {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    # table | key replaced | line | key reported | what is wrong
                    settings | low_voltage_taper | low_voltage_taper = ["29 V", "35 V"] | settings.low_voltage_taper | must ascend
                    settings | low_voltage_taper | high_voltage_taper = ["42 V", "40 V"] | settings.high_voltage_taper | must ascend
                    settings | low_voltage_taper | low_voltage_taper = ["35 V", "35 V"] | settings.low_voltage_taper | two different
                    use      | charge_to         | charge_to = 0.99         | use.charge_to        | must ascend
                    use      | pack_temperature  | pack_temperature = ["38 °C", "12 °C"] | use.pack_temperature | warmest pack
                    vehicle  | mass_centre_from_front | mass_centre_from_front = "1.2 m" | vehicle.mass_centre_from_front | from 0.0 to 0.95 m
                    controller | count           | count = 3                | controller.count     | divide evenly
                    pack.protection | cell_undervoltage_trip | cell_undervoltage_trip = "4.3 V" | pack.protection.cell_undervoltage_trip | 4.3 V is not below cell_overvoltage_trip, 4.25 V
                    pack.protection | cell_undervoltage_trip | cell_undervoltage_trip = "4.2 V" | pack.protection.cell_undervoltage_trip | 4.2 V is not below the cell's voltage_max, 4.2 V
                    pack.protection | cell_overvoltage_trip  | cell_overvoltage_trip = "2.5 V"  | pack.protection.cell_overvoltage_trip  | 2.5 V is not above the cell's voltage_min, 2.5 V
                    motor    | kv                | kv = "1700 rpm/V"        | motor.kv             | with drive.reduction 3.6 and vehicle.wheel_diameter 0.175 m, is a no-load speed of 654 km/h
                    use      | hard_brake        | measured_speed = "20 km/h" | use.measured_speed | no effect without use.measured_consumption
                    """)
    void isToldWhereValuesDoNotGoTogether(
            String table, String key, String line, String reported, String wrong) {
        file.replace("use", "charge_from", "charge_from = 0.9");
        int number = file.replace(table, key, line);
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(problem(run, number, reported)).contains(wrong);
    }

    @ParameterizedTest(name = "[{0}] {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    settings | low_voltage_taper | low_voltage_taper = ["29 V", "35 V"] | settings.low_voltage_taper
                    use      | charge_to         | charge_to = 0.99         | use.charge_to
                    controller | count           | count = 3                | controller.count
                    """)
    void saysWhatIsExpectedWhereValuesDoNotGoTogether(
            String table, String key, String line, String reported) {
        file.replace("use", "charge_from", "charge_from = 0.9");
        int number = file.replace(table, key, line);
        assertThat(problem(CommandRun.worksheet(file.text()), number, reported))
                .contains("expected: ");
    }

    @ParameterizedTest(name = "[{0}] {1}")
    @CsvSource({
        "'', title, title, Trail board",
        "rider, mass, rider.mass, 92 kg",
        "rider, stance, rider.stance, seated",
        "vehicle, mass, vehicle.mass, 14 kg",
        "vehicle, wheel_diameter, vehicle.wheel_diameter, 200 mm",
        "drive, motors, drive.motors, motors = 2",
        "drive, reduction, drive.reduction, reduction = 3.2",
        "motor, kv, motor.kv, 170 rpm/V",
        "motor, resistance, motor.resistance, 68 mΩ",
        "controller, current_basis, controller.current_basis, phase-peak",
        "controller, motor_current_rating, controller.motor_current_rating, 60 A",
        "controller, pack_current_rating, controller.pack_current_rating, 40 A",
        "controller, voltage_rating, controller.voltage_rating, 60 V",
        "pack, cell, pack.cell, samsung-30q",
        "pack, series, pack.series, series = 10",
        "pack, parallel, pack.parallel, parallel = 4"
    })
    void namesARequiredKeyThatIsMissing(String table, String key, String reported, String example) {
        file.remove(table, key);
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(run.err())
                .contains("  " + reported + ": this required key is missing\n      expected: ")
                .contains(example);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "chemistry",
                "capacity",
                "discharge_current",
                "charge_current",
                "voltage_max",
                "voltage_min",
                "resistance"
            })
    void namesARequiredKeyOfAnOwnCellThatIsMissing(String key) {
        BuildText trike = BuildText.of(Example.TRIKE);
        trike.remove("pack.cell", key);
        CommandRun run = CommandRun.worksheet(trike.text());
        assertUnusable(run);
        assertThat(run.err()).contains("pack.cell." + key + ": this required key is missing");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "mass = ",
                "mass = \"82 kg",
                "mass \"82 kg\"",
                "mass = 82 kg",
                "[rider",
                "= \"82 kg\"",
                "mass = [\"82 kg\""
            })
    void findsTheLineOfASyntaxError(String line) {
        int number = file.replace("rider", "mass", line);
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(run.err()).containsPattern("line " + number + "\\b");
    }

    @Test
    void findsTheLineOfADuplicateKey() {
        int number = file.addBelow("rider", "mass", "mass = \"83 kg\"");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(run.err()).containsPattern("line " + number + "\\b.*mass");
    }

    @Test
    void readsOnAfterASyntaxError() {
        int bare = file.replace("rider", "mass", "mass = 82");
        int broken = file.replace("drive", "motors", "motors = ");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(run.err()).contains("line " + bare + " ", "line " + broken + " ");
    }

    @Test
    void tellsARequiredKeyThatIsMissingBesideASyntaxError() {
        file.replace("drive", "motors", "motors = ");
        file.remove("motor", "kv");
        file.remove("vehicle", "mass");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(run.err())
                .contains("motor.kv: " + MISSING, "vehicle.mass: " + MISSING)
                .doesNotContain("drive.motors: ", "rider.mass: ");
    }

    /** Whichever line is spoilt, and however: what it says may be any key that was not found. */
    @Test
    void aKeyOnALineThatIsNotUnderstoodIsNotToldAsMissing() {
        List<String> whole = file.text().lines().toList();
        for (int line = 0; line < whole.size(); line++) {
            String said = whole.get(line);
            for (String spoilt :
                    List.of(
                            said.replaceFirst("=.*", "= "),
                            said.replaceFirst(" = ", " "),
                            said.replaceFirst("\\]$", ""),
                            said.replaceFirst("\"$", ""))) {
                if (!spoilt.equals(said)) {
                    List<String> lines = new ArrayList<>(whole);
                    lines.set(line, spoilt);
                    assertThat(CommandRun.worksheet(String.join("\n", lines)).err())
                            .as(spoilt)
                            .doesNotContain(MISSING);
                }
            }
        }
    }

    @Test
    void tellsEveryMistakeOfAFileInOneGo() {
        List<Integer> lines = new ArrayList<>();
        lines.add(file.replace("rider", "mass", "mass = 82"));
        lines.add(file.replace("rider", "stance", "stance = \"hovering\""));
        lines.add(file.replace("rider", "mass_height", "mass_height = \"1,0 m\""));
        lines.add(file.replace("vehicle", "mass", "mass = \"14 A\""));
        lines.add(file.replace("vehicle", "wheelbase", "wheelbas = \"0.95 m\""));
        lines.add(file.replace("vehicle", "drag_area", "drag_area = \"0.6 acres\""));
        lines.add(file.replace("drive", "efficiency", "efficiency = \"940 %\""));
        lines.add(file.replace("pack", "cell", "cell = \"samsung-31q\""));
        lines.add(file.replace("pack.wiring", "wire", "wire = \"11 furlongs\""));
        lines.add(file.replace("use", "ambient", "ambient = \"200 °C\""));
        lines.add(file.replace("settings", "speed_cap", "speed_cap = [\"1 m/s\"]"));
        file.remove("motor", "kv");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        // the key that is missing shifts what stands below it up by one line
        int motor = file.lineOf("motor", "resistance");
        assertThat(lines)
                .allSatisfy(
                        line ->
                                assertThat(run.err())
                                        .contains(
                                                "  line "
                                                        + (line >= motor ? line - 1 : line)
                                                        + "  "));
        assertThat(run.err())
                .contains("motor.kv: this required key is missing")
                .contains(": " + (lines.size() + 1) + " problems");
    }

    @Test
    void tellsWhatDoesNotGoTogetherInTheSameGo() {
        int bare = file.replace("rider", "mass", "mass = 82");
        file.replace("use", "charge_from", "charge_from = 0.5");
        int charge = file.replace("use", "charge_to", "charge_to = 0.6");
        int taper =
                file.replace(
                        "settings",
                        "low_voltage_taper",
                        "low_voltage_taper = [\"29 V\", \"35 V\"]");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(run.err())
                .contains("line " + bare + " ", "line " + charge + " ", "line " + taper + " ");
    }

    @Test
    void tellsBothTapersThatRunTheWrongWay() {
        int low =
                file.replace(
                        "settings",
                        "low_voltage_taper",
                        "low_voltage_taper = [\"29 V\", \"35 V\"]");
        int high =
                file.addBelow(
                        "settings",
                        "low_voltage_taper",
                        "high_voltage_taper = [\"42 V\", \"40 V\"]");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(problem(run, low, "settings.low_voltage_taper")).contains("must ascend");
        assertThat(problem(run, high, "settings.high_voltage_taper")).contains("must ascend");
    }

    @Test
    void refusesAProposalWhoseTaperRunsTheWrongWay() {
        int number =
                file.replace(
                        "proposals.firmer-brake",
                        "motor_brake_current",
                        "high_voltage_taper = [\"42 V\", \"40 V\"]");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(problem(run, number, "proposals.firmer-brake.high_voltage_taper"))
                .contains("must ascend");
    }

    @Test
    void readsAFileThatBeginsWithAByteOrderMark() {
        assertThat(CommandRun.worksheet("\ufeff" + file.text()))
                .isEqualTo(CommandRun.worksheet(file.text()));
    }

    @Test
    void aFolderIsNoBuildFile() {
        CommandRun run = CommandRun.of("worksheet", "examples");
        assertUnusable(run);
        assertThat(run.err()).contains("examples: this is a folder").contains(".toml");
    }

    @Test
    void aBadNameOfAProposalIsReportedOnce() {
        String text =
                file.text()
                        + "[proposals.present]\nmotor_brake_current = \"9 A\"\n"
                        + "speed_cap = \"9 km/h\"\n";
        CommandRun run = CommandRun.worksheet(text);
        assertUnusable(run);
        assertThat(run.err())
                .contains(": 1 problem\n")
                .contains("proposals.present: this is no name for a proposal");
    }

    @Test
    void whatAProposalDoesNotFitOnceTheRestIsFilledInIsToldUnderItsKey() {
        file.remove("use", "charge_to");
        int number =
                file.replace(
                        "proposals.firmer-brake",
                        "motor_brake_current",
                        "use.charge_from = \"5 %\"");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(problem(run, number, "proposals.firmer-brake.use.charge_from"))
                .contains("must ascend");
    }

    @Test
    void whatIsWrongWithTheFileIsNotToldAgainForEachProposal() {
        file.replace("use", "charge_to", "charge_to = \"99 %\"");
        file.replace("use", "charge_from", "charge_from = \"98 %\"");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(run.err()).contains(": 1 problem\n").contains("use.charge_to: ");
    }

    @Test
    void aUseInATableOfItsOwnIsTheSame() {
        String dotted = file.text() + "\n[proposals.rain]\nuse.charge_from = \"90 %\"\n";
        String apart = file.text() + "\n[proposals.rain.use]\ncharge_from = \"90 %\"\n";
        assertThat(CommandRun.worksheet(apart, "--proposal", "rain"))
                .isEqualTo(CommandRun.worksheet(dotted, "--proposal", "rain"))
                .isNotEqualTo(CommandRun.worksheet(dotted));
    }

    @Test
    void aProposalOfNothingIsRefused() {
        CommandRun run = CommandRun.worksheet(file.text() + "[proposals.idle]\n");
        assertUnusable(run);
        assertThat(run.err()).contains("proposals.idle: this proposal changes nothing");
    }

    @Test
    void notesMayHaveLinesButNoneIsTooLong() {
        file.replace(
                "", "notes", "notes = \"\"\"one\\r\n\ntwo " + "x".repeat(250) + " three\"\"\"");
        file.replace("", "title", "title = \"" + "Trail".repeat(50) + "\"");
        CommandRun run = CommandRun.worksheet(file.text(), "--show", "all");
        assertThat(run.err()).isEmpty();
        assertThat(run.outLines())
                .contains("one", "two", "x".repeat(100), "x".repeat(50) + " three")
                .allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
    }

    @Test
    void reportsATableThatIsNotKnownOnce() {
        CommandRun run = CommandRun.worksheet(file.text() + "[wobble]\na = 1\nb = 2\n");
        assertUnusable(run);
        assertThat(run.err()).contains(": 1 problem\n").contains("wobble: this key is not known");
    }

    @Test
    void refusesBytesThatAreNotUtf8() {
        byte[] bytes = file.text().getBytes(StandardCharsets.ISO_8859_1);
        CommandRun run = CommandRun.worksheet(bytes);
        assertUnusable(run);
        assertThat(run.err()).contains("UTF-8");
    }

    @Test
    void refusesAFileOfMoreThanAMebibyte() {
        CommandRun run = CommandRun.worksheet(file.text() + "#".repeat(1 << 20));
        assertUnusable(run);
        assertThat(run.err()).contains("1 MiB");
    }

    @Test
    void keepsControlCharactersOfTheFileOffTheScreen() {
        file.replace("rider", "stance", "stance = \"\\u001b[2J\\u0007\"");
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(run.err()).doesNotContain("\u001b").doesNotContain("\u0007");
    }

    /** As TOML writes it. */
    @ParameterizedTest
    @CsvSource({"nan, nan", "inf, inf", "-inf, -inf", "+inf, inf"})
    void echoesWhatIsNoNumber(String written, String told) {
        file.replace("motor", "kv", "kv = " + written);
        file.replace("drive", "reduction", "reduction = " + written);
        CommandRun run = CommandRun.worksheet(file.text());
        assertUnusable(run);
        assertThat(run.err())
                .contains("the bare number " + told + " has no unit", told + " is no number")
                .doesNotContain("NaN", "Infinity");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "68 mΩ ± 10 % | 0.068 | 0.0068",
                "68 mohm +- 5 mohm | 0.068 | 0.005",
                "68 mohm +/- 5 mΩ | 0.068 | 0.005",
                "0.068 Ω ±10% | 0.068 | 0.0068"
            })
    void readsATolerance(String resistance, double value, double tolerance) {
        file.replace("motor", "resistance", "resistance = \"" + resistance + "\"");
        CommandRun run = CommandRun.worksheet(file.text(), "--format", "json");
        assertThat(run.status()).isZero();
        assertThat(JsonMaps.object(JsonMaps.read(run.out()), "inputs", "motor.resistance"))
                .satisfies(
                        entry -> {
                            // a decimal and its product with a power of ten differ by a few ulps
                            assertThat(JsonMaps.number(entry, "value"))
                                    .isCloseTo(value, within(1e-15));
                            assertThat(JsonMaps.number(entry, "tolerance"))
                                    .isCloseTo(tolerance, within(1e-15));
                        });
    }
}

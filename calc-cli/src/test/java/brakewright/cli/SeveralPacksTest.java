package brakewright.cli;

import static brakewright.cli.JsonMaps.number;
import static brakewright.cli.JsonMaps.object;
import static brakewright.cli.JsonMaps.objects;
import static brakewright.cli.JsonMaps.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.LimitId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One pack or several, in parallel or in series, from the file to the worksheet. */
class SeveralPacksTest {

    private static final String SERIES = "[battery]\njoining = \"series\"\n";

    /** Two packs whose joining is not told. */
    private static final Map<String, Object> UNTOLD = sheet(TwoPacks.file(""));

    private static Map<String, Object> sheet(BuildText file) {
        CommandRun run = CommandRun.worksheet(file.text(), "--format", "json");
        assertThat(run.err()).isEmpty();
        return JsonMaps.read(run.out());
    }

    private static Map<String, Object> input(Map<String, Object> sheet, String key) {
        return object(sheet, "inputs", key);
    }

    private static List<Map<String, Object>> ofPack(
            List<Map<String, Object>> constraints, double number) {
        return constraints.stream()
                .filter(each -> Double.valueOf(number).equals(each.get("pack")))
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void aSinglePackMayStandInTheListOfPacks(Example example) {
        String listed = example.text().replace("[pack]", "[[packs]]").replace("[pack.", "[packs.");
        CommandRun run = CommandRun.worksheet(listed, "--format", "json");
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).isEqualTo(example.json());
    }

    @Test
    void inputsOfEachPackHaveItsNumberAndTheirOwnOrigin() {
        Map<String, Object> sheet = UNTOLD;
        assertThat(number(input(sheet, "packs.1.parallel"), "value")).isEqualTo(4.0);
        assertThat(number(input(sheet, "packs.2.parallel"), "value")).isEqualTo(3.0);
        assertThat(text(input(sheet, "packs.1.cell.capacity"), "from")).isEqualTo("table");
        assertThat(text(input(sheet, "packs.2.cell.capacity"), "from")).isEqualTo("file");
        assertThat(text(input(sheet, "packs.1.resistance_spread"), "from")).isEqualTo("file");
        assertThat(text(input(sheet, "packs.2.resistance_spread"), "from")).isEqualTo("assumed");
        assertThat(object(sheet, "inputs").keySet()).noneMatch(key -> key.startsWith("pack."));
    }

    @Test
    void packsAreInParallelUnlessTold() {
        Map<String, Object> sheet = UNTOLD;
        assertThat(text(input(sheet, "battery.joining"), "value")).isEqualTo("parallel");
        assertThat(text(input(sheet, "battery.joining"), "from")).isEqualTo("assumed");
        assertThat(text(input(sheet, "battery.joining"), "source")).isEqualTo("derived");
        assertThat(
                        sheet(TwoPacks.file("[battery]\njoining = \"parallel\"\n"))
                                .get("pack_by_charge"))
                .isEqualTo(sheet.get("pack_by_charge"));
    }

    /** Source: Kirchhoff's voltage law; at full charge both packs are full. */
    @Test
    void packsInSeriesAddTheirVoltages() {
        BuildText file = TwoPacks.file(SERIES);
        file.replace("controller", "voltage_rating", "voltage_rating = \"120 V\"");
        List<Map<String, Object>> rows = objects(sheet(file), "pack_by_charge");
        List<Map<String, Object>> parallel = objects(UNTOLD, "pack_by_charge");
        int full = rows.size() - 1;
        // both packs have ten groups of full cells of one chemistry or very nearly so
        assertThat(number(rows.get(full), "open_circuit_V"))
                .isCloseTo(2.0 * number(parallel.get(full), "open_circuit_V"), within(0.5));
        assertThat(number(rows.get(full), "resistance_ohm"))
                .isGreaterThan(3.0 * number(parallel.get(full), "resistance_ohm"));
    }

    @Test
    void aLimitOfOnePackNamesItAndItsInput() {
        List<Map<String, Object>> constraints =
                objects(object(UNTOLD, "limits", "pack-regen-current"), "constraints");
        assertThat(ofPack(constraints, 1))
                .anySatisfy(
                        each -> {
                            assertThat(text(each, "id")).isEqualTo("protection-charge-trip");
                            assertThat(text(each, "input"))
                                    .isEqualTo("packs.1.protection.charge_trip");
                            assertThat(text(each, "source")).isEqualTo("build-file");
                        });
        assertThat(ofPack(constraints, 2))
                .anySatisfy(
                        each -> {
                            assertThat(text(each, "id")).isEqualTo("cell-charge-rating");
                            assertThat(text(each, "input"))
                                    .isEqualTo("packs.2.cell.charge_current");
                            assertThat(text(each, "source")).isEqualTo("build-file");
                        })
                .noneMatch(each -> text(each, "id").equals("protection-charge-trip"));
        assertThat(constraints)
                .filteredOn(each -> text(each, "id").equals("controller-pack-rating"))
                .allSatisfy(each -> assertThat(each).doesNotContainKey("pack"));
    }

    @Test
    void aFindingOnOnePackNamesIt() {
        List<Map<String, Object>> findings = objects(UNTOLD, "findings");
        assertThat(ofPack(findings, 2))
                .isNotEmpty()
                .allSatisfy(each -> assertThat(text(each, "text")).contains("pack 2"));
        assertThat(findings)
                .filteredOn(each -> text(each, "id").equals("protection-unknown"))
                .singleElement()
                .satisfies(
                        each ->
                                assertThat(text(each, "text"))
                                        .contains("(pack 2: discharge current, ")
                                        .doesNotContain("pack 1"));
        assertThat(findings)
                .filteredOn(each -> text(each, "id").equals("wiring-unknown"))
                .singleElement()
                .satisfies(
                        each ->
                                assertThat(text(each, "text"))
                                        .contains("pack 2: fuse, wire, plug")
                                        .contains("; common to all packs: fuse, wire, plug"));
    }

    @Test
    void theCommonWiringIsLookedUp() {
        Map<String, Object> sheet =
                sheet(
                        TwoPacks.file(
                                "[battery]\nfuse = \"60 A\"\nwire = \"8 AWG\"\nplug = \"xt90\"\n"));
        assertThat(input(sheet, "battery.wire_ampacity"))
                .containsEntry("from", "table")
                .containsKeys("source", "kind");
        assertThat(input(sheet, "battery.plug_rating")).containsEntry("from", "table");
        List<Map<String, Object>> constraints =
                objects(object(sheet, "limits", "pack-discharge-current"), "constraints");
        assertThat(constraints)
                .filteredOn(each -> text(each, "input").startsWith("battery."))
                .extracting(each -> text(each, "id"))
                .containsExactlyInAnyOrder("main-fuse", "main-wire", "main-plug");
    }

    @ParameterizedTest
    @EnumSource
    void explainsEveryLimitWithTheOriginsOfEachPack(LimitId limit, @TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("build.toml");
        Files.writeString(file, TwoPacks.file("").text());
        CommandRun run = CommandRun.of("explain", file.toString(), limit.key());
        assertThat(run.err()).isEmpty();
        assertThat(run.outLines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
        if (limit == LimitId.PACK_REGEN_CURRENT) {
            assertThat(run.out())
                    .contains("    Pack 1: the maker's charge current")
                    .contains("    Pack 2: the maker's charge current")
                    .containsPattern("rating of one cell +4 A +table, samsung-30q-spec")
                    .containsPattern("rating of one cell +4 A +packs.cell.charge_current");
        }
    }

    @Test
    void whatAFileDoesNotTellOfRidingIsAssumedWithItsSource() {
        Map<String, Object> sheet = JsonMaps.read(Example.TRAIL_BOARD.json());
        for (String key :
                List.of(
                        "use.headwind",
                        "use.idle_power",
                        "use.stops_per_km",
                        "pack.cell.relaxation_time",
                        "pack.cell.specific_heat")) {
            assertThat(input(sheet, key)).as(key).containsEntry("from", "assumed");
            assertThat(text(input(sheet, key), "source")).as(key).isNotBlank();
            assertThat(text(input(sheet, key), "kind")).as(key).isNotBlank();
        }
        assertThat(input(sheet, "use.cruise_speed"))
                .containsEntry("from", "assumed")
                .containsEntry("source", "derived");
        // a rounding of the product
        assertThat(number(input(sheet, "use.cruise_speed"), "value"))
                .isCloseTo(0.6 * number(input(sheet, "use.speed_max"), "value"), within(1e-12));
        assertThat(object(sheet, "inputs")).doesNotContainKey("use.measured_speed");
    }

    @Test
    void aMeasuredConsumptionIsTakenAtTheCruiseSpeedUnlessTold() {
        BuildText file = BuildText.of(Example.TRAIL_BOARD);
        file.addBelow("use", "speed_max", "measured_consumption = \"17 Wh/km\"");
        Map<String, Object> sheet = sheet(file);
        assertThat(number(input(sheet, "use.measured_consumption"), "value")).isEqualTo(17.0);
        assertThat(input(sheet, "use.measured_speed")).containsEntry("source", "derived");
        assertThat(input(sheet, "use.measured_speed").get("value"))
                .isEqualTo(input(sheet, "use.cruise_speed").get("value"));
        file.addBelow("use", "speed_max", "measured_speed = \"18 km/h\"");
        assertThat(number(input(sheet(file), "use.measured_speed"), "value")).isEqualTo(5.0);
    }

    @Test
    void aSpecificHeatIsAssumedOnlyWhereAMassIsKnown() {
        BuildText file = BuildText.of(Example.TRIKE);
        assertThat(object(sheet(file), "inputs")).containsKey("pack.cell.specific_heat");
        file.remove("pack.cell", "mass");
        assertThat(object(sheet(file), "inputs")).doesNotContainKey("pack.cell.specific_heat");
    }
}

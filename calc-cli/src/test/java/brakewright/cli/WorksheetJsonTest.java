package brakewright.cli;

import static brakewright.cli.JsonMaps.list;
import static brakewright.cli.JsonMaps.number;
import static brakewright.cli.JsonMaps.numbers;
import static brakewright.cli.JsonMaps.object;
import static brakewright.cli.JsonMaps.objects;
import static brakewright.cli.JsonMaps.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.LimitId;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WorksheetJsonTest {

    /** Sums and quotients of a few numbers: some ulps. */
    private static final double ROUNDING = 1e-12;

    private static final Map<Example, Map<String, Object>> SHEETS = sheets();

    private static Map<Example, Map<String, Object>> sheets() {
        Map<Example, Map<String, Object>> sheets = new EnumMap<>(Example.class);
        for (Example example : Example.values()) {
            sheets.put(example, JsonMaps.read(example.json()));
        }
        return sheets;
    }

    private static Map<String, Object> sheet(Example example) {
        return SHEETS.getOrDefault(example, Map.of());
    }

    @ParameterizedTest
    @EnumSource
    void hasEveryPartOfTheSchema(Example example) {
        Map<String, Object> sheet = sheet(example);
        assertThat(text(sheet, "schema")).isEqualTo("brakewright.worksheet/1");
        assertThat(text(sheet, "verdict")).isEqualTo(example.verdict());
        assertThat(sheet)
                .containsKeys(
                        "title",
                        "inputs",
                        "limits",
                        "pack_by_charge",
                        "brake_map",
                        "drive",
                        "heat",
                        "findings",
                        "cautions");
    }

    @ParameterizedTest
    @EnumSource
    void hasStops(Example example) {
        Map<String, Object> sheet = sheet(example);
        assertThat(objects(sheet, "stops"))
                .isNotEmpty()
                .allSatisfy(
                        stop ->
                                assertThat(stop)
                                        .containsKeys("from_m_per_s", "charge", "reaction_m"));
    }

    @ParameterizedTest
    @EnumSource
    void saysOfEveryInputWhereItCameFrom(Example example) {
        object(sheet(example), "inputs")
                .forEach(
                        (key, value) -> {
                            Map<String, Object> entry = JsonMaps.asObject(value);
                            Input input =
                                    Input.ofKey(key.replaceFirst("^packs\\.[0-9]+", "pack"))
                                            .orElseThrow();
                            assertThat(entry).as(key).containsKeys("value", "source");
                            assertThat(text(entry, "unit")).as(key).isEqualTo(input.unit().plain());
                            assertThat(text(entry, "from"))
                                    .as(key)
                                    .isIn("file", "table", "assumed");
                            assertThat(text(entry, "source")).as(key).isNotBlank();
                        });
    }

    @ParameterizedTest
    @EnumSource
    void hasEveryLimit(Example example) {
        Map<String, Object> limits = object(sheet(example), "limits");
        assertThat(limits.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(LimitId.values()).map(LimitId::key).toList());
        for (LimitId id : LimitId.values()) {
            Map<String, Object> limit = object(limits, id.key());
            assertThat(text(limit, "unit")).isEqualTo(id.unit().plain());
            assertThat(limit).as(id.key()).containsKeys("limit", "bound_by", "constraints");
        }
        assertThat(object(limits, "pack-regen-current")).containsKey("holds_below_charge");
    }

    @ParameterizedTest
    @EnumSource
    void aLimitIsTheLeastOfItsConstraints(Example example) {
        for (LimitId id :
                List.of(
                        LimitId.MOTOR_DRIVE_CURRENT,
                        LimitId.MOTOR_BRAKE_CURRENT,
                        LimitId.PACK_DISCHARGE_CURRENT,
                        LimitId.PACK_REGEN_CURRENT,
                        LimitId.SPEED_CAP)) {
            Map<String, Object> limit = object(sheet(example), "limits", id.key());
            List<Map<String, Object>> bounds = withBound(limit);
            double least =
                    bounds.stream().mapToDouble(each -> number(each, "limit")).min().orElseThrow();
            boolean isTolerated = limit.containsKey("limit_nominal");
            assertThat(least)
                    .as(id.key())
                    .isEqualTo(number(limit, isTolerated ? "limit_nominal" : "limit"))
                    .isGreaterThanOrEqualTo(number(limit, "limit"));
            assertThat(
                            bounds.stream()
                                    .filter(each -> number(each, "limit") == least)
                                    .map(each -> text(each, "id")))
                    .as(id.key())
                    .contains(text(limit, "bound_by"));
        }
    }

    /** The low taper ends at the highest voltage that must be kept, the high one at the lowest. */
    @ParameterizedTest
    @EnumSource
    void aTaperEndsAtTheStrictestVoltage(Example example) {
        for (LimitId id : List.of(LimitId.LOW_VOLTAGE_TAPER, LimitId.HIGH_VOLTAGE_TAPER)) {
            boolean low = id == LimitId.LOW_VOLTAGE_TAPER;
            Map<String, Object> limit = object(sheet(example), "limits", id.key());
            double begins = numbers(limit, "limit").get(0);
            double ends = numbers(limit, "limit").get(1);
            List<Map<String, Object>> bounds = withBound(limit);
            var values = bounds.stream().mapToDouble(each -> number(each, "limit"));
            assertThat(low ? values.max() : values.min()).as(id.key()).hasValue(ends);
            assertThat(
                            bounds.stream()
                                    .filter(each -> number(each, "limit") == ends)
                                    .map(each -> text(each, "id")))
                    .contains(text(limit, "bound_by"));
            assertThat(Math.abs(begins - ends))
                    .isCloseTo(number(limit, "band_least_V"), within(ROUNDING * begins));
            assertThat(begins > ends).isEqualTo(low);
        }
    }

    /** A constraint without a number does not bound anything. */
    private static List<Map<String, Object>> withBound(Map<String, Object> limit) {
        return objects(limit, "constraints").stream()
                .filter(constraint -> constraint.containsKey("limit"))
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void everyConstraintNamesItsSource(Example example) {
        for (LimitId id : LimitId.values()) {
            assertThat(objects(object(sheet(example), "limits", id.key()), "constraints"))
                    .isNotEmpty()
                    .allSatisfy(constraint -> assertThat(text(constraint, "source")).isNotBlank());
        }
    }

    @ParameterizedTest
    @EnumSource
    void packCurrentsPerControllerAddUpToTheLimit(Example example) {
        double count = number(object(sheet(example), "inputs", "controller.count"), "value");
        for (String id : List.of("pack-discharge-current", "pack-regen-current")) {
            Map<String, Object> limit = object(sheet(example), "limits", id);
            assertThat(count * number(limit, "per_controller"))
                    .isCloseTo(number(limit, "limit"), within(ROUNDING * number(limit, "limit")));
            assertThat(number(limit, "set"))
                    .isEqualTo(
                            count
                                    * number(
                                            object(
                                                    sheet(example),
                                                    "inputs",
                                                    "settings." + id.replace('-', '_')),
                                            "value"));
        }
    }

    @ParameterizedTest
    @EnumSource
    void runsThroughTheChargeInUseInStepsOfFivePercentWithBothEnds(Example example) {
        Map<String, Object> sheet = sheet(example);
        List<Double> expected = new ArrayList<>();
        double from = number(object(sheet, "inputs", "use.charge_from"), "value");
        double to = number(object(sheet, "inputs", "use.charge_to"), "value");
        expected.add(to);
        for (int step = 0; step <= 20; step++) {
            if (step / 20.0 > to + ROUNDING && step / 20.0 < from - ROUNDING) {
                expected.add(step / 20.0);
            }
        }
        expected.add(from);
        List<Double> charges = numbers(object(sheet, "brake_map"), "charge");
        assertThat(charges).hasSameSizeAs(expected);
        for (int i = 0; i < charges.size(); i++) {
            assertThat(charges.get(i)).isCloseTo(expected.get(i), within(ROUNDING));
        }
        List<Double> rows =
                objects(sheet, "pack_by_charge").stream()
                        .map(row -> number(row, "charge"))
                        .toList();
        assertThat(rows).contains(0.0, 0.5, 1.0).isSorted().doesNotHaveDuplicates();
    }

    /** A charge bound that is no multiple of 5 % adds a point; one that is adds none. */
    @ParameterizedTest
    @ValueSource(strings = {"0.15", "0.3", "0.35", "0.55", "0.6", "0.7", "0.123"})
    void chargesOfTheBrakeMapAreNeverDoubled(String chargeTo) {
        for (String written :
                List.of(chargeTo, "\"" + 100.0 * Double.parseDouble(chargeTo) + " %\"")) {
            BuildText file = BuildText.of(Example.TRAIL_BOARD);
            file.replace("use", "charge_to", "charge_to = " + written);
            Map<String, Object> sheet =
                    JsonMaps.read(CommandRun.worksheet(file.text(), "--format", "json").out());
            List<Double> charges = numbers(object(sheet, "brake_map"), "charge");
            for (int i = 1; i < charges.size(); i++) {
                assertThat(charges.get(i) - charges.get(i - 1)).as(written).isGreaterThan(1e-6);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void runsFromStandstillToTheHighestSpeed(Example example) {
        Map<String, Object> sheet = sheet(example);
        List<Double> speeds = numbers(object(sheet, "brake_map"), "speed_m_per_s");
        double wanted =
                Math.max(
                        number(object(sheet, "inputs", "use.speed_max"), "value"),
                        number(object(sheet, "inputs", "settings.speed_cap"), "value"));
        assertThat(speeds).isSorted().doesNotHaveDuplicates();
        assertThat(speeds.get(0)).isZero();
        assertThat(speeds.get(speeds.size() - 1)).isGreaterThanOrEqualTo(wanted - ROUNDING);
    }

    @ParameterizedTest
    @EnumSource
    void theBrakeMapIsFull(Example example) {
        Map<String, Object> map = object(sheet(example), "brake_map");
        int charges = list(map, "charge").size();
        int speeds = list(map, "speed_m_per_s").size();
        assertThat(list(map, "may_take_A")).hasSize(charges);
        for (String grid :
                List.of(
                        "asked_pack_current_A",
                        "pack_current_A",
                        "motor_current_A",
                        "cell_voltage_V",
                        "wheel_force_N")) {
            assertThat(list(map, grid)).as(grid).hasSize(charges);
            assertThat(list(map, grid))
                    .allSatisfy(row -> assertThat((List<?>) row).as(grid).hasSize(speeds));
        }
    }

    @ParameterizedTest
    @EnumSource
    void theBrakeNeverReturnsMoreThanAskedOrSet(Example example) {
        Map<String, Object> sheet = sheet(example);
        Map<String, Object> map = object(sheet, "brake_map");
        double set = number(object(sheet, "limits", "pack-regen-current"), "set");
        double motor = number(object(sheet, "limits", "motor-brake-current"), "set");
        for (int row = 0; row < list(map, "charge").size(); row++) {
            for (int column = 0; column < list(map, "speed_m_per_s").size(); column++) {
                double asked = cell(map, "asked_pack_current_A", row, column);
                double returned = cell(map, "pack_current_A", row, column);
                // the motor current is found to a tolerance where the pack limit holds it back
                assertThat(returned).isCloseTo(Math.min(asked, set), within(1e-6 * set));
                assertThat(cell(map, "motor_current_A", row, column))
                        .isBetween(0.0, motor * (1.0 + ROUNDING));
            }
        }
    }

    private static double cell(Map<String, Object> map, String grid, int row, int column) {
        return (Double) ((List<?>) list(map, grid).get(row)).get(column);
    }

    @ParameterizedTest
    @EnumSource
    void packRowsAndBrakeMapAgreeOnWhatThePackMayTake(Example example) {
        Map<String, Object> sheet = sheet(example);
        Map<String, Object> map = object(sheet, "brake_map");
        List<Double> charges = numbers(map, "charge");
        for (Map<String, Object> row : objects(sheet, "pack_by_charge")) {
            int at = charges.indexOf(number(row, "charge"));
            if (at >= 0) {
                assertThat(numbers(map, "may_take_A").get(at))
                        .isCloseTo(number(row, "may_take_A"), within(ROUNDING * 100.0));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void namesOfNumbersEndInTheirUnit(Example example) {
        Map<String, Object> sheet = sheet(example);
        for (String part :
                List.of("pack_by_charge", "brake_map", "stops", "drive", "heat", "range")) {
            if (sheet.containsKey(part)) {
                assertNamesEndInUnits(part, sheet.getOrDefault(part, ""));
            }
        }
    }

    private static final Set<String> FRACTIONS =
            Set.of(
                    "charge",
                    "slope",
                    "climb_slope_held",
                    "climb_slope_sustained",
                    "held_down_to_charge",
                    "returned_share");

    private static final String UNITS =
            ".*_(A|V|W|ohm|m|s|N|kg|K|C|Wh|Wh_per_km|Wh_per_mi|km|m_per_s|m_per_s2)";

    private static void assertNamesEndInUnits(String name, Object value) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, each) -> assertNamesEndInUnits(String.valueOf(key), each));
        } else if (value instanceof List<?> list) {
            list.forEach(each -> assertNamesEndInUnits(name, each));
        } else if (value instanceof Double && !FRACTIONS.contains(name)) {
            assertThat(name).matches(UNITS);
        }
    }

    @ParameterizedTest
    @EnumSource
    void hasTheKeysOfTheRows(Example example) {
        Map<String, Object> sheet = sheet(example);
        assertThat(objects(sheet, "pack_by_charge"))
                .allSatisfy(
                        row ->
                                assertThat(row)
                                        .containsKeys(
                                                "charge",
                                                "open_circuit_V",
                                                "resistance_ohm",
                                                "cell_resistance_ohm",
                                                "may_give_A",
                                                "give_bound_by",
                                                "may_take_A",
                                                "take_bound_by",
                                                "loaded_V",
                                                "top_speed_m_per_s"));
        assertThat(object(sheet, "drive"))
                .containsKeys(
                        "top_speed_flat_m_per_s",
                        "climb_slope_held",
                        "launch_m_per_s2",
                        "launch_bound_by");
        assertThat(object(sheet, "heat")).containsKey("continuous_motor_current_A");
        assertThat(objects(sheet, "findings"))
                .allSatisfy(
                        finding -> {
                            assertThat(text(finding, "id")).isNotBlank();
                            assertThat(text(finding, "signal"))
                                    .isIn("danger", "warning", "caution", "notice");
                            assertThat(text(finding, "text")).endsWith(".");
                        });
        assertThat(list(sheet, "cautions")).hasSizeGreaterThan(3);
    }

    @Test
    void leavesOutTheHeatOfTheMotorWhereItsFiguresAreNotGiven() {
        BuildText file = BuildText.of(Example.TRIKE);
        file.remove("motor", "winding_to_case");
        CommandRun run = CommandRun.worksheet(file.text(), "--format", "json");
        assertThat(run.status()).isZero();
        assertThat(object(JsonMaps.read(run.out()), "heat"))
                .doesNotContainKeys("continuous_motor_current_A", "time_at_drive_set_s");
    }

    @Test
    void computesWithTheLimitsWhereNothingIsSet() {
        String text = Example.TRIKE.text();
        CommandRun run =
                CommandRun.worksheet(
                        text.substring(0, text.indexOf("[settings]")), "--format", "json");
        Map<String, Object> sheet = JsonMaps.read(run.out());
        for (LimitId id : LimitId.values()) {
            assertThat(object(sheet, "limits", id.key())).doesNotContainKey("set");
        }
        assertThat(text(object(sheet, "inputs", "settings.motor_brake_current"), "source"))
                .isEqualTo("recommended-limit");
        assertThat(number(object(sheet, "inputs", "settings.motor_brake_current"), "value"))
                .isEqualTo(number(object(sheet, "limits", "motor-brake-current"), "limit"));
    }
}

package brakewright.cli;

import static brakewright.cli.JsonMaps.number;
import static brakewright.cli.JsonMaps.object;
import static brakewright.cli.JsonMaps.objects;
import static brakewright.cli.JsonMaps.text;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What sentences say of a situation stands in the JSON as values, too. */
class SituationValuesTest {

    private static Map<String, Object> finding(Map<String, Object> sheet, String id) {
        return objects(sheet, "findings").stream()
                .filter(each -> text(each, "id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Map<String, Object> sheet(BuildText file) {
        return JsonMaps.read(CommandRun.worksheet(file.text(), "--format", "json").out());
    }

    @ParameterizedTest
    @EnumSource
    void everyFindingTellsWhatItIsAbout(Example example) {
        assertThat(objects(JsonMaps.read(example.json()), "findings"))
                .isNotEmpty()
                .allSatisfy(
                        finding -> {
                            assertThat(text(finding, "id")).startsWith(text(finding, "topic"));
                            if (finding.containsKey("bound_by")) {
                                assertThat(text(finding, "id")).endsWith(text(finding, "bound_by"));
                            }
                        });
    }

    /** A condition that is told in words is told in values. */
    @ParameterizedTest
    @EnumSource
    void aConditionalVerdictHasItsConditions(Example example) {
        Map<String, Object> sheet = JsonMaps.read(example.json());
        List<Map<String, Object>> conditions = objects(sheet, "conditions");
        if (text(sheet, "verdict").equals("conditional")) {
            assertThat(conditions).isNotEmpty();
        }
        if (text(sheet, "verdict").equals("within-limits")) {
            assertThat(conditions).isEmpty();
        }
        assertThat(conditions).allSatisfy(each -> assertThat(each).containsKey("kind"));
    }

    @Test
    void aLateLimiterTellsItsSurge() {
        BuildText file = BuildText.of(Example.TRAIL_BOARD);
        file.replace("pack.protection", "charge_trip", "charge_trip = \"20 A\"");
        Map<String, Object> finding =
                finding(sheet(file), "regen-overshoot:protection-charge-trip");
        Map<String, Object> surge = object(finding, "surge");
        assertThat(text(surge, "trip")).isEqualTo("protection-charge-trip");
        assertThat(text(surge, "opens")).isEqualTo("unknown");
        assertThat(number(surge, "trip_delay_typical_s")).isEqualTo(9e-3);
        assertThat(number(surge, "pack_current_A")).isEqualTo(number(finding, "value"));
        assertThat(number(surge, "may_take_A")).isEqualTo(number(finding, "limit"));
        assertThat(number(surge, "let_through_A")).isLessThan(number(surge, "may_take_A"));
    }

    @Test
    void aFadingBrakeTellsWhatHoldsItBack() {
        Map<String, Object> finding =
                finding(
                        JsonMaps.read(Example.TRAIL_BOARD.json()),
                        "brake-fades:motor-brake-current");
        assertThat(text(finding, "held_back_by")).isIn("pack-regen-current", "high-voltage-taper");
        assertThat(text(finding, "text"))
                .contains(
                        text(finding, "held_back_by").equals("high-voltage-taper")
                                ? "the high-voltage taper holds the brake back"
                                : "the pack limit holds the brake back");
    }
}

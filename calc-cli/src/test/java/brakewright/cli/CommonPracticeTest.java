package brakewright.cli;

import static brakewright.cli.JsonMaps.number;
import static brakewright.cli.JsonMaps.object;
import static brakewright.cli.JsonMaps.objects;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What riders of stand-on boards commonly report, against the example trail board. Common practice:
 * no source was found, so the bounds are wide.
 */
@Tag("plausibility")
class CommonPracticeTest {

    private static final double KILOMETRES_PER_HOUR = 1.0 / 3.6;

    /** Riders, tyres and clothes differ by some tens of per cent, speed by a third of that. */
    private static final double ANY_RIDER = 0.15;

    /** Only the pack current differs from the example: what 1.5 kW takes from its full pack. */
    @Test
    void theTrailBoardThatDrawsOneAndAHalfKilowattsTopsOutNearFortyFiveKilometresPerHour() {
        BuildText file = BuildText.of(Example.TRAIL_BOARD);
        file.replace("settings", "pack_discharge_current", "pack_discharge_current = \"21 A\"");
        CommandRun run = CommandRun.worksheet(file.text(), "--format", "json");
        assertThat(run.err()).isEmpty();
        Map<String, Object> sheet = JsonMaps.read(run.out());
        List<Map<String, Object>> charges = objects(sheet, "pack_by_charge");
        Map<String, Object> full = charges.get(charges.size() - 1);
        double controllers = 2.0;
        double drawn = controllers * 21.0 * number(full, "loaded_V");
        assertThat(drawn).as("the power that is commonly said").isBetween(1400.0, 1600.0);
        double commonlySaid = 45.0;
        assertThat(number(object(sheet, "drive"), "top_speed_flat_m_per_s") / KILOMETRES_PER_HOUR)
                .isCloseTo(commonlySaid, within(ANY_RIDER * commonlySaid));
    }
}

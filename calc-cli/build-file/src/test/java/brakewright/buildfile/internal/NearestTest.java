package brakewright.buildfile.internal;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.spec.Input;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NearestTest {

    private static final List<String> KEYS = Arrays.stream(Input.values()).map(Input::key).toList();

    @ParameterizedTest
    @CsvSource({
        "rider.mas, rider.mass",
        "rider.weight, rider.mass",
        "motor.resistence, motor.resistance",
        "settings.motor_break_current, settings.motor_brake_current",
        "pack.parrallel, pack.parallel",
        "use.speed_maximum, use.speed_max"
    })
    void findsWhatWasMeant(String written, String meant) {
        assertThat(Nearest.to(written, KEYS)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({
        "rider.mas, rider.mass",
        "pack.wrie, pack.wiring.wire",
        "pack.parrallel, pack.parallel",
        "pack.cell.fuse, pack.wiring.fuse",
        "battery.fues, battery.fuse",
        "rider.wheel_diamter, vehicle.wheel_diameter",
        "motor.kw, motor.kv",
        "mass, rider.mass",
        "use.speed_maximum, use.speed_max"
    })
    void looksIntoTheSameTableFirst(String written, String meant) {
        assertThat(Nearest.key(written, KEYS)).contains(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"wobble", "pack.wobble", "rider.weight", "pack.x9", "settings.", ""})
    void suggestsNoKeyThatIsFar(String written) {
        assertThat(Nearest.key(written, KEYS)).isEmpty();
    }

    @Test
    void staysSilentWhereNothingIsNear() {
        assertThat(Nearest.to("wobble", KEYS)).isEmpty();
        assertThat(Nearest.to("rider.mass", List.of())).isEmpty();
    }
}

package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.spec.Input;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class KeysCommandTest {

    @ParameterizedTest
    @EnumSource(Input.class)
    void everyKeyIsExplained(Input input) {
        CommandRun run = Answers.of("keys", input.key());
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("what it is", "in the file", "value", "left out");
        assertThat(run.outLines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void allAreListedEachUnderItsTable() {
        CommandRun run = Answers.of("keys");
        assertThat(run.status()).isZero();
        assertThat(run.outLines())
                .contains("[pack.cell]", "  * series                    groups in series");
        for (Input input : Input.values()) {
            assertThat(run.out())
                    .contains(" " + input.key().substring(input.key().lastIndexOf('.') + 1) + " ");
        }
    }

    @Test
    void whatIsTakenWithoutAKeyIsToldWithItsSource() {
        CommandRun run = Answers.of("keys", "vehicle.grip");
        assertThat(run.out())
                .contains("left out          0.65\n")
                .contains(
                        "0.65: published, Engineering Analysis of Vehicular Accidents; dry asphalt");
    }

    /** A part of the name, a table, a pack of several, a proposal, dashes: all find the same. */
    @ParameterizedTest
    @CsvSource({
        "series, PACK.SERIES",
        "packs.series, PACK.SERIES",
        "packs.2.series, PACK.SERIES",
        "Pack.Series, PACK.SERIES",
        "proposals.firm.motor_brake_current, SETTINGS.MOTOR_BRAKE_CURRENT",
        "motor-brake-current, SETTINGS.MOTOR_BRAKE_CURRENT",
        "[rider], [rider]"
    })
    void aKeyIsFoundByWhatAPersonWrites(String written, String heading) {
        CommandRun run = Answers.of("keys", written);
        assertThat(run.status()).isZero();
        assertThat(run.outLines().get(0)).isEqualTo(heading);
    }

    @Test
    void aTableListsItsKeys() {
        assertThat(Answers.of("keys", "packs.protection").out())
                .contains("[pack.protection]", "charge_trip ", "cell_undervoltage_trip ");
    }

    @Test
    void theTableOfRecordingsIsExplained() {
        assertThat(Answers.of("keys", "recording").out())
                .contains("[recording]", "[recording.columns]", "[recording.units]");
        CommandRun run = Answers.of("keys", "recording.units.wheel-speed");
        assertThat(run.outLines()).allMatch(line -> line.length() <= 100);
        assertThat(run.out())
                .contains("what it is", "where to find it", "left out")
                .contains("in the file       wheel_speed = \"km/h\"   in [recording.units]")
                .contains("value             one of km/h, kmh, ");
    }

    @Test
    void aMisspeltKeyGetsTheNearest() {
        CommandRun run = Answers.of("keys", "motor.kvv");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .isEqualToIgnoringNewLines(
                        "\"motor.kvv\" is no key of a build file; the nearest is motor.kv\n");
    }
}

package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same question gets the same answer, however often it is asked in a process. */
class AnswersTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "worksheet examples/vineyard-trail-board.toml --show all",
                "worksheet examples/vineyard-trail-board.toml --format json",
                "worksheet examples/vineyard-trail-board.toml --format html",
                "worksheet examples/vineyard-trail-board.toml --format markdown --doubts",
                "check examples/vineyard-trail-board.toml --with motor_brake_current=38A",
                "propose examples/parcel-trike.toml",
                "compare examples/vineyard-trail-board.toml --also examples/parcel-trike.toml",
                "solve examples/parcel-trike.toml --for motor_brake_current",
                "explain examples/ferry-dock-scooter.toml range",
                "ride examples/vineyard-trail-board.toml guide/straight.csv",
                "ride examples/vineyard-trail-board.toml --route guide/route.csv --format json",
                "tables cells",
                "keys motor.kv",
                "check examples/parcel-trike.toml --with motor_brake_curent=38A"
            })
    void isTheSameEachTime(String command) {
        CommandRun kept = Answers.of(command.split(" "));
        assertThat(kept.out() + kept.err()).isNotBlank();
        assertThat(CommandRun.of(command.split(" "))).isEqualTo(kept);
        assertThat(Answers.of(command.split(" "))).isSameAs(kept);
    }

    @Test
    void whatATestWritesIsNotAskedOnlyOnce(@TempDir Path folder) {
        String file = folder.resolve("build.toml").toString();
        assertThatIllegalArgumentException().isThrownBy(() -> Answers.of("worksheet", file));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Answers.of("worksheet", "--output=" + file));
    }
}

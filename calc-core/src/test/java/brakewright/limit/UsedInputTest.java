package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Settings;
import brakewright.spec.WhichPack;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the limits of a board rest on. */
@Tag("law")
class UsedInputTest {

    private static final Build BOARD = Builds.trailBoard();

    /** Of pack currents, motor currents, tapers and the speed cap. */
    @Test
    void whatAnyLimitRestsOnIsNamed() {
        assertThat(inputs(BOARD))
                .contains(
                        Input.CELL_CHARGE_CURRENT,
                        Input.CELL_DISCHARGE_CURRENT,
                        Input.USE_HARD_PULL,
                        Input.USE_HARD_BRAKE,
                        Input.CELL_VOLTAGE_MIN,
                        Input.CELL_VOLTAGE_MAX,
                        Input.USE_PACK_TEMPERATURE,
                        Input.USE_CHARGE_FROM,
                        Input.USE_CHARGE_TO);
    }

    /** Where no trip is known a taper ends no lower than where the voltage of a cell falls away. */
    @Test
    void theFloorThatEndsATaperIsNamed() {
        Cell cell = Builds.pack(BOARD).cell();
        Cell steep = cell.withTaperFloor(cell.voltageMin() + 0.2);
        assertThat(inputs(Builds.withPack(BOARD, Builds.barePack(steep, 12, 4, 0.01))))
                .contains(Input.CELL_TAPER_FLOOR);
    }

    @Test
    void whatNoLimitRestsOnIsNotNamed() {
        assertThat(inputs(BOARD))
                .doesNotContain(
                        Input.CELL_CAPACITY, Input.VEHICLE_GRIP_WET, Input.USE_CRUISE_SPEED);
    }

    /** 11 m/s are the highest speed in use; what a hard grab sends back is that of the highest. */
    @Test
    void aCapCountsInAHardGrabOnlyWhereItLetsTheVehicleGoFaster() {
        assertThat(inputs(capped(12.0))).contains(Input.SETTINGS_SPEED_CAP);
        assertThat(inputs(capped(10.0)))
                .contains(Input.USE_SPEED_MAX)
                .doesNotContain(Input.SETTINGS_SPEED_CAP);
    }

    private static Build capped(double speed) {
        return Builds.withLateLimiter(BOARD, 0.1, 0.01)
                .withSettings(Settings.NONE.withSpeedCap(OptionalDouble.of(speed)));
    }

    @Test
    void ofOnePackNothingIsNumbered() {
        assertThat(UsedInput.of(BOARD, Limits.of(BOARD)))
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.pack().isWhole()).isTrue());
    }

    /** A cell of each pack, its joints and its protection; what all packs feed is of none. */
    @Test
    void ofSeveralPacksEachInputIsThatOfItsPack() {
        Pack pack = Builds.pack(BOARD);
        Battery two = Builds.joined(Joining.PARALLEL, List.of(pack, pack));
        Build build = BOARD.withBattery(two);
        Set<UsedInput> used = UsedInput.of(build, Limits.of(build));
        for (Input input :
                List.of(
                        Input.CELL_CHARGE_CURRENT,
                        Input.CELL_RESISTANCE,
                        Input.PACK_RESISTANCE_SPREAD,
                        Input.PACK_JOINT_RESISTANCE,
                        Input.PROTECTION_DISCHARGE_TRIP)) {
            assertThat(packs(used, input))
                    .as("%s", input)
                    .containsExactlyInAnyOrder(WhichPack.of(1), WhichPack.of(2));
        }
        for (Input input : List.of(Input.CONTROLLER_COUNT, Input.VEHICLE_GRIP, Input.MOTOR_KV)) {
            assertThat(packs(used, input)).as("%s", input).containsExactly(WhichPack.WHOLE);
        }
    }

    private static List<WhichPack> packs(Set<UsedInput> used, Input input) {
        return used.stream().filter(each -> each.input() == input).map(UsedInput::pack).toList();
    }

    private static Set<Input> inputs(Build build) {
        return UsedInput.of(build, Limits.of(build)).stream()
                .map(UsedInput::input)
                .collect(Collectors.toSet());
    }
}

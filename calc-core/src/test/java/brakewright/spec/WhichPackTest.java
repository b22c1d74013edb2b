package brakewright.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class WhichPackTest {

    private static final Pack FIRST = Builds.pack(Builds.trailBoard());
    private static final Pack SECOND = FIRST.withResistanceSpread(0.05);
    private static final Battery TWO = Builds.joined(Joining.PARALLEL, List.of(FIRST, SECOND));

    @Test
    void packsAreCountedFromOne() {
        assertThatThrownBy(() -> WhichPack.of(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("number of a pack must be at least 1, was 0");
        assertThat(WhichPack.of(1).isWhole()).isFalse();
    }

    @Test
    void theWholeHasNoNumberAndGivesWayToAPack() {
        assertThat(WhichPack.WHOLE.isWhole()).isTrue();
        assertThat(WhichPack.WHOLE.map(number -> "pack " + number)).isEmpty();
        assertThat(WhichPack.of(2).map(number -> "pack " + number)).contains("pack 2");
        assertThat(WhichPack.WHOLE.or(WhichPack.of(2))).isEqualTo(WhichPack.of(2));
        assertThat(WhichPack.of(1).or(WhichPack.of(2))).isEqualTo(WhichPack.of(1));
    }

    @Test
    void aSinglePackIsTheWholeAndOneOfSeveralIsNumbered() {
        assertThat(Battery.of(FIRST).which(0)).isEqualTo(WhichPack.WHOLE);
        assertThat(TWO.which(1)).isEqualTo(WhichPack.of(2));
    }

    @Test
    void aBatteryFindsThePackThatSomethingIsAbout() {
        assertThat(TWO.pack(WhichPack.of(2))).isEqualTo(SECOND).isNotEqualTo(FIRST);
        assertThat(Battery.of(FIRST).pack(WhichPack.WHOLE)).isEqualTo(FIRST);
        assertThatThrownBy(() -> TWO.pack(WhichPack.of(3)))
                .isInstanceOf(IndexOutOfBoundsException.class);
    }
}

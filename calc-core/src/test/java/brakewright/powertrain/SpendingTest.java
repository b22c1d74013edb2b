package brakewright.powertrain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Hand-worked: parts whose sums tell them apart. */
@Tag("law")
class SpendingTest {

    private static final Spending PARTS = new Spending(1, 2, 4, 8, 16, 32, 64, 128, 256, 512, 1025);

    @Test
    void theSumHasEveryPartOnceAndTheTerminalsNotThePacks() {
        assertThat(PARTS.sum()).isEqualTo(2048.0);
        assertThat(PARTS.atTerminals()).isEqualTo(1023.0);
    }

    @Test
    void theSharesAreOfTheSum() {
        assertThat(PARTS.shares())
                .isEqualTo(
                        new Spending(
                                1 / 2048.0,
                                1 / 1024.0,
                                1 / 512.0,
                                1 / 256.0,
                                1 / 128.0,
                                1 / 64.0,
                                1 / 32.0,
                                1 / 16.0,
                                1 / 8.0,
                                1 / 4.0,
                                1025 / 2048.0));
    }

    @Test
    void partsAreAddedToTheirOwn() {
        assertThat(PARTS.plus(new Spending(10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110), 3.0))
                .isEqualTo(new Spending(31, 62, 94, 128, 166, 212, 274, 368, 526, 812, 1355));
        assertThat(Spending.NONE.plus(PARTS, 1.0)).isEqualTo(PARTS);
    }
}

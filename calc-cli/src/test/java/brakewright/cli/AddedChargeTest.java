package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A long descent fills the pack while it is held: the charge told is that at its beginning. */
class AddedChargeTest {

    /** 49 s of 11.0 A are 0.15 of 11.8 Ah. */
    @Test
    void whatLongBrakingAddsIsToldBesideTheChargeItIsSafeFrom() {
        String out =
                Answers.of("worksheet", "examples/vineyard-trail-board.toml")
                        .out()
                        .replaceAll("\\s+", " ");
        assertThat(out)
                .contains("Counted is braking for 49 s")
                .contains("It adds 1.3 % of charge itself: begin it so much lower.");
    }
}

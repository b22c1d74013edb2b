package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.braking.StopOutcome;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.operation.FirstStop;
import org.junit.jupiter.api.Test;

/** The first stop after a full charge: with the protection opening first, without it after. */
class FirstStopTextTest {

    private static final String HEADING = "THE FIRST STOP AFTER A FULL CHARGE";

    @Test
    void theStopOnWhichTheProtectionOpensComesFirst() {
        Printed printed = Printed.of(Printed.BOARD);
        FirstStop stop = printed.sheet().firstStops().get(0);
        String prose = printed.prose(HEADING);
        int opened = prose.indexOf("it stops within " + length(opened(stop)));
        int unopened = prose.indexOf("If nothing opens, it stops within " + length(stop.outcome()));
        assertThat(opened).isPositive();
        assertThat(unopened).isGreaterThan(opened);
        assertThat(prose)
                .contains(
                        Numbers.down(stop.leftDeceleration(), 2)
                                + " m/s² are left of all braking at 32.0 km/h, "
                                + Numbers.down(stop.leftSlow(), 2)
                                + " m/s² at a crawl")
                .contains("closes again only once the pack is drawn from");
    }

    @Test
    void whereNothingOpensThereIsOneStop() {
        Printed printed = Printed.of(Printed.TRIKE);
        assertThat(printed.sheet().firstStops().get(0).opened()).isEmpty();
        assertThat(printed.prose(HEADING))
                .contains("If nothing opens, it stops within", "All within limits.")
                .doesNotContain("at a crawl", "closes again");
    }

    @Test
    void whatNothingSlowsIsSaidNotToStop() {
        String coasting =
                Printed.BOARD
                        .replace("rolling_resistance = 0.028", "rolling_resistance = 0")
                        .replace("no_load_current = \"1.1 A\"", "no_load_current = \"0 A\"");
        assertThat(Printed.of(coasting).prose(HEADING))
                .contains("it does not stop: the protection's over-voltage trip opens")
                .contains("If nothing opens, it stops within");
    }

    @Test
    void whatRollsOnForAKilometreIsNoStop() {
        String coasting =
                Printed.BOARD
                        .replace("rolling_resistance = 0.028", "rolling_resistance = 0.00001")
                        .replace("no_load_current = \"1.1 A\"", "no_load_current = \"0.001 A\"");
        assertThat(Printed.of(coasting).prose(HEADING))
                .contains("it rolls on for more than 1.0 km");
    }

    private static StopOutcome opened(FirstStop stop) {
        return stop.opened().orElseThrow().outcome();
    }

    private static String length(StopOutcome outcome) {
        return UnitSystem.SI.lengthText(((StopOutcome.Stopped) outcome).distance());
    }
}

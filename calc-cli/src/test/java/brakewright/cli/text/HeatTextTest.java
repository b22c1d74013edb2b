package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.cli.words.Numbers;
import brakewright.heat.PackHeat;
import brakewright.worksheet.HeatSheet;
import brakewright.worksheet.WarmStart;
import org.junit.jupiter.api.Test;

class HeatTextTest {

    private static final String HEADING = "HEAT OF MOTOR AND PACK";

    @Test
    void tellsHowLongTheMotorBearsItsCurrents() {
        Printed printed = Printed.of(Printed.BOARD);
        HeatSheet.Known heat = printed.sheet().heat().known().orElseThrow();
        WarmStart.Borne warm = (WarmStart.Borne) heat.afterCruise();
        assertThat(printed.prose(HEADING))
                .contains(Numbers.down(heat.continuousCurrent(), 1) + " A per motor")
                .contains(
                        "48.0 A lasts "
                                + Numbers.time(heat.timeAtDriveSetting().orElseThrow())
                                + " from cold; after a long ride at 19.2 km/h (winding at "
                                + Numbers.nearest(warm.start().windingC(), 0)
                                + " °C) it lasts "
                                + Numbers.time(warm.lasts().orElseThrow()))
                .contains(
                        "After the limit, "
                                + Numbers.time(heat.recovery().orElseThrow())
                                + " at rest until another hard pull of 25 s is borne")
                .contains("30.0 A lasts " + Numbers.time(heat.timeAtBrakeSetting().orElseThrow()));
    }

    @Test
    void tellsHowWarmThePackBecomes() {
        Printed printed = Printed.of(Printed.BOARD);
        PackHeat cruising = printed.sheet().heat().packCruising().orElseThrow();
        PackHeat warm = printed.sheet().heat().warmRide().orElseThrow().heat();
        assertThat(printed.prose(HEADING))
                .contains(
                        "warms the cells by about "
                                + Numbers.nearest(cruising.endC() - cruising.startC(), 0)
                                + " K, to "
                                + Numbers.nearest(cruising.endC(), 0)
                                + " °C.")
                .contains("From 38 °C, the warmest in use: a full discharge at 19.2 km/h")
                .contains("to " + Numbers.nearest(warm.endC(), 0) + " °C.");
    }

    @Test
    void tellsWhereTheRideIsStoppedAndHowLongThePackMustCool() {
        Printed printed = Printed.of(Printed.BOARD);
        PackHeat pulling = printed.sheet().heat().packPulling().orElseThrow();
        assertThat(printed.prose(HEADING))
                .contains(
                        "but the cells reach the 60 °C that their maker permits after about "
                                + Numbers.time(pulling.stoppedAfter().orElseThrow())
                                + ": stop before that.")
                .contains(
                        "After the set draw, let the cells cool below 45 °C before charging; about "
                                + Numbers.time(pulling.chargeAfter().orElseThrow()))
                .contains("After cruising, the cells need not cool")
                .doesNotContain("not given");
    }

    @Test
    void aRideThatWarmsTheCellsTooFarToBeChargedIsTold() {
        Printed printed =
                Printed.of(Printed.BOARD.replace("ambient = \"20 °C\"", "ambient = \"38 °C\""));
        assertThat(printed.prose("FINDINGS"))
                .contains("Charging is permitted to 45 °C; after about ")
                .contains("at 19.2 km/h the cells are there, as is predicted from 38 °C");
        assertThat(String.join(" ", printed.lines()).replaceAll(" +", " "))
                .contains("Braking is safe for the pack until the cells are warmer than 45 °C")
                .contains("Entered together, pack and parts are conditional (the cells'")
                .doesNotContainPattern("Pack regen, each +0\\.0");
    }

    @Test
    void saysWhatIsMissing() {
        Printed printed = Printed.of(Printed.BOARD.replaceAll("case_to_air.*\n", ""));
        assertThat(printed.sheet().heat().known()).isEmpty();
        assertThat(printed.prose(HEADING))
                .contains("not computed: the motor's thermal figures are not given");
    }

    @Test
    void doesNotTellTheHeatOfACruiseThatIsNotReached() {
        Printed printed =
                Printed.of(
                        Printed.BOARD.replace(
                                "motor_drive_current = \"48 A\"", "motor_drive_current = \"3 A\""));
        assertThat(printed.prose(HEADING))
                .contains("not computed: the settings do not reach the cruise speed, 19.2 km/h")
                .contains("3.0 A may flow for any time");
    }
}

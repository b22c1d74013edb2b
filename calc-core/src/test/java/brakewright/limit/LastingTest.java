package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Relaxation;
import org.junit.jupiter.api.Test;

/** What the resistance of a cell is told to take on when a current lasts; a pulse is 10 s. */
class LastingTest {

    private static final Build BOARD = Builds.trailBoard();
    private static final BatteryModel MODEL = new BatteryModel(BOARD.battery());
    private static final Cell CELL = Builds.pack(BOARD).cell();

    @Test
    void nothingIsToldOfAPulse() {
        Lasting pulse = lasting(10.0, BrakingTime.Reason.HARD_BRAKE);
        assertThat(pulse.seconds()).isEqualTo(10.0);
        assertThat(pulse.rises(CELL)).isFalse();
        assertThat(pulse.formula(CELL)).isEmpty();
        assertThat(pulse.source(CELL)).isEmpty();
        assertThat(pulse.terms(new Steps(), CELL, 0.9)).isEmpty();
    }

    @Test
    void nothingIsToldOfACellThatDoesNotRise() {
        Cell steady = Builds.relaxing(CELL, new Relaxation(0.0, 60.0));
        Lasting long60 = lasting(60.0, BrakingTime.Reason.HARD_BRAKE);
        assertThat(long60.rises(steady)).isFalse();
        assertThat(long60.source(steady)).isEmpty();
        assertThat(long60.rises(CELL)).isTrue();
    }

    @Test
    void aHardBrakeLastsAsLongAsItIsGiven() {
        Steps steps = new Steps();
        Lasting hard = lasting(20.0, BrakingTime.Reason.HARD_BRAKE);
        assertThat(hard.formula(CELL)).contains("exp");
        assertThat(hard.source(CELL)).contains("Plett");
        assertThat(hard.terms(steps, CELL, 0.9))
                .extracting(Term::value)
                .containsExactly(0.9, 20.0, 60.0);
        assertThat(steps.all()).isEmpty();
    }

    /** Which of both it is, decides the formula; the number is the braking time itself. */
    @Test
    void aStopAndASlopeAreWorkedOutByTheirOwnFormula() {
        assertThat(duration(BrakingTime.Reason.STOP).derivation().formula())
                .startsWith("½·m·(1 + j)·v²");
        assertThat(duration(BrakingTime.Reason.STOP).result().meaning()).startsWith("a stop");
        assertThat(duration(BrakingTime.Reason.SLOPE).derivation().formula()).startsWith("L_s·m·g");
        assertThat(duration(BrakingTime.Reason.SLOPE).result().meaning()).startsWith("the slope");
    }

    @Test
    void whatNeverEndsTakesOnAllOfTheRise() {
        Lasting endless = Lasting.endless(BOARD, MODEL);
        assertThat(endless.formula(CELL)).isEqualTo("·(1 + x_r)");
        assertThat(endless.terms(new Steps(), CELL, 0.9)).hasSize(1);
    }

    /** Of the same pack that holds the controllers' voltage down. */
    @Test
    void theResistanceIsToldByHowLongTheCurrentLasts() {
        assertThat(resistanceTo(lasting(10.0, BrakingTime.Reason.HARD_BRAKE)))
                .isEqualTo("resistance, 10 s pulse");
        assertThat(resistanceTo(lasting(10.1, BrakingTime.Reason.HARD_BRAKE)))
                .isEqualTo("resistance, lasting braking");
    }

    private static String resistanceTo(Lasting lasting) {
        return new ControllerVoltage(BOARD.battery(), MODEL, 60.0, 0.1, lasting)
                .at(0.5, 25.0).steps().stream()
                        .map(each -> each.result().meaning())
                        .filter(each -> each.startsWith("resistance, "))
                        .findFirst()
                        .orElseThrow();
    }

    /** Worksheets carry these names, which are never changed. */
    @Test
    void reasonsKeepTheirNames() {
        assertThat(BrakingTime.Reason.values())
                .extracting(BrakingTime.Reason::key)
                .containsExactly("hard-brake", "stop", "slope");
    }

    private static Step duration(BrakingTime.Reason reason) {
        Steps steps = new Steps();
        assertThat(lasting(33.0, reason).terms(steps, CELL, 0.9))
                .extracting(Term::value)
                .containsExactly(0.9, 33.0, 60.0);
        return steps.all().stream()
                .filter(each -> each.result().symbol().equals("t_b"))
                .findFirst()
                .orElseThrow();
    }

    private static Lasting lasting(double seconds, BrakingTime.Reason reason) {
        return new Lasting(BOARD, MODEL, 5.0, new BrakingTime(seconds, reason));
    }
}

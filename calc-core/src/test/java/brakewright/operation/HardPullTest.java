package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.Effort;
import brakewright.spec.Onset;
import brakewright.spec.Protection;
import brakewright.spec.Relaxation;
import brakewright.spec.RoundFigures;
import brakewright.spec.Taper;
import brakewright.spec.Use;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** 10 A of a hard pull out of ten cells of 0.05 Ω, which have 3.55 V at rest; hand-worked. */
@Tag("law")
class HardPullTest {

    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
    private static final double CHARGE = 0.55;

    /** 60 % at once; half of the rest, which takes 10 s, after {@code 10 s·lb(4/3)}. */
    private static final Onset RISING = new Onset(0.6, 10.0 / Math.log(2.0));

    /** 0.4 V to 3.15 V are 80 % of what 10 A make of the whole resistance. */
    private static final double PASSED = 10.0 * Math.log(4.0 / 3.0) / Math.log(2.0);

    /** 9 ms and 38 ms are typical. */
    @Test
    void anUndervoltageTripOpensOnceEnoughOfTheResistanceIsThereAndItsDelayIsOver() {
        HardPull.Opened typical = opened(10.0, undervoltage(3.15, UNKNOWN)).orElseThrow();
        assertThat(typical.opening()).isEqualTo(HardPull.Opening.UNDERVOLTAGE_TRIP);
        assertThat(typical.multiple()).isCloseTo(0.8, within(1e-9));
        assertThat(typical.passedAfter()).isCloseTo(PASSED, within(1e-8));
        assertThat(typical.after()).isCloseTo(PASSED + 0.038, within(1e-8));
        assertThat(typical.isDelayTypical()).isTrue();
        HardPull.Opened told = opened(10.0, undervoltage(3.15, of(2.0))).orElseThrow();
        assertThat(told.after()).isCloseTo(PASSED + 2.0, within(1e-8));
        assertThat(told.isDelayTypical()).isFalse();
    }

    @Test
    void atTheOhmicShareItIsPassedInTheFirstInstant() {
        assertThat(opened(10.0, undervoltage(3.26, UNKNOWN)).orElseThrow().passedAfter()).isZero();
    }

    /** A trip that waits until the pull is over, or until it has been passed too late. */
    @Test
    void aPullThatEndsBeforeATripHasWaitedLeavesItClosed() {
        assertThat(opened(PASSED + 0.9, undervoltage(3.15, of(1.0)))).isEmpty();
        assertThat(opened(PASSED + 1.1, undervoltage(3.15, of(1.0)))).isPresent();
        assertThat(opened(1.0, undervoltage(3.5, of(1.1)))).isEmpty();
        assertThat(nearest(PASSED + 0.9, undervoltage(3.15, of(1.0)))).isGreaterThan(3.15);
        assertThat(nearest(PASSED + 1.1, undervoltage(3.15, of(1.0)))).isLessThan(3.15);
        assertThat(nearest(1.0, undervoltage(3.5, of(1.1)))).isInfinite();
    }

    /**
     * 0.75 V are half as much again, and half of a rise by as much again is there after 60 s·ln 2.
     */
    @Test
    void aLongPullMeetsWhatAPulseDoesNot() {
        HardPull.Opened opened = opened(200.0, undervoltage(2.8, UNKNOWN)).orElseThrow();
        assertThat(opened.multiple()).isCloseTo(1.5, within(1e-9));
        assertThat(opened.passedAfter()).isCloseTo(10.0 + 60.0 * Math.log(2.0), within(1e-7));
        assertThat(opened(30.0, undervoltage(2.8, UNKNOWN))).isEmpty();
    }

    /** A current is beyond its trip at once; what waits less long, opens. */
    @Test
    void whatIsOverFirstOpens() {
        HardPull.Opened current = opened(10.0, both(UNKNOWN)).orElseThrow();
        assertThat(current.opening()).isEqualTo(HardPull.Opening.DISCHARGE_TRIP);
        assertThat(current.after()).isEqualTo(9e-3);
        assertThat(current.current()).isCloseTo(10.0, within(1e-9));
        HardPull.Opened voltage = opened(10.0, both(of(6.0))).orElseThrow();
        assertThat(voltage.opening()).isEqualTo(HardPull.Opening.UNDERVOLTAGE_TRIP);
    }

    /** 10 A at 32.5 V and 25 W of lights, at once behind 0.3 Ω: {@code 35.5·I − 0.3·I² = 350}. */
    @Test
    void lightsAndElectronicsPullToo() {
        Protection trip =
                both(UNKNOWN).withDischargeTrip(of(10.5)).withCellUndervoltageTrip(UNKNOWN);
        assertThat(opened(10.0, trip)).isEmpty();
        Build dark = pulling(10.0, trip);
        Use use = dark.use();
        Build lit = dark.withUse(use.withRiding(use.riding().withIdlePower(25.0)));
        HardPull.Opened opened = pull(lit).opensFirst(CHARGE).orElseThrow();
        assertThat(opened.opening()).isEqualTo(HardPull.Opening.DISCHARGE_TRIP);
        assertThat(opened.passedAfter()).isZero();
        assertThat(opened.packCurrent())
                .isCloseTo((35.5 - Math.sqrt(35.5 * 35.5 - 420.0)) / 0.6, within(1e-9));
    }

    /** Nothing is left of the draw where a taper has ended: that is no pull, whatever is lit. */
    @Test
    void lightsAloneAreNoPull() {
        Protection trip = undervoltage(3.6, UNKNOWN);
        Build dark = pulling(10.0, trip);
        Use use = dark.use();
        Build lit =
                dark.withUse(use.withRiding(use.riding().withIdlePower(25.0)))
                        .withSettings(
                                dark.settings()
                                        .withLowVoltageTaper(Optional.of(new Taper(46.0, 36.0))));
        assertThat(pull(lit).opensFirst(CHARGE)).isEmpty();
        assertThat(pull(lit).nearestToTrip(CHARGE).cell()).isInfinite();
    }

    /** Below 0.45 the trip at 3.15 V is passed at once: at the fullest of those it is told. */
    @Test
    void ofAllChargesThatIsToldAtWhichItIsSoonest() {
        Build build = pulling(10.0, undervoltage(3.15, UNKNOWN));
        HardPull.Opened soonest = pull(build).opensFirst().orElseThrow();
        assertThat(soonest.passedAfter()).isZero();
        assertThat(soonest.charge()).isLessThanOrEqualTo(0.45);
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    private static Protection undervoltage(double trip, OptionalDouble delay) {
        return new Protection(
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                of(trip),
                Protection.Path.BOTH,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                delay);
    }

    private static Protection both(OptionalDouble dischargeDelay) {
        return new Protection(
                of(9.9),
                UNKNOWN,
                UNKNOWN,
                of(3.15),
                Protection.Path.BOTH,
                UNKNOWN,
                UNKNOWN,
                dischargeDelay,
                UNKNOWN);
    }

    private static Optional<HardPull.Opened> opened(double lasts, Protection protection) {
        return pull(pulling(lasts, protection)).opensFirst(CHARGE);
    }

    private static double nearest(double lasts, Protection protection) {
        return pull(pulling(lasts, protection)).nearestToTrip(CHARGE).cell();
    }

    private static Build pulling(double lasts, Protection protection) {
        Cell cell =
                Builds.relaxing(
                        RoundFigures.CELL, new Relaxation(1.0, 60.0, Curve.constant(1.0), RISING));
        Build build =
                RoundFigures.fed(cell, protection)
                        .withSettings(RoundFigures.set(30.0, 0.0, 10.0, 10.0));
        return build.withUse(build.use().withEffort(new Effort(lasts, 10.0, 1.0, 0.0)));
    }

    private static HardPull pull(Build build) {
        Limits limits = Limits.of(build);
        return new HardPull(build, limits, Operation.of(build, limits).trusted(limits), 25.0);
    }
}

package brakewright.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.AnyBuild;
import brakewright.spec.Axles;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.DrivenAxle;
import brakewright.spec.Rider;
import brakewright.spec.Stance;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class RoadProperties {

    private static final double ROUNDING = 1e-12;

    /** Just sliding, an axle carries the braking force over its grip; both together the weight. */
    @Property
    void theLoadsOfBothAxlesAddUpWhenBraking(
            @ForAll Axles axles,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip) {
        double multiple = on(axles, DrivenAxle.REAR).brakingGrip(grip);
        double rearLoad = multiple / grip;
        double frontGrip = multiple / (1.0 - rearLoad);
        assertThat(on(axles, DrivenAxle.FRONT).brakingGrip(frontGrip))
                .isCloseTo(multiple, within(1e-9 * multiple));
    }

    @Property
    void theLoadsOfBothAxlesAddUpWhenDriving(
            @ForAll Axles axles,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip) {
        double multiple = on(axles, DrivenAxle.FRONT).drivingGrip(grip);
        double frontLoad = multiple / grip;
        double rearGrip = multiple / (1.0 - frontLoad);
        assertThat(on(axles, DrivenAxle.REAR).drivingGrip(rearGrip))
                .isCloseTo(multiple, within(1e-9 * multiple));
    }

    /** Uphill the coefficient adds to the slope, downhill it takes from it. */
    @Property
    void onTheSlopeHeldTheForceIsUsedUp(
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.5) double multiple,
            @ForAll @Scale(6) @DoubleRange(min = -1.2, max = 1.2) double coefficient,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 100.0) double any) {
        double held = Slope.held(multiple, coefficient);
        if (Double.isInfinite(held)) {
            assertThat((any + coefficient) / Math.hypot(1.0, any))
                    .isLessThanOrEqualTo(multiple + ROUNDING);
        } else {
            assertThat((held + coefficient) / Math.hypot(1.0, held))
                    .isCloseTo(multiple, within(ROUNDING));
        }
    }

    @Property
    void drivingIsBrakingSeenFromBehind(
            @ForAll Axles axles,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip) {
        Axles turned =
                axles.withMassCentreFromFront(axles.wheelbase() - axles.massCentreFromFront())
                        .withDriven(
                                switch (axles.driven()) {
                                    case FRONT -> DrivenAxle.REAR;
                                    case REAR -> DrivenAxle.FRONT;
                                    case BOTH -> DrivenAxle.BOTH;
                                });
        double expected = new LoadTransfer(axles).brakingGrip(grip);
        Assume.that(Double.isFinite(expected));
        assertThat(new LoadTransfer(turned).drivingGrip(grip))
                .isCloseTo(expected, within(1e-9 * expected));
        assertThat(new LoadTransfer(turned).drivingTip())
                .isCloseTo(new LoadTransfer(axles).brakingTip(), within(1e-9));
    }

    @Property
    void noAxleBrakesHarderThanItsGripUnlessItIsLoaded(
            @ForAll Axles axles,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip) {
        assertThat(on(axles, DrivenAxle.BOTH).brakingGrip(grip)).isEqualTo(grip);
        assertThat(on(axles, DrivenAxle.REAR).brakingGrip(grip)).isLessThan(grip);
    }

    @Property
    void betterGripNeverBrakesLess(
            @ForAll Axles axles,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double other) {
        LoadTransfer transfer = new LoadTransfer(axles);
        assertThat(transfer.brakingGrip(Math.max(one, other)))
                .isGreaterThanOrEqualTo(transfer.brakingGrip(Math.min(one, other)));
        assertThat(transfer.drivingGrip(Math.max(one, other)))
                .isGreaterThanOrEqualTo(transfer.drivingGrip(Math.min(one, other)));
    }

    /** The loads of both axles, and what friction and electric brake ask of the driven one. */
    @Property
    void besideAFrictionBrakeTheDrivenWheelsJustSlide(
            @ForAll Axles axles,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double part) {
        double friction = part * grip;
        double own = new LoadTransfer(axles).brakingGripBeside(grip, friction);
        double rear =
                (axles.massCentreFromFront() - (friction + own) * axles.massCentreHeight())
                        / axles.wheelbase();
        Assume.that(rear >= 0.0);
        double driven =
                switch (axles.driven()) {
                    case REAR -> rear;
                    case FRONT -> 1.0 - rear;
                    case BOTH -> 1.0;
                };
        assertThat(friction * driven + own).isCloseTo(grip * driven, within(ROUNDING));
    }

    @Property
    void bothBrakesTogetherNeverExceedTheGrip(
            @ForAll Axles axles,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 3.0) double friction) {
        double own = new LoadTransfer(axles).brakingGripBeside(grip, friction);
        assertThat(own).isBetween(0.0, Math.max(0.0, grip - friction) + ROUNDING);
        if (friction >= grip) {
            assertThat(own).isZero();
        }
    }

    @Property
    void withoutFrictionBrakeTheDrivenWheelsHaveTheWholeGrip(
            @ForAll Axles axles,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip) {
        LoadTransfer transfer = new LoadTransfer(axles);
        assertThat(transfer.brakingGripBeside(grip, 0.0))
                .isEqualTo(Math.min(grip, transfer.brakingGrip(grip)));
    }

    /** L = 1.35 m, h = 0.62 m, b = 0.80 m, μ = 0.4, friction brake 2 m/s²; worked on paper. */
    @Example
    void aWetStopWithBothBrakesIsAsWorkedByHand() {
        Axles trike = new Axles(1.35, 0.62, 0.80, DrivenAxle.REAR);
        double friction = 2.0 / 9.80665;
        assertThat(on(trike, DrivenAxle.REAR).brakingGripBeside(0.4, friction))
                .isCloseTo(0.08974, within(0.000005));
        assertThat(on(trike, DrivenAxle.FRONT).brakingGripBeside(0.4, friction))
                .isCloseTo(0.10796, within(0.000005));
        assertThat(on(trike, DrivenAxle.BOTH).brakingGripBeside(0.4, friction))
                .isCloseTo(0.19606, within(0.000005));
        assertThat(on(trike, DrivenAxle.REAR).evenBrakingGrip(0.7))
                .isCloseTo(0.50496, within(0.000005));
    }

    /** With half of the force on each axle, the first to slide carries that over the grip. */
    @Property
    void evenlyBrakedTheLighterAxleSlidesFirst(
            @ForAll Axles axles,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 1.2) double grip) {
        LoadTransfer transfer = new LoadTransfer(axles);
        double multiple = transfer.evenBrakingGrip(grip);
        double rear =
                (axles.massCentreFromFront() - multiple * axles.massCentreHeight())
                        / axles.wheelbase();
        assertThat(grip * Math.min(rear, 1.0 - rear)).isCloseTo(multiple / 2.0, within(ROUNDING));
        assertThat(multiple).isLessThanOrEqualTo(grip * (1.0 + ROUNDING));
    }

    @Example
    void evenlyLoadedAxlesSlideTogether() {
        double grip = 0.5;
        Axles even = new Axles(1.0, 0.6, 0.5 + grip * 0.6, DrivenAxle.BOTH);
        LoadTransfer transfer = new LoadTransfer(even);
        assertThat(transfer.evenBrakingGrip(grip)).isCloseTo(grip, within(ROUNDING));
        assertThat(transfer.brakingGrip(grip)).isEqualTo(grip);
    }

    @Property
    void fasterNeverMeetsLessResistance(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = -0.3, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = -10.0, max = 10.0) double headwind,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 25.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 25.0) double other) {
        RoadLoad load = RoadLoad.of(build);
        double slower = load.force(Math.min(one, other), slope, headwind);
        double faster = load.force(Math.max(one, other), slope, headwind);
        assertThat(faster).isGreaterThanOrEqualTo(slower - ROUNDING * 1e4);
    }

    @Property
    void aTailWindAsFastAsTheVehicleLeavesRollingAndSlope(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = -0.3, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 25.0) double speed) {
        RoadLoad load = RoadLoad.of(build);
        double angle = Math.atan(slope);
        double expected =
                build.mass()
                        * 9.80665
                        * (build.vehicle().rollingResistance() * Math.cos(angle) + Math.sin(angle));
        assertThat(load.force(speed, slope, -speed)).isCloseTo(expected, within(1e-9));
    }

    @Property
    void airThinsWithHeightAndWarmth(
            @ForAll @Scale(6) @DoubleRange(min = -500.0, max = 8000.0) double altitude,
            @ForAll @Scale(6) @DoubleRange(min = -60.0, max = 60.0) double temperatureC,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 10.0) double more) {
        double density = StandardAtmosphere.density(altitude, temperatureC);
        assertThat(StandardAtmosphere.density(altitude + more, temperatureC)).isLessThan(density);
        assertThat(StandardAtmosphere.density(altitude, temperatureC + more)).isLessThan(density);
    }

    @Example
    void airOutsideItsRangeIsRejected() {
        assertThatThrownBy(() -> StandardAtmosphere.density(9500.0, 0.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContainingAll("altitude", "m", "-500.0", "9000.0", "9500.0");
        assertThatThrownBy(() -> StandardAtmosphere.density(Double.NaN, 0.0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StandardAtmosphere.density(0.0, 90.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContainingAll("air temperature", "°C", "-60.0", "70.0", "90.0");
        assertThatThrownBy(() -> StandardAtmosphere.temperatureC(-501.0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Example
    void onlyAStandingRiderTips() {
        Rider standing = Builds.trailBoard().rider();
        Rider seated = new Rider(80.0, Stance.SEATED, 0.4, 0.2);
        assertThat(RiderBalance.tip(standing)).isCloseTo(0.3 / 0.95, within(ROUNDING));
        assertThat(RiderBalance.tip(seated)).isInfinite();
    }

    private static LoadTransfer on(Axles axles, DrivenAxle driven) {
        return new LoadTransfer(axles.withDriven(driven));
    }
}

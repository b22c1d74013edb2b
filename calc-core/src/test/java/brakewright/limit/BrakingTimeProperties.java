package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Effort;
import brakewright.spec.Use;
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
class BrakingTimeProperties {

    @Property
    void whatLastsLongerIsNeverPermittedMore(
            @ForAll Build build,
            @ForAll @Scale(3) @DoubleRange(min = 1.0, max = 600.0) double brake,
            @ForAll @Scale(1) @DoubleRange(min = 0.0, max = 3000.0) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Build longer = lasting(build, brake, slope);
        double cells = build.battery().temperatureC();
        Limits limits = Limits.of(lasting(build, 0.5 * brake, 0.5 * slope));
        Limits less = Limits.of(longer);
        assertThat(less.brakingTime().seconds())
                .isGreaterThanOrEqualTo(limits.brakingTime().seconds() * (1.0 - 1e-12));
        assertThat(less.packRegen().valueAt(charge, cells))
                .isLessThanOrEqualTo(limits.packRegen().valueAt(charge, cells) * (1.0 + 1e-12));
    }

    /** No energy comes back that neither the motion nor the slope had, beyond hard braking. */
    @Property
    void noMoreComesBackThanThereWas(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 300.0) double current) {
        BatteryModel model = new BatteryModel(build.battery());
        BrakingTime time = BrakingTime.of(build, model, current);
        double back = time.seconds() * current * model.openCircuitVoltage(build.use().chargeTo());
        double top = build.highestSpeed();
        double moving = 0.5 * build.inertia() * top * top;
        double falling =
                build.mass()
                        * 9.80665
                        * build.use().slopeLength()
                        * Math.sin(Math.atan(build.use().slope()));
        if (time.reason() != BrakingTime.Reason.HARD_BRAKE) {
            assertThat(back).isLessThanOrEqualTo(Math.max(moving, falling) * (1.0 + 1e-9));
        }
        assertThat(time.seconds()).isGreaterThanOrEqualTo(build.use().effort().hardBrake());
    }

    /**
     * The trail board of the tests: 94 kg with 3 % turning, from 11 m/s: 5.858 kJ; down 10 % over
     * 200 m with 2 % rolling 14.68 kJ; at 3.3 V and 12 cells in series 10 A are 396 W.
     */
    @Example
    void roundFigures() {
        Build board = lasting(Builds.trailBoard(), 5.0, 200.0);
        Use use = board.use();
        board =
                Builds.withUse(
                        board, use.withChargeTo(0.1).withSpeedMax(11.0).withSlope(0.1, 200.0));
        BatteryModel model = new BatteryModel(board.battery());
        assertThat(BrakingTime.of(board, model, 10.0))
                .satisfies(
                        time -> {
                            assertThat(time.reason()).isEqualTo(BrakingTime.Reason.SLOPE);
                            assertThat(time.seconds())
                                    .isCloseTo(
                                            94.0 * 9.80665 * 200.0 * 0.08 / 1.00498756 / 396.0,
                                            within(1e-6));
                        });
        assertThat(BrakingTime.of(lasting(board, 5.0, 0.0), model, 10.0).seconds())
                .isCloseTo(0.5 * 94.0 * 1.03 * 121.0 / 396.0, within(1e-9));
        assertThat(BrakingTime.of(lasting(board, 60.0, 0.0), model, 10.0))
                .isEqualTo(
                        new BrakingTime(
                                60.0,
                                BrakingTime.Reason.HARD_BRAKE,
                                60.0 * 10.0 / (3600.0 * model.capacityAh())));
        assertThat(BrakingTime.of(board, model, 0.0).seconds()).isInfinite();
        assertThat(BrakingTime.of(board, model, 0.0).charge()).isZero();
    }

    private static Build lasting(Build build, double brake, double slope) {
        Use use = build.use();
        Effort effort = use.effort();
        return Builds.withUse(
                build, use.withEffort(effort.withHardBrake(brake)).withSlope(use.slope(), slope));
    }
}

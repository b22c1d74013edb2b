package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.braking.StopOutcome;
import brakewright.limit.Limits;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Effort;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.Tag;

/** First stops on which the protection opens. */
@Tag("law")
class OpenedFirstStopProperties {

    /** A protection that opens takes the brake away for the rest of the stop. */
    @Property(tries = 300)
    void withTheProtectionOpenedItNeverStopsShorter(@ForAll("hardBraking") Build build) {
        FirstStop stop = first(build, Limits.of(build));
        assertThat(stop.opened().isPresent())
                .isEqualTo(stop.opening() != FirstStop.Opening.NOTHING);
        assertThat(stop.leftSlow()).isLessThanOrEqualTo(stop.leftDeceleration());
        Assume.that(stop.opened().isPresent());
        FirstStop.Opened opened = stop.opened().get();
        double delay = stop.opening().typicalDelay();
        assertThat(opened.after()).isBetween(delay, delay + build.use().effort().buildUp());
        StopOutcome.Stopped later = (StopOutcome.Stopped) opened.outcome();
        StopOutcome.Stopped sooner = (StopOutcome.Stopped) stop.outcome();
        assertThat(later.distance()).isGreaterThanOrEqualTo(sooner.distance() * (1.0 - 1e-6));
        if (opened.after() < 0.99 * sooner.time()) {
            assertThat(later.distance()).isGreaterThan(sooner.distance());
        }
        assertThat(later.leastDeceleration())
                .isGreaterThanOrEqualTo(stop.leftSlow() * (1.0 - 1e-6));
    }

    /** The trip is passed where the brake, as far as it has built up, sends what just passes it. */
    @Property(tries = 300)
    void theTripIsPassedAtTheShareOfTheBrakeThatSendsAsMuch(@ForAll("hardBraking") Build build) {
        Limits limits = Limits.of(build);
        FirstStop stop = first(build, limits);
        Assume.that(stop.opened().isPresent());
        double share =
                (stop.opened().get().after() - stop.opening().typicalDelay())
                        / build.use().effort().buildUp();
        Operation operation = Operation.of(build, limits);
        BatteryModel model = new BatteryModel(build.battery());
        PackState state = PackState.of(model, stop.charge(), build.battery().temperatureC());
        ElectricBrake set = operation.trusted(limits).brake();
        for (double side : new double[] {-1e-6, 1e-6}) {
            double built = share + side;
            double current =
                    new ElectricBrake(
                                    set.powertrain(),
                                    Math.max(0.0, built) * set.motorCurrent(),
                                    set.packCurrent(),
                                    set.taper())
                            .greatestReturn(operation.topSpeed(), state);
            if (built > 0.0 && built < 1.0) {
                assertThat(isPassed(build, model, stop, current)).isEqualTo(built > share);
            }
        }
    }

    /** The trail board with any brake settings, charge, build-up and charge trip. */
    @Provide
    Arbitrary<Build> hardBraking() {
        return Combinators.combine(
                        doubles(0.5, 70.0),
                        doubles(0.5, 40.0),
                        doubles(0.6, 1.0),
                        doubles(2.0, 12.0),
                        doubles(0.01, 0.5),
                        doubles(1.0, 30.0))
                .as(OpenedFirstStopProperties::braking);
    }

    private static Arbitrary<Double> doubles(double least, double most) {
        return Arbitraries.doubles()
                .between(least, most)
                .withDistribution(RandomDistribution.uniform());
    }

    private static Build braking(
            double motor,
            double regen,
            double charge,
            double speed,
            double buildUp,
            double chargeTrip) {
        Build board = Builds.trailBoard();
        Use use = board.use();
        Effort effort = use.effort();
        Build used =
                board.withUse(
                        use.withChargeFrom(charge)
                                .withSpeedMax(speed)
                                .withEffort(effort.withBuildUp(buildUp)));
        Pack old = Builds.pack(board);
        Protection trips = old.protection();
        Pack pack = old.withProtection(trips.withChargeTrip(OptionalDouble.of(chargeTrip)));
        return Builds.withPack(used, pack)
                .withSettings(
                        new Settings(
                                OptionalDouble.empty(),
                                OptionalDouble.of(motor),
                                OptionalDouble.empty(),
                                OptionalDouble.of(regen),
                                Optional.empty(),
                                Optional.empty(),
                                OptionalDouble.empty()));
    }

    private static boolean isPassed(
            Build build, BatteryModel model, FirstStop stop, double current) {
        double cellsC = build.battery().temperatureC();
        for (int place = 0; place < model.packs().size(); place++) {
            PackModel pack = model.packs().get(place);
            Protection protection = pack.pack().protection();
            double own = current * model.share(place, stop.charge(), cellsC);
            double voltage =
                    pack.highestCellVoltage(
                            own, model.chargeOf(place, stop.charge()), cellsC, Cell.PULSE);
            boolean passed =
                    stop.opening() == FirstStop.Opening.CHARGE_TRIP
                            ? own > protection.chargeTrip().orElse(Double.POSITIVE_INFINITY)
                            : voltage
                                    > protection
                                            .cellOvervoltageTrip()
                                            .orElse(Double.POSITIVE_INFINITY);
            if (passed) {
                return true;
            }
        }
        return false;
    }

    private static FirstStop first(Build build, Limits limits) {
        return FirstStop.of(
                build, limits, Operation.of(build, limits), build.battery().temperatureC());
    }
}

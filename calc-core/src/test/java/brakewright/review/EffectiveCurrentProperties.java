package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.limit.Limit;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.operation.SetBuild;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Controllers;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Motor;
import brakewright.spec.Settings;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** A vehicle told in effective phase currents, every motor current 1/√2 of its peak. */
@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class EffectiveCurrentProperties {

    /** Both ways round differently, and a search stops at 1e-9. */
    private static final double SEARCHED = 1e-7;

    @Property(tries = 200)
    void isTheSameVehicle(@ForAll Build any) {
        Build peak = in(any, CurrentBasis.PHASE_PEAK, 1.0);
        Build effective = in(any, CurrentBasis.PHASE_RMS, 1.0 / Math.sqrt(2.0));
        Limits one = Limits.of(peak);
        Limits other = Limits.of(effective);
        same(root(other.motorBrake()), one.motorBrake().value());
        same(root(other.motorDrive()), one.motorDrive().value());
        same(other.speedCap().value(), one.speedCap().value());
        double charge = 0.5 * (any.use().chargeFrom() + any.use().chargeTo());
        PackState pack =
                PackState.of(new BatteryModel(any.battery()), charge, any.battery().temperatureC());
        Operation set = Operation.of(peak, one);
        Operation told = Operation.of(effective, other);
        double speed = set.topSpeed();
        same(told.brake().greatestReturn(speed, pack), set.brake().greatestReturn(speed, pack));
        same(told.brake().packCurrent(speed, pack), set.brake().packCurrent(speed, pack));
        same(told.drive().greatestDraw(speed, pack), set.drive().greatestDraw(speed, pack));
        same(topSpeed(effective, told, pack), topSpeed(peak, set, pack));
        same(distance(effective, told, charge), distance(peak, set, charge));
        same(BrakeVerdict.of(effective).deceleration(), BrakeVerdict.of(peak).deceleration());
        assertThat(Evaluation.of(effective).severity())
                .isCloseTo(Evaluation.of(peak).severity(), within(SEARCHED));
    }

    /** Then the brake is taken at its limit, which the basis must not move. */
    @Example
    void aVehicleWhoseBrakeCurrentIsNotSetIsTheSameToo() {
        Build board = Builds.trailBoard().withSettings(Settings.NONE.withMotorDriveCurrent(48.0));
        Limits limits = Limits.of(board);
        assertThat(Operation.of(board, limits).brake().motorCurrent())
                .isEqualTo(limits.motorBrake().value());
        isTheSameVehicle(board);
    }

    private static double root(Limit effective) {
        return Math.sqrt(2.0) * effective.value();
    }

    private static double topSpeed(Build build, Operation operation, PackState pack) {
        return TopSpeed.find(operation.drive(), RoadLoad.of(build), 0.0, 0.0, pack).speed();
    }

    private static double distance(Build build, Operation operation, double charge) {
        return new Stop(build, operation.brake(), Surroundings.of(build))
                                .from(operation.topSpeed(), charge)
                        instanceof StopOutcome.Stopped stopped
                ? stopped.distance()
                : Double.NaN;
    }

    private static void same(double got, double expected) {
        if (Double.isFinite(expected)) {
            assertThat(got).isCloseTo(expected, within(SEARCHED * (1.0 + Math.abs(expected))));
        } else {
            assertThat(got).isEqualTo(expected);
        }
    }

    private static Build in(Build build, CurrentBasis basis, double share) {
        Controllers old = build.controllers();
        Motor motor = build.motor();
        Settings settings = build.settings();
        Controllers controllers =
                old.withBasis(basis).withMotorCurrentRating(share * old.motorCurrentRating());
        Motor told = motor.withCurrentRating(times(motor.currentRating(), share));
        return Builds.withMotor(Builds.withControllers(build, controllers), told)
                .withSettings(
                        new Settings(
                                times(settings.motorDriveCurrent(), share),
                                times(settings.motorBrakeCurrent(), share),
                                settings.packDischargeCurrent(),
                                settings.packRegenCurrent(),
                                settings.lowVoltageTaper(),
                                settings.highVoltageTaper(),
                                settings.speedCap()));
    }

    private static OptionalDouble times(OptionalDouble value, double share) {
        return value.isPresent()
                ? OptionalDouble.of(share * value.getAsDouble())
                : OptionalDouble.empty();
    }
}

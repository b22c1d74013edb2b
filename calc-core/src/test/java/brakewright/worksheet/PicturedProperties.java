package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.braking.StopOutcome;
import brakewright.operation.SetBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What is drawn is what tables tell. */
@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class PicturedProperties {

    /** Rounding of a current that is a difference of two [A]. */
    private static final double ROUNDING = 1e-9;

    @Property(tries = 40)
    void theMapOfTheBrakeIsThatOfItsRows(
            @ForAll Build build,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @DoubleRange(min = 0.1, max = 1.0) double share) {
        Worksheet sheet = Worksheet.of(build);
        double[] charges = {charge};
        double[] speeds = {share * sheet.inEffect().topSpeed()};
        BrakeRow row = sheet.brakeAt(charges, speeds).get(0);
        ReturnMap map = sheet.returnMap(charges, speeds);
        assertThat(map.sent()[0][0]).isEqualTo(row.current()[0]);
        assertThat(map.beyond()[0][0])
                .isCloseTo(row.current()[0] - row.mayTake(), within(ROUNDING));
        if (map.heldBack()[0][0] < -ROUNDING) {
            assertThat(row.isHeldBack()[0]).isFalse();
            assertThat(map.sent()[0][0]).isCloseTo(map.asked()[0][0], within(1e-6));
        } else if (map.heldBack()[0][0] > ROUNDING) {
            assertThat(row.isHeldBack()[0]).isTrue();
        }
    }

    /** Near a standstill braking draws, and more than the pack can give is no matter of limits. */
    @Example
    void whatThePackCannotSupplyIsNotHeldBack() {
        Build board = Builds.trailBoard();
        Build grabbing = board.withSettings(board.settings().withMotorBrakeCurrent(3000.0));
        theMapOfTheBrakeIsThatOfItsRows(grabbing, 0.37, 0.05);
    }

    /** A controller that raises the current is stopped by the limit before it would draw. */
    @Example
    void whatReturnsTooMuchOnItsWayToDrawingIsHeldBack() {
        Build board = Builds.trailBoard();
        Build grabbing = board.withSettings(board.settings().withMotorBrakeCurrent(3000.0));
        theMapOfTheBrakeIsThatOfItsRows(grabbing, 0.37, 0.9);
        Worksheet sheet = Worksheet.of(grabbing);
        double[] fast = {0.9 * sheet.inEffect().topSpeed()};
        ReturnMap map = sheet.returnMap(new double[] {0.37}, fast);
        assertThat(map.asked()[0][0]).isNegative();
        assertThat(map.heldBack()[0][0]).isPositive();
    }

    @Property(tries = 20)
    void stopsOverTheSpeedAreThoseOfTheRide(@ForAll Build build) {
        Worksheet sheet = Worksheet.of(build);
        RiddenStop ridden = sheet.riddenStops().get(0);
        double top = sheet.inEffect().topSpeed();
        StopCourse course = sheet.stopsAt(ridden.charge(), top);
        assertThat(course.outcomes().get(0)).isEqualTo(ridden.outcome());
        double wanted = course.wanted()[0];
        assertThat(2.0 * build.criteria().decelerationMin() * wanted)
                .isCloseTo(top * top, within(1e-9 * top * top));
        if (course.outcomes().get(0) instanceof StopOutcome.Stopped stopped
                && stopped.leastDeceleration() > build.criteria().decelerationMin()) {
            assertThat(stopped.distance()).isLessThan(wanted + top);
        }
    }

    /** The course is drawn on past the limit, and lies below it until then. */
    @Property(tries = 40)
    void theWindingIsAtItsLimitWhenTheSheetSaysSo(@ForAll Build build) {
        Worksheet sheet = Worksheet.of(build);
        assertThat(sheet.pullCourse().isPresent()).isEqualTo(sheet.heat().known().isPresent());
        sheet.pullCourse()
                .ifPresent(
                        course -> {
                            OptionalDouble limit =
                                    sheet.heat().known().orElseThrow().timeAtDriveSetting();
                            assertThat(course.windingC()[0])
                                    .isCloseTo(build.use().climate().ambientC(), within(ROUNDING));
                            for (int i = 0; i < course.seconds().length; i++) {
                                if (course.seconds()[i] < limit.orElse(Double.MAX_VALUE)) {
                                    assertThat(course.windingC()[i])
                                            .isLessThan(course.limitC() + 1e-6);
                                } else {
                                    assertThat(course.windingC()[i])
                                            .isGreaterThan(course.limitC() - 1e-6);
                                }
                            }
                        });
    }

    @Property(tries = 40)
    void aLevelSlopeTakesWhatTheRoadTakes(@ForAll Build build) {
        Worksheet sheet = Worksheet.of(build);
        ThrustMap map = sheet.thrustAt(new double[] {build.use().chargeFrom()}, new double[] {3.0});
        assertThat(sheet.roadTakes(0.0, 3.0)).isEqualTo(map.resistance());
        assertThat(sheet.roadTakes(0.1, 3.0)[0]).isGreaterThan(map.resistance()[0]);
    }
}

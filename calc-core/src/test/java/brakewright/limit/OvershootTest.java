package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.formula.Step;
import brakewright.spec.ArrheniusCurve;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Climate;
import brakewright.spec.Curve;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.ResistanceByCharge;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The power at which a quick protection opens, hand-worked: ten cells of 4 V and 0.1 Ω in series
 * are 40 V behind 1 Ω; charges in use are from 0.1 to full.
 */
@Tag("law")
class OvershootTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static final Curve EVEN = Curve.constant(1.0);

    /** 10 A into 40 V behind 1 Ω are 500 W, behind 2 Ω 600 W. */
    @Test
    void theLeastPowerOfAnyChargeInUseOpensAChargeTrip() {
        OptionalDouble trip = OptionalDouble.of(10.0);
        assertThat(opening(curve(2.0, 1.0, 2.0), EVEN, trip, NONE)).isCloseTo(500.0, within(1e-9));
        assertThat(opening(curve(3.0, 2.0, 1.0), EVEN, trip, NONE)).isCloseTo(500.0, within(1e-9));
        assertThat(opening(curve(1.0, 1.5, 2.0), EVEN, trip, NONE)).isCloseTo(510.0, within(1e-9));
    }

    /** Half the resistance at 40 °C, the warmest in use. */
    @Test
    void theLeastPowerOfAnyTemperatureInUseOpensAChargeTrip() {
        Curve warm = Curve.of(new double[] {25.0, 40.0}, new double[] {1.0, 0.5});
        assertThat(opening(EVEN, warm, OptionalDouble.of(10.0), NONE))
                .isCloseTo(450.0, within(1e-9));
    }

    /** 42 V behind 1.1 Ω at a charge of 0.1: 2/1.1 A, though less at full would do. */
    @Test
    void anOvervoltageTripIsTakenAtTheEmptiestPackInUse() {
        assertThat(opening(curve(1.0, 1.5, 2.0), EVEN, NONE, OptionalDouble.of(4.2)))
                .isCloseTo(42.0 * 2.0 / 1.1, within(1e-9));
    }

    /** Twice the resistance at 5 °C, the coldest in use: 2 V over 2 Ω are 1 A at 42 V. */
    @Test
    void anOvervoltageTripIsTakenAtTheTemperatureWhereItOpensSoonest() {
        Curve cold = Curve.of(new double[] {5.0, 25.0}, new double[] {2.0, 1.0});
        assertThat(opening(EVEN, cold, NONE, OptionalDouble.of(4.2))).isCloseTo(42.0, within(1e-9));
    }

    /** 10 A need 500 W, 1 A only 41 W, and 42 V behind 1 Ω 84 W. */
    @Test
    void theTripThatOpensSoonerBounds() {
        OptionalDouble overvoltage = OptionalDouble.of(4.2);
        assertThat(opening(EVEN, EVEN, OptionalDouble.of(10.0), overvoltage))
                .isCloseTo(84.0, within(1e-9));
        assertThat(opening(EVEN, EVEN, OptionalDouble.of(1.0), overvoltage))
                .isCloseTo(41.0, within(1e-9));
    }

    private static Curve curve(double empty, double half, double full) {
        return Curve.of(new double[] {0.0, 0.5, 1.0}, new double[] {empty, half, full});
    }

    private static double opening(
            Curve byCharge,
            Curve byTemperature,
            OptionalDouble chargeTrip,
            OptionalDouble overvoltageTrip) {
        Build board = board(byCharge, byTemperature, chargeTrip, overvoltageTrip);
        List<Constraint> bounds =
                Limits.of(board).motorBrake().constraints().stream()
                        .filter(each -> each.id() == ConstraintId.REGEN_OVERSHOOT)
                        .toList();
        assertThat(bounds).hasSize(1);
        return bounds.get(0).steps().stream()
                .map(Step::result)
                .filter(each -> each.symbol().equals("P_t"))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static Build board(
            Curve byCharge,
            Curve byTemperature,
            OptionalDouble chargeTrip,
            OptionalDouble overvoltageTrip) {
        Cell flat = Builds.flatCell(4.0, 0.1, 3.0, 4.1);
        Cell cell =
                flat.withResistanceByCharge(ResistanceByCharge.alike(byCharge))
                        .withResistanceByTemperature(ArrheniusCurve.through(byTemperature));
        Pack pack =
                Builds.barePack(cell, 10, 1, 0.0)
                        .withProtection(new Protection(NONE, chargeTrip, overvoltageTrip, NONE));
        Build board = Builds.withMargins(Builds.trailBoard(), Builds.NO_MARGINS);
        return Builds.withLateLimiter(
                Builds.withPack(board, pack)
                        .withUse(board.use().withClimate(new Climate(20.0, 5.0, 40.0, 0.0, 20.0))),
                0.1,
                0.01);
    }
}

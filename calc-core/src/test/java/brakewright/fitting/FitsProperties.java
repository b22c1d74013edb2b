package brakewright.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import brakewright.recording.Repairs;
import brakewright.recording.Ride;
import brakewright.replay.Leg;
import brakewright.replay.RecordedRoute;
import brakewright.replay.Route;
import brakewright.replay.RouteRide;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;

/** Rides that the model made, so that the truth is known. */
@Tag("law")
class FitsProperties {

    private static final Route TOWN =
            new Route(
                    List.of(
                            new Leg(900.0, 0.0, 8.0, 10.0),
                            new Leg(700.0, 0.0, 3.0, 6.0),
                            new Leg(600.0, 0.0, 5.5, 0.0),
                            new Leg(900.0, 0.0, 8.5, 8.0),
                            new Leg(500.0, 0.0, 2.5, 0.0),
                            new Leg(900.0, 0.0, 7.0, 5.0)));

    private static final List<Fitted> ROAD = List.of(Fitted.ROLLING_RESISTANCE, Fitted.DRAG_AREA);

    /**
     * Whoever describes the vehicle wrongly is told how it really rolls. The doubt holds in 95 of
     * 100 cases, twice as much in 9,999 of 10,000.
     */
    @Property(tries = 5)
    void rollingAndDragAreFoundWithinTheirDoubt(
            @ForAll @DoubleRange(min = 0.7, max = 1.4) double rolling,
            @ForAll @DoubleRange(min = 0.7, max = 1.4) double area,
            @ForAll long seed) {
        Build described = Builds.trailBoard();
        Build real =
                described.withVehicle(
                        described
                                .vehicle()
                                .withRollingResistance(
                                        rolling * described.vehicle().rollingResistance())
                                .withDragArea(area * described.vehicle().dragArea()));
        Fits fits = Fits.of(described, ridden(real, seed));
        Fit.Found roll = found(fits, Fitted.ROLLING_RESISTANCE);
        Fit.Found drag = found(fits, Fitted.DRAG_AREA);

        assertThat(roll.value())
                .isCloseTo(real.vehicle().rollingResistance(), within(2.0 * roll.doubt()));
        assertThat(drag.value()).isCloseTo(real.vehicle().dragArea(), within(2.0 * drag.doubt()));
    }

    @Example
    void whatElectronicsDrawIsFoundWhereItStood() {
        Build build = Builds.trailBoard();
        Fit.Found idle = found(Fits.of(build, ridden(build, 1L)), Fitted.IDLE_POWER);

        assertThat(idle.value()).isCloseTo(build.use().riding().idlePower(), within(idle.doubt()));
        assertThat(idle.events()).isEqualTo(4);
    }

    /** One ride whose noise is drawn once. */
    @Example
    void allThatOneRideTellsIsTrueWithinItsDoubt() {
        Build build = Builds.trailBoard();
        Fits fits = Fits.of(build, ridden(build, 7L));

        assertThat(found(fits, Fitted.ROLLING_RESISTANCE))
                .satisfies(fit -> isWithin(fit, build.vehicle().rollingResistance()));
        assertThat(found(fits, Fitted.DRAG_AREA))
                .satisfies(fit -> isWithin(fit, build.vehicle().dragArea()));
        assertThat(found(fits, Fitted.CAPACITY))
                .satisfies(
                        fit ->
                                isWithin(
                                        fit,
                                        build.battery().packs().get(0).parallel()
                                                * build.battery()
                                                        .packs()
                                                        .get(0)
                                                        .cell()
                                                        .capacityAh()));
    }

    private static void isWithin(Fit.Found fit, double truth) {
        assertThat(fit.value()).as(fit.what().key()).isCloseTo(truth, within(fit.doubt()));
    }

    @Example
    void aRecordingWithoutVoltageTellsNothingOfRoadAndPack() {
        Build build = Builds.trailBoard();
        Recording whole = RecordedRoute.recording(RouteRide.of(build, TOWN), 0.5);
        Piece piece = whole.pieces().get(0);
        double[] none = new double[piece.rows()];
        Arrays.fill(none, Double.NaN);
        Recording without =
                new Recording(List.of(piece.with(Quantity.PACK_VOLTAGE, none)), List.of(), 5.0);
        Ride ride = Ride.of(without, 3.0, 0.0, new Repairs()).orElseThrow();

        assertThat(Fits.of(build, ride).all())
                .filteredOn(
                        fit ->
                                ROAD.contains(fit.what())
                                        || fit.what() == Fitted.PULL_RESISTANCE
                                        || fit.what() == Fitted.IDLE_POWER)
                .hasSize(4)
                .allMatch(Fit.Refused.class::isInstance);
    }

    /** A tenth of a per cent is the step in which the charge is shown. */
    @Example
    void theCapacityIsFoundFromTheShownCharge() {
        Build build = Builds.trailBoard();
        Recording whole = RecordedRoute.recording(RouteRide.of(build, TOWN), 0.5);
        Piece piece = whole.pieces().get(0);
        double[] charge = piece.column(Quantity.CHARGE);
        for (int row = 0; row < charge.length; row++) {
            charge[row] = Math.ceil(1000.0 * charge[row]) / 1000.0;
        }
        Recording shown =
                new Recording(List.of(piece.with(Quantity.CHARGE, charge)), List.of(), 5.0);
        Ride ride = Ride.of(shown, 3.0, 0.0, new Repairs()).orElseThrow();
        Fit.Found capacity = found(Fits.of(build, ride), Fitted.CAPACITY);

        double real =
                build.battery().packs().get(0).parallel()
                        * build.battery().packs().get(0).cell().capacityAh();
        assertThat(capacity.value()).isCloseTo(real, within(capacity.doubt()));
        assertThat(capacity.doubt()).isLessThan(0.05 * real);
    }

    /** Noise: 0.05 m/s on the speed, 0.2 A on the current, 0.05 V on the voltage. */
    private static Ride ridden(Build build, long seed) {
        Recording clean = RecordedRoute.recording(RouteRide.of(build, TOWN), 0.2);
        Random random = new Random(seed);
        Piece piece = clean.pieces().get(0);
        piece = noisy(piece, Quantity.PACK_CURRENT, 0.2, random);
        piece = noisy(piece, Quantity.PACK_VOLTAGE, 0.05, random);
        double[] speeds = piece.column(Quantity.WHEEL_SPEED);
        for (int row = 0; row < speeds.length; row++) {
            speeds[row] += speeds[row] > 0.5 ? 0.05 * random.nextGaussian() : 0.0;
        }
        return Ride.of(
                        new Recording(
                                List.of(piece.with(Quantity.WHEEL_SPEED, speeds)), List.of(), 5.0),
                        3.0,
                        0.0,
                        new Repairs())
                .orElseThrow();
    }

    private static Piece noisy(Piece piece, Quantity quantity, double scatter, Random random) {
        double[] values = piece.column(quantity);
        for (int row = 0; row < values.length; row++) {
            values[row] += scatter * random.nextGaussian();
        }
        return piece.with(quantity, values);
    }

    private static Fit.Found found(Fits fits, Fitted what) {
        return fits.all().stream()
                .filter(fit -> fit.what() == what)
                .map(
                        fit -> {
                            assertThat(fit).isInstanceOf(Fit.Found.class);
                            return (Fit.Found) fit;
                        })
                .findFirst()
                .orElseThrow();
    }
}

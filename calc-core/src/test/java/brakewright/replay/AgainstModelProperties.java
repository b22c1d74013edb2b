package brakewright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.AnyDriven;
import brakewright.profile.Uncertain;
import brakewright.recording.Ride;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Input;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyDriven.class)
@Domain(DomainContext.Global.class)
class AgainstModelProperties {

    private static final Route TOWN =
            new Route(
                    List.of(
                            new Leg(400.0, 0.0, 8.0, 10.0),
                            new Leg(500.0, 0.0, 6.0, 0.0),
                            new Leg(300.0, 0.0, 8.0, 5.0)));

    /** The current of a step is settled to a millionth of an ampere, its speed to that share. */
    private static final double SETTLED = 1e-4;

    /** Assumption: our own choice; a ride along a route is itself off by up to a fifth of one. */
    private static final double HALF_A_PER_CENT = 0.005;

    /** What drives a route and what drives a recording are one. */
    @Property(tries = 50)
    void aStepTakesTheSameWhetherPredictedOrTold(
            @ForAll Build build,
            @ForAll @DoubleRange(min = 0.5, max = 12.0) double speed,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double slope,
            @ForAll @DoubleRange(min = 0.5, max = 20.0) double length,
            @ForAll @DoubleRange(min = 0.7, max = 1.3) double target) {
        Motion motion = new Motion(build, new PackUnderway(build));
        Forces forces = new Forces(build, Operation.of(build, Limits.of(build)), slope);
        Underway rested =
                Underway.rested(build.use().chargeFrom(), build.battery().temperatureC(), 20.0);
        Underway from =
                new Underway(
                        0.0,
                        0.0,
                        speed,
                        rested.charge(),
                        0.0,
                        0.0,
                        rested.cellsC(),
                        rested.windingC(),
                        rested.caseC());
        Step free = motion.over(from, length, target * speed, forces);
        Assume.that(free.isSettled() && !free.flow().isFull());
        Step told = motion.told(from, free.seconds(), length, free.end().speed(), forces);

        assertThat(told.flow().packCurrent())
                .isCloseTo(
                        free.flow().packCurrent(),
                        within(SETTLED * Math.max(1.0, Math.abs(free.flow().packCurrent()))));
        assertThat(told.end().charge()).isCloseTo(free.end().charge(), within(SETTLED));
    }

    /**
     * A second's mean speed and force stand for what changes within it, and rows a tenth of a
     * second apart miss what was switched between them.
     */
    @Example
    void aRideMadeByTheModelIsFoundAgain() {
        for (Build build : List.of(Builds.trailBoard(), Builds.parcelTrike(), Builds.dockCart())) {
            AgainstModel found =
                    AgainstModel.of(build, RecordedRoute.of(RouteRide.of(build, TOWN), 0.1))
                            .orElseThrow();
            for (Figure figure :
                    List.of(Figure.ENERGY_OUT, Figure.CHARGE_OUT, Figure.LOWEST_VOLTAGE)) {
                Compared own = compared(found, figure);
                assertThat(own.difference().orElseThrow())
                        .as("%s", figure)
                        .isCloseTo(0.0, within(HALF_A_PER_CENT * own.predicted()));
            }
        }
    }

    /** The course that is drawn is the one of which the mean square is told. */
    @Example
    void theCourseIsOffByWhatIsTold() {
        AgainstModel found =
                AgainstModel.of(
                                Builds.trailBoard(),
                                RecordedRoute.of(RouteRide.of(Builds.parcelTrike(), TOWN), 0.1))
                        .orElseThrow();
        double before = 0.0;
        double squares = 0.0;
        for (Traced each : found.course()) {
            double off = each.predictedCurrent() - each.measuredCurrent();
            squares += off * off * (each.time() - before);
            before = each.time();
        }
        double told = found.currentOff().orElseThrow();
        assertThat(told).isGreaterThan(1.0);
        assertThat(Math.sqrt(squares / before)).isCloseTo(told, within(1e-9 * told));
    }

    /** A vehicle that is heavier than described takes more, and the tolerance says how much. */
    @Example
    void aStatedToleranceExplainsWhatItCauses() {
        Build build = Builds.trailBoard();
        double mass = build.rider().mass();
        Build heavier = build.withRider(build.rider().withMass(mass + 10.0));
        Ride ride = RecordedRoute.of(RouteRide.of(heavier, TOWN), 0.1);
        Compared exact = compared(AgainstModel.of(build, ride).orElseThrow(), Figure.CONSUMPTION);
        Compared tolerated =
                compared(
                        AgainstModel.of(
                                        build,
                                        ride,
                                        List.of(
                                                new Uncertain(
                                                        Input.RIDER_MASS,
                                                        mass,
                                                        mass - 15.0,
                                                        mass + 15.0)),
                                        values ->
                                                build.withRider(build.rider().withMass(values[0])))
                                .orElseThrow(),
                        Figure.CONSUMPTION);

        assertThat(exact.explained()).hasValue(0.0);
        assertThat(exact.unexplained().orElseThrow()).isPositive();
        assertThat(tolerated.predicted()).isEqualTo(exact.predicted());
        assertThat(tolerated.explained()).isEqualTo(exact.difference());
        assertThat(tolerated.unexplained()).hasValue(0.0);
        assertThat(tolerated.low()).isLessThan(tolerated.predicted());
    }

    /** A vehicle whose settings permit less than was ridden says so. */
    @Example
    void aPullBeyondTheSettingsIsTold() {
        Build build = Builds.trailBoard();
        Ride ride = RecordedRoute.of(RouteRide.of(build, TOWN), 0.1);
        Build weak = build.withSettings(build.settings().withMotorDriveCurrent(5.0));

        assertThat(AgainstModel.of(build, ride).orElseThrow().pullTooWeak()).isLessThan(2.0);
        assertThat(AgainstModel.of(weak, ride).orElseThrow().pullTooWeak()).isGreaterThan(4.0);
    }

    private static Compared compared(AgainstModel model, Figure figure) {
        return model.figures().stream()
                .filter(each -> each.figure() == figure)
                .findFirst()
                .orElseThrow();
    }
}

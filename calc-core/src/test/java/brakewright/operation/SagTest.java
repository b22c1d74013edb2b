package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.RoundFigures;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Cells from 3 V to 4 V behind 0.05 Ω, ten in series; hand-worked. */
@Tag("law")
class SagTest {

    private static final Offset<Double> ROUNDING = within(1e-9);
    private static final Offset<Double> SEARCH = within(1e-8);
    private static final OptionalDouble NEVER = OptionalDouble.empty();

    @Test
    void whereNothingIsMetNoEventIsFirst() {
        Sag.Case none = new Sag.Case(new Sag.Draw(10.0, true, 25.0, 10.0), Map.of());
        assertThat(none.first()).isEmpty();
        assertThat(none.charge(Sag.Event.CELL_FLOOR)).isEmpty();
    }

    /** 10 A of 30 A that the motors could take. */
    private static final Settings DRAWING = RoundFigures.set(30.0, 0.0, 10.0, 10.0);

    /** 10 A take 0.5 V from each cell: 3.2 V are left of 3.7 V, at a charge of 0.7. */
    @Test
    void theFloorIsMetWhereTheLoadedCellReachesIt() {
        Build build = RoundFigures.fed(RoundFigures.cell(3.2, 5.0), Protection.UNKNOWN);
        assertThat(met(build.withSettings(DRAWING), Sag.Event.CELL_FLOOR).orElseThrow())
                .isCloseTo(0.7, SEARCH);
    }

    /** Each of two alike packs carries 5 A, which take 0.25 V: 3.2 V are left of 3.45 V. */
    @Test
    void aPackBesideAnotherSagsUnderItsOwnPartOfTheDraw() {
        Pack pack = RoundFigures.pack(RoundFigures.cell(3.2, 5.0), undervoltage(3.1));
        Build build =
                RoundFigures.vehicle()
                        .withBattery(Builds.joined(Joining.PARALLEL, List.of(pack, pack)))
                        .withSettings(DRAWING);
        assertThat(met(build, Sag.Event.CELL_FLOOR).orElseThrow()).isCloseTo(0.45, SEARCH);
        assertThat(met(build, Sag.Event.PROTECTION_TRIP).orElseThrow()).isCloseTo(0.35, SEARCH);
    }

    /** 10 A take 5 V from the pack: 33.6 V are left of 38.6 V. At rest it has 32.6 V at 0.26. */
    @Test
    void aTaperBeginsUnderTheWholeDrawAndHasEndedAtRest() {
        Build build = faded();
        assertThat(met(build, Sag.Event.TAPER_BEGINS).orElseThrow()).isCloseTo(0.86, SEARCH);
        assertThat(met(build, Sag.Event.TAPER_ENDS).orElseThrow()).isCloseTo(0.26, SEARCH);
    }

    /**
     * Within the taper {@code (U − 32.6 V)/0.6 Ω} flow. They leave the cells 3.265 V at a charge of
     * 0.29; below 0.26 nothing flows, and at 0.3 they have 3.267 V still.
     */
    @Test
    void aTripJustBeforeTheTaperEndsIsSeen() {
        assertThat(met(faded(), Sag.Event.PROTECTION_TRIP).orElseThrow()).isCloseTo(0.29, SEARCH);
    }

    private static Build faded() {
        return RoundFigures.fed(RoundFigures.CELL, undervoltage(3.265))
                .withSettings(DRAWING.withLowVoltageTaper(Optional.of(new Taper(33.6, 32.6))));
    }

    /**
     * A second pack that lies behind another 0.5 Ω carries 2 A of 6 A: its cells have 3.4 V where
     * those of the first have 3.3 V.
     */
    @Test
    void theLowestCellsAreThoseOfThePackThatCarriesMost() {
        Sag.Draw draw = new Sag.Draw(6.0, true, 25.0, Cell.PULSE);
        assertThat(draw.lowestCellVoltage(unlike(2.0, 2.0), 0.5)).isCloseTo(3.3, ROUNDING);
        assertThat(draw.isBelowFloor(unlike(3.31, 2.0), 0.5)).isTrue();
        assertThat(draw.isBelowFloor(unlike(2.0, 3.41), 0.5)).isTrue();
        assertThat(draw.isBelowFloor(unlike(3.29, 3.39), 0.5)).isFalse();
    }

    /** 4 A leave 3.25 V of 3.45 V, to the last bit. */
    @Test
    void cellsAtTheirFloorAreNotBelowIt() {
        Sag.Draw draw = new Sag.Draw(4.0, true, 25.0, Cell.PULSE);
        BatteryModel model =
                new BatteryModel(
                        Battery.of(
                                RoundFigures.pack(
                                        RoundFigures.cell(3.25, 5.0), Protection.UNKNOWN)));
        assertThat(draw.isBelowFloor(model, 0.45)).isFalse();
        assertThat(draw.isBelowFloor(model, 0.449)).isTrue();
    }

    private static BatteryModel unlike(double floor, double floorOfOther) {
        Pack one = RoundFigures.pack(RoundFigures.cell(floor, 5.0), Protection.UNKNOWN);
        Pack other = Builds.barePack(RoundFigures.cell(floorOfOther, 5.0), 10, 1, 0.5).at(25.0);
        return new BatteryModel(Builds.joined(Joining.PARALLEL, List.of(one, other)));
    }

    @Test
    void whatIsMetAtTheHighestChargeIsMetFirst() {
        Sag.Draw draw = new Sag.Draw(6.0, true, 25.0, Cell.PULSE);
        Sag.Case met =
                new Sag.Case(
                        draw,
                        Map.of(
                                Sag.Event.TAPER_BEGINS, NEVER,
                                Sag.Event.CELL_FLOOR, OptionalDouble.of(0.3),
                                Sag.Event.PROTECTION_TRIP, OptionalDouble.of(0.4),
                                Sag.Event.TAPER_ENDS, OptionalDouble.of(0.2)));
        assertThat(met.first()).hasValue(new Sag.Meeting(Sag.Event.PROTECTION_TRIP, 0.4));
        assertThat(new Sag.Case(draw, Map.of(Sag.Event.CELL_FLOOR, NEVER)).first()).isEmpty();
    }

    /** The pack may give 30 A. */
    @Test
    void aDrawThatIsSetAsRecommendedIsToldOnce() {
        Build rated =
                RoundFigures.fed(Builds.rated(RoundFigures.CELL, 30.0, 30.0), Protection.UNKNOWN);
        assertThat(draws(rated)).containsExactly(30.0, 30.0);
        assertThat(draws(rated.withSettings(Settings.NONE.withPackDischargeCurrent(20.0))))
                .containsExactly(20.0, 20.0, 30.0, 30.0);
    }

    @Test
    void eventsAreNamedInLowerCaseWithHyphens() {
        assertThat(Sag.Event.values())
                .extracting(Sag.Event::key)
                .containsExactly("taper-begins", "cell-floor", "protection-trip", "taper-ends");
    }

    private static List<Double> draws(Build build) {
        Limits limits = Limits.of(build);
        return Sag.of(build, limits, Operation.of(build, limits)).cases().stream()
                .map(each -> each.draw().current())
                .toList();
    }

    private static OptionalDouble met(Build build, Sag.Event event) {
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        Sag.Draw draw = new Sag.Draw(operation.drive().packCurrent(), true, 25.0, Cell.PULSE);
        return new SagCourse(build, limits.battery(), operation, draw).charge(event);
    }

    private static Protection undervoltage(double trip) {
        return new Protection(NEVER, NEVER, NEVER, OptionalDouble.of(trip));
    }
}

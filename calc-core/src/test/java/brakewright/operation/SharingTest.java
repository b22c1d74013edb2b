package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.ResistanceByCharge;
import brakewright.spec.RoundFigures;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Packs of ten cells in series from 3 V to 4 V, 0.05 Ω each, three fifths of it at once;
 * hand-worked.
 */
@Tag("law")
class SharingTest {

    private static final Offset<Double> ROUNDING = within(1e-9);
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    /** Bears 6 A out of it and 5 A into it. */
    private static final Cell RATED = Builds.rated(RoundFigures.CELL, 6.0, 5.0);

    /** One cell beside another in the first pack, three in the second: a quarter and the rest. */
    @Test
    void packsShareAsTheyConduct() {
        Sharing sharing =
                sharing(
                        20.0,
                        4.0,
                        pack(RATED, 1, Protection.UNKNOWN),
                        pack(RATED, 3, Protection.UNKNOWN));
        assertThat(sharing.loads())
                .hasSize(12)
                .allSatisfy(
                        load -> {
                            double part = load.pack() == 1 ? 0.25 : 0.75;
                            double cells = load.pack() == 1 ? 1.0 : 3.0;
                            assertThat(load.whole())
                                    .isCloseTo(load.isDraw() ? 20.0 : 4.0, ROUNDING);
                            assertThat(load.current()).isCloseTo(part * load.whole(), ROUNDING);
                            assertThat(load.ownCharge()).isCloseTo(load.charge(), ROUNDING);
                            assertThat(load.limit())
                                    .isCloseTo(cells * (load.isDraw() ? 6.0 : 5.0), ROUNDING);
                            assertThat(load.boundBy())
                                    .isEqualTo(
                                            load.isDraw()
                                                    ? ConstraintId.CELL_DISCHARGE_RATING
                                                    : ConstraintId.CELL_CHARGE_RATING);
                            assertThat(load.use())
                                    .isCloseTo(load.current() / load.limit(), ROUNDING);
                        })
                .extracting(Sharing.Load::charge)
                .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-9 ? 0 : 1)
                .containsOnly(0.8, 0.6, 0.4);
    }

    /** 0.5 Ω beside 1 Ω where the second pack is charged, beside 0.5 Ω where it is drawn from. */
    @Test
    void aPackThatResistsChargingMoreTakesLess() {
        ResistanceByCharge twice = new ResistanceByCharge(Curve.constant(1.0), Curve.constant(1.0));
        Cell reluctant = Builds.resisting(RATED, twice);
        Protection opening = protection(OptionalDouble.of(9.0), OptionalDouble.of(3.0));
        Sharing sharing = sharing(9.0, 3.0, pack(RATED, 1, opening), pack(reluctant, 1, opening));
        assertThat(sharing.loads())
                .filteredOn(load -> load.pack() == 2)
                .allSatisfy(
                        load ->
                                assertThat(load.current())
                                        .isCloseTo(load.isDraw() ? 4.5 : 1.0, ROUNDING));
    }

    /** 15 A of 20 A are in a pack that bears 12 A, 5 A in one that bears 6 A. */
    @Test
    void thePackThatIsHardestOnIsTheOneThatUsesMostOfItsLimit() {
        Sharing sharing =
                sharing(
                        20.0,
                        0.0,
                        pack(RATED, 1, Protection.UNKNOWN),
                        pack(Builds.rated(RATED, 4.0, 5.0), 3, Protection.UNKNOWN));
        Sharing.Load hardest = sharing.hardest(true).orElseThrow();
        assertThat(hardest.pack()).isEqualTo(2);
        assertThat(hardest.use()).isCloseTo(1.25, ROUNDING);
        assertThat(sharing.hardest(false)).isEmpty();
    }

    /**
     * At once 0.3 Ω and 0.1 Ω. The smaller pack bears 5 A, that is 2 V; full, it is at 40 V and the
     * other, empty, at 30 V, so that 25 A flow. The other ends at 38 V.
     */
    @Test
    void packsAreJoinedAgainstTheirLeastResistance() {
        Cell lower =
                Builds.withVoltage(
                        RATED, Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 3.8}));
        List<Sharing.Joint> joints =
                sharing(
                                0.0,
                                0.0,
                                pack(RATED, 1, Protection.UNKNOWN),
                                pack(lower, 3, Protection.UNKNOWN))
                        .joints();
        assertThat(joints)
                .hasSize(2)
                .allSatisfy(
                        joint -> {
                            assertThat(joint.permitted()).isCloseTo(5.0, ROUNDING);
                            assertThat(joint.difference()).isCloseTo(2.0, ROUNDING);
                            assertThat(joint.worst()).isCloseTo(25.0, ROUNDING);
                            assertThat(joint.current()).isEmpty();
                            assertThat(joint.isExceeded()).isFalse();
                        });
        assertThat(joints.get(0).others()).isCloseTo(0.1, ROUNDING);
        assertThat(joints.get(1).others()).isCloseTo(0.3, ROUNDING);
    }

    /** 3 V apart over 0.6 Ω: 5 A, as much as the cells bear. */
    @Test
    void whatFlowsFromOnePackIntoAnotherIsChargedThere() {
        List<Sharing.Joint> joints =
                sharing(0.0, 0.0, joined(RATED, 0.3), joined(RATED, 0.6)).joints();
        assertThat(joints)
                .allSatisfy(
                        joint -> assertThat(joint.current().orElseThrow()).isCloseTo(5.0, ROUNDING))
                .extracting(Sharing.Joint::isCharged)
                .containsExactly(true, false);
    }

    @Test
    void whatIsPermittedIsNotExceeded() {
        assertThat(joint(5.0, 5.0).isExceeded()).isFalse();
        assertThat(joint(5.0, Math.nextUp(5.0)).isExceeded()).isTrue();
    }

    /** All of one charge: nothing flows, into none of them. */
    @Test
    void alikePacksAtOneChargeAreJoinedWithoutACurrent() {
        assertThat(sharing(0.0, 0.0, joined(RATED, 0.5), joined(RATED, 0.5)).joints())
                .allSatisfy(
                        joint -> {
                            assertThat(joint.current()).hasValue(0.0);
                            assertThat(joint.isCharged()).isFalse();
                        });
    }

    /**
     * 4.5 A of 9 A remain for each of two. The pack that opens at 4 A follows, and the 9 A that are
     * left pass the trip at 6 A but not that at 10 A.
     */
    @Test
    void aPackThatIsLostMayTakeTheOthersAlong() {
        List<Sharing.Loss> losses = drawing(9.0, opening(10.0), opening(4.0), opening(6.0));
        assertLoss(losses.get(0), 4.5 / 4.0, true);
        assertLoss(losses.get(1), 4.5 / 6.0, false);
        assertLoss(losses.get(2), 4.5 / 4.0, false);
    }

    @Test
    void aTripThatIsJustReachedDoesNotOpen() {
        assertThat(drawing(9.0, opening(4.5), opening(4.5), opening(4.5)))
                .allSatisfy(loss -> assertLoss(loss, 1.0, false));
        assertThat(drawing(9.0, opening(4.499), opening(4.499), opening(4.499)))
                .allSatisfy(loss -> assertThat(loss.isAllLost()).isTrue());
    }

    /** 4 A sent into two packs, of which either takes 3 A alone. */
    @Test
    void whatBrakesMeetsTheTripsOfTheCharge() {
        Protection taking = protection(UNKNOWN, OptionalDouble.of(3.0));
        List<Sharing.Loss> losses =
                sharing(4.0, 4.0, pack(RATED, 1, taking), pack(RATED, 1, taking)).losses();
        assertThat(losses)
                .extracting(Sharing.Loss::isDraw)
                .containsExactly(true, false, true, false);
        for (Sharing.Loss loss : losses) {
            if (loss.isDraw()) {
                assertThat(loss.greatestUse()).isNaN();
                assertThat(loss.charge()).isNaN();
                assertThat(loss.isAllLost()).isFalse();
            } else {
                assertThat(loss.greatestUse()).isCloseTo(4.0 / 3.0, ROUNDING);
                assertThat(loss.charge()).isBetween(0.4, 0.8);
                assertThat(loss.isAllLost()).isTrue();
            }
        }
    }

    @Test
    void aLossThatTakesAllIsWorseThanOneThatStrainsMore() {
        Sharing.Loss all = new Sharing.Loss(1, true, 1.1, 0.5, true);
        Sharing.Loss some = new Sharing.Loss(1, true, 1.2, 0.5, false);
        Sharing.Loss fewer = new Sharing.Loss(1, true, 1.1, 0.5, false);
        assertThat(all.isWorseThan(some)).isTrue();
        assertThat(some.isWorseThan(all)).isFalse();
        assertThat(some.isWorseThan(fewer)).isTrue();
        assertThat(fewer.isWorseThan(some)).isFalse();
    }

    @Test
    void aPackWhoseProtectionIsBypassedIsNotLost() {
        assertThat(
                        sharing(
                                        4.0,
                                        4.0,
                                        pack(RATED, 1, Protection.BYPASSED),
                                        pack(RATED, 1, Protection.UNKNOWN))
                                .losses())
                .extracting(Sharing.Loss::pack)
                .containsExactly(2, 2);
    }

    private static void assertLoss(Sharing.Loss loss, double use, boolean isAllLost) {
        assertThat(loss.greatestUse()).isCloseTo(use, ROUNDING);
        assertThat(loss.isAllLost()).isEqualTo(isAllLost);
    }

    private static Sharing.Joint joint(double permitted, double current) {
        return new Sharing.Joint(1, permitted, 0.1, 2.0, 25.0, OptionalDouble.of(current), false);
    }

    private static List<Sharing.Loss> drawing(double current, Pack... packs) {
        return sharing(current, 0.0, packs).losses().stream().filter(Sharing.Loss::isDraw).toList();
    }

    private static Pack opening(double trip) {
        return pack(RATED, 1, protection(OptionalDouble.of(trip), UNKNOWN));
    }

    private static Protection protection(OptionalDouble giving, OptionalDouble taking) {
        return new Protection(giving, taking, UNKNOWN, UNKNOWN);
    }

    private static Pack joined(Cell cell, double charge) {
        return RoundFigures.pack(cell, Protection.UNKNOWN, OptionalDouble.of(charge));
    }

    private static Pack pack(Cell cell, int parallel, Protection protection) {
        return Builds.barePack(cell, 10, parallel, 0.0).withProtection(protection);
    }

    /** Charges of 0.4 to 0.8, and motors that ask for more than is drawn and returned. */
    private static Sharing sharing(double drawn, double returned, Pack... packs) {
        Battery battery = Builds.joined(Joining.PARALLEL, Arrays.asList(packs));
        Build build = RoundFigures.vehicle().withBattery(battery);
        Build used =
                build.withUse(build.use().withChargeTo(0.4).withChargeFrom(0.8))
                        .withSettings(RoundFigures.set(60.0, 40.0, drawn, returned));
        Limits limits = Limits.of(used);
        return Sharing.of(used, limits, Operation.of(used, limits));
    }
}

package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.formula.Term;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.GroupSpread;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.RoundFigures;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Ten cells that bear 3.9 V, at a charge of 0.9, at rest; hand-worked. */
@Tag("law")
class TaperEndTest {

    private static final Pack PACK =
            RoundFigures.pack(RoundFigures.cell(2.0, 3.9), Protection.UNKNOWN);

    @Test
    void ofOnePackTheTaperEndsWhereItsCellsAreFull() {
        Constraint end = end(Builds.withPack(RoundFigures.vehicle(), PACK));
        assertThat(end.limit()).isCloseTo(39.0, within(1e-9));
        assertThat(end.derivation().formula()).doesNotContain("U_o");
    }

    /** The other pack is at 39 V, too. */
    @Test
    void inSeriesTheOtherPacksAreAdded() {
        Constraint end =
                end(
                        RoundFigures.vehicle()
                                .withBattery(Builds.joined(Joining.SERIES, List.of(PACK, PACK))));
        assertThat(end.limit()).isCloseTo(78.0, within(1e-9));
        assertThat(end.derivation().formula()).endsWith(" + U_o");
        assertThat(end.derivation().terms())
                .filteredOn(each -> each.symbol().equals("U_o"))
                .singleElement()
                .extracting(Term::value)
                .satisfies(each -> assertThat(each).isCloseTo(39.0, within(1e-9)));
    }

    /** The fullest group is at 0.9 where the pack is at 0.85. */
    @Test
    void theFullestGroupEndsTheTaperEarlierAndItsBoundIsTold() {
        Build uneven =
                Builds.withPack(
                        RoundFigures.vehicle(),
                        PACK.withGroupSpread(new GroupSpread(0.05, 0.0, 0.0)));
        assertThat(end(uneven).limit()).isCloseTo(38.5, within(1e-9));
        assertThat(end(uneven).conditions()).extracting(Term::value).contains(3.9);
        assertThat(end(Builds.withPack(uneven, PACK)).conditions()).isEmpty();
    }

    private static Constraint end(Build build) {
        return Limits.of(build).highVoltageTaper().ends().stream()
                .filter(each -> each.id() == ConstraintId.VOLTAGE_CEILING)
                .findFirst()
                .orElseThrow();
    }
}

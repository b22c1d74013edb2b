package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.PackModel;
import brakewright.battery.WorstGroup;
import brakewright.formula.Derivation;
import brakewright.formula.Reading;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Builds;
import brakewright.spec.GroupSpread;
import brakewright.spec.Input;
import brakewright.spec.Pack;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Groups of cells that are a twentieth apart in charge and a tenth in capacity; hand-worked. */
@Tag("law")
class GroupTermsTest {

    private static final GroupSpread SPREAD = new GroupSpread(0.05, 0.1, 0.0);

    private static final Term CHARGE =
            Term.modelled("s", "charge state of the pack", 0.55, Unit.NONE);

    /** 0.55 + 0.05. */
    @Test
    void theFullestGroupIsAheadByTheSpreadOfTheCharge() {
        Step step = terms(SPREAD, WorstGroup.End.FULLEST).chargeAt(CHARGE);
        assertThat(step.result().value()).isCloseTo(0.6, within(1e-12));
        assertThat(step.result().meaning()).contains("fullest group");
        assertThat(step.derivation().formula()).isEqualTo("s + d");
        assertThat(step.derivation().terms()).hasSize(2);
    }

    /** 1 − 0.05 − 0.45/0.9. */
    @Test
    void theEmptiestGroupIsBehindAndHasLess() {
        Step step = terms(SPREAD, WorstGroup.End.EMPTIEST).chargeAt(CHARGE);
        assertThat(step.result().value()).isCloseTo(0.45, within(1e-12));
        assertThat(step.result().meaning()).contains("emptiest group");
        assertThat(step.derivation().formula()).startsWith("1 − d");
        assertThat(step.derivation().terms()).hasSize(3);
    }

    @Test
    void groupsThatAreAlikeAddNothing() {
        Constraint bare = bare();
        for (WorstGroup.End end : WorstGroup.End.values()) {
            GroupTerms alike = terms(GroupSpread.NONE, end);
            assertThat(alike.at(bare, 0.55)).isSameAs(bare);
            assertThat(alike.where(bare, 3.7)).isSameAs(bare);
            assertThat(alike.openCircuitVoltage(0.5))
                    .isEqualTo(Term.given(Input.CELL_OPEN_CIRCUIT_VOLTAGE, 3.7));
        }
    }

    /** The board's cells have 3.7 V at 0.5: the pack is then at 0.45, or at 1 − 0.45·0.9. */
    @Test
    void aConstraintIsToldUnderTheChargeOfThePackAtAVoltageOfTheGroup() {
        Constraint full = terms(SPREAD, WorstGroup.End.FULLEST).where(bare(), 3.7);
        Step fullest = full.steps().get(0);
        assertThat(fullest.result().value()).isCloseTo(0.45, within(1e-12));
        assertThat(fullest.derivation().formula()).isEqualTo("s_g − d");
        assertThat(fullest.derivation().terms().get(0)).isEqualTo(Reading.FULLEST_CHARGE.of(0.5));
        Step emptiest = terms(SPREAD, WorstGroup.End.EMPTIEST).where(bare(), 3.7).steps().get(0);
        assertThat(emptiest.result().value()).isCloseTo(0.595, within(1e-12));
        assertThat(emptiest.derivation().terms().get(0)).isEqualTo(Reading.EMPTIEST_CHARGE.of(0.5));
        assertThat(terms(SPREAD, WorstGroup.End.FULLEST).at(bare(), 0.55).steps()).hasSize(1);
    }

    /** 3.7 V at 0.5 and 3.9 V at 0.7: 3.75 V at 0.55. */
    @Test
    void theVoltageAtRestIsThatOfTheGroup() {
        assertThat(terms(SPREAD, WorstGroup.End.FULLEST).openCircuitVoltage(0.5))
                .satisfies(
                        each -> {
                            assertThat(each.symbol()).isEqualTo("u_g");
                            assertThat(each.value()).isCloseTo(3.75, within(1e-12));
                        });
    }

    private static Constraint bare() {
        return new Constraint(
                ConstraintId.VOLTAGE_CEILING,
                1.0,
                Input.CELL_VOLTAGE_MAX,
                List.of(),
                List.of(),
                new Derivation("x", "hand-worked", CHARGE),
                WhichPack.of(1));
    }

    private static GroupTerms terms(GroupSpread spread, WorstGroup.End end) {
        Pack old = Builds.pack(Builds.trailBoard());
        return new GroupTerms(new PackModel(old.withGroupSpread(spread)), end);
    }
}

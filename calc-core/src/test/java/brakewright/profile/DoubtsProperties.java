package brakewright.profile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.operation.SetBuild;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class DoubtsProperties {

    /** Several together, each on its unfavourable side, are no milder than any of them alone. */
    @Property(tries = 60)
    void togetherTheyAreNoMilderThanAlone(
            @ForAll Build build,
            @ForAll @Scale(3) @DoubleRange(min = 0.05, max = 0.3) double spread,
            @ForAll @IntRange(min = 1, max = 4) int together) {
        Doubted doubted = Doubted.of(build, spread);
        Doubts doubts = Doubts.of(doubted.inputs(), doubted, together);
        double worst = Tolerances.badness(doubts.verdict());
        assertThat(worst).isGreaterThanOrEqualTo(Tolerances.badness(Evaluation.of(build)));
        List<Doubts.Weighed> weighed = doubts.weighed();
        assertThat(weighed)
                .isSortedAccordingTo(Comparator.comparingDouble(Doubts.Weighed::weight).reversed());
        weighed.stream()
                .limit(together)
                .forEach(
                        each -> {
                            assertThat(Tolerances.badness(each.atLow()))
                                    .isLessThanOrEqualTo(worst + 1e-12);
                            assertThat(Tolerances.badness(each.atHigh()))
                                    .isLessThanOrEqualTo(worst + 1e-12);
                        });
    }
}

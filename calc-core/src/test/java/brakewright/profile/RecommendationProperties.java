package brakewright.profile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.review.Evaluation;
import brakewright.review.Verdict;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class RecommendationProperties {

    @Property(tries = 60)
    void enteredItGivesWhatWasPromisedAndRecommendsItself(@ForAll Build build) {
        for (Entry entry : new Entry[] {Entry.METRIC, Entry.IMPERIAL}) {
            Recommendation set = Recommendation.of(Situation.of(build), entry);
            Recommendation again = Recommendation.of(Situation.of(set.build()), entry);
            assertThat(again.settings()).isEqualTo(set.settings());
            assertThat(again.evaluation()).isEqualTo(set.evaluation());
            assertThat(again.brake()).isEqualTo(set.brake());
            Recommendation entered = Recommendation.judged(Situation.of(build), set.settings());
            assertThat(entered.evaluation()).isEqualTo(set.evaluation());
        }
    }

    /** What no setting can mend: the pack rests above the controller's rating. */
    @Property(tries = 60)
    void itIsWithinLimitsUnlessNoSettingIs(@ForAll Build build) {
        Recommendation set = Recommendation.of(Situation.of(build), Entry.METRIC);
        if (!set.isWithinLimits()) {
            Build nothing = build.withSettings(Nothing.asked(set.settings()));
            assertThat(Evaluation.of(nothing).outcome())
                    .isNotEqualTo(Verdict.Outcome.WITHIN_LIMITS);
        }
    }
}

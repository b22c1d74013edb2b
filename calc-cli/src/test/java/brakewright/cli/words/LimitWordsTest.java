package brakewright.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LimitWordsTest {

    @Test
    void callsNoTwoThingsAlike() {
        assertThat(Arrays.stream(LimitId.values()).map(LimitWords::of)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(ConstraintId.values()).map(LimitWords::of))
                .doesNotHaveDuplicates();
        assertThat(Arrays.stream(ConstraintId.values()).map(LimitWords::brief))
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource
    void keepsTheBriefNameBrief(ConstraintId id) {
        assertThat(LimitWords.brief(id)).isNotBlank().hasSizeLessThanOrEqualTo(24);
    }
}

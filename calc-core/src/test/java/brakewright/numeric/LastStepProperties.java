package brakewright.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;

@Tag("law")
class LastStepProperties {

    /** The first step counts as permitted, whatever is said of it. */
    @Property(tries = 300)
    void isTheHighestThatIsPermitted(
            @ForAll @IntRange(min = -50, max = 50) int first,
            @ForAll @IntRange(min = 0, max = 300) int steps,
            @ForAll @IntRange(min = -60, max = 400) int bound) {
        int last = first + steps;
        assertThat(LastStep.of(first, last, step -> step <= bound))
                .isEqualTo(Math.max(first, Math.min(last, bound)));
    }
}

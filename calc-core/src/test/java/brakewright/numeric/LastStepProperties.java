package brakewright.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
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

    /**
     * By the share that a limit leaves, whatever the share is bent by: it only says where to look.
     */
    @Property(tries = 300)
    void isTheHighestThatIsPermittedBySharesToo(
            @ForAll @IntRange(min = 0, max = 300) int last,
            @ForAll @DoubleRange(min = 0.0, max = 40.0) double limit,
            @ForAll @DoubleRange(min = 0.2, max = 5.0) double bent) {
        double[] values = IntStream.rangeClosed(0, last).mapToDouble(i -> i / 10.0).toArray();
        int highest = 0;
        for (int i = 1; i <= last && values[i] <= limit; i++) {
            highest = i;
        }
        assertThat(
                        LastStep.ofShares(
                                values,
                                last,
                                i ->
                                        values[i] <= limit
                                                ? 0.0
                                                : Math.pow((values[i] - limit) / values[i], bent)))
                .isEqualTo(highest);
    }

    /** Where the share tells the limit, three or four steps are asked about instead of nine. */
    @Property(tries = 300)
    void asksAboutFewWhereTheShareIsTrue(
            @ForAll @IntRange(min = 10, max = 300) int last,
            @ForAll @DoubleRange(min = 0.1, max = 0.99) double part) {
        double[] values = IntStream.rangeClosed(0, last).mapToDouble(i -> i / 10.0).toArray();
        double limit = part * values[last];
        AtomicInteger asked = new AtomicInteger();
        LastStep.ofShares(
                values,
                last,
                i -> {
                    asked.incrementAndGet();
                    return (values[i] - limit) / Math.max(values[i], limit);
                });
        assertThat(asked).hasValueLessThanOrEqualTo(4);
    }
}

package brakewright.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

@Tag("law")
class AscendingProperties {

    @Property(tries = 300)
    void isASetInOrder(
            @ForAll @Size(max = 12) double @DoubleRange(min = -2, max = 2) [] some,
            @ForAll @Size(max = 12) double @DoubleRange(min = -2, max = 2) [] more) {
        double[] twice = DoubleStream.concat(Arrays.stream(more), Arrays.stream(more)).toArray();
        TreeSet<Double> expected = new TreeSet<>();
        Arrays.stream(some).forEach(expected::add);
        Arrays.stream(more).forEach(expected::add);
        assertThat(Ascending.both(Ascending.of(some), twice))
                .isEqualTo(expected.stream().mapToDouble(Double::doubleValue).toArray());
    }

    @Property(tries = 300)
    void keepsWhatIsBetween(
            @ForAll @Size(max = 12) double @DoubleRange(min = -2, max = 2) [] numbers,
            @ForAll @DoubleRange(min = -2, max = 2) double low,
            @ForAll @DoubleRange(min = -2, max = 2) double high) {
        assertThat(Ascending.between(numbers, low, high))
                .isEqualTo(
                        Arrays.stream(numbers)
                                .filter(number -> low < number && number < high)
                                .toArray());
    }
}

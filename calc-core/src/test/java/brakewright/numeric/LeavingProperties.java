package brakewright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

@Tag("law")
class LeavingProperties {

    private static final double ACCURACY = Accuracy.MODEL.size();

    /** Nothing up to a place, or less than nothing, and then a power of the way beyond it. */
    @Property(tries = 300)
    void isWhereTheQuantityBeginsToBePositive(
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.95) double begins,
            @ForAll @Scale(3) @DoubleRange(min = 0.5, max = 2.0) double power,
            @ForAll boolean isLevel,
            @ForAll boolean isFalling) {
        double found =
                Root.leaving(
                        place -> {
                            double beyond = isFalling ? begins - place : place - begins;
                            return beyond > 0.0 ? Math.pow(beyond, power) : isLevel ? 0.0 : beyond;
                        },
                        0.0,
                        1.0,
                        Accuracy.MODEL);
        assertThat(found).isCloseTo(begins, within(2.0 * ACCURACY));
        assertThat(isFalling ? begins - found : found - begins).isLessThanOrEqualTo(0.0);
    }
}

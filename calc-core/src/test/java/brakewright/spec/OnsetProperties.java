package brakewright.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;

/** How the resistance of a cell comes about within a pulse. */
@Tag("law")
class OnsetProperties {

    private static final double ROUNDING = 1e-12;

    @Property
    void whatIsThereGrowsFromTheOhmicShareToTheWhole(
            @ForAll @DoubleRange(min = 0.05, max = 1.0) double ohmic,
            @ForAll @DoubleRange(min = 0.05, max = 60.0) double constant,
            @ForAll @DoubleRange(min = 0.0, max = 20.0) double one,
            @ForAll @DoubleRange(min = 0.0, max = 20.0) double other) {
        Onset onset = new Onset(ohmic, constant);
        assertThat(onset.after(0.0)).isEqualTo(ohmic);
        assertThat(onset.after(Cell.PULSE)).isEqualTo(1.0);
        assertThat(onset.after(Math.max(one, other)))
                .isBetween(onset.after(Math.min(one, other)) - ROUNDING, 1.0);
    }

    @Property
    void aShareIsThereWhenItIsReached(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double ohmic,
            @ForAll @DoubleRange(min = 0.5, max = 60.0) double constant,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double share) {
        Onset onset = new Onset(ohmic, constant);
        double seconds = onset.reaches(share);
        assertThat(seconds).isBetween(0.0, Cell.PULSE);
        assertThat(onset.after(seconds)).isCloseTo(Math.max(ohmic, share), within(1e-9));
    }

    /** {@code dv/dt = (1 − k − v)/τ} of one capacitor beside a resistance, by small steps. */
    @Property(tries = 50)
    void theRestComesAsACapacitorIsCharged(
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double ohmic,
            @ForAll @DoubleRange(min = 1.0, max = 20.0) double constant,
            @ForAll @DoubleRange(min = 0.1, max = 9.9) double seconds) {
        int steps = 20_000;
        double step = Cell.PULSE / steps;
        double voltage = 0.0;
        double then = Double.NaN;
        for (int i = 0; i < steps; i++) {
            if (Double.isNaN(then) && i * step >= seconds) {
                then = voltage;
            }
            voltage += step / constant * (1.0 - voltage);
        }
        assertThat(new Onset(ohmic, constant).after(seconds))
                .isCloseTo(ohmic + (1.0 - ohmic) * then / voltage, within(1e-3));
    }

    @Example
    void moreThanThePulseIsNeverReachedWithinIt() {
        assertThat(new Onset(0.7, 4.0).reaches(1.1)).isInfinite();
        assertThat(Onset.AT_ONCE.reaches(1.0)).isZero();
        assertThat(Onset.AT_ONCE.after(0.0)).isEqualTo(1.0);
    }
}

package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

@Tag("law")
class StepResistanceProperties {

    private static final double REST = 48.0;

    /** Without noise every step tells the resistance itself. */
    @Property(tries = 50)
    void findsTheResistanceThatThePackHas(
            @ForAll long seed,
            @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 0.5) double resistance) {
        StepResistance found =
                StepResistance.of(recording(pulls(seed, resistance, 0.0)), StepResistance.INSTANT);
        assertThat(found)
                .isInstanceOfSatisfying(
                        StepResistance.Measured.class,
                        measured -> {
                            assertThat(measured.resistance())
                                    .isCloseTo(resistance, within(1e-9 * resistance));
                            assertThat(measured.doubt()).isLessThan(1e-9 * resistance);
                            assertThat(measured.temperatureC()).isEqualTo(OptionalDouble.of(21.0));
                        });
    }

    /** Three times what is told, as one in some hundred thousand may be off by more. */
    @Property(tries = 100)
    void isOffByNoMoreThanItsDoubtSays(
            @ForAll long seed,
            @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 0.5) double resistance,
            @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 0.5) double noise) {
        Recording recording = recording(pulls(seed, resistance, noise));
        StepResistance found = StepResistance.of(recording, StepResistance.INSTANT);
        assertThat(found)
                .isInstanceOfSatisfying(
                        StepResistance.Measured.class,
                        measured ->
                                assertThat(measured.resistance())
                                        .isCloseTo(resistance, within(3.0 * measured.doubt())));
    }

    /** What is told is about two standard errors: nineteen of twenty lie within, not all. */
    @Example
    void aboutNineteenOfTwentyLieWithinTheDoubt() {
        int within = 0;
        for (int seed = 0; seed < 400; seed++) {
            StepResistance.Measured measured =
                    (StepResistance.Measured)
                            StepResistance.of(recording(pulls(seed, 0.1, 0.2)), 1.0);
            within += Math.abs(measured.resistance() - 0.1) <= measured.doubt() ? 1 : 0;
        }
        assertThat(within).isBetween(360, 396);
    }

    /**
     * A longer step sees more of what the cells settle to: 0.04 Ω with a time constant of 6 s. A
     * step holds a change for anything up to its length, so on the average 1 − (τ/T)·(1 − e^(−T/τ))
     * of that: 0.0031 Ω over 1 s, 0.0205 Ω over 10 s.
     */
    @Example
    void whatSettlesSlowlyCountsInTheLongerStep() {
        Map<Quantity, double[]> columns = pulls(3, 0.05, 0.0, 12_000, 300);
        double[] current = columns.get(Quantity.PACK_CURRENT);
        double[] voltage = columns.get(Quantity.PACK_VOLTAGE);
        double settled = 0.0;
        for (int row = 0; row < current.length; row++) {
            settled += (0.04 * current[row] - settled) * 0.1 / 6.0;
            voltage[row] -= settled;
        }
        Recording recording = recording(columns);
        assertThat(resistance(recording, StepResistance.INSTANT)).isCloseTo(0.0531, within(0.0005));
        assertThat(resistance(recording, StepResistance.PULL)).isCloseTo(0.0705, within(0.0005));
    }

    /** While nothing was recorded the charge changed, which is no sag. */
    @Example
    void nothingIsComparedAcrossAGap() {
        Map<Quantity, double[]> columns = pulls(5, 0.1, 0.0);
        double[] time = columns.get(Quantity.TIME);
        double[] voltage = columns.get(Quantity.PACK_VOLTAGE);
        for (int row = time.length / 2; row < time.length; row++) {
            time[row] += 4.0;
            voltage[row] -= 3.0;
        }
        Recording recording = recording(columns);
        assertThat(recording.gaps()).hasSize(1);
        assertThat(resistance(recording, StepResistance.PULL)).isCloseTo(0.1, within(1e-9));
    }

    @Example
    void saysWhyThereIsNone() {
        Map<Quantity, double[]> columns = pulls(1, 0.1, 0.0);
        assertThat(reason(columns, 0.03)).isEqualTo(StepResistance.Reason.NO_ROWS_A_STEP_APART);
        assertThat(reason(columns, 200.0)).isEqualTo(StepResistance.Reason.NO_ROWS_A_STEP_APART);
        assertThat(reason(columns, 60.0)).isEqualTo(StepResistance.Reason.STEADY_CURRENT);
        Map<Quantity, double[]> steady = new EnumMap<>(columns);
        steady.put(Quantity.PACK_CURRENT, columns.get(Quantity.PACK_TEMPERATURE));
        assertThat(reason(steady, 1.0)).isEqualTo(StepResistance.Reason.STEADY_CURRENT);
        Map<Quantity, double[]> turned = new EnumMap<>(columns);
        turned.put(
                Quantity.PACK_CURRENT,
                IntStream.range(0, columns.get(Quantity.TIME).length)
                        .mapToDouble(row -> -columns.get(Quantity.PACK_CURRENT)[row])
                        .toArray());
        assertThat(reason(turned, 1.0)).isEqualTo(StepResistance.Reason.NO_SAG);
        Map<Quantity, double[]> without = new EnumMap<>(columns);
        without.remove(Quantity.PACK_VOLTAGE);
        assertThat(reason(without, 1.0)).isEqualTo(StepResistance.Reason.NOT_RECORDED);
    }

    @Example
    void refusesAStepOfNoLength() {
        Recording recording = recording(pulls(1, 0.1, 0.0));
        for (double bad : new double[] {0.0, -1.0, Double.NaN}) {
            assertThatThrownBy(() -> StepResistance.of(recording, bad))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> StepResistance.of(recording, 1.0, bad))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    private static StepResistance.Reason reason(Map<Quantity, double[]> columns, double seconds) {
        return ((StepResistance.Refused) StepResistance.of(recording(columns), seconds)).reason();
    }

    private static double resistance(Recording recording, double seconds) {
        return ((StepResistance.Measured) StepResistance.of(recording, seconds)).resistance();
    }

    private static Recording recording(Map<Quantity, double[]> columns) {
        int[] lines = IntStream.range(0, columns.get(Quantity.TIME).length).toArray();
        return Joining.join(List.of(Piece.of("pulls.csv", lines, columns)), true, new Repairs());
    }

    /** Two minutes, ten rows a second, the current another every 1 to 5 s. */
    private static Map<Quantity, double[]> pulls(long seed, double resistance, double noise) {
        return pulls(seed, resistance, noise, 1200, 10);
    }

    private static Map<Quantity, double[]> pulls(
            long seed, double resistance, double noise, int count, int hold) {
        Random random = new Random(seed);
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        for (Quantity quantity :
                List.of(
                        Quantity.TIME,
                        Quantity.PACK_VOLTAGE,
                        Quantity.PACK_CURRENT,
                        Quantity.PACK_TEMPERATURE)) {
            columns.put(quantity, new double[count]);
        }
        double current = 0.0;
        int until = 0;
        for (int row = 0; row < count; row++) {
            if (row == until) {
                current = 60.0 * random.nextDouble() - 15.0;
                until = row + hold + random.nextInt(40);
            }
            columns.get(Quantity.TIME)[row] = 0.1 * row;
            columns.get(Quantity.PACK_CURRENT)[row] = current;
            columns.get(Quantity.PACK_VOLTAGE)[row] =
                    REST - resistance * current + noise * random.nextGaussian();
            columns.get(Quantity.PACK_TEMPERATURE)[row] = 21.0;
        }
        return columns;
    }
}

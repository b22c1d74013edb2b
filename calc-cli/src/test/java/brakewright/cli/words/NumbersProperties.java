package brakewright.cli.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class NumbersProperties {

    /** A number that is whole but for rounding errors may be shown as whole: 1e-9 of it. */
    private static final double SLACK = 1.0 + 2e-9;

    @Property
    void aLimitIsNeverShownHigherThanItIs(
            @ForAll @DoubleRange(min = 0, max = 1e6) double value,
            @ForAll @IntRange(max = 4) int decimals) {
        double shown = Double.parseDouble(Numbers.down(value, decimals));
        assertThat(shown).isBetween(0.0, value * SLACK);
        assertThat(value - shown).isLessThan(Math.pow(10.0, -decimals) * SLACK);
    }

    @Property
    void aLeastValueIsNeverShownLowerThanItIs(
            @ForAll @DoubleRange(min = 0, max = 1e6) double value,
            @ForAll @IntRange(max = 4) int decimals) {
        double shown = Double.parseDouble(Numbers.up(value, decimals));
        assertThat(shown * SLACK).isGreaterThanOrEqualTo(value);
        assertThat(shown - value).isLessThan(Math.pow(10.0, -decimals) * SLACK);
    }

    @Property
    void theNearestIsHalfALastDigitAway(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
            @ForAll @IntRange(max = 4) int decimals) {
        double shown = Double.parseDouble(Numbers.nearest(value, decimals));
        assertThat(shown).isCloseTo(value, within(0.5 * Math.pow(10.0, -decimals) * SLACK));
    }

    @Property
    void fourDigitsAreShownOfAnySize(@ForAll @DoubleRange(min = -1e12, max = 1e12) double value) {
        String shown = Numbers.significant(value);
        assertThat(shown).hasSizeLessThan(12).doesNotContain(",");
        assertThat(Double.parseDouble(shown)).isCloseTo(value, within(5.0001e-4 * Math.abs(value)));
    }

    @Property
    void nothingIsShownAsMinusZero(
            @ForAll @DoubleRange(min = -1, max = 1) double value,
            @ForAll @IntRange(max = 4) int decimals) {
        assertThat(Numbers.nearest(value, decimals)).doesNotMatch("-0(\\.0*)?");
    }

    @Example
    void wholeNumbersStayWholeDespiteRoundingErrors() {
        assertThat(Numbers.down(0.1 + 0.2, 1)).isEqualTo("0.3");
        assertThat(Numbers.down(100.0 * 0.29, 0)).isEqualTo("29");
        assertThat(Numbers.up(100.0 * 0.07, 0)).isEqualTo("7");
        assertThat(Numbers.down(Math.nextDown(5.0), 2)).isEqualTo("5.00");
        assertThat(Numbers.down(4.9999, 2)).isEqualTo("4.99");
        assertThat(Numbers.up(4.9901, 2)).isEqualTo("5.00");
    }

    @Example
    void timesAreShownInTheUnitThatSuitsThem() {
        assertThat(Numbers.time(0.0044)).isEqualTo("4.4 ms");
        assertThat(Numbers.time(0.5)).isEqualTo("0.5 s");
        assertThat(Numbers.time(99)).isEqualTo("99 s");
        assertThat(Numbers.time(444)).isEqualTo("7.4 min");
        assertThat(Numbers.time(36_000)).isEqualTo("600 min");
    }

    @Example
    void percentagesShowADecimalWhereItSaysMore() {
        assertThat(Numbers.percent(0.5)).isEqualTo("50 %");
        assertThat(Numbers.percent(0.07)).isEqualTo("7 %");
        assertThat(Numbers.percent(0.836)).isEqualTo("83.6 %");
    }

    /** A frost of ten degrees is not one of nine. */
    @Example
    void whatIsWrittenExactlyStaysBelowNothingToo() {
        assertThat(Numbers.up(-10.0, 0)).isEqualTo("-10");
        assertThat(Numbers.down(-10.0, 0)).isEqualTo("-10");
        assertThat(Numbers.up(-9.5, 0)).isEqualTo("-9");
        assertThat(Numbers.down(-9.5, 0)).isEqualTo("-10");
    }
}

package brakewright.cli.recording;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;

/** A number of a file is the double that is nearest to what is written, by whichever way. */
class DecimalMarkProperties {

    @Property
    void readsWhatTheLanguageReads(
            @ForAll @BigRange(min = "-99999999999999999", max = "99999999999999999")
                    BigInteger digits,
            @ForAll @IntRange(min = 0, max = 17) int decimals) {
        String text = new BigDecimal(digits, decimals).toPlainString();
        double nearest = Double.parseDouble(text);
        assertThat(DecimalMark.POINT.number(text)).isEqualTo(nearest);
        assertThat(DecimalMark.COMMA.number(text.replace('.', ','))).isEqualTo(nearest);
    }

    @Example
    void readsEveryTextThatIsANumber() {
        assertThat(Double.doubleToRawLongBits(DecimalMark.POINT.number("-0.00")))
                .isEqualTo(Double.doubleToRawLongBits(-0.0));
        assertThat(DecimalMark.POINT.number(" 7. ")).isEqualTo(7.0);
        assertThat(DecimalMark.POINT.number("-.25")).isEqualTo(-0.25);
        assertThat(DecimalMark.POINT.number("+4")).isEqualTo(4.0);
        assertThat(DecimalMark.POINT.number("1.5e3")).isEqualTo(1500.0);
        assertThat(DecimalMark.POINT.number("000000000000000000.1")).isEqualTo(0.1);
        assertThat(DecimalMark.POINT.number("123456789012345678901234567890"))
                .isEqualTo(1.2345678901234568e29);
    }

    @Example
    void readsNothingElse() {
        for (String text :
                new String[] {"", " ", "-", ".", "-.", "1.2.3", "1,5", "NaN", "5f", "0x1"}) {
            assertThat(DecimalMark.POINT.number(text)).as(text).isNaN();
        }
        assertThat(DecimalMark.COMMA.number("1.5")).isNaN();
    }
}

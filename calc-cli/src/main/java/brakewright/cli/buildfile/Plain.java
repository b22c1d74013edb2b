package brakewright.cli.buildfile;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as a person writes them. */
final class Plain {

    private Plain() {}

    /** Returns a number with up to six digits and no exponent. */
    static String number(double value) {
        return new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros().toPlainString();
    }
}

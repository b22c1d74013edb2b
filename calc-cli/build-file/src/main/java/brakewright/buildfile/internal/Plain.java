package brakewright.buildfile.internal;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as a person writes them. */
public final class Plain {

    private Plain() {}

    /**
     * Writes a number.
     *
     * @param value finite
     * @return up to six digits and no exponent
     */
    public static String number(double value) {
        return new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros().toPlainString();
    }
}

package brakewright.numeric;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;

/**
 * A quantity as Commons Math asks for it.
 *
 * <p>A class with a name, as OpenJDK 17 cannot write a class-data archive where functions are
 * turned into those of a library so old at more than one place of a class.
 */
final class Quantity implements UnivariateFunction {

    private final DoubleUnaryOperator quantity;

    Quantity(DoubleUnaryOperator quantity) {
        this.quantity = quantity;
    }

    @Override
    public double value(double place) {
        return quantity.applyAsDouble(place);
    }
}

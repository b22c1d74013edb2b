package brakewright.heat;

import java.util.OptionalDouble;

/**
 * One body that is heated and loses heat to the air: {@code C·dT/dt = P − (T − Ta)/Rth}, solved
 * exactly for a steady power.
 *
 * <p>Source: heat balance of one body.
 *
 * @param capacity C [J/K]
 * @param toAir Rth [K/W]; empty where no heat leaves, or it is not known how
 * @param airC Ta [°C]
 */
public record OneBody(double capacity, OptionalDouble toAir, double airC) {

    /** The same body with a longer or shorter way to the air, where there is one. */
    OneBody withToAir(double factor) {
        return toAir.isEmpty()
                ? this
                : new OneBody(capacity, OptionalDouble.of(factor * toAir.getAsDouble()), airC);
    }

    /**
     * Returns the temperature after a time.
     *
     * @param startC at its beginning [°C]
     * @param power that heats it [W]
     * @param seconds how long [s]
     * @return then [°C]
     */
    public double after(double startC, double power, double seconds) {
        if (toAir.isEmpty()) {
            return startC + power * seconds / capacity;
        }
        double settled = settledC(power);
        return settled + (startC - settled) * Math.exp(-seconds / timeConstant());
    }

    /** {@code Rth·C}, the time in which it follows its heat; infinite where no heat leaves [s]. */
    double timeConstant() {
        return toAir.orElse(Double.POSITIVE_INFINITY) * capacity;
    }

    /** The time until a temperature that it passes on its way [s]. */
    double until(double temperatureC, double startC, double power) {
        if (toAir.isEmpty()) {
            return (temperatureC - startC) * capacity / power;
        }
        double settled = settledC(power);
        return toAir.getAsDouble()
                * capacity
                * Math.log((settled - startC) / (settled - temperatureC));
    }

    private double settledC(double power) {
        return airC + power * toAir.orElseThrow();
    }
}

package brakewright.cli.words;

import brakewright.fitting.Fit;
import brakewright.fitting.Fitted;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** What is fitted to a ride, in words and as a build file writes it. */
public final class FitWords {

    private static final double LEAST_TOLERANCE = 0.1;
    private static final MathContext TWO_DIGITS_UP = new MathContext(2, RoundingMode.UP);

    private FitWords() {}

    /**
     * Returns what a value is called.
     *
     * @param what the value
     * @return a few words
     */
    public static String name(Fitted what) {
        return switch (what) {
            case INSTANT_RESISTANCE -> "pack resistance, 1 s";
            case PULL_RESISTANCE -> "pack resistance, 10 s";
            case JOINT_RESISTANCE -> "of it joints and leads";
            case CAPACITY -> "capacity";
            case IDLE_POWER -> "idle power";
            case WHEEL_DIAMETER -> "wheel diameter";
            case ROLLING_RESISTANCE -> "rolling resistance";
            case DRAG_AREA -> "drag area";
            case COASTING_ROLLING -> "rolling, by coasting";
            case COASTING_DRAG -> "drag area, by coasting";
            case SPEED_CONSTANT -> "motor kv";
            case REGEN_PLATEAU -> "regen current held";
        };
    }

    /**
     * Returns a value with its doubt, the doubt rounded up to two digits, the value to its place.
     *
     * @param fit the value and its doubt
     * @return a text, as {@code "79.8 mΩ ± 3.7 mΩ"}
     */
    public static String told(Fit.Found fit) {
        BigDecimal doubt = doubt(fit);
        return value(fit, doubt).toPlainString()
                + unit(fit.what())
                + " ± "
                + doubt.toPlainString()
                + unit(fit.what());
    }

    /**
     * Returns the key of a build file that a value belongs to. What is left for the joints is as
     * doubtful as the cells that were taken off, so it is told, but is no line to paste.
     *
     * @param what the value
     * @return table and key; empty where a build file has no such key
     */
    public static Optional<String> key(Fitted what) {
        return switch (what) {
            case IDLE_POWER -> Optional.of("use.idle_power");
            case WHEEL_DIAMETER -> Optional.of("vehicle.wheel_diameter");
            case ROLLING_RESISTANCE, COASTING_ROLLING -> Optional.of("vehicle.rolling_resistance");
            case DRAG_AREA, COASTING_DRAG -> Optional.of("vehicle.drag_area");
            case SPEED_CONSTANT -> Optional.of("motor.kv");
            case INSTANT_RESISTANCE, PULL_RESISTANCE, JOINT_RESISTANCE, CAPACITY, REGEN_PLATEAU ->
                    Optional.empty();
        };
    }

    /**
     * Returns what a build file says of a value, its tolerance rounded up.
     *
     * @param fit the value and its doubt
     * @return a text in quotes, as {@code "0.55 m² ± 10 %"}
     */
    public static String literal(Fit.Found fit) {
        BigDecimal value = value(fit, doubt(fit));
        double exact = scale(fit.what()) * fit.value();
        double reach = scale(fit.what()) * fit.doubt() + Math.abs(value.doubleValue() - exact);
        double percent = 100.0 * reach / Math.abs(value.doubleValue());
        return '"'
                + value.toPlainString()
                + unit(fit.what())
                + " ± "
                + Numbers.up(Math.max(LEAST_TOLERANCE, percent), 1)
                + " %\"";
    }

    private static BigDecimal doubt(Fit.Found fit) {
        return BigDecimal.valueOf(scale(fit.what()) * fit.doubt()).round(TWO_DIGITS_UP);
    }

    private static BigDecimal value(Fit.Found fit, BigDecimal doubt) {
        return BigDecimal.valueOf(scale(fit.what()) * fit.value())
                .setScale(doubt.scale(), RoundingMode.HALF_EVEN);
    }

    private static double scale(Fitted what) {
        return switch (what) {
            case INSTANT_RESISTANCE, PULL_RESISTANCE, JOINT_RESISTANCE, WHEEL_DIAMETER -> 1000.0;
            default -> 1.0;
        };
    }

    private static String unit(Fitted what) {
        return switch (what) {
            case INSTANT_RESISTANCE, PULL_RESISTANCE, JOINT_RESISTANCE -> " mΩ";
            case CAPACITY -> " Ah";
            case IDLE_POWER -> " W";
            case WHEEL_DIAMETER -> " mm";
            case ROLLING_RESISTANCE, COASTING_ROLLING -> "";
            case DRAG_AREA, COASTING_DRAG -> " m²";
            case SPEED_CONSTANT -> " rpm/V";
            case REGEN_PLATEAU -> " A";
        };
    }
}

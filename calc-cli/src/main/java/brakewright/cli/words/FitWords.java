package brakewright.cli.words;

import brakewright.fitting.Fit;
import brakewright.fitting.Fitted;
import java.util.Optional;

/** What is fitted to a ride, in words and as a build file writes it. */
public final class FitWords {

    private static final double LEAST_TOLERANCE = 0.1;

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
            case REGEN_PLATEAU -> "regen current held";
        };
    }

    /**
     * Returns a value with its unit.
     *
     * @param what the value
     * @param value of it
     * @return the text
     */
    public static String value(Fitted what, double value) {
        return Numbers.significant(scale(what) * value) + unit(what);
    }

    /**
     * Returns the key of a build file that a value belongs to.
     *
     * @param what the value
     * @return table and key; empty where a build file has no such key
     */
    public static Optional<String> key(Fitted what) {
        return switch (what) {
            case JOINT_RESISTANCE -> Optional.of("pack.joint_resistance");
            case IDLE_POWER -> Optional.of("use.idle_power");
            case WHEEL_DIAMETER -> Optional.of("vehicle.wheel_diameter");
            case ROLLING_RESISTANCE -> Optional.of("vehicle.rolling_resistance");
            case DRAG_AREA -> Optional.of("vehicle.drag_area");
            case INSTANT_RESISTANCE, PULL_RESISTANCE, CAPACITY, REGEN_PLATEAU -> Optional.empty();
        };
    }

    /**
     * Returns what a build file says of a value, its tolerance rounded up.
     *
     * @param fit the value and its doubt
     * @return a text in quotes, as {@code "0.55 m² ± 10 %"}
     */
    public static String literal(Fit.Found fit) {
        double percent = 100.0 * fit.doubt() / fit.value();
        return '"'
                + value(fit.what(), fit.value())
                + " ± "
                + Numbers.up(Math.max(LEAST_TOLERANCE, percent), 1)
                + " %\"";
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
            case ROLLING_RESISTANCE -> "";
            case DRAG_AREA -> " m²";
            case REGEN_PLATEAU -> " A";
        };
    }
}

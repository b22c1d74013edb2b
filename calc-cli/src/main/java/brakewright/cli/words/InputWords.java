package brakewright.cli.words;

import brakewright.spec.Input;

/** How the value of an input is written on a page. */
public final class InputWords {

    private InputWords() {}

    /**
     * Returns what an input is called in a sentence.
     *
     * @param key of the input, that of one of several packs with its number
     * @return its last word or words
     */
    public static String name(String key) {
        String name = key.substring(key.lastIndexOf('.') + 1).replace('_', ' ');
        String where = key.startsWith("packs.") ? " of pack " + key.split("\\.", -1)[1] : "";
        return switch (name) {
            case "charge from" -> "fullest charge";
            case "parallel" -> "cells in parallel" + where;
            default -> name + where;
        };
    }

    /**
     * Writes a value that must not be exceeded, rounded down.
     *
     * @param input of what
     * @param value in calculation units
     * @param units for speeds
     * @return the value with its unit
     */
    public static String down(Input input, double value, UnitSystem units) {
        return switch (input.unit()) {
            case METRE_PER_SECOND -> units.speedDown(value);
            case RATIO -> isCount(input) ? count(value) : Numbers.down(100.0 * value, 1) + " %";
            default -> Numbers.down(value, 2) + unit(input);
        };
    }

    /**
     * Writes a value.
     *
     * @param input of what
     * @param value in calculation units
     * @param units for speeds
     * @return the value with its unit
     */
    public static String nearest(Input input, double value, UnitSystem units) {
        return switch (input.unit()) {
            case METRE_PER_SECOND -> units.speedText(value);
            case RATIO ->
                    isCount(input)
                            ? count(value)
                            : input == Input.DRIVE_REDUCTION
                                    ? Numbers.significant(value)
                                    : Numbers.percent(value);
            default -> Numbers.significant(value) + unit(input);
        };
    }

    private static boolean isCount(Input input) {
        return switch (input) {
            case PACK_PARALLEL, PACK_SERIES, DRIVE_MOTORS, CONTROLLER_COUNT, MOTOR_POLE_PAIRS ->
                    true;
            default -> false;
        };
    }

    private static String count(double value) {
        return Numbers.nearest(value, 0);
    }

    private static String unit(Input input) {
        return switch (input.unit()) {
            case NONE -> "";
            case OHM, CELSIUS -> " " + input.unit().text();
            default -> " " + input.unit().plain();
        };
    }
}

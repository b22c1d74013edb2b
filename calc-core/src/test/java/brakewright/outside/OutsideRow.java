package brakewright.outside;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One expected value.
 *
 * @param id unique among all tables
 * @param quantity what is checked
 * @param kind {@code published}, {@code from-memory} or {@code derived} (computed apart from the
 *     model from the stated inputs)
 * @param source where the value stands
 * @param inputs by name, as printed, e.g. {@code speed=20 km/h; slope=0}
 * @param expected the value, digits as printed
 * @param tolerance {@code 0.05} in the unit of the value, {@code 0.5%} of it, or {@code +0..+4%}
 *     for a range above it
 * @param unit of value and tolerance
 */
record OutsideRow(
        String id,
        String quantity,
        String kind,
        String source,
        String inputs,
        String expected,
        String tolerance,
        String unit) {

    double expectedValue() {
        return Double.parseDouble(expected);
    }

    double lowest() {
        return expectedValue() + deviation(0);
    }

    double highest() {
        return expectedValue() + deviation(1);
    }

    double input(String name) {
        String text = inputTexts().get(name);
        if (text == null) {
            throw new IllegalArgumentException(id + " has no input " + name);
        }
        return Double.parseDouble(text.split(" ", 2)[0]);
    }

    private Map<String, String> inputTexts() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String part : inputs.split(";")) {
            String[] pair = part.strip().split("=", 2);
            texts.put(pair[0], pair[1]);
        }
        return texts;
    }

    /** The permitted deviation downwards (side 0) or upwards (side 1). */
    private double deviation(int side) {
        boolean relative = tolerance.endsWith("%");
        String text = relative ? tolerance.substring(0, tolerance.length() - 1) : tolerance;
        double amount;
        if (text.contains("..")) {
            amount = Double.parseDouble(text.split("\\.\\.")[side]);
        } else {
            amount = (side == 0 ? -1.0 : 1.0) * Double.parseDouble(text);
        }
        return relative ? amount / 100.0 * Math.abs(expectedValue()) : amount;
    }
}

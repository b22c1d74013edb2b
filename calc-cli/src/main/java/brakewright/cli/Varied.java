package brakewright.cli;

import brakewright.cli.buildfile.BuildFileException;
import brakewright.cli.buildfile.InputPlace;
import brakewright.cli.buildfile.Variations;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A key that takes even steps from one value to another.
 *
 * @param place the number that varies
 * @param low its first value, in calculation units
 * @param high its last value
 * @param count how many values, at least two
 */
record Varied(InputPlace place, double low, double high, int count) {

    private static final Pattern SHAPE = Pattern.compile("([^=]+)=(.+?)\\.\\.(.+)/([0-9]{1,7})");

    /** Understands {@code KEY=LOW..HIGH/N}. */
    static Varied parse(Variations variations, String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            throw new Unusable(
                    "\""
                            + text
                            + "\" is no variation; expected KEY=LOW..HIGH/N, for example"
                            + " motor_brake_current=20A..60A/41");
        }
        String key = shape.group(1).strip();
        InputPlace place =
                variations
                        .find(key)
                        .orElseThrow(
                                () ->
                                        new Unusable(
                                                "\""
                                                        + key
                                                        + "\" is no key with a single number in"
                                                        + " this file; with several packs name"
                                                        + " one, for example packs.1.parallel;"
                                                        + " keys are listed in README.md"));
        int count = Integer.parseInt(shape.group(4));
        if (count < 2) {
            throw new Unusable(key + ": at least 2 values are needed, for example 20A..60A/41");
        }
        return new Varied(
                place, value(place, key, shape.group(2)), value(place, key, shape.group(3)), count);
    }

    private static double value(InputPlace place, String key, String text) {
        try {
            return Variations.parse(place.input(), text.strip());
        } catch (BuildFileException wrong) {
            throw new Unusable(key, wrong);
        }
    }

    /** The value at a step, from 0; the last is exactly the highest. */
    double at(int step) {
        double value = step == count - 1 ? high : low + (high - low) * step / (count - 1);
        return Variations.isCount(place.input()) ? Math.rint(value) : value;
    }
}

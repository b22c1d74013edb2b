package brakewright.cli;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputNumber;
import brakewright.buildfile.InputPlace;
import brakewright.buildfile.Problem;
import brakewright.buildfile.Variations;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
record KeyRange(InputPlace place, double low, double high, int count) {

    private static final Pattern SHAPE = Pattern.compile("([^=]+)=(.+?)\\.\\.(.+)/([0-9]+)");
    private static final String EXAMPLE = "motor_brake_current=20A..60A/41";

    /** More digits than this are more values than can be counted. */
    private static final int DIGITS = 9;

    /** Understands the {@code KEY=LOW..HIGH/N} of {@code --against}. */
    static KeyRange parse(Variations variations, String text) {
        return parseAll("--against", variations, List.of(text)).get(0);
    }

    /** Understands all that an option names, or says everything that is wrong with them. */
    static List<KeyRange> parseAll(String option, Variations variations, List<String> texts) {
        List<Problem> problems = new ArrayList<>();
        List<KeyRange> all = new ArrayList<>();
        for (String text : texts) {
            read(variations, text.strip(), problems)
                    .ifPresent(
                            range -> {
                                if (all.stream().anyMatch(range::isOfSameKey)) {
                                    problems.add(
                                            problem(
                                                    range.place().name(),
                                                    "this key is named twice",
                                                    "each key once, for example " + EXAMPLE));
                                }
                                all.add(range);
                            });
        }
        if (!problems.isEmpty()) {
            throw new Unusable(option, new BuildFileException(problems));
        }
        return all;
    }

    private boolean isOfSameKey(KeyRange other) {
        return place.equals(other.place);
    }

    private static Problem problem(String key, String wrong, String expected) {
        return new Problem(0, key, wrong, expected);
    }

    private static Optional<KeyRange> read(
            Variations variations, String text, List<Problem> problems) {
        Matcher shape = SHAPE.matcher(text);
        if (!shape.matches()) {
            problems.add(
                    problem(
                            '"' + text + '"',
                            "this is no variation",
                            "KEY=LOW..HIGH/N, for example " + EXAMPLE));
            return Optional.empty();
        }
        String key = shape.group(1).strip();
        Optional<InputPlace> place = variations.find(key);
        if (place.isEmpty()) {
            problems.add(
                    problem(
                            key,
                            "this is no key with a single number in this file",
                            "a key that brakewright keys lists, with several packs of one of them, for"
                                    + " example packs.1.parallel=3..6/4"));
            return Optional.empty();
        }
        int before = problems.size();
        double low = value(place.get(), shape.group(2), problems);
        double high = value(place.get(), shape.group(3), problems);
        int count = count(shape.group(4));
        if (count < 2) {
            problems.add(
                    problem(
                            key,
                            "\"" + shape.group(4) + "\" values make no variation",
                            "at least 2 values, for example " + EXAMPLE));
        }
        if (problems.size() > before) {
            return Optional.empty();
        }
        KeyRange range = new KeyRange(place.get(), low, high, count);
        range.findRepeats(key, problems);
        return problems.size() > before ? Optional.empty() : Optional.of(range);
    }

    private void findRepeats(String key, List<Problem> problems) {
        if (low == high) {
            problems.add(
                    problem(
                            key,
                            "the first value and the last are the same",
                            "two different values, for example " + EXAMPLE));
        } else if (InputNumber.isCount(place.input()) && count > Math.abs(high - low) + 1.0) {
            int most = (int) Math.abs(high - low) + 1;
            problems.add(
                    problem(
                            key,
                            "only whole numbers are possible, and there are no "
                                    + count
                                    + " different ones from "
                                    + (int) low
                                    + " to "
                                    + (int) high,
                            "at most "
                                    + most
                                    + " values, for example "
                                    + key
                                    + "="
                                    + (int) low
                                    + ".."
                                    + (int) high
                                    + "/"
                                    + most));
        }
    }

    private static int count(String digits) {
        return digits.length() > DIGITS ? Integer.MAX_VALUE : Integer.parseInt(digits);
    }

    private static double value(InputPlace place, String text, List<Problem> problems) {
        try {
            return InputNumber.read(place.input().key(), place.input(), text.strip());
        } catch (BuildFileException wrong) {
            problems.addAll(wrong.problems());
            return Double.NaN;
        }
    }

    /** The value at a step, from 0; the last is exactly the highest. */
    double at(int step) {
        double value = step == count - 1 ? high : low + (high - low) * step / (count - 1);
        return InputNumber.isCount(place.input()) ? Math.rint(value) : value;
    }
}

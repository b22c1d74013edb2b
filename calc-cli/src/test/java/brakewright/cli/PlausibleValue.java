package brakewright.cli;

import brakewright.spec.Input;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** Draws values that a key may have, as far apart as what is possible, its ends among them. */
public final class PlausibleValue {

    private PlausibleValue() {}

    /** A value as a build file has it. */
    public static String inFile(Input input, SplittableRandom random) {
        ListedKey key = ListedKey.of(input);
        if (key.isKind("words")) {
            return '"' + any(key.words(), random) + '"';
        }
        if (key.isKind("text")) {
            return '"' + key.example() + '"';
        }
        if (key.isKind("curve")) {
            return curve(key, random);
        }
        if (key.isPair()) {
            return '[' + quoted(measured(key, random)) + ", " + quoted(measured(key, random)) + ']';
        }
        if (key.isMeasured()) {
            return quoted(measured(key, random) + tolerance(key, random));
        }
        return key.isKind("whole number") ? count(key, random) : number(key, random);
    }

    /** The same as an option of the command line has it. */
    public static String asOption(Input input, SplittableRandom random) {
        ListedKey key = ListedKey.of(input);
        if (key.isPair()) {
            return measured(key, random) + "," + measured(key, random);
        }
        if (key.isMeasured()) {
            return measured(key, random);
        }
        return key.isKind("whole number") ? count(key, random) : number(key, random);
    }

    private static String tolerance(ListedKey key, SplittableRandom random) {
        if (random.nextInt(12) > 0 || key.isKind("temperature")) {
            return "";
        }
        return " ± " + any(List.of("10 %", "0 %", "1e-9 %", "0.5 %", "30 %", "99 %"), random);
    }

    private static String quoted(String text) {
        return '"' + text + '"';
    }

    private static String measured(ListedKey key, SplittableRandom random) {
        return number(key, random) + " " + key.input().unit().plain();
    }

    private static String count(ListedKey key, SplittableRandom random) {
        int low = (int) key.low();
        int most = (int) Math.min(key.high(), low + 40.0);
        return String.valueOf(
                random.nextInt(5) == 0 ? (int) key.high() : random.nextInt(low, most));
    }

    private static String number(ListedKey key, SplittableRandom random) {
        return String.format(Locale.ROOT, "%s", value(key.low(), key.high(), random));
    }

    private static double value(double low, double high, SplittableRandom random) {
        double least = low > 0.0 ? low : Math.max(1e-9, 1e-6 * high);
        return switch (random.nextInt(8)) {
            case 0 -> low;
            case 1 -> high;
            case 2 -> low + random.nextDouble() * (high - low);
            case 3 -> Math.rint(low + random.nextDouble() * (high - low));
            default -> least * Math.pow(high / least, random.nextDouble());
        };
    }

    private static String curve(ListedKey key, SplittableRandom random) {
        int points = 2 + random.nextInt(4);
        boolean byCharge = !key.input().key().contains("temperature");
        StringBuilder text = new StringBuilder("[");
        double where = byCharge ? 0.0 : -20.0;
        double what = value(key.low(), key.high(), random);
        for (int i = 0; i < points; i++) {
            text.append(i == 0 ? "" : ", ");
            text.append('[').append(i == points - 1 && byCharge ? 1.0 : where);
            text.append(", ").append(what).append(']');
            where += random.nextDouble() * (byCharge ? (1.0 - where) : 30.0) + 1e-12;
            what =
                    random.nextBoolean()
                            ? value(key.low(), key.high(), random)
                            : Math.min(key.high(), what * (1.0 + random.nextDouble()));
        }
        return text.append(']').toString();
    }

    /** Draws one of several. */
    public static <T> T any(List<T> of, SplittableRandom random) {
        return of.get(random.nextInt(of.size()));
    }
}

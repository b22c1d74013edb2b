package brakewright.cli.buildfile;

import brakewright.spec.Input;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** Draws values that a key may have, as far apart as what is possible, its ends among them. */
public final class PlausibleValue {

    private PlausibleValue() {}

    /** A value as a build file has it. */
    public static String inFile(Input input, SplittableRandom random) {
        Schema.Entry entry = Schema.of(input);
        Kind kind = entry.kind();
        if (kind instanceof Kind.Words words) {
            return '"' + any(words.allowed(), random) + '"';
        }
        if (kind instanceof Kind.Text) {
            return '"' + entry.example() + '"';
        }
        if (kind instanceof Kind.Tabulated) {
            return curve(entry, random);
        }
        if (kind instanceof Kind.MeasuredPair) {
            return '['
                    + quoted(measured(entry, random))
                    + ", "
                    + quoted(measured(entry, random))
                    + ']';
        }
        if (kind instanceof Kind.Measured) {
            return quoted(measured(entry, random) + tolerance(kind, random));
        }
        return kind instanceof Kind.Count ? count(entry, random) : number(entry, random);
    }

    /** The same as an option of the command line has it. */
    public static String asOption(Input input, SplittableRandom random) {
        Schema.Entry entry = Schema.of(input);
        Kind kind = entry.kind();
        if (kind instanceof Kind.MeasuredPair) {
            return measured(entry, random) + "," + measured(entry, random);
        }
        if (kind instanceof Kind.Measured) {
            return measured(entry, random);
        }
        return kind instanceof Kind.Count ? count(entry, random) : number(entry, random);
    }

    private static String tolerance(Kind kind, SplittableRandom random) {
        if (random.nextInt(12) > 0 || kind.equals(Kind.quantity(Dimension.TEMPERATURE))) {
            return "";
        }
        return " ± " + any(List.of("10 %", "0 %", "1e-9 %", "0.5 %", "30 %", "99 %"), random);
    }

    private static String quoted(String text) {
        return '"' + text + '"';
    }

    private static String measured(Schema.Entry entry, SplittableRandom random) {
        return number(entry, random) + " " + entry.input().unit().plain();
    }

    private static String count(Schema.Entry entry, SplittableRandom random) {
        int low = (int) entry.low();
        int most = (int) Math.min(entry.high(), low + 40.0);
        return String.valueOf(
                random.nextInt(5) == 0 ? (int) entry.high() : random.nextInt(low, most));
    }

    private static String number(Schema.Entry entry, SplittableRandom random) {
        return String.format(Locale.ROOT, "%s", value(entry.low(), entry.high(), random));
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

    private static String curve(Schema.Entry entry, SplittableRandom random) {
        int points = 2 + random.nextInt(4);
        boolean byCharge = !entry.key().contains("temperature");
        StringBuilder text = new StringBuilder("[");
        double where = byCharge ? 0.0 : -20.0;
        double what = value(entry.low(), entry.high(), random);
        for (int i = 0; i < points; i++) {
            text.append(i == 0 ? "" : ", ");
            text.append('[').append(i == points - 1 && byCharge ? 1.0 : where);
            text.append(", ").append(what).append(']');
            where += random.nextDouble() * (byCharge ? (1.0 - where) : 30.0) + 1e-12;
            what =
                    random.nextBoolean()
                            ? value(entry.low(), entry.high(), random)
                            : Math.min(entry.high(), what * (1.0 + random.nextDouble()));
        }
        return text.append(']').toString();
    }

    /** Draws one of several. */
    public static <T> T any(List<T> of, SplittableRandom random) {
        return of.get(random.nextInt(of.size()));
    }
}

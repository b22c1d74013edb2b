package brakewright.cli.recording;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How a time is written. */
enum TimeFormat {
    /** A plain number. */
    NUMBER("a number"),
    /** Hours, minutes and seconds of a day. */
    CLOCK("a clock"),
    /** Year, month and day, and a clock: ISO 8601. */
    DATE("an ISO date");

    private static final Pattern CLOCK_TEXT =
            Pattern.compile("(\\d{1,2}):(\\d{2})(?::(\\d{2}(?:[.,]\\d+)?))?");
    private static final Pattern DATE_TEXT =
            Pattern.compile(
                    "(\\d{4})-(\\d{2})-(\\d{2})[T ]"
                            + CLOCK_TEXT.pattern()
                            + "\\s*(Z|[+-]\\d{2}:?\\d{2})?");

    private final String words;

    TimeFormat(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** Empty where a text is no time of any kind. */
    static Optional<TimeFormat> of(String text, DecimalMark mark) {
        if (!Double.isNaN(mark.number(text))) {
            return Optional.of(NUMBER);
        }
        if (CLOCK_TEXT.matcher(text.strip()).matches()) {
            return Optional.of(CLOCK);
        }
        return DATE_TEXT.matcher(text.strip()).matches() ? Optional.of(DATE) : Optional.empty();
    }

    /** Seconds, for a clock since midnight, for a date since 1970; NaN where it cannot be read. */
    double seconds(String text, DecimalMark mark) {
        return switch (this) {
            case NUMBER -> mark.number(text);
            case CLOCK -> {
                Matcher clock = CLOCK_TEXT.matcher(text.strip());
                yield clock.matches() ? ofDay(clock, 1) : Double.NaN;
            }
            case DATE -> ofDate(text);
        };
    }

    private static double ofDate(String text) {
        Matcher date = DATE_TEXT.matcher(text.strip());
        if (!date.matches()) {
            return Double.NaN;
        }
        try {
            long day =
                    LocalDate.of(
                                    Integer.parseInt(date.group(1)),
                                    Integer.parseInt(date.group(2)),
                                    Integer.parseInt(date.group(3)))
                            .toEpochDay();
            return day * 86_400.0 + ofDay(date, 4) - zone(date.group(7));
        } catch (DateTimeException noDate) {
            return Double.NaN;
        }
    }

    private static double ofDay(Matcher clock, int first) {
        int hours = Integer.parseInt(clock.group(first));
        int minutes = Integer.parseInt(clock.group(first + 1));
        String rest = clock.group(first + 2);
        double seconds = rest == null ? 0.0 : Double.parseDouble(rest.replace(',', '.'));
        return hours < 24 && minutes < 60 && seconds < 61.0
                ? 3600.0 * hours + 60.0 * minutes + seconds
                : Double.NaN;
    }

    private static double zone(@Nullable String text) {
        if (text == null || text.equals("Z")) {
            return 0.0;
        }
        String digits = text.replaceAll("[^0-9]", "");
        double seconds =
                3600.0 * Integer.parseInt(digits.substring(0, 2))
                        + 60.0 * Integer.parseInt(digits.substring(2));
        return text.charAt(0) == '-' ? -seconds : seconds;
    }
}

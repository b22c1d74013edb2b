package brakewright.cli.recording;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The head of a column: a name, and perhaps a unit in brackets or behind an underscore.
 *
 * @param text as it stands
 * @param name in small letters, words parted by a blank
 * @param unit as it stands; empty where there is none
 */
record Heading(String text, String name, Optional<String> unit) {

    private static final Pattern BRACKETS = Pattern.compile("^(.*?)[\\[(]([^\\])]*)[\\])]?\\s*$");
    private static final Pattern BEHIND =
            Pattern.compile(
                    "^(.+)[_ ](V|mV|A|mA|C|degC|km/h|kmh|kph|m/s|mps|mi/h|mph|KMH|KPH|MPH|km|m|s|ms|pct|%)$");

    /** As files of this program have it, where a stroke is none. */
    private static final Pattern PER =
            Pattern.compile("^(.+)[_ ](km|m|mi)[_ ]per[_ ](h|s)$", Pattern.CASE_INSENSITIVE);

    static Heading of(String text) {
        String bare = text.strip();
        Matcher inBrackets = BRACKETS.matcher(bare);
        if (inBrackets.matches()) {
            return new Heading(bare, name(inBrackets.group(1)), unit(inBrackets.group(2)));
        }
        Matcher per = PER.matcher(bare);
        if (per.matches()) {
            String unit = (per.group(2) + "/" + per.group(3)).toLowerCase(Locale.ROOT);
            return new Heading(bare, name(per.group(1)), unit(unit));
        }
        Matcher behind = BEHIND.matcher(bare);
        return behind.matches()
                ? new Heading(bare, name(behind.group(1)), unit(behind.group(2)))
                : new Heading(bare, name(bare), Optional.empty());
    }

    private static Optional<String> unit(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(text.strip());
    }

    private static String name(String text) {
        return text.replaceAll("[^\\p{L}\\p{N}]+", " ").strip().toLowerCase(Locale.ROOT);
    }

    /** Whether an option means this column: its text, or its name without the unit. */
    boolean isMeantBy(String option) {
        Heading meant = of(option);
        return text.equalsIgnoreCase(option.strip())
                || (meant.unit().isEmpty() && !name.isEmpty() && meant.name().equals(name));
    }
}

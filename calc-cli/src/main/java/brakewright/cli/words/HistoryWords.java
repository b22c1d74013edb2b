package brakewright.cli.words;

import brakewright.cli.history.History;
import brakewright.cli.history.Watched;
import brakewright.spec.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Names what is followed through past worksheets, and writes it. */
public final class HistoryWords {

    private final UnitSystem units;

    /**
     * Takes the units.
     *
     * @param units for speeds and lengths
     */
    public HistoryWords(UnitSystem units) {
        this.units = units;
    }

    /**
     * Names what the worksheets are of.
     *
     * @param history the worksheets
     * @return the title of the build, or how many builds there are
     */
    public static String title(History history) {
        List<String> titles = history.titles();
        return titles.size() == 1 ? titles.get(0) : titles.size() + " builds";
    }

    /**
     * Names it.
     *
     * @param what is followed
     * @return a few words
     */
    public static String label(Watched what) {
        return switch (what) {
            case MOTOR_DRIVE -> "motor drive current, per motor";
            case MOTOR_BRAKE -> "motor brake current, per motor";
            case PACK_DISCHARGE -> "pack discharge current, all";
            case PACK_REGEN -> "pack regen current, all";
            case LOW_TAPER_BEGINS -> "low-voltage taper begins";
            case LOW_TAPER_ENDS -> "low-voltage taper ends";
            case HIGH_TAPER_BEGINS -> "high-voltage taper begins";
            case HIGH_TAPER_ENDS -> "high-voltage taper ends";
            case SPEED_CAP -> "speed cap";
            case VERDICT -> "pack and parts";
            case BRAKE -> "brake";
            case BRAKE_WEAKEST -> "weakest brake";
            case SAFE_CHARGE -> "set regen is borne up to";
            case FIRST_STOP -> "first stop, nothing opens";
            case FIRST_STOP_OPENED -> "first stop, protection opens";
            case TOP_SPEED -> "top speed for 10 s, full";
            case CLIMB -> "steepest climb";
            case LAUNCH -> "launch";
            case CONTINUOUS -> "motor current for ever";
        };
    }

    /**
     * Writes a value.
     *
     * @param what is followed
     * @param value a number or a word
     * @return the text with its unit
     */
    public String value(Watched what, Object value) {
        if (!(value instanceof Double number)) {
            return String.valueOf(value).replace('-', ' ');
        }
        return switch (what) {
            case MOTOR_DRIVE, MOTOR_BRAKE, PACK_DISCHARGE, PACK_REGEN, CONTINUOUS ->
                    Numbers.nearest(number, 1) + " A";
            case LOW_TAPER_BEGINS, LOW_TAPER_ENDS, HIGH_TAPER_BEGINS, HIGH_TAPER_ENDS ->
                    Numbers.nearest(number, 1) + " V";
            case SPEED_CAP, TOP_SPEED -> units.speedText(number);
            case BRAKE_WEAKEST, LAUNCH -> Numbers.down(Math.max(0.0, number), 2) + " m/s²";
            case SAFE_CHARGE, CLIMB -> Numbers.down(100.0 * Math.max(0.0, number), 1) + " %";
            case FIRST_STOP, FIRST_STOP_OPENED -> units.lengthText(number);
            case VERDICT, BRAKE -> Numbers.significant(number);
        };
    }

    /**
     * Writes an input.
     *
     * @param value a number, a word or a list of them; that of a curve holds a list for each point
     * @param unit in which it is, as a worksheet for programs spells it; empty for none
     * @return the text; of a curve how many points it has, and its first and last value
     */
    public static String input(Object value, String unit) {
        String behind = unit.isEmpty() ? "" : " " + spelt(unit);
        if (value instanceof List<?> all && isCurve(all)) {
            return String.format(
                    Locale.ROOT,
                    "%d point%s, %s to %s%s",
                    all.size(),
                    all.size() == 1 ? "" : "s",
                    ordinate(all.get(0)),
                    ordinate(all.get(all.size() - 1)),
                    behind);
        }
        return single(value) + behind;
    }

    private static boolean isCurve(List<?> all) {
        return !all.isEmpty()
                && all.stream().allMatch(each -> each instanceof List<?> at && !at.isEmpty());
    }

    private static String ordinate(Object point) {
        return point instanceof List<?> at ? single(at.get(at.size() - 1)) : single(point);
    }

    private static String single(Object value) {
        if (value instanceof List<?> all) {
            return all.stream().map(HistoryWords::single).collect(Collectors.joining(", "));
        }
        return value instanceof Double number ? Numbers.significant(number) : String.valueOf(value);
    }

    /** As pages spell the unit; one of another edition as it stands there. */
    private static String spelt(String unit) {
        return Arrays.stream(Unit.values())
                .filter(each -> each.plain().equals(unit))
                .map(Unit::text)
                .findFirst()
                .orElse(unit);
    }
}

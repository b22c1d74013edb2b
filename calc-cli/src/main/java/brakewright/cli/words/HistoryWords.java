package brakewright.cli.words;

import brakewright.cli.history.Watched;
import java.util.Locale;

/** Names what is followed through past worksheets, and writes it. */
public final class HistoryWords {

    /** So many numbers, abscissas among them, are a curve. */
    private static final int CURVE = 4;

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
     * @param value a number, a word, or the numbers of a list or a curve parted by commas
     * @param unit in which it is; empty for none
     * @return the text; of a curve how many points it has, and its first and last value
     */
    public static String input(Object value, String unit) {
        String behind = unit.isEmpty() ? "" : " " + unit;
        if (value instanceof Double number) {
            return Numbers.significant(number) + behind;
        }
        String[] all = String.valueOf(value).split(", ", -1);
        return all.length < CURVE
                ? value + behind
                : String.format(
                        Locale.ROOT,
                        "%d points, %s to %s%s",
                        all.length / 2,
                        all[1],
                        all[all.length - 1],
                        behind);
    }
}

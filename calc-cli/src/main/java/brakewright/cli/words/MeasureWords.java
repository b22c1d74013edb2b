package brakewright.cli.words;

import brakewright.profile.Measure;
import brakewright.profile.Quantity;
import brakewright.profile.Reading;
import brakewright.review.BrakeVerdict;
import brakewright.review.Verdict;
import brakewright.road.Gravity;
import java.math.BigDecimal;
import java.util.OptionalDouble;

/** What the rows of a comparison are called, and how their values are written. */
public final class MeasureWords {

    /** From ten times the limit on no share of it is written. */
    private static final double FAR_OVER = 0.9;

    private static final double METRES_PER_KILOMETRE = 1000.0;
    private static final double METRES_PER_MILE = 1609.344;

    private final UnitSystem units;

    /**
     * Makes the words.
     *
     * @param units for speeds and distances
     */
    public MeasureWords(UnitSystem units) {
        this.units = units;
    }

    /**
     * Returns the name by which a row is chosen.
     *
     * @param measure the row
     * @return the key of its quantity, and the speed in whole km/h where there is one, or {@code
     *     own}
     */
    public static String key(Measure measure) {
        return measure.quantity().key()
                + (measure.isAtOwnSpeed() ? "@own" : "")
                + (measure.speed().isPresent() && measure.quantity() != Quantity.HOTTEST_WINDING
                        ? "@" + Numbers.nearest(3.6 * measure.speed().getAsDouble(), 0)
                        : "");
    }

    /**
     * Returns what a row is called.
     *
     * @param measure the row
     * @return a noun of at most 28 letters
     */
    public String label(Measure measure) {
        String at =
                measure.speed().isPresent()
                        ? Numbers.nearest(units.speed(measure.speed().getAsDouble()), 0)
                                + " "
                                + units.speedUnit()
                        : "own speed";
        return switch (measure.quantity()) {
            case MOTOR_DRIVE_CURRENT -> "motor drive current";
            case MOTOR_BRAKE_CURRENT -> "motor brake current";
            case PACK_DISCHARGE_CURRENT -> "pack discharge current";
            case PACK_REGEN_CURRENT -> "pack regen current";
            case LOW_TAPER_BEGINS -> "low-voltage taper begins";
            case LOW_TAPER_ENDS -> "low-voltage taper ends";
            case HIGH_TAPER_BEGINS -> "high-voltage taper begins";
            case HIGH_TAPER_ENDS -> "high-voltage taper ends";
            case SPEED_CAP -> "speed cap";
            case VERDICT -> "verdict";
            case SEVERITY -> "worst check";
            case SAFE_CHARGE -> "brake safe up to charge";
            case BRAKE_WEAKEST -> "weakest brake";
            case BRAKE_WEAKEST_WET -> "weakest brake, wet";
            case GREATEST_RETURN -> "highest pack return";
            case GREATEST_DRAW -> "highest pack draw";
            case STOP_DRY -> "stop from " + at + ", dry";
            case STOP_WET -> "stop from " + at + ", wet";
            case TOP_SPEED -> "top speed for 10 s";
            case TOP_SPEED_LASTING -> "top speed, lasting";
            case LAUNCH -> "launch";
            case TIME_TO_CRUISE -> "time to " + at;
            case CLIMB -> "steepest climb";
            case HOTTEST_WINDING ->
                    measure.isAtOwnSpeed() ? "hottest winding, own speed" : "hottest winding";
            case RANGE -> "range at " + at;
        };
    }

    /**
     * Writes a value.
     *
     * @param quantity what it is
     * @param value the value; empty where it is not set or not computed
     * @return the value and its unit
     */
    public String value(Quantity quantity, OptionalDouble value) {
        if (value.isEmpty()) {
            return quantity.isSetting() ? "not set" : "-";
        }
        double number = value.getAsDouble();
        if (Double.isInfinite(number)) {
            return "any";
        }
        return switch (quantity) {
            case VERDICT -> outcome(number).key().replace('-', ' ');
            case SEVERITY -> severity(number);
            case SAFE_CHARGE -> number > 0.0 ? Numbers.down(100.0 * number, 1) + " %" : "at none";
            case CLIMB -> Numbers.down(100.0 * number, 1) + " %";
            case STOP_DRY, STOP_WET -> units.lengthText(number);
            case TOP_SPEED, TOP_SPEED_LASTING, SPEED_CAP -> units.speedText(number);
            case RANGE -> distance(number, 1);
            case LAUNCH, BRAKE_WEAKEST, BRAKE_WEAKEST_WET -> acceleration(units, number);
            case TIME_TO_CRUISE -> Numbers.nearest(number, 1) + " s";
            case HOTTEST_WINDING -> Numbers.nearest(number, 0) + " °C";
            default -> quantity.unit().behind(Numbers.nearest(number, 1));
        };
    }

    /**
     * Writes how a value differs from another, without the unit: the difference of the two numbers
     * as they are written, so that whoever reads both finds the same.
     *
     * @param quantity what both are
     * @param value the value; empty where it is not set or not computed
     * @param from the value that it is held against; likewise
     * @return a signed number, or nothing where it would be zero or say nothing
     */
    public String difference(Quantity quantity, OptionalDouble value, OptionalDouble from) {
        if (value.isEmpty()
                || from.isEmpty()
                || !Double.isFinite(value.getAsDouble() - from.getAsDouble())
                || quantity == Quantity.VERDICT
                || quantity == Quantity.SEVERITY) {
            return "";
        }
        BigDecimal difference = written(quantity, value).subtract(written(quantity, from));
        return switch (difference.signum()) {
            case 0 -> "";
            case 1 -> "+" + difference.toPlainString();
            default -> difference.toPlainString();
        };
    }

    /** The number that stands before the unit; where a word stands instead, it says none. */
    private BigDecimal written(Quantity quantity, OptionalDouble value) {
        String text = value(quantity, value);
        return quantity == Quantity.SAFE_CHARGE && value.orElseThrow() <= 0.0
                ? BigDecimal.ZERO
                : new BigDecimal(text.substring(0, text.indexOf(' ')));
    }

    /**
     * Writes an acceleration.
     *
     * @param units the units
     * @param metresPerSecondSquared [m/s²]
     * @return m/s², or with miles a multiple of gravity
     */
    public static String acceleration(UnitSystem units, double metresPerSecondSquared) {
        return units == UnitSystem.IMPERIAL
                ? Numbers.nearest(metresPerSecondSquared / Gravity.STANDARD, 2) + " g"
                : Numbers.nearest(metresPerSecondSquared, 2) + " m/s²";
    }

    /**
     * Writes what holds a value down, or where it belongs.
     *
     * @param quantity of what
     * @param reading the value
     * @return some words; empty where there is nothing to say
     */
    public String remark(Quantity quantity, Reading reading) {
        if (reading.speed().isPresent()) {
            return "at " + units.speedText(reading.speed().getAsDouble());
        }
        if (reading.boundBy().isPresent()) {
            return LimitWords.brief(reading.boundBy().get())
                    + (quantity == Quantity.SEVERITY ? at(reading) : "");
        }
        if (reading.brake().isPresent()) {
            BrakeVerdict.Word word = reading.brake().get();
            return word.key() + (word == BrakeVerdict.Word.ENOUGH ? "" : at(reading));
        }
        boolean telling =
                quantity == Quantity.GREATEST_RETURN || quantity == Quantity.GREATEST_DRAW;
        return telling && reading.charge().isPresent() ? at(reading).strip() + " charge" : "";
    }

    private static String at(Reading reading) {
        return reading.charge().isPresent()
                ? " at " + Numbers.percent(reading.charge().getAsDouble())
                : "";
    }

    /**
     * Returns the outcome that stands at a place.
     *
     * @param place 0, 1 or 2
     * @return the outcome
     */
    public static Verdict.Outcome outcome(double place) {
        return Verdict.Outcome.values()[(int) place];
    }

    private static String severity(double severity) {
        if (severity == 0.0) {
            return "on its limit";
        }
        if (severity > FAR_OVER) {
            return "far over";
        }
        double percent = 100.0 * Quantity.SEVERITY.read(severity);
        return percent > 0.0
                ? Numbers.up(percent, 0) + " % over"
                : Numbers.down(-percent, 0) + " % below limit";
    }

    private String distance(double metres, int decimals) {
        return units == UnitSystem.IMPERIAL
                ? Numbers.nearest(metres / METRES_PER_MILE, decimals) + " mi"
                : Numbers.nearest(metres / METRES_PER_KILOMETRE, decimals) + " km";
    }
}

package brakewright.cli.words;

import brakewright.spec.Taper;
import java.util.OptionalDouble;

/** Writes settings as a person enters them. */
public final class EnteredWords {

    private EnteredWords() {}

    /**
     * Writes a current: to a tenth, below 1 A to a hundredth.
     *
     * @param value [A]
     * @return with its unit
     */
    public static String amperes(double value) {
        return Numbers.nearest(value, value < 1.0 ? 2 : 1) + " A";
    }

    /**
     * Writes a current that may not be set.
     *
     * @param value [A]
     * @return with its unit, or that it is not set
     */
    public static String amperes(OptionalDouble value) {
        return value.isPresent() ? amperes(value.getAsDouble()) : "not set";
    }

    /**
     * Writes where a taper begins and ends, where there is little room.
     *
     * @param taper the taper
     * @return with their unit
     */
    public static String voltsInBrief(Taper taper) {
        return Numbers.nearest(taper.begins(), 1) + "–" + Numbers.nearest(taper.ends(), 1) + " V";
    }

    /**
     * Writes where a taper begins and ends.
     *
     * @param taper the taper
     * @return with their unit
     */
    public static String volts(Taper taper) {
        return Numbers.nearest(taper.begins(), 1)
                + " to "
                + Numbers.nearest(taper.ends(), 1)
                + " V";
    }
}

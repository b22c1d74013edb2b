package brakewright.buildfile;

import brakewright.assembly.Quantity;

/**
 * One number and the range in which it lies, in calculation units.
 *
 * @param place where it stands
 * @param nominal its nominal value
 * @param low the lowest it may be
 * @param high the highest it may be
 */
public record Spread(InputPlace place, double nominal, double low, double high) {

    /** As far to either side, cut to what is physically possible. */
    static Spread about(InputPlace place, Quantity quantity) {
        Schema.Entry entry = Schema.of(place.input());
        double value = quantity.value();
        return new Spread(
                place,
                value,
                Math.max(entry.low(), value - quantity.tolerance()),
                Math.min(entry.high(), value + quantity.tolerance()));
    }
}

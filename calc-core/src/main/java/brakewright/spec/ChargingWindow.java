package brakewright.spec;

/**
 * When how much of the rated charge current is permitted: the cell temperatures, the band above the
 * lower end in which only a share of it is, and the share at each charge state.
 *
 * @param lowestC no charging below [°C]
 * @param highestC no charging above [°C], above {@code lowestC}
 * @param coldBandK width of the cold band above {@code lowestC} [K], not negative
 * @param coldShare share of the charge current permitted in the cold band [1], from 0 to 1
 * @param shareByCharge share of it over the charge state [1]; above 0 and at most 1
 */
public record ChargingWindow(
        double lowestC, double highestC, double coldBandK, double coldShare, Curve shareByCharge) {

    /** The same share at every charge state: all of it. */
    public static final Curve WHATEVER_THE_CHARGE = Curve.constant(1.0);

    /**
     * Validates the window.
     *
     * @throws IllegalArgumentException if the temperatures do not ascend, or a number or a share is
     *     outside its range
     */
    public ChargingWindow {
        Require.ascending("charging temperatures", lowestC, highestC, Unit.CELSIUS);
        Require.notNegative("cold band", coldBandK, Unit.KELVIN);
        Require.within("share of charge current in the cold band", coldShare, 0.0, 1.0, Unit.RATIO);
        Require.positive("share of charge current by charge", shareByCharge.least(), Unit.RATIO);
        for (double share : shareByCharge.ordinates()) {
            Require.within("share of charge current by charge", share, 0.0, 1.0, Unit.RATIO);
        }
    }

    /**
     * Returns the share of the rated charge current permitted at a temperature.
     *
     * @param temperatureC the cell temperature [°C]
     * @return 0 outside the window, the cold share in the cold band, else 1
     * @throws IllegalArgumentException if the temperature is NaN
     */
    public double shareAt(double temperatureC) {
        Require.number("cell temperature", temperatureC, Unit.CELSIUS);
        if (!(temperatureC >= lowestC && temperatureC <= highestC)) {
            return 0.0;
        }
        return temperatureC < lowestC + coldBandK ? coldShare : 1.0;
    }

    /**
     * Returns whether the rated charge current is permitted up to full.
     *
     * @return false where it falls at any charge state
     */
    public boolean isWhateverTheCharge() {
        return shareByCharge.least() == 1.0;
    }
}

package brakewright.spec;

/**
 * The cell temperatures at which discharging is permitted.
 *
 * @param lowestC no discharging below [°C]
 * @param highestC no discharging above [°C], above {@code lowestC}
 */
public record DischargingWindow(double lowestC, double highestC) {

    /**
     * Validates the window.
     *
     * @throws IllegalArgumentException if the temperatures do not ascend
     */
    public DischargingWindow {
        Require.ascending("discharging temperatures", lowestC, highestC, Unit.CELSIUS);
    }

    /**
     * Returns whether discharging is permitted at a temperature.
     *
     * @param temperatureC the cell temperature [°C]
     * @return true inside the window, ends included
     * @throws IllegalArgumentException if the temperature is NaN
     */
    public boolean contains(double temperatureC) {
        Require.number("cell temperature", temperatureC, Unit.CELSIUS);
        return temperatureC >= lowestC && temperatureC <= highestC;
    }
}

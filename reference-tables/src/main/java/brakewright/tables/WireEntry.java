package brakewright.tables;

/**
 * A size of copper wire.
 *
 * @param size as it is named in trade, for example {@code 8 AWG} or {@code 10 mm²}
 * @param isMetric true for sizes named by area, false for American wire gauge
 * @param areaMm2 cross-section of the copper [mm²]
 * @param resistancePerMetre of one conductor at 20 °C [Ω/m]
 * @param ampacity continuous current of one conductor in free air of 30 °C [A]
 */
public record WireEntry(
        String size,
        boolean isMetric,
        double areaMm2,
        Figure resistancePerMetre,
        Figure ampacity) {}

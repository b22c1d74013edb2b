package brakewright.cli.text;

import brakewright.battery.BatteryModel;
import brakewright.worksheet.Worksheet;

/** A view as none may be: it works a voltage out. */
public final class CalculatingView {

    private CalculatingView() {}

    /**
     * Breaks the rule.
     *
     * @param sheet what should hold the number
     * @return a text
     */
    public static String text(Worksheet sheet) {
        return "" + new BatteryModel(sheet.build().battery()).openCircuitVoltage(1.0);
    }
}

package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import java.util.Arrays;
import java.util.List;

/** The pack at charge states of one's own choice. */
public final class PackRows {

    private PackRows() {}

    /**
     * Computes the pack.
     *
     * @param sheet the vehicle
     * @param charges the charge states [1]
     * @return one row for each, in their order
     */
    public static List<PackRow> at(Worksheet sheet, double... charges) {
        BatteryModel model = sheet.limits().battery();
        return Arrays.stream(charges)
                .mapToObj(
                        charge ->
                                PackRow.at(
                                        charge,
                                        sheet.build(),
                                        model,
                                        sheet.limits(),
                                        sheet.operation()))
                .toList();
    }
}

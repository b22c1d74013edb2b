package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.limit.Severity;
import brakewright.powertrain.PackState;

/**
 * The most that braking sends into the packs at one charge state, at any speed in use.
 *
 * @param charge the charge state [1]
 * @param mayTake what they may take there, with the proposal [A]
 * @param flows what is sent, as it is judged: a taper too narrow to hold is not counted
 */
public record ReturnRow(double charge, double mayTake, Both<Flow> flows) {

    /**
     * A current into the packs.
     *
     * @param current of all packs together [A]
     * @param cellCurrent of each cell [A]
     * @param cellVoltage of the cells in the worst group [V]
     * @param isExceeded whether it is more than the packs may take
     */
    public record Flow(double current, double cellCurrent, double cellVoltage, boolean isExceeded) {

        private static Flow of(
                Worksheet sheet, BatteryModel model, PackState state, double mayTake) {
            double current =
                    sheet.operation()
                            .trusted(sheet.limits())
                            .brake()
                            .greatestReturn(sheet.operation().topSpeed(), state);
            return new Flow(
                    current,
                    model.cellCurrent(current, state.charge(), state.temperatureC()),
                    model.cellVoltage(current, state.charge(), state.temperatureC()),
                    Severity.isExceeded(current, mayTake));
        }
    }

    /** With the packs of the proposal, cells at their own temperature. */
    static ReturnRow of(Both<Worksheet> sheets, double charge) {
        Limits limits = sheets.proposed().limits();
        BatteryModel model = limits.battery();
        double cellsC = sheets.proposed().build().battery().temperatureC();
        PackState state = PackState.of(model, charge, cellsC);
        double mayTake = limits.packRegen().valueAt(charge, cellsC);
        return new ReturnRow(
                charge, mayTake, sheets.map(sheet -> Flow.of(sheet, model, state, mayTake)));
    }
}

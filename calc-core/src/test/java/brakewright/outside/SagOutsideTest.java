package brakewright.outside;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.powertrain.PackState;
import brakewright.spec.Battery;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.Relaxation;

/** How a cell's voltage lies at rest and under a draw that lasts. */
class SagOutsideTest {

    private static final double MID_CHARGE = 0.5;
    private static final double ROOM_C = 25.0;
    private static final double MILLI = 1e-3;

    @OutsideCheck(
            quantity = "open-circuit voltage between published points",
            source = "cell-curves")
    void readsACellsCurveBetweenItsPoints(OutsideCase check) {
        Curve curve =
                Curve.of(
                        new double[] {check.in("below"), check.in("above")},
                        new double[] {check.in("voltageBelow"), check.in("voltageAbove")});
        PackModel cell = new PackModel(Builds.barePack(cell(curve, 0.01, 0.0, 60.0), 1, 1, 0.0));
        check.agreesWith(cell.openCircuitVoltage(check.in("charge")));
    }

    @OutsideCheck(quantity = "resistance after 30 s", source = "sustained-draw")
    void resistsMoreTheLongerItIsDrawnFrom(OutsideCase check) {
        check.agreesWith(state(check, 3.9, 30.0).resistance() / MILLI);
    }

    @OutsideCheck(quantity = "voltage at the end of a pulse", source = "sustained-draw")
    void sagsInAPulseAsALaboratoryMeasured(OutsideCase check) {
        check.agreesWith(pulsed(check).terminalVoltage(-check.in("current")));
    }

    @OutsideCheck(quantity = "voltage at the end of a returned pulse", source = "sustained-draw")
    void risesInAPulseAsALaboratoryMeasured(OutsideCase check) {
        check.agreesWith(pulsed(check).terminalVoltage(check.in("current")));
    }

    private static PackState pulsed(OutsideCase check) {
        Cell cell =
                cell(Curve.constant(check.in("rest")), MILLI * check.in("tenSeconds"), 0.9, 62.5);
        return PackState.of(model(cell), MID_CHARGE, ROOM_C, 10.0);
    }

    private static PackState state(OutsideCase check, double voltage, double seconds) {
        Cell cell =
                cell(
                        Curve.constant(voltage),
                        MILLI * check.in("tenSeconds"),
                        check.in("rise"),
                        check.in("constant"));
        return PackState.of(model(cell), MID_CHARGE, ROOM_C, seconds);
    }

    private static BatteryModel model(Cell cell) {
        return new BatteryModel(Battery.of(Builds.barePack(cell, 1, 1, 0.0)));
    }

    private static Cell cell(Curve voltage, double resistance, double rise, double constant) {
        return Builds.flatCell(3.7, resistance, 1.5, 4.2)
                .withCapacityAh(33.0)
                .withOpenCircuitVoltage(voltage)
                .withRelaxation(new Relaxation(rise, constant));
    }
}

package brakewright.worksheet;

import brakewright.limit.Limits;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import java.util.Arrays;

/**
 * Currents into the packs over speed at one charge state, braking in full, as they are judged: a
 * taper too narrow to hold is not counted.
 *
 * @param asked with no pack limit, one for each speed; negative when drawn [A]
 * @param sent after it, the high-voltage taper included, against what the packs may take with the
 *     proposal
 */
public record CheckedCurrents(Both<double[]> asked, Both<BrakeRow> sent) {

    static CheckedCurrents of(Both<Worksheet> sheets, double charge, double[] speeds) {
        Limits limits = sheets.proposed().limits();
        double cellsC = sheets.proposed().build().battery().temperatureC();
        PackState state = PackState.of(limits.battery(), charge, cellsC);
        double mayTake = limits.packRegen().valueAt(charge, cellsC);
        Both<ElectricBrake> brakes =
                sheets.map(sheet -> sheet.operation().trusted(sheet.limits()).brake());
        return new CheckedCurrents(
                brakes.map(brake -> asked(brake.settled(state), state, speeds)),
                brakes.map(brake -> BrakeRow.of(brake, state, mayTake, speeds)));
    }

    private static double[] asked(ElectricBrake brake, PackState state, double[] speeds) {
        return Arrays.stream(speeds).map(speed -> brake.askedPackCurrent(speed, state)).toArray();
    }
}

package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The pack at one charge state, its cells at their own temperature.
 *
 * @param charge [1]
 * @param openCircuitVoltage [V]
 * @param resistance at the terminals [Ω]
 * @param cellResistance of one cell, of the first pack where there are several [Ω]
 * @param mayGive highest current out [A]
 * @param giveBoundBy what holds that down
 * @param mayTake highest current in [A]
 * @param takeBoundBy what holds that down
 * @param loadedVoltage at the pack discharge current in effect [V]; empty where the pack cannot
 *     give it
 * @param topSpeed on level road, the speed cap left out
 */
public record PackRow(
        double charge,
        double openCircuitVoltage,
        double resistance,
        double cellResistance,
        double mayGive,
        ConstraintId giveBoundBy,
        double mayTake,
        ConstraintId takeBoundBy,
        OptionalDouble loadedVoltage,
        TopSpeed.Result topSpeed) {

    private static final int STEPS = 20;

    /** Every 5 % from empty to full. */
    static List<PackRow> all(Build build, BatteryModel model, Limits limits, Operation operation) {
        List<PackRow> rows = new ArrayList<>();
        for (int step = 0; step <= STEPS; step++) {
            rows.add(at((double) step / STEPS, build, model, limits, operation));
        }
        return rows;
    }

    static PackRow at(
            double charge, Build build, BatteryModel model, Limits limits, Operation operation) {
        double temperature = build.battery().temperatureC();
        PackState state = PackState.of(model, charge, temperature);
        Limit give = limits.packDischarge().at(charge, temperature);
        Limit take = limits.packRegen().at(charge, temperature);
        double draw = operation.drive().packCurrent();
        double loaded = state.terminalVoltage(-draw);
        return new PackRow(
                charge,
                state.voltage(),
                state.resistance(),
                model.packs().get(0).cellResistance(model.chargeOf(0, charge), temperature),
                give.value(),
                give.binding().id(),
                take.value(),
                take.binding().id(),
                loaded > 0.0 ? OptionalDouble.of(loaded) : OptionalDouble.empty(),
                TopSpeed.find(operation.drive(), RoadLoad.of(build), 0.0, 0.0, state));
    }
}

package brakewright.tables;

import brakewright.assembly.Taken;
import brakewright.assembly.Value;
import brakewright.spec.Input;
import java.util.EnumMap;
import java.util.Map;

/**
 * Which inputs of a vehicle the figures and curves of a cell stand for.
 *
 * @param curves by id
 */
record TakenParts(Map<String, CurveEntry> curves) {

    private static final Map<Input, String> FIGURES =
            Map.ofEntries(
                    Map.entry(Input.CELL_CAPACITY, "capacity"),
                    Map.entry(Input.CELL_DISCHARGE_CURRENT, "discharge_current"),
                    Map.entry(Input.CELL_CHARGE_CURRENT, "charge_current"),
                    Map.entry(Input.CELL_VOLTAGE_MAX, "voltage_max"),
                    Map.entry(Input.CELL_VOLTAGE_MIN, "voltage_min"),
                    Map.entry(Input.CELL_RESISTANCE, "resistance"),
                    Map.entry(Input.CELL_SUSTAINED_RISE, "sustained_rise"),
                    Map.entry(Input.CELL_MASS, "mass"),
                    Map.entry(Input.CELL_DISCHARGE_PULSE, "discharge_pulse"),
                    Map.entry(Input.CELL_CHARGE_PULSE, "charge_pulse"),
                    Map.entry(Input.CELL_PULSE_TIME, "pulse_time"));

    private static final Map<Input, String> PAIRS =
            Map.of(
                    Input.CELL_CHARGE_TEMPERATURE, "charge_temperature",
                    Input.CELL_DISCHARGE_TEMPERATURE, "discharge_temperature");

    Map<Input, Taken> of(CellEntry cell) {
        Map<Input, Taken> all = new EnumMap<>(Input.class);
        Figure capacity = cell.figure("capacity");
        all.put(Input.CELL_CHEMISTRY, taken(new Value.Word(cell.chemistry()), capacity));
        FIGURES.forEach(
                (input, quantity) ->
                        cell.figureIfGiven(quantity)
                                .ifPresent(figure -> all.put(input, figure.taken())));
        PAIRS.forEach(
                (input, quantity) -> {
                    Figure low = cell.figure(quantity + "_low");
                    Figure high = cell.figure(quantity + "_high");
                    all.put(input, taken(new Value.Pair(low.value(), high.value()), low));
                });
        all.put(Input.CELL_OPEN_CIRCUIT_VOLTAGE, curve(cell.openCircuitVoltage()));
        all.put(Input.CELL_RESISTANCE_BY_CHARGE, curve(cell.resistanceByCharge()));
        all.put(Input.CELL_RESISTANCE_BY_TEMPERATURE, curve(cell.resistanceByTemperature()));
        cell.chargeCurrentByCharge()
                .ifPresent(id -> all.put(Input.CELL_CHARGE_CURRENT_BY_CHARGE, curve(id)));
        return all;
    }

    Map<Input, Taken> of(ChemistryEntry chemistry) {
        Map<Input, Taken> all = new EnumMap<>(Input.class);
        all.put(Input.CELL_OPEN_CIRCUIT_VOLTAGE, curve(chemistry.openCircuitVoltage()));
        all.put(Input.CELL_RESISTANCE_BY_CHARGE, curve(chemistry.resistanceByCharge()));
        all.put(Input.CELL_RESISTANCE_INTO_BY_CHARGE, curve(chemistry.resistanceIntoByCharge()));
        all.put(Input.CELL_RESISTANCE_COLD_BY_CHARGE, curve(chemistry.resistanceColdByCharge()));
        all.put(Input.CELL_SUSTAINED_RISE_BY_CHARGE, curve(chemistry.sustainedRiseByCharge()));
        all.put(Input.CELL_RESISTANCE_BY_TEMPERATURE, curve(chemistry.resistanceByTemperature()));
        return all;
    }

    private Taken curve(String id) {
        CurveEntry entry = curves.get(id);
        if (entry == null) {
            throw new IllegalStateException("no curve " + id);
        }
        return new Taken(
                new Value.Points(entry.curve()),
                "",
                entry.source(),
                entry.kind().text(),
                "curve " + id);
    }

    private static Taken taken(Value value, Figure from) {
        return new Taken(value, from.unit(), from.source(), from.kind().text(), from.note());
    }
}

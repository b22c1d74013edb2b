package brakewright.buildfile;

import brakewright.assembly.Value;
import brakewright.assembly.Values;
import brakewright.spec.Input;
import brakewright.tables.Figure;
import brakewright.tables.ReferenceTables;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a build file says of one pack.
 *
 * @param place where
 * @param cell the id of a cell in the tables; empty where the file describes its own
 * @param values by input
 */
record GivenPack(PackPlace place, String cell, Map<Input, Value> values) {

    /** The key that names a cell, in the words of the schema. */
    static final String CELL = "pack.cell";

    String key(Input input) {
        return place.key(input);
    }

    /**
     * Finds a number of the cell: that of the file, else that of the tables.
     *
     * @param input as the file may tell it
     * @param quantity as the tables call it
     * @param tables where the cell is looked up
     * @return the number in calculation units; empty where neither has one
     */
    OptionalDouble ofCell(Input input, String quantity, ReferenceTables tables) {
        OptionalDouble own = new Values(values).optional(input);
        Optional<Figure> listed = tables.cell(cell).flatMap(entry -> entry.figureIfGiven(quantity));
        return own.isEmpty() && listed.isPresent() ? OptionalDouble.of(listed.get().value()) : own;
    }

    /** Its voltage at its maker's highest cell voltage [V]. */
    OptionalDouble fullVoltage(ReferenceTables tables) {
        OptionalDouble series = new Values(values).optional(Input.PACK_SERIES);
        OptionalDouble cell = ofCell(Input.CELL_VOLTAGE_MAX, "voltage_max", tables);
        return series.isPresent() && cell.isPresent()
                ? OptionalDouble.of(series.getAsDouble() * cell.getAsDouble())
                : OptionalDouble.empty();
    }
}

package brakewright.tables;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Joins the list of cells with their figures and sees that none lacks a figure it must have. */
final class CellTable {

    private CellTable() {}

    static Map<String, CellEntry> of(
            List<TableRow> cells,
            List<TableRow> figures,
            Map<String, CurveEntry> curves,
            Map<String, ChemistryEntry> chemistries,
            Sources sources) {
        Map<String, TableRow> rows = new LinkedHashMap<>();
        Map<String, Map<String, Figure>> figuresByCell = new LinkedHashMap<>();
        for (TableRow row : cells) {
            String id = row.requiredText("id");
            row.putNew(rows, "id", id, row);
            figuresByCell.put(id, new LinkedHashMap<>());
        }
        for (TableRow row : figures) {
            Map<String, Figure> ofCell = figuresByCell.get(row.requiredText("cell"));
            if (ofCell == null) {
                throw row.fault("cell", "the id of a cell");
            }
            CellQuantity quantity =
                    row.oneOf(
                            "quantity",
                            CellQuantity.parse(row.requiredText("quantity")),
                            "a quantity of cells");
            row.putNew(ofCell, "quantity", quantity.key(), figure(row, quantity, sources));
        }
        Map<String, CellEntry> entries = new LinkedHashMap<>();
        rows.forEach(
                (id, row) -> {
                    Map<String, Figure> ofCell = figuresByCell.getOrDefault(id, Map.of());
                    checkFigures(row, ofCell);
                    entries.put(id, entry(row, ofCell, curves, chemistries));
                });
        return entries;
    }

    private static Figure figure(TableRow row, CellQuantity quantity, Sources sources) {
        if (!row.requiredText("unit").equals(quantity.unit())) {
            throw row.fault("unit", quantity.unit());
        }
        double value = quantity.mustBePositive() ? row.positive("value") : row.number("value");
        return sources.figure(row, value, quantity.unit());
    }

    private static CellEntry entry(
            TableRow row,
            Map<String, Figure> figures,
            Map<String, CurveEntry> curves,
            Map<String, ChemistryEntry> chemistries) {
        String chemistry = row.requiredText("chemistry");
        if (!chemistries.containsKey(chemistry)) {
            throw row.fault("chemistry", "the id of a chemistry");
        }
        return new CellEntry(
                row.requiredText("id"),
                row.requiredText("name"),
                chemistry,
                CurveColumns.openCircuitVoltage(row, curves),
                CurveColumns.resistanceByCharge(row, curves),
                CurveColumns.resistanceByTemperature(row, curves),
                CurveColumns.chargeCurrentByCharge(row, curves),
                Collections.unmodifiableMap(figures));
    }

    private static void checkFigures(TableRow row, Map<String, Figure> figures) {
        for (CellQuantity quantity : CellQuantity.values()) {
            if (quantity.isRequired() && !figures.containsKey(quantity.key())) {
                throw row.fault("id", "a cell with a figure for " + quantity.key());
            }
        }
        checkAscending(row, figures, CellQuantity.VOLTAGE_MIN, CellQuantity.VOLTAGE_MAX);
        checkAscending(
                row,
                figures,
                CellQuantity.CHARGE_TEMPERATURE_LOW,
                CellQuantity.CHARGE_TEMPERATURE_HIGH);
        checkAscending(
                row,
                figures,
                CellQuantity.DISCHARGE_TEMPERATURE_LOW,
                CellQuantity.DISCHARGE_TEMPERATURE_HIGH);
        boolean hasPulse =
                figures.containsKey(CellQuantity.DISCHARGE_PULSE.key())
                        || figures.containsKey(CellQuantity.CHARGE_PULSE.key());
        if (hasPulse != figures.containsKey(CellQuantity.PULSE_TIME.key())) {
            throw row.fault("id", "a cell with both a pulse current and a pulse time, or neither");
        }
    }

    private static void checkAscending(
            TableRow row, Map<String, Figure> figures, CellQuantity low, CellQuantity high) {
        Figure lower = figures.get(low.key());
        Figure upper = figures.get(high.key());
        if (lower == null || upper == null || !(lower.value() < upper.value())) {
            throw row.fault("id", "a cell whose " + low.key() + " is below its " + high.key());
        }
    }
}

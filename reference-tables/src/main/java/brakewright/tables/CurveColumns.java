package brakewright.tables;

import java.util.Map;
import java.util.Optional;

/** Reads the columns in which cells and chemistries name their curves. */
final class CurveColumns {

    private CurveColumns() {}

    static String openCircuitVoltage(TableRow row, Map<String, CurveEntry> curves) {
        return id(row, "open_circuit_voltage", CurveQuantity.OPEN_CIRCUIT_VOLTAGE, curves);
    }

    static String resistanceByCharge(TableRow row, Map<String, CurveEntry> curves) {
        return id(row, "resistance_by_charge", CurveQuantity.RESISTANCE_BY_CHARGE, curves);
    }

    static String resistanceIntoByCharge(TableRow row, Map<String, CurveEntry> curves) {
        return id(
                row, "resistance_into_by_charge", CurveQuantity.RESISTANCE_INTO_BY_CHARGE, curves);
    }

    static String resistanceColdByCharge(TableRow row, Map<String, CurveEntry> curves) {
        return id(
                row, "resistance_cold_by_charge", CurveQuantity.RESISTANCE_COLD_BY_CHARGE, curves);
    }

    static String sustainedRiseByCharge(TableRow row, Map<String, CurveEntry> curves) {
        return id(row, "sustained_rise_by_charge", CurveQuantity.SUSTAINED_RISE_BY_CHARGE, curves);
    }

    static String resistanceByTemperature(TableRow row, Map<String, CurveEntry> curves) {
        return id(
                row, "resistance_by_temperature", CurveQuantity.RESISTANCE_BY_TEMPERATURE, curves);
    }

    /** Empty for a cell whose rating holds up to full. */
    static Optional<String> chargeCurrentByCharge(TableRow row, Map<String, CurveEntry> curves) {
        return row.text("charge_current_by_charge").isEmpty()
                ? Optional.empty()
                : Optional.of(
                        id(
                                row,
                                "charge_current_by_charge",
                                CurveQuantity.CHARGE_CURRENT_BY_CHARGE,
                                curves));
    }

    private static String id(
            TableRow row, String column, CurveQuantity quantity, Map<String, CurveEntry> curves) {
        String id = row.requiredText(column);
        CurveEntry curve = curves.get(id);
        if (curve == null || curve.quantity() != quantity) {
            throw row.fault(column, "the id of a curve of " + quantity.text());
        }
        return id;
    }
}

package brakewright.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads the tables whose rows each stand alone: chemistries, wires, plugs and fuses. */
final class PartTables {

    private PartTables() {}

    static Map<String, ChemistryEntry> chemistries(
            List<TableRow> rows, Map<String, CurveEntry> curves, Sources sources) {
        Map<String, ChemistryEntry> entries = new LinkedHashMap<>();
        for (TableRow row : rows) {
            String id = row.requiredText("id");
            String source = sources.sourceIn(row, "source");
            row.putNew(
                    entries,
                    "id",
                    id,
                    new ChemistryEntry(
                            id,
                            row.requiredText("name"),
                            CurveColumns.openCircuitVoltage(row, curves),
                            CurveColumns.resistanceByCharge(row, curves),
                            CurveColumns.resistanceIntoByCharge(row, curves),
                            CurveColumns.resistanceColdByCharge(row, curves),
                            CurveColumns.sustainedRiseByCharge(row, curves),
                            CurveColumns.resistanceByTemperature(row, curves),
                            source,
                            sources.kindIn(row, "kind", source),
                            row.text("note")));
        }
        return entries;
    }

    /** The wires by their size as {@link #wireKey} spells it. */
    static Map<String, WireEntry> wires(List<TableRow> rows, Sources sources) {
        Map<String, WireEntry> entries = new LinkedHashMap<>();
        for (TableRow row : rows) {
            String size = row.requiredText("size");
            String system = row.requiredText("system");
            if (!system.equals("awg") && !system.equals("metric")) {
                throw row.fault("system", "awg or metric");
            }
            double resistance = row.positive("resistance_ohm_per_m");
            double ampacity = row.positive("ampacity_a");
            row.putNew(
                    entries,
                    "size",
                    wireKey(size),
                    new WireEntry(
                            size,
                            system.equals("metric"),
                            row.positive("area_mm2"),
                            sources.figure(
                                    row,
                                    resistance,
                                    "ohm/m",
                                    "resistance_source",
                                    "resistance_kind"),
                            sources.figure(
                                    row, ampacity, "A", "ampacity_source", "ampacity_kind")));
        }
        return entries;
    }

    /** A size without blanks, in lower case, its area in mm2: {@code 8awg}, {@code 10mm2}. */
    static String wireKey(String size) {
        return size.replace(" ", "").replace('²', '2').toLowerCase(Locale.ROOT);
    }

    static Map<String, PlugEntry> plugs(List<TableRow> rows, Sources sources) {
        Map<String, PlugEntry> entries = new LinkedHashMap<>();
        for (TableRow row : rows) {
            String id = row.requiredText("id");
            String source = sources.sourceIn(row, "source");
            row.putNew(
                    entries,
                    "id",
                    id,
                    new PlugEntry(
                            id,
                            row.requiredText("name"),
                            row.positive("current_a"),
                            row.positiveIfGiven("peak_a"),
                            row.positiveIfGiven("voltage_v"),
                            row.positiveIfGiven("resistance_ohm"),
                            antiSpark(row),
                            source,
                            sources.kindIn(row, "kind", source),
                            row.text("note")));
        }
        return entries;
    }

    private static boolean antiSpark(TableRow row) {
        return switch (row.requiredText("anti_spark")) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw row.fault("anti_spark", "yes or no");
        };
    }

    static Map<String, FuseFamily> fuseFamilies(List<TableRow> rows, Sources sources) {
        Map<String, FuseFamily> entries = new LinkedHashMap<>();
        for (TableRow row : rows) {
            String id = row.requiredText("family");
            String source = sources.sourceIn(row, "source");
            double share = row.positive("continuous_share");
            if (share > 1.0) {
                throw row.fault("continuous_share", "at most 1");
            }
            row.putNew(
                    entries,
                    "family",
                    id,
                    new FuseFamily(
                            id,
                            row.positive("voltage_rating_v"),
                            row.positive("current_max_a"),
                            row.positive("breaking_capacity_a"),
                            share,
                            source,
                            sources.kindIn(row, "kind", source),
                            row.text("note")));
        }
        return entries;
    }
}

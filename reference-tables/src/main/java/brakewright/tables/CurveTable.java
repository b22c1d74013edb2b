package brakewright.tables;

import brakewright.spec.Curve;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Gathers the rows of each curve: one point per row, the points of a curve together. */
final class CurveTable {

    private final Sources sources;
    private final Map<String, CurveEntry> curves = new LinkedHashMap<>();
    private final List<TableRow> points = new ArrayList<>();

    private CurveTable(Sources sources) {
        this.sources = sources;
    }

    static Map<String, CurveEntry> of(List<TableRow> rows, Sources sources) {
        CurveTable table = new CurveTable(sources);
        String id = "";
        for (TableRow row : rows) {
            String next = row.requiredText("curve");
            if (!next.equals(id)) {
                table.close(id);
                id = next;
            }
            table.points.add(row);
        }
        table.close(id);
        return table.curves;
    }

    private void close(String id) {
        if (points.isEmpty()) {
            return;
        }
        TableRow first = points.get(0);
        CurveQuantity quantity = quantityIn(first);
        double[] abscissas = new double[points.size()];
        double[] ordinates = new double[points.size()];
        Set<String> named = new LinkedHashSet<>();
        SourceKind kind = SourceKind.PUBLISHED;
        for (int i = 0; i < points.size(); i++) {
            TableRow row = points.get(i);
            if (quantityIn(row) != quantity) {
                throw row.fault("quantity", "the quantity of the curve's first row");
            }
            abscissas[i] = row.number("x");
            if (quantity.isOverCharge() && !(abscissas[i] >= 0.0 && abscissas[i] <= 1.0)) {
                throw row.fault("x", "a charge fraction from 0 to 1");
            }
            ordinates[i] = quantity.isFurtherShare() ? row.notNegative("y") : row.positive("y");
            if (i > 0) {
                checkStep(row, quantity, abscissas, ordinates, i);
            }
            String source = sources.sourceIn(row, "source");
            named.add(source);
            kind = SourceKind.weaker(kind, sources.kindIn(row, "kind", source));
        }
        if (points.size() < 2) {
            throw first.fault("curve", "at least two points");
        }
        Curve curve = Curve.of(abscissas, ordinates);
        first.putNew(
                curves, "curve", id, new CurveEntry(id, quantity, curve, List.copyOf(named), kind));
        points.clear();
    }

    private static CurveQuantity quantityIn(TableRow row) {
        return row.oneOf(
                "quantity",
                CurveQuantity.parse(row.requiredText("quantity")),
                Arrays.stream(CurveQuantity.values())
                        .map(CurveQuantity::text)
                        .collect(Collectors.joining(", ")));
    }

    private static void checkStep(
            TableRow row, CurveQuantity quantity, double[] abscissas, double[] ordinates, int i) {
        if (!(abscissas[i - 1] < abscissas[i])) {
            throw row.fault("x", "more than the row before");
        }
        if (quantity == CurveQuantity.OPEN_CIRCUIT_VOLTAGE && ordinates[i] < ordinates[i - 1]) {
            throw row.fault("y", "a voltage that does not fall as charge rises");
        }
        if (quantity == CurveQuantity.CHARGE_CURRENT_BY_CHARGE && ordinates[i] > ordinates[i - 1]) {
            throw row.fault("y", "a share that does not rise with the charge");
        }
        if (quantity == CurveQuantity.RESISTANCE_BY_TEMPERATURE
                && ordinates[i] > ordinates[i - 1]) {
            throw row.fault("y", "a resistance that does not rise with temperature");
        }
    }
}

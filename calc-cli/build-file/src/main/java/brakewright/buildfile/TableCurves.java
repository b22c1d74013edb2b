package brakewright.buildfile;

import brakewright.spec.Curve;
import brakewright.tables.CurveEntry;
import brakewright.tables.ReferenceTables;
import java.util.List;
import java.util.Optional;

/**
 * The curves of the reference tables.
 *
 * @param tables the tables
 */
record TableCurves(ReferenceTables tables) implements ValueReader.CurveTable {

    @Override
    public Optional<Curve> curve(String id, String quantity) {
        return tables.curve(id)
                .filter(entry -> entry.quantity().text().equals(quantity))
                .map(CurveEntry::curve);
    }

    @Override
    public List<String> ids(String quantity) {
        return tables.curves().stream()
                .filter(entry -> entry.quantity().text().equals(quantity))
                .map(CurveEntry::id)
                .toList();
    }
}

package brakewright.buildfile;

import brakewright.assembly.InputSet;
import brakewright.assembly.PackCompletion;
import brakewright.tables.CellEntry;
import brakewright.tables.ReferenceTables;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Looks up in the tables what a build file names of one pack. */
final class PackResolver {

    /** Of what the file itself says. */
    static final String BUILD_FILE = "build-file";

    private final ReferenceTables tables;
    private final Given given;
    private final GivenPack pack;
    private final List<Problem> problems;
    private final InputSet inputs;
    private final WiringResolver wiring;

    PackResolver(
            ReferenceTables tables,
            Given given,
            GivenPack pack,
            InputSet whole,
            List<Problem> problems) {
        this.tables = tables;
        this.given = given;
        this.pack = pack;
        this.problems = problems;
        this.inputs = whole.ofPack(pack.values(), BUILD_FILE);
        this.wiring =
                new WiringResolver(
                        tables, given, pack.place(), WiringResolver.Keys.OF_PACK, inputs, problems);
    }

    PackCompletion completion() {
        return new PackCompletion(inputs, wiring::leads);
    }

    /** Takes from the tables what the file names: the cell, the wire and the plug. */
    void lookUp() {
        if (!inputs.lookUpCell(pack.cell())) {
            tellUnknownCell();
        }
        wiring.lookUp();
    }

    private void tellUnknownCell() {
        String key = pack.place().key(GivenPack.CELL);
        problems.add(
                new Problem(
                        given.line(key),
                        key,
                        String.format(Locale.ROOT, "\"%s\" is no cell of the tables", pack.cell()),
                        given.spelling().table(pack.place(), GivenPack.CELL)
                                + ", or one of "
                                + tables.cells().stream()
                                        .map(CellEntry::id)
                                        .collect(Collectors.joining(", "))));
    }
}

package brakewright.cli;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputNumber;
import brakewright.buildfile.internal.Nearest;
import brakewright.cli.text.TablesText;
import brakewright.spec.Input;
import brakewright.tables.CellEntry;
import brakewright.tables.CellQuantity;
import brakewright.tables.ReferenceTables;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what the reference tables hold. */
@Command(
        name = "tables",
        description = "Show what the reference tables hold: cells, wires, plugs, fuses, sources.",
        mixinStandardHelpOptions = true)
final class TablesCommand implements Callable<Integer> {

    /** Assumption: our own choice; who looks for a cell like another wants a handful. */
    private static final int NEAR = 10;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "NAME",
            completionCandidates = Offered.Tables.class,
            description = {
                "A table, for example cells; or a row by its id, a cell also by the print on its"
                        + " wrap. Without it the tables are named."
            })
    String name = "";

    @Option(
            names = "--find",
            paramLabel = "WORD",
            description = "Only cells whose id or print has this in it.")
    String word = "";

    @Option(
            names = "--capacity",
            paramLabel = "AH",
            description = "Cells nearest to this capacity first, for example 3Ah.")
    String capacity = "";

    @Option(
            names = "--current",
            paramLabel = "A",
            description = "Cells nearest to this continuous discharge current first, as 15A.")
    String current = "";

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        ReferenceTables tables = Ahead.tables();
        TablesText text = new TablesText(tables, page.ink());
        spec.commandLine().getOut().print(answer(tables, text));
        return ExitStatus.FINE;
    }

    private String answer(ReferenceTables tables, TablesText text) {
        boolean isSearch = !(word.isBlank() && capacity.isBlank() && current.isBlank());
        if (isSearch) {
            if (!name.isBlank() && !name.equalsIgnoreCase("cells")) {
                throw new Unusable(
                        "--find, --capacity and --current look for cells, not in \"" + name + "\"");
            }
            return text.cells(found(tables));
        }
        if (name.isBlank()) {
            return text.overview();
        }
        return text.rows(name.toLowerCase(Locale.ROOT))
                .or(() -> text.one(name))
                .orElseThrow(
                        () ->
                                new Unusable(
                                        "\""
                                                + name
                                                + "\" is no table and no row of one"
                                                + nearest(text.names())));
    }

    private String nearest(List<String> names) {
        return Nearest.to(name.toLowerCase(Locale.ROOT), names)
                .map(nearest -> "; the nearest is " + nearest)
                .orElse("; brakewright tables names them");
    }

    private List<CellEntry> found(ReferenceTables tables) {
        String wanted = bare(word);
        List<CellEntry> cells =
                tables.cells().stream()
                        .filter(
                                cell ->
                                        bare(cell.id()).contains(wanted)
                                                || bare(cell.name()).contains(wanted))
                        .toList();
        if (cells.isEmpty()) {
            throw new Unusable("no cell of the tables has \"" + word + "\" in its id or print");
        }
        OptionalDouble ampereHours = number("--capacity", capacity, Input.CELL_CAPACITY);
        OptionalDouble amperes = number("--current", current, Input.CELL_DISCHARGE_CURRENT);
        if (ampereHours.isEmpty() && amperes.isEmpty()) {
            return cells;
        }
        return cells.stream()
                .sorted(
                        Comparator.comparingDouble(
                                cell ->
                                        apart(cell, CellQuantity.CAPACITY, ampereHours)
                                                + apart(
                                                        cell,
                                                        CellQuantity.DISCHARGE_CURRENT,
                                                        amperes)))
                .limit(NEAR)
                .toList();
    }

    /** By what factor a figure misses what is wanted, as a logarithm. */
    private static double apart(CellEntry cell, CellQuantity quantity, OptionalDouble wanted) {
        return wanted.isEmpty()
                ? 0.0
                : Math.abs(Math.log(cell.figure(quantity.key()).value() / wanted.getAsDouble()));
    }

    private static OptionalDouble number(String option, String text, Input like) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(InputNumber.read(option, like, text));
        } catch (BuildFileException wrong) {
            throw new Unusable("the command line", wrong);
        }
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }
}

package brakewright.buildfile;

import brakewright.assembly.Completed;
import brakewright.assembly.Completion;
import brakewright.assembly.InputSet;
import brakewright.assembly.PackCompletion;
import brakewright.tables.ReferenceTables;
import java.util.List;

/**
 * Completes what a build file says: looks up cells, wire and plugs in the tables, then takes what
 * is left out. Nothing that the file says is replaced.
 */
final class Resolver {

    private final Given given;
    private final List<Problem> problems;
    private final InputSet inputs;
    private final List<PackResolver> packs;
    private final WiringResolver trunk;

    Resolver(ReferenceTables tables, Given given, List<Problem> problems) {
        this.given = given;
        this.problems = problems;
        this.inputs =
                InputSet.ofWhole(
                        tables,
                        given.values(),
                        input -> given.changes().sourceOf(input).orElse(PackResolver.BUILD_FILE));
        this.packs =
                given.packs().stream()
                        .map(pack -> new PackResolver(tables, given, pack, inputs, problems))
                        .toList();
        this.trunk =
                new WiringResolver(
                        tables,
                        given,
                        PackPlace.one(),
                        WiringResolver.Keys.OF_TRUNK,
                        inputs,
                        problems);
    }

    Completed resolve() {
        packs.forEach(PackResolver::lookUp);
        trunk.lookUp();
        List<PackCompletion> told = packs.stream().map(PackResolver::completion).toList();
        return problems.isEmpty()
                ? new Completion(inputs, told, trunk::leads).complete()
                : new Completed(
                        inputs.inputs(), told.stream().map(PackCompletion::inputs).toList());
    }
}

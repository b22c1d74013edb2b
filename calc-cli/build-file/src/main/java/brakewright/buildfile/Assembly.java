package brakewright.buildfile;

import brakewright.assembly.BuildAssembler;
import brakewright.assembly.Completed;
import brakewright.spec.Build;
import brakewright.tables.ReferenceTables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A vehicle made from what is given.
 *
 * @param inputs all of them, those that are filled in too
 * @param build the vehicle
 */
record Assembly(Completed inputs, Build build) {

    /**
     * Makes the vehicle.
     *
     * @throws BuildFileException if what is given does not go together
     */
    static Assembly of(Given given, ReferenceTables tables) throws BuildFileException {
        return of(given, tables, new ArrayList<>());
    }

    /**
     * Makes the vehicle.
     *
     * @param problems what is known to be wrong with it already
     * @throws BuildFileException with all that is wrong, if there is anything
     */
    static Assembly of(Given given, ReferenceTables tables, List<Problem> problems)
            throws BuildFileException {
        new Consistency(given, tables, problems).check();
        Completed inputs = new Resolver(tables, given, problems).resolve();
        stopAt(problems);
        Optional<Build> build =
                new BuildAssembler(
                                given.title(),
                                inputs,
                                given.packs().stream().map(Assembly::keys).toList(),
                                new NotedAttempts(given, problems))
                        .assemble();
        stopAt(problems);
        return new Assembly(inputs, build.orElseThrow());
    }

    private static UnaryOperator<String> keys(GivenPack pack) {
        return pack.place()::key;
    }

    /** Tells everything that is wrong with what is given. */
    static List<Problem> problems(Given given, ReferenceTables tables) {
        try {
            of(given, tables);
            return List.of();
        } catch (BuildFileException wrong) {
            return wrong.problems();
        }
    }

    static void stopAt(List<Problem> problems) throws BuildFileException {
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
    }
}

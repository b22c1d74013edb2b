package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Changes;
import brakewright.buildfile.InputPlace;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** In which situation a question is asked: other settings, another use. */
final class SituationOptions {

    @Option(
            names = "--proposal",
            paramLabel = "NAME",
            description = "Put in what [proposals.NAME] in the build file changes.")
    @Nullable String proposal;

    @Option(
            names = "--with",
            paramLabel = "KEY=VALUE",
            description =
                    "Put in a setting or a key of [use], over the proposal, for example"
                            + " motor_brake_current=42A or use.charge_from=90%%; may be repeated."
                            + " Pairs are written with a comma: high_voltage_taper=40V,42V.")
    String[] with = {};

    /** Whether the question is asked of the file as it stands. */
    boolean isNone() {
        return proposal == null && with.length == 0;
    }

    /** What changes. */
    Changes changes(BuildFile file) {
        Changes typed = typed();
        return proposal == null ? typed : proposal(file, proposal).overlaidBy(typed);
    }

    /** What {@code --with} changes. */
    Changes typed() {
        try {
            return Changes.read(List.of(with));
        } catch (BuildFileException wrong) {
            throw new Unusable("--with", wrong);
        }
    }

    /** What a proposal of a file changes. */
    static Changes proposal(BuildFile file, String name) {
        Changes changes = file.proposals().get(name);
        if (changes == null) {
            throw new Unusable(
                    "\""
                            + name
                            + "\" is no proposal of the file"
                            + (file.proposals().isEmpty()
                                    ? ", which has none"
                                    : "; there are: "
                                            + String.join(", ", file.proposals().keySet())));
        }
        return changes;
    }

    /** What varies cannot be held as well; a proposal may have it, and is then not heeded in it. */
    void refuse(List<InputPlace> varied, String option) {
        for (InputPlace place : varied) {
            if (typed().all().containsKey(place.input())) {
                throw new Unusable(
                        "--with gives "
                                + Changes.keyOf(place.input())
                                + ", which "
                                + option
                                + " varies: leave one of both out");
            }
        }
    }

    /** The file with the changes put in. */
    BuildFile applied(BuildFile file) {
        return applied(file, changes(file));
    }

    /** A file with changes put in. */
    static BuildFile applied(BuildFile file, Changes changes) {
        try {
            return file.with(changes);
        } catch (BuildFileException wrong) {
            throw new Unusable("what is changed does not go with the rest of the file", wrong);
        }
    }
}

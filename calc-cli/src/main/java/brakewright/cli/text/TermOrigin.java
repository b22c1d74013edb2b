package brakewright.cli.text;

import brakewright.assembly.Resolved;
import brakewright.buildfile.BuildFile;
import brakewright.formula.Origin;
import brakewright.formula.Term;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import java.util.function.Function;

/** Tells where a number that was put into a formula comes from. */
final class TermOrigin {

    private final BuildFile file;

    TermOrigin(BuildFile file) {
        this.file = file;
    }

    /**
     * Tells the origin of a term.
     *
     * @param term the term
     * @param pack of which of several packs, or of the whole
     * @param unlike how a term is told that was not given
     * @return the key in the build file, or the source of a default, or what {@code unlike} says
     */
    String of(Term term, WhichPack pack, Function<Origin.Found, String> unlike) {
        return term.origin() instanceof Origin.Given given
                ? of(given.input(), pack)
                : unlike.apply((Origin.Found) term.origin());
    }

    private String of(Input input, WhichPack pack) {
        return file.find(input, pack)
                .map(resolved -> of(resolved, key(input, pack)))
                .orElseGet(() -> key(input, pack));
    }

    private String of(Resolved resolved, String key) {
        if (resolved.from() != Resolved.From.FILE) {
            return resolved.from().key() + ", " + resolved.source();
        }
        return file.changes().all().containsKey(resolved.input())
                ? key + ", " + resolved.source()
                : key;
    }

    /** The key as headings have it; which of several packs stands above the working. */
    private static String key(Input input, WhichPack pack) {
        return pack.isWhole() ? input.key() : input.key().replaceFirst("^pack\\.", "packs.");
    }
}

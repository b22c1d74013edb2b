package brakewright.assembly;

import brakewright.spec.Unit;
import java.util.List;
import java.util.stream.Collectors;

/** What was told makes no vehicle; carries everything that was found wrong with it. */
public final class UnfitBuild extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient List<Misfit> misfits;

    /**
     * One thing that is wrong.
     *
     * @param key the dotted key that it is about, as a build file would call it
     * @param unit of that key
     * @param wrong what is wrong with it
     */
    public record Misfit(String key, Unit unit, String wrong) {

        /**
         * Writes it for a person.
         *
         * @return for example {@code rider.mass [kg]: rider mass must be positive, was -1.0 kg}
         */
        public String told() {
            return key + (unit.text().isEmpty() ? "" : " [" + unit.text() + "]") + ": " + wrong;
        }
    }

    UnfitBuild(List<Misfit> misfits) {
        super(misfits.stream().map(Misfit::told).collect(Collectors.joining("\n")));
        this.misfits = List.copyOf(misfits);
    }

    /**
     * Returns what is wrong.
     *
     * @return at least one thing
     */
    public List<Misfit> misfits() {
        return misfits;
    }
}

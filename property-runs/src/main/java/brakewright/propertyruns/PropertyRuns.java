package brakewright.propertyruns;

import java.util.SplittableRandom;
import java.util.logging.Level;
import java.util.logging.Logger;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Gives every property its seed, made from one base seed and the property's own name: what is drawn
 * for one property depends neither on the others nor on the process they share.
 *
 * <p>The base seed is always the same, unless the system property {@code explore.seed} names
 * another; {@code explore.times} then says how many times as often as usual to try. A failing
 * property is reported by jqwik with its name, its seed and the shrunk sample in either case.
 */
public final class PropertyRuns implements AroundPropertyHook {

    private static final String EXPLORE_SEED = "explore.seed";
    private static final String EXPLORE_TIMES = "explore.times";

    /** Any number does, as long as it stays. */
    private static final long USUAL_SEED = 20_261_128L;

    /** Tries of a property that names no number: the default of jqwik 1.9. */
    private static final int USUAL_TRIES = 1000;

    /** Held here, as the logging of Java forgets a logger that nobody holds. */
    private static final Logger ENGINE = Logger.getLogger("net.jqwik");

    static {
        // It notes that not all combinations of edge cases were tried, which is no news here.
        ENGINE.setLevel(Level.WARNING);
        if (exploring() && "1".equals(System.getProperty("surefire.forkNumber", "1"))) {
            System.out.printf(
                    "Exploring %d times as often, repeated by -Pexplore -D%s=%d%n",
                    times(), EXPLORE_SEED, baseSeed());
        }
    }

    /** Creates the hook; jqwik does. */
    public PropertyRuns() {}

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    @Override
    public PropertyExecutionResult aroundProperty(
            PropertyLifecycleContext context, PropertyExecutor property) {
        PropertyAttributes attributes = context.attributes();
        if (attributes.seed().isEmpty()) {
            attributes.setSeed(seedOf(context));
        }
        if (!attributes.stereotype().filter("Example"::equals).isPresent()) {
            int tries = attributes.tries().orElse(USUAL_TRIES);
            attributes.setTries(tries(tries));
        }
        return property.execute();
    }

    /**
     * Returns how often to try what is drawn by other means than properties.
     *
     * @param usual how often otherwise
     * @return as often, or so many times more in an exploring run
     */
    public static int tries(int usual) {
        return Math.multiplyExact(usual, times());
    }

    /** Whether other seeds than the usual are asked for. */
    static boolean exploring() {
        return System.getProperty(EXPLORE_SEED) != null;
    }

    /** The seed of a property in this run. */
    static String seedOf(PropertyLifecycleContext context) {
        return seedOf(context.containerClass().getName() + '.' + context.targetMethod().getName());
    }

    private static String seedOf(String property) {
        long mixed = baseSeed() ^ ((long) property.hashCode() << Integer.SIZE);
        return Long.toString(new SplittableRandom(mixed).nextLong());
    }

    private static long baseSeed() {
        return Long.getLong(EXPLORE_SEED, USUAL_SEED);
    }

    private static int times() {
        return exploring() ? Integer.getInteger(EXPLORE_TIMES, 1) : 1;
    }
}

package brakewright.mutation;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Lowers the tries of every property, and fixes the seed of those that have none, in a mutation
 * run: each mutant is held against the tests that reach it, thousands of times in all. Without the
 * system property {@code mutation.tries} nothing changes.
 */
public final class FewTries implements AroundPropertyHook {

    private static final Integer TRIES = Integer.getInteger("mutation.tries");

    /** Creates the hook; jqwik does. */
    public FewTries() {}

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    /** Closer to the property than hooks that set tries in other runs, so that this one decides. */
    @Override
    public int aroundPropertyProximity() {
        return 50;
    }

    @Override
    public PropertyExecutionResult aroundProperty(
            PropertyLifecycleContext context, PropertyExecutor property) {
        if (TRIES != null) {
            PropertyAttributes attributes = context.attributes();
            attributes.setTries(Math.min(attributes.tries().orElse(TRIES), TRIES));
            if (attributes.seed().isEmpty()) {
                attributes.setSeed(Integer.toString(context.label().hashCode()));
            }
        }
        return property.execute();
    }
}

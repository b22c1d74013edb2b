package brakewright.propertyruns;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * What holds for the properties of a module, which extends this class once: they run as {@link
 * PropertyRuns} has it, and none names a seed of its own.
 */
public abstract class SeededProperties {

    /** Creates the laws; jqwik does. */
    protected SeededProperties() {}

    @Property(tries = 10)
    @AddLifecycleHook(Witness.class)
    void areDrawnFromTheSeedOfTheRun(@ForAll long drawn) {
        // the witness around it compares
    }

    /** One of its own would hide a property from exploring runs. */
    @Example
    void nameNoSeedOfTheirOwn() throws IOException {
        Path tests = Path.of("target", "test-classes");
        List<String> classes;
        try (Stream<Path> files = Files.walk(tests)) {
            classes =
                    files.map(file -> tests.relativize(file).toString())
                            .filter(name -> name.endsWith("Properties.class"))
                            .map(
                                    name ->
                                            name.replace(".class", "")
                                                    .replace(File.separatorChar, '.'))
                            .toList();
        }
        assertThat(classes).contains(getClass().getName());
        assertThat(classes).flatExtracting(SeededProperties::withOwnSeed).isEmpty();
    }

    private static List<String> withOwnSeed(String name) {
        try {
            ClassLoader loader = Thread.currentThread().getContextClassLoader();
            return Arrays.stream(Class.forName(name, false, loader).getDeclaredMethods())
                    .filter(method -> method.isAnnotationPresent(Property.class))
                    .filter(
                            method ->
                                    !method.getAnnotation(Property.class)
                                            .seed()
                                            .equals(Property.SEED_NOT_SET))
                    .map(Method::toString)
                    .toList();
        } catch (ClassNotFoundException gone) {
            throw new AssertionError(gone);
        }
    }

    /** Looks at the seed that jqwik says it took. */
    static final class Witness implements AroundPropertyHook {

        @Override
        public PropertyExecutionResult aroundProperty(
                PropertyLifecycleContext context, PropertyExecutor property) {
            PropertyExecutionResult result = property.execute();
            assertThat(result.seed()).contains(PropertyRuns.seedOf(context));
            return result;
        }
    }
}

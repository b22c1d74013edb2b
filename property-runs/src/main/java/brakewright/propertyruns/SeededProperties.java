package brakewright.propertyruns;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.nio.file.Path;
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

    @Example
    void nameNoSeedOfTheirOwn() {
        methods()
                .that()
                .areAnnotatedWith(Property.class)
                .should(nameNoSeed())
                .allowEmptyShould(true)
                .check(new ClassFileImporter().importPath(Path.of("target", "test-classes")));
    }

    private static ArchCondition<JavaMethod> nameNoSeed() {
        return new ArchCondition<>("name no seed, which would hide it from exploring runs") {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                String seed = method.getAnnotationOfType(Property.class).seed();
                events.add(
                        new SimpleConditionEvent(
                                method,
                                seed.equals(Property.SEED_NOT_SET),
                                method.getFullName() + " names the seed " + seed));
            }
        };
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

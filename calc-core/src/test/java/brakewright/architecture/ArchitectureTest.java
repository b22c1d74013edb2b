package brakewright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.properties.HasModifiers;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.Architectures;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the library may depend on, and which chapter may read which. */
class ArchitectureTest {

    private static final JavaClasses LIBRARY =
            new ClassFileImporter().importPath(Path.of("target", "classes"));

    @Test
    void thereIsALibraryToLookAt() {
        assertThat(LIBRARY.size()).isGreaterThan(50);
    }

    @Test
    void dependsOnPlainJavaAndCommonsMathAlone() {
        classes()
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "brakewright..",
                        "java.lang",
                        "java.lang.annotation",
                        "java.lang.invoke",
                        "java.lang.runtime",
                        "java.util",
                        "java.util.function",
                        "java.util.stream",
                        "org.jspecify.annotations",
                        "org.apache.commons.math3..",
                        "")
                .check(LIBRARY);
    }

    @Test
    void knowsNoConsoleNoClockAndNoEnvironment() {
        noClasses().should().accessField(System.class, "out").check(LIBRARY);
        noClasses().should().accessField(System.class, "err").check(LIBRARY);
        for (String method : List.of("currentTimeMillis", "nanoTime")) {
            noClasses().should().callMethod(System.class, method).check(LIBRARY);
        }
        noClasses().should().callMethod(System.class, "getenv", String.class).check(LIBRARY);
        noClasses().should().callMethod(System.class, "getProperty", String.class).check(LIBRARY);
    }

    @Test
    void hasNoMutableStatics() {
        fields().that()
                .areStatic()
                .and(DescribedPredicate.not(synthetic()))
                .should()
                .beFinal()
                .check(LIBRARY);
    }

    @Test
    void keepsCommonsMathOutOfItsPublicSignatures() {
        codeUnits()
                .that()
                .arePublic()
                .and()
                .areDeclaredInClassesThat()
                .arePublic()
                .should(nameNoClassOf("org.apache.commons.math3"))
                .check(LIBRARY);
        noClasses()
                .that()
                .arePublic()
                .should()
                .beAssignableTo(
                        DescribedPredicate.describe(
                                "types of Commons Math",
                                (JavaClass type) ->
                                        type.getPackageName()
                                                .startsWith("org.apache.commons.math3")))
                .check(LIBRARY);
    }

    @Test
    void namesCommonsMathInOnePackageOnly() {
        noClasses()
                .that()
                .resideOutsideOfPackage("brakewright.numeric")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.commons.math3..")
                .check(LIBRARY);
        noClasses()
                .that()
                .resideInAPackage("brakewright.numeric")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("brakewright.spec..", "brakewright.battery..")
                .check(LIBRARY);
    }

    @Test
    void chaptersReadEarlierChaptersOnly() {
        Architectures.layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .withOptionalLayers(true)
                .layer("spec")
                .definedBy("brakewright.spec")
                .layer("battery")
                .definedBy("brakewright.battery")
                .layer("machine")
                .definedBy("brakewright.machine")
                .layer("road")
                .definedBy("brakewright.road")
                .layer("powertrain")
                .definedBy("brakewright.powertrain")
                .layer("ride")
                .definedBy("brakewright.ride")
                .layer("limit")
                .definedBy("brakewright.limit")
                .layer("review")
                .definedBy("brakewright.review")
                .layer("worksheet")
                .definedBy("brakewright.worksheet")
                .layer("profile")
                .definedBy("brakewright.profile")
                .whereLayer("profile")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("worksheet")
                .mayOnlyBeAccessedByLayers("profile")
                .whereLayer("review")
                .mayOnlyBeAccessedByLayers("worksheet", "profile")
                .whereLayer("limit")
                .mayOnlyBeAccessedByLayers("ride", "review", "worksheet", "profile")
                .whereLayer("ride")
                .mayOnlyBeAccessedByLayers("review", "worksheet", "profile")
                .whereLayer("powertrain")
                .mayOnlyBeAccessedByLayers("ride", "limit", "review", "worksheet", "profile")
                .whereLayer("battery")
                .mayOnlyBeAccessedByLayers(
                        "powertrain", "ride", "limit", "review", "worksheet", "profile")
                .whereLayer("machine")
                .mayOnlyBeAccessedByLayers(
                        "powertrain", "ride", "limit", "review", "worksheet", "profile")
                .whereLayer("road")
                .mayOnlyBeAccessedByLayers(
                        "powertrain", "ride", "limit", "review", "worksheet", "profile")
                .whereLayer("spec")
                .mayOnlyBeAccessedByLayers(
                        "battery",
                        "machine",
                        "road",
                        "powertrain",
                        "ride",
                        "limit",
                        "review",
                        "worksheet",
                        "profile")
                .check(LIBRARY);
    }

    /** So a word of an explanation is never an input of what it explains. */
    @Test
    void noModelKnowsHowItIsExplained() {
        noClasses()
                .that()
                .resideOutsideOfPackage("brakewright.explain")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("brakewright.explain")
                .check(LIBRARY);
    }

    /** The least or greatest of terms is what a formula says; anything else is worked out below. */
    @Test
    void explanationsNameWhatModelsGive() {
        noClasses()
                .that()
                .resideInAPackage("brakewright.explain")
                .should()
                .accessTargetWhere(mathBut("min", "max"))
                .check(LIBRARY);
        noClasses()
                .that()
                .resideInAPackage("brakewright.explain")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("brakewright.numeric")
                .check(LIBRARY);
    }

    /** Terms and steps are told, whatever they are about. */
    @Test
    void formulasKnowNoModel() {
        noClasses()
                .that()
                .resideInAPackage("brakewright.formula")
                .should()
                .dependOnClassesThat(
                        DescribedPredicate.describe(
                                "models",
                                (JavaClass type) ->
                                        type.getPackageName().startsWith("brakewright.")
                                                && !List.of(
                                                                "brakewright.formula",
                                                                "brakewright.spec")
                                                        .contains(type.getPackageName())))
                .check(LIBRARY);
    }

    @Test
    void namesNoGetters() {
        methods()
                .that()
                .arePublic()
                .and()
                .areDeclaredInClassesThat()
                .arePublic()
                .should()
                .haveNameNotMatching("get[A-Z].*")
                .check(LIBRARY);
    }

    private static DescribedPredicate<JavaAccess<?>> mathBut(String... names) {
        return DescribedPredicate.describe(
                "of Math but " + List.of(names),
                call ->
                        (call.getTargetOwner().isEquivalentTo(Math.class)
                                        || call.getTargetOwner().isEquivalentTo(StrictMath.class))
                                && !List.of(names).contains(call.getName()));
    }

    private static DescribedPredicate<HasModifiers> synthetic() {
        return DescribedPredicate.describe(
                "synthetic", each -> each.getModifiers().contains(JavaModifier.SYNTHETIC));
    }

    private static ArchCondition<JavaCodeUnit> nameNoClassOf(String packageName) {
        return new ArchCondition<>("name no class of " + packageName) {
            @Override
            public void check(JavaCodeUnit unit, ConditionEvents events) {
                Stream.concat(
                                unit.getRawParameterTypes().stream(),
                                Stream.of(unit.getRawReturnType()))
                        .filter(type -> type.getPackageName().startsWith(packageName))
                        .forEach(
                                type ->
                                        events.add(
                                                SimpleConditionEvent.violated(
                                                        unit,
                                                        unit.getFullName()
                                                                + " names "
                                                                + type.getName())));
            }
        };
    }
}

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
import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.ServiceLoader;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the library may depend on, and which chapter may read which. */
class ArchitectureTest {

    /** In the order in which they tell the story: each may use those before it. */
    private static final List<String> CHAPTERS =
            Stream.of(
                            "numeric",
                            "spec",
                            "assembly",
                            "formula",
                            "battery",
                            "machine",
                            "road",
                            "powertrain",
                            "limit",
                            "charge",
                            "braking",
                            "driving",
                            "heat",
                            "operation",
                            "review",
                            "worksheet",
                            "profile",
                            "recording",
                            "replay",
                            "fitting",
                            "live",
                            "explain")
                    .map("brakewright."::concat)
                    .toList();

    /** What the chapters share and nobody else is to rely on. */
    private static final List<String> TOOLS = List.of("brakewright.numeric", "brakewright.charge");

    private static final Pattern CHAPTER_ROW = Pattern.compile("^\\| `(brakewright\\.[a-z]+)` \\|");

    private static final Path CLASSES = Path.of("target", "classes");

    private static final JavaClasses LIBRARY = new ClassFileImporter().importPath(CLASSES);

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

    /** So it can be compiled ahead of time. */
    @Test
    void looksIntoNoClassAndLoadsNoService() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .areAssignableTo(ServiceLoader.class)
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(ClassLoader.class)
                .check(LIBRARY);
        noClasses()
                .should()
                .callMethodWhere(
                        DescribedPredicate.describe(
                                "of Class but what needs no description of its members",
                                call ->
                                        call.getTargetOwner().isEquivalentTo(Class.class)
                                                && !List.of(
                                                                "desiredAssertionStatus",
                                                                "getSimpleName",
                                                                "getName",
                                                                "isInstance")
                                                        .contains(call.getName())))
                .check(LIBRARY);
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
    }

    @Test
    void everyPackageIsAChapterAndSaysWhatItAnswers() {
        assertThat(LIBRARY.stream().map(JavaClass::getPackageName).distinct())
                .containsExactlyInAnyOrderElementsOf(CHAPTERS);
        assertThat(CHAPTERS)
                .allMatch(each -> LIBRARY.getPackage(each).tryGetPackageInfo().isPresent());
    }

    @Test
    void chaptersReadEarlierChaptersOnly() {
        for (int chapter = 0; chapter + 1 < CHAPTERS.size(); chapter++) {
            noClasses()
                    .that()
                    .resideInAPackage(CHAPTERS.get(chapter))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(
                            CHAPTERS.subList(chapter + 1, CHAPTERS.size()).toArray(String[]::new))
                    .check(LIBRARY);
        }
    }

    @Test
    void exportsEveryChapterButItsTools() throws IOException {
        try (var descriptor = Files.newInputStream(CLASSES.resolve("module-info.class"))) {
            assertThat(ModuleDescriptor.read(descriptor).exports())
                    .extracting(ModuleDescriptor.Exports::source)
                    .containsExactlyInAnyOrderElementsOf(
                            CHAPTERS.stream().filter(each -> !TOOLS.contains(each)).toList());
        }
    }

    @Test
    void keepsItsToolsOutOfItsPublicSignatures() {
        for (String tools : TOOLS) {
            codeUnits()
                    .that()
                    .arePublic()
                    .and()
                    .areDeclaredInClassesThat()
                    .arePublic()
                    .and()
                    .areDeclaredInClassesThat()
                    .resideOutsideOfPackages(TOOLS.toArray(String[]::new))
                    .should(nameNoClassOf(tools))
                    .check(LIBRARY);
        }
    }

    /** The page for contributors tells the same chapters in the same order. */
    @Test
    void contributorsReadTheChaptersInOrder() throws IOException {
        try (Stream<String> lines = Files.lines(Path.of("..", "DEVELOPERS.md"))) {
            assertThat(
                            lines.map(CHAPTER_ROW::matcher)
                                    .filter(Matcher::find)
                                    .map(row -> row.group(1)))
                    .containsExactlyElementsOf(CHAPTERS);
        }
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

package brakewright.cli;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;
import java.io.FileDescriptor;

/** Which part of the project may know which. */
@AnalyzeClasses(packages = "brakewright", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {

    /** All that is neither the one nor the other, so that no package of the core is forgotten. */
    private static final String[] NOT_CORE = {
        "brakewright.cli..",
        "brakewright.buildfile..",
        "brakewright.tables..",
        "brakewright.propertyruns.."
    };

    /** All classes are read once. */
    @ArchTest static final ArchTests VIEWS = ArchTests.in(ViewsTest.class);

    @ArchTest
    static final ArchRule ONLY_THE_COMMANDS_KNOW_THE_COMMAND_LINE_LIBRARY =
            noClasses()
                    .that()
                    .resideInAnyPackage(
                            "brakewright.cli.words..",
                            "brakewright.cli.text..",
                            "brakewright.cli.json..",
                            "brakewright.cli.doubt..",
                            "brakewright.cli.chart..",
                            "brakewright.buildfile..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("picocli..");

    @ArchTest
    static final ArchRule THE_PARTS_DO_NOT_KNOW_THE_COMMANDS =
            noClasses()
                    .that()
                    .resideInAnyPackage("brakewright.cli.*..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("brakewright.cli");

    /** It fills the records that describe a vehicle, and calculates nothing with them. */
    @ArchTest
    static final ArchRule A_BUILD_FILE_IS_READ_WITHOUT_ANY_MODEL =
            classes()
                    .that()
                    .resideInAPackage("brakewright.buildfile..")
                    .should()
                    .onlyDependOnClassesThat(
                            resideOutsideOfPackage("brakewright..")
                                    .or(
                                            resideInAnyPackage(
                                                    "brakewright.buildfile..",
                                                    "brakewright.assembly..",
                                                    "brakewright.spec..",
                                                    "brakewright.tables..")));

    @ArchTest
    static final ArchRule DOUBTS_DO_NOT_KNOW_HOW_THEY_ARE_TOLD =
            noClasses()
                    .that()
                    .resideInAPackage("brakewright.cli.doubt..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(
                            "brakewright.cli.words..",
                            "brakewright.cli.text..",
                            "brakewright.cli.json..");

    @ArchTest
    static final ArchRule CHARTS_KNOW_NUMBERS_AND_NAMES_ALONE =
            classes()
                    .that()
                    .resideInAPackage("brakewright.cli.chart..")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage("brakewright.cli.chart..", "java..", "org.jspecify..");

    @ArchTest
    static final ArchRule ONLY_THE_COMMANDS_END_THE_PROCESS =
            noClasses()
                    .that()
                    .resideOutsideOfPackage("brakewright.cli")
                    .should()
                    .callMethod(System.class, "exit", int.class)
                    .orShould()
                    .callMethod(Runtime.class, "exit", int.class)
                    .orShould()
                    .callMethod(Runtime.class, "halt", int.class);

    /** What tests alone use is no part of the program. */
    @ArchTest
    static final ArchRule ONE_PLACE_READS_STANDARD_INPUT =
            noClasses()
                    .that()
                    .doNotHaveFullyQualifiedName("brakewright.cli.BuildArgument")
                    .should()
                    .accessField(System.class, "in");

    @ArchTest
    static final ArchRule NOTHING_PRINTS_PAST_THE_COMMAND_LINE =
            noClasses()
                    .that()
                    .resideOutsideOfPackage("brakewright.propertyruns")
                    .should()
                    .accessField(System.class, "out")
                    .orShould()
                    .accessField(System.class, "err")
                    .orShould()
                    .callMethod(Throwable.class, "printStackTrace");

    @ArchTest
    static final ArchRule ONLY_THE_COMMANDS_OPEN_THE_STANDARD_STREAMS =
            noClasses()
                    .that()
                    .resideOutsideOfPackage("brakewright.cli")
                    .should()
                    .dependOnClassesThat()
                    .areAssignableTo(FileDescriptor.class);

    @ArchTest
    static final ArchRule THE_CORE_KNOWS_NEITHER_TABLES_NOR_COMMANDS =
            noClasses()
                    .that()
                    .resideOutsideOfPackages(NOT_CORE)
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(
                            "brakewright.tables..", "brakewright.buildfile..", "brakewright.cli..");

    @ArchTest
    static final ArchRule THE_TABLES_DO_NOT_KNOW_THE_COMMANDS =
            noClasses()
                    .that()
                    .resideInAPackage("brakewright.tables..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage("brakewright.buildfile..", "brakewright.cli..");
}

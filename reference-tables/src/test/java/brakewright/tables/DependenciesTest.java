package brakewright.tables;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The tables know the records of a vehicle and nothing else of the project. */
@AnalyzeClasses(
        packages = "brakewright.tables",
        importOptions = ImportOption.DoNotIncludeTests.class)
class DependenciesTest {

    @ArchTest
    static final ArchRule TABLES_DEPEND_ON_THE_SPECIFICATION_ONLY =
            classes()
                    .that()
                    .resideInAPackage("brakewright.tables")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "brakewright.assembly",
                            "brakewright.spec",
                            "brakewright.tables",
                            "java..",
                            "de.siegmar..",
                            "org.jspecify..");
}

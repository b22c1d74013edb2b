package brakewright.buildfile;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** A program that reads build files drags along two parsers, the tables and what these need. */
@AnalyzeClasses(
        packages = "brakewright.buildfile",
        importOptions = ImportOption.DoNotIncludeTests.class)
class DependenciesTest {

    @ArchTest
    static final ArchRule KNOWS_THE_VEHICLE_THE_TABLES_AND_TWO_PARSERS =
            classes()
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "brakewright.assembly",
                            "brakewright.buildfile",
                            "brakewright.spec",
                            "brakewright.tables",
                            "java.io",
                            "java.lang..",
                            "java.math",
                            "java.nio",
                            "java.nio.charset",
                            "java.util..",
                            "com.fasterxml.jackson.core",
                            "de.siegmar.fastcsv.reader",
                            "org.jspecify.annotations",
                            "org.tomlj");
}

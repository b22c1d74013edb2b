package brakewright.buildfile;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

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
                            "brakewright.buildfile..",
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

    @ArchTest
    static final ArchRule WHAT_IS_INTERNAL_KNOWS_NO_BUILD_FILE =
            noClasses()
                    .that()
                    .resideInAPackage("brakewright.buildfile.internal")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("brakewright.buildfile");

    /** What a program with a build file reads, changes, varies and shows of it. */
    @ArchTest
    static final ArchRule SHOWS_A_PROGRAM_THESE_TYPES_ALONE =
            classes()
                    .that()
                    .resideInAPackage("brakewright.buildfile")
                    .and()
                    .arePublic()
                    .and()
                    .areTopLevelClasses()
                    .should()
                    .haveNameMatching(
                            ".*\\.(BuildFile|BuildFileException|Problem"
                                    + "|Changes|Variations|InputPlace|Spreads|Spread|UsualSpread"
                                    + "|KeyGuide|InputNumber|InputUnit)");
}

package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.codehaus.mojo.animal_sniffer.SignatureChecker;
import org.codehaus.mojo.animal_sniffer.logging.Logger;
import org.junit.jupiter.api.Test;

/**
 * Nothing is called that Android 8 (API level 26) lacks, with what its build tools translate and
 * bring along of newer Java.
 *
 * <p>Source: the published signatures {@code com.toasttab.android:gummy-bears-api-26}, classifier
 * {@code coreLib2}; the version stands in the project.
 */
class AndroidTest {

    private static final Path SIGNATURES =
            Path.of("target", "signatures", "gummy-bears-api-26-coreLib2.signature");

    /**
     * What the project itself and its libraries have; and the class of all records, which the build
     * tools of Android write out as ordinary classes (from memory: since D8 of 2021).
     */
    private static final Set<String> OWN =
            Set.of(
                    "java.lang.Record",
                    "brakewright.*",
                    "org.apache.commons.math3.*",
                    "org.jspecify.*",
                    "org.tomlj.*",
                    "com.fasterxml.jackson.*",
                    "de.siegmar.*");

    @Test
    void theCoreTheTablesAndTheBuildFilesCallNothingThatIsMissing() throws IOException {
        for (String module : List.of("../../calc-core", "../../reference-tables", ".")) {
            assertThat(missing(Path.of(module, "target", "classes"))).as(module).isEmpty();
        }
    }

    /** A check that finds nothing anywhere would hold, too. */
    @Test
    void theCheckFindsWhatIsMissing() throws IOException {
        assertThat(missing(Path.of("target", "test-classes"))).isNotEmpty();
    }

    private static Set<String> missing(Path classes) throws IOException {
        assertThat(classes).isNotEmptyDirectory();
        Complaints complaints = new Complaints();
        try (InputStream signatures = Files.newInputStream(SIGNATURES)) {
            SignatureChecker checker = new SignatureChecker(signatures, OWN, complaints);
            checker.setSourcePath(List.<File>of());
            checker.process(classes.toFile());
        }
        return complaints.all;
    }

    /** Keeps what is complained of. */
    private static final class Complaints implements Logger {

        private final Set<String> all = new TreeSet<>();

        @Override
        public void info(String message) {
            // no complaint
        }

        @Override
        public void info(String message, Throwable cause) {
            // no complaint
        }

        @Override
        public void debug(String message) {
            // no complaint
        }

        @Override
        public void debug(String message, Throwable cause) {
            // no complaint
        }

        @Override
        public void warn(String message) {
            all.add(message);
        }

        @Override
        public void warn(String message, Throwable cause) {
            all.add(message);
        }

        @Override
        public void error(String message) {
            all.add(message);
        }

        @Override
        public void error(String message, Throwable cause) {
            all.add(message);
        }
    }
}

package brakewright.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;

/** Compares a result with a value from outside the project and keeps a list of the comparisons. */
final class OutsideChecks {

    private static final Path LIST = Path.of("target", "outside-checks.csv");

    static {
        try {
            Files.createDirectories(Path.of("target"));
            Files.writeString(LIST, "id,quantity,source,kind,inputs,expected,got,tolerance,unit\n");
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private OutsideChecks() {}

    static synchronized void check(
            String id,
            String quantity,
            String source,
            String inputs,
            double expected,
            double got,
            double tolerance,
            String unit) {
        String line =
                String.format(
                        Locale.ROOT,
                        "%s,\"%s\",\"%s\",published,\"%s\",%s,%s,%s,%s%n",
                        id,
                        quantity,
                        source,
                        inputs,
                        expected,
                        got,
                        tolerance,
                        unit);
        try {
            Files.writeString(LIST, line, StandardOpenOption.APPEND);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        assertThat(got).as("%s for %s", quantity, inputs).isCloseTo(expected, within(tolerance));
    }
}

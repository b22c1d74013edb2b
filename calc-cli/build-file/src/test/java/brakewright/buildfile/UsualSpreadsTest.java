package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.spec.Input;
import brakewright.tables.ReferenceTables;
import brakewright.tables.SourceKind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every row of the table of usual spreads is that of a number that a build file may leave out. */
class UsualSpreadsTest {

    private static final Path TABLE =
            Path.of("../../reference-tables/src/main/resources/brakewright/tables/spreads.csv");

    @Test
    void everyRowIsThatOfANumber() throws IOException {
        ReferenceTables tables = ReferenceTables.load();
        List<String> found =
                Arrays.stream(Input.values())
                        .filter(input -> Schema.of(input).kind().isSingleNumber())
                        .flatMap(
                                input ->
                                        Arrays.stream(SourceKind.values())
                                                .filter(
                                                        kind ->
                                                                tables.usualSpread(
                                                                                input.key(),
                                                                                kind.text())
                                                                        .isPresent())
                                                .map(kind -> input.key() + "," + kind.text()))
                        .toList();
        assertThat(found).containsExactlyInAnyOrderElementsOf(rows());
    }

    private static List<String> rows() throws IOException {
        return Files.readAllLines(TABLE, StandardCharsets.UTF_8).stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("key,"))
                .map(line -> String.join(",", List.of(line.split(",")).subList(0, 2)))
                .toList();
    }
}

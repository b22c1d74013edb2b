package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example on the page of each exported package is a program that runs. */
class PackagePagesTest {

    private static final List<Path> MODULES =
            List.of(
                    Path.of("../../calc-core/src/main/java"),
                    Path.of("../../reference-tables/src/main/java"),
                    Path.of("src/main/java"));

    private static final Pattern EXPORTED = Pattern.compile("exports brakewright\\.(\\w+);");

    private static final Pattern EXAMPLE =
            Pattern.compile("(?s)<pre>\\{@code\n(.*?)\n \\* }</pre>");

    private static final Path BOARD = Path.of("..", "examples", "vineyard-trail-board.toml");

    @TempDir Path folder;

    @Test
    void everyExampleRuns() throws Exception {
        StringBuilder source = new StringBuilder("package riding;\n\n");
        List<String> calls = new ArrayList<>();
        StringBuilder methods = new StringBuilder();
        for (Path each : exported()) {
            String name = each.getFileName().toString();
            source.append("import brakewright.").append(name).append(".*;\n");
            calls.add("        " + name + "(bytes, board, defaults);\n");
            methods.append("    static void ").append(name);
            methods.append("(byte[] bytes, Build board, Defaults defaults) throws Exception {\n");
            methods.append(example(each)).append("    }\n");
        }
        source.append(
                """
                import brakewright.battery.BatteryModel;
                import brakewright.formula.Step;
                import brakewright.limit.Limit;
                import brakewright.powertrain.PackState;
                import brakewright.recording.Quantity;
                import java.util.List;
                import java.util.Map;
                import java.util.Optional;

                public class Pages {
                    public static void main(String[] names) throws Exception {
                        byte[] bytes = java.nio.file.Files.readAllBytes(java.nio.file.Path.of(names[0]));
                        ReferenceTables defaults = ReferenceTables.load();
                        Build board = BuildFile.read(bytes, defaults).build();
                """);
        calls.forEach(source::append);
        source.append("        System.out.println(\"all ran\");\n    }\n").append(methods);
        Path program = folder.resolve("Pages.java");
        Files.writeString(program, source.append("}\n"));
        EmbeddingTest.compile(folder, program, "-cp", EmbeddingTest.buildFile());
        String path = EmbeddingTest.with(folder, EmbeddingTest.buildFile());
        List<String> printed =
                EmbeddingTest.java(List.of("-cp", path, "riding.Pages", BOARD.toString()));
        assertThat(printed).last().isEqualTo("all ran");
    }

    /** The packages that every program sees, none forgotten. */
    private static List<Path> exported() throws IOException {
        List<Path> packages = new ArrayList<>();
        for (Path module : MODULES) {
            Matcher found = EXPORTED.matcher(Files.readString(module.resolve("module-info.java")));
            while (found.find()) {
                packages.add(module.resolve(Path.of("brakewright", found.group(1))));
            }
        }
        assertThat(packages).hasSizeGreaterThan(20);
        return packages;
    }

    private static String example(Path folder) throws IOException {
        String page = Files.readString(folder.resolve("package-info.java"));
        Matcher found = EXAMPLE.matcher(page);
        assertThat(found.find()).as(folder.toString()).isTrue();
        return found.group(1).replaceAll("(?m)^ \\* ?", "        ") + "\n";
    }
}

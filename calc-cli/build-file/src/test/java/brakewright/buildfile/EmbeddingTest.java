package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.live.LiveLimits;
import brakewright.worksheet.Worksheet;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Programs that are no part of this project, compiled and run as processes of their own: with
 * nothing but what a dependency on {@code build-file}, or on the core, brings along.
 */
class EmbeddingTest {

    /** As the names of jars or of folders of classes begin; the last is for the compiler alone. */
    private static final List<String> CORE = List.of("calc-core", "commons-math3", "jspecify");

    private static final List<String> BUILD_FILE =
            List.of(
                    "calc-core",
                    "commons-math3",
                    "reference-tables",
                    "fastcsv",
                    "build-file",
                    "tomlj",
                    "antlr4-runtime",
                    "checker-qual",
                    "jackson-core",
                    "jspecify");

    private static final Path SOURCES = Path.of("src", "test", "embedding");
    private static final Path BOARD = Path.of("..", "examples", "parcel-trike.toml");

    @TempDir Path folder;

    @Test
    void aProgramReadsAndWritesOnTheClassPath() throws Exception {
        compile(SOURCES.resolve("ReadsAndWrites.java"), "-cp", paths(BUILD_FILE));
        checkReading(
                run(
                        "-cp",
                        folder + File.pathSeparator + paths(BUILD_FILE),
                        "riding.ReadsAndWrites"));
    }

    @Test
    void aProgramReadsAndWritesOnTheModulePath() throws Exception {
        module("requires brakewright.buildfile;");
        compile(SOURCES.resolve("ReadsAndWrites.java"), "--module-path", paths(BUILD_FILE));
        checkReading(
                run(
                        "--module-path",
                        folder + File.pathSeparator + paths(BUILD_FILE),
                        "-m",
                        "riding/riding.ReadsAndWrites"));
    }

    private List<String> run(String... start) throws Exception {
        List<String> all = new ArrayList<>(Arrays.asList(start));
        all.add(BOARD.toString());
        all.add(folder.resolve("written.toml").toString());
        all.add(folder.resolve("told.txt").toString());
        return java(all);
    }

    private void checkReading(List<String> printed) throws Exception {
        Worksheet sheet = Worksheet.of(Vehicles.read(Vehicles.text(BOARD)).build());
        assertThat(printed.subList(0, 2))
                .containsExactly("true", String.valueOf(sheet.limits().motorBrake().value()));
        assertThat(Integer.parseInt(printed.get(2))).isGreaterThan(10);
        assertThat(folder.resolve("written.toml")).content().startsWith("#: ");
    }

    @Test
    void aProgramWithTheCoreAloneIsToldEverything() throws Exception {
        BuildFile file = Vehicles.read(Vehicles.text(BOARD));
        compile(SOURCES.resolve("ReadsAndWrites.java"), "-cp", paths(BUILD_FILE));
        run("-cp", with(folder, paths(BUILD_FILE)), "riding.ReadsAndWrites");
        Path told = folder.resolve("told.txt");
        LiveLimits live = LiveLimits.of(file.build());
        List<String> expected =
                Stream.of(live.permittedRegenA(0.9, 11.0), live.permittedBrakeA(8.0, 0.5, 20.0))
                        .map(String::valueOf)
                        .toList();
        compile(SOURCES.resolve("CoreAlone.java"), "-cp", paths(CORE));
        String classes = folder + File.pathSeparator + paths(CORE);
        assertThat(java(List.of("-cp", classes, "riding.CoreAlone", told.toString())))
                .isEqualTo(expected);
        module("requires brakewright.core;");
        compile(SOURCES.resolve("CoreAlone.java"), "--module-path", paths(CORE));
        assertThat(
                        java(
                                List.of(
                                        "--module-path",
                                        classes,
                                        "-m",
                                        "riding/riding.CoreAlone",
                                        told.toString())))
                .isEqualTo(expected);
    }

    /** The library section of the first page, as it stands there. */
    @Test
    void theProgramOfTheFirstPageRuns() throws Exception {
        String page = Files.readString(Path.of("..", "..", "README.md"));
        String mark = "<!-- snippet: steps -->\n```java\n";
        int from = page.indexOf(mark) + mark.length();
        assertThat(from).isGreaterThan(mark.length());
        String snippet = page.substring(from, page.indexOf("```", from));
        assertThat(snippet.lines().count()).isLessThan(15);
        int body = snippet.indexOf("\n\n");
        Path source = folder.resolve("Page.java");
        Files.writeString(
                source,
                "package riding;\n"
                        + snippet.substring(0, body)
                        + "\npublic class Page { public static void main(String[] none) {"
                        + snippet.substring(body)
                        + "System.out.println(regen); } }");
        compile(source, "-cp", paths(BUILD_FILE));
        List<String> printed =
                java(
                        List.of(
                                "-cp",
                                folder + File.pathSeparator + paths(BUILD_FILE),
                                "riding.Page"));
        assertThat(Double.parseDouble(printed.get(0))).isGreaterThan(0.0);
    }

    private void module(String requires) throws IOException {
        Files.writeString(folder.resolve("module-info.java"), "module riding { " + requires + " }");
    }

    private void compile(Path source, String option, String path) {
        compile(folder, source, option, path);
    }

    static String buildFile() {
        return paths(BUILD_FILE);
    }

    static String with(Path folder, String paths) {
        return folder + File.pathSeparator + paths;
    }

    static void compile(Path folder, Path source, String option, String path) {
        List<String> all =
                new ArrayList<>(List.of("-proc:none", "-d", folder.toString(), option, path));
        all.add(source.toString());
        if (option.equals("--module-path")) {
            all.add(folder.resolve("module-info.java").toString());
        }
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said);
        ToolProvider compiler = ToolProvider.findFirst("javac").orElseThrow();
        assertThat(compiler.run(out, out, all.toArray(String[]::new))).as(said.toString()).isZero();
    }

    static List<String> java(List<String> arguments) throws Exception {
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC"));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String printed =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(printed).isZero();
        return printed.lines().toList();
    }

    /** Of those that this very test runs with. */
    private static String paths(List<String> names) {
        return Stream.of("jdk.module.path", "java.class.path", "surefire.test.class.path")
                .map(property -> System.getProperty(property, ""))
                .flatMap(paths -> Arrays.stream(paths.split(File.pathSeparator)))
                .filter(path -> names.stream().anyMatch(name -> isOf(Path.of(path), name)))
                .distinct()
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static boolean isOf(Path path, String name) {
        if (path.endsWith("test-classes")) {
            return false;
        }
        Path last =
                path.endsWith(Path.of("target", "classes")) ? path.getParent().getParent() : path;
        return String.valueOf(last.getFileName()).startsWith(name);
    }
}

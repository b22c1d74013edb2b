package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the program takes from the terminal that it was started in. */
class TerminalTest {

    /** A process of its own, as the locale is that of the process. */
    @Test
    void aLocaleOfPlainLettersGetsPlainLetters(@TempDir Path folder) throws Exception {
        assertThat(started(folder, "C", "keys", "motor.resistance"))
                .contains("68 mohm", "20 degC")
                .matches("\\p{ASCII}*");
        assertThat(started(folder, "C", "keys", "motor.résistance"))
                .contains("is no key of a build file")
                .matches("\\p{ASCII}*");
    }

    private static String started(Path folder, String locale, String... arguments)
            throws IOException, InterruptedException {
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-cp",
                                String.join(
                                        File.pathSeparator,
                                        System.getProperty("jdk.module.path", ""),
                                        System.getProperty("java.class.path")),
                                "brakewright.cli.Main"));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("LC_ALL", locale);
        Path told = folder.resolve("told.txt");
        Process process = builder.redirectOutput(told.toFile()).start();
        assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        return Files.readString(told, StandardCharsets.UTF_8);
    }

    @Test
    void spellsOutWhateverIsWritten() {
        StringWriter written = new StringWriter();
        try (PrintWriter out = new PrintWriter(Terminal.spelling(written))) {
            out.print("68 mΩ ± 10 % at 20 °C");
            out.print(new char[] {'…', 'x'});
            out.write('√');
        }
        assertThat(written).hasToString("68 mohm +- 10 % at 20 degC...xsqrt");
    }

    @Test
    void aDashReadsStandardInput() {
        CommandRun piped = fed(Example.TRIKE.text(), "worksheet", "-", "--format", "json");
        assertThat(piped.err()).isEmpty();
        assertThat(piped.out()).isEqualTo(Example.TRIKE.json());
        assertThat(fed("[motor]\nkv = 3", "worksheet", "-").err())
                .startsWith("standard input: ")
                .contains("line 2  motor.kv");
        CommandRun nothing = fed("", "worksheet", "-");
        assertThat(nothing.status()).isEqualTo(2);
        assertThat(nothing.err()).contains("standard input is empty", "for example");
    }

    @Test
    void standardInputIsReadOnce() {
        CommandRun run = fed(Example.TRIKE.text(), "compare", "-", "--also", "-");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("was read already");
    }

    private static CommandRun fed(String input, String... arguments) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
        try {
            return CommandRun.of(arguments);
        } finally {
            System.setIn(before);
        }
    }
}

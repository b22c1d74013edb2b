package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.cli.text.CheckSection;
import brakewright.cli.text.SheetSection;
import brakewright.explain.ResultId;
import brakewright.limit.LimitId;
import brakewright.profile.Quantity;
import brakewright.spec.Input;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The manual pages and the completion are made of the commands, so they leave none out. */
class ManualTest {

    @TempDir Path folder = Path.of("");

    @Test
    void hasAPageOfEveryCommandWithEveryOption() throws IOException {
        Manual.main(new String[] {folder.toString()});
        Map<String, CommandLine> commands = Main.commands(Main.COMMANDS).getSubcommands();
        assertThat(commands.keySet()).containsExactlyInAnyOrderElementsOf(Main.COMMANDS);
        String first = read("brakewright.1");
        String completion = read("brakewright.bash");
        for (Map.Entry<String, CommandLine> command : commands.entrySet()) {
            assertThat(first).contains(".B \"" + command.getKey() + "\"");
            String page = read("brakewright-" + command.getKey() + ".1");
            assertThat(page).startsWith(".TH ").contains(".SH NAME", ".SH EXIT STATUS");
            for (OptionSpec option : command.getValue().getCommandSpec().options()) {
                assertThat(page).contains(option.longestName().replace("-", "\\-"));
                assertThat(completion).contains(option.longestName());
            }
        }
    }

    /** A shell offers the words of every closed list. */
    @Test
    void offersTheWordsOfClosedLists() throws IOException {
        Manual.main(new String[] {folder.toString()});
        String completion = read("brakewright.bash");
        assertThat(completion)
                .contains(words(SheetSection.values(), SheetSection::key) + "\" \"all\"")
                .contains(words(CheckSection.values(), CheckSection::key) + "\" \"all\"")
                .contains(words(Quantity.values(), Quantity::key))
                .contains(words(ResultId.values(), ResultId::key))
                .contains(words(LimitId.values(), LimitId::key))
                .contains("\"cells\" \"chemistries\"")
                .contains("\"" + Input.PACK_SERIES.key() + "\"")
                .contains("\"title\"", "\"recording.current_sign\"")
                .contains("\"speed_cap\" \"charge_from\" \"parallel\"");
    }

    private static <E> String words(E[] values, Function<E, String> key) {
        return Arrays.stream(values).map(key).collect(Collectors.joining("\" \""));
    }

    /** What begins with a dot or a quote would be taken for a macro; letters are plain. */
    @Test
    void onlyKnownMacrosStandAtTheBeginningOfALine() throws IOException {
        Manual.main(new String[] {folder.toString()});
        for (String command : Main.COMMANDS) {
            assertThat(read("brakewright-" + command + ".1").lines())
                    .allMatch(line -> line.matches("\\.(TH|SH|TP|PP|B)( .*)?|[^.'].*"))
                    .allMatch(line -> line.chars().allMatch(letter -> letter < 128));
        }
    }

    private String read(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }
}

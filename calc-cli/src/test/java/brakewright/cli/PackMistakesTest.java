package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mistakes about how many packs there are, and in one of several. */
class PackMistakesTest {

    private static final String NO_PACK = "";

    private static CommandRun unusable(String text) {
        CommandRun run = CommandRun.worksheet(text);
        assertThat(run.out()).isEmpty();
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).doesNotContain("\tat ").doesNotContain("Exception");
        return run;
    }

    private static void assertTells(CommandRun run, int line, String key, String... words) {
        String start = String.format(Locale.ROOT, "  line %d  %s: ", line, key);
        assertThat(run.err()).contains(start);
        String rest = run.err().substring(run.err().indexOf(start) + start.length());
        int next = rest.indexOf("\n  line ");
        assertThat(next < 0 ? rest : rest.substring(0, next)).contains(words);
    }

    private static void assertCount(CommandRun run, int problems) {
        assertThat(run.err()).contains(": " + problems + " problem");
    }

    @Test
    void onePackAndSeveralExcludeEachOther() {
        BuildText file =
                BuildText.withPacks(
                        Example.TRAIL_BOARD,
                        "[pack]\ncell = \"samsung-30q\"\nseries = 10\nparallel = 4\n\n"
                                + TwoPacks.FIRST
                                + TwoPacks.SECOND);
        CommandRun run = unusable(file.text());
        assertTells(
                run,
                file.lineThatReads("[[packs]]", 1),
                "packs",
                "[pack] and [[packs]] stand in one file",
                "[pack] for a single pack");
        assertCount(run, 1);
    }

    /** A milliohm written as a tenth of an ohm. */
    @Test
    void aCellThatLosesHalfItsVoltageIsASlip() {
        BuildText file = BuildText.of(Example.TRIKE);
        file.replace("pack.cell", "resistance", "resistance = \"0.9 Ω\"");
        CommandRun run = unusable(file.text());
        assertTells(
                run,
                file.lineThatReads("resistance = \"0.9 Ω\"", 1),
                "pack.cell.resistance",
                "0.9 Ω at the rated 18 A would cost 16.2 of 3.65 V",
                "25 mΩ");
        assertCount(run, 1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {"packs = 2", "packs = []", "packs = [1, 2]", "packs = { series = 10 }"})
    void packsMustBeAListOfTables(String line) {
        String text = line + "\n" + BuildText.withPacks(Example.TRAIL_BOARD, NO_PACK).text();
        CommandRun run = unusable(text);
        assertTells(run, 1, "packs", "this must be a list of tables", "a heading [[packs]]");
        assertCount(run, 1);
    }

    @Test
    void aTableOfPacksMustBeAList() {
        BuildText file =
                BuildText.withPacks(Example.TRAIL_BOARD, "[packs]\nseries = 10\nparallel = 4\n");
        CommandRun run = unusable(file.text());
        assertTells(
                run, file.lineThatReads("[packs]", 1), "packs", "this must be a list of tables");
        assertCount(run, 1);
    }

    @Test
    void aSinglePackIsNotJoined() {
        String battery = "[battery]\njoining = \"series\"\nfuse = \"60 A\"\n";
        BuildText listed = BuildText.withPacks(Example.TRAIL_BOARD, TwoPacks.FIRST + battery);
        CommandRun ofListed = unusable(listed.text());
        assertTells(
                ofListed,
                listed.lineThatReads("[battery]", 1),
                "battery",
                "no second pack",
                "[[packs]] for each of several packs");
        assertCount(ofListed, 1);
        String text = Example.TRAIL_BOARD.text();
        CommandRun run = unusable(text + battery);
        assertTells(run, (int) text.lines().count() + 1, "battery", "no second pack");
        assertCount(run, 1);
    }

    @Test
    void aSinglePackIsJoinedAtNoCharge() {
        BuildText file = BuildText.of(Example.TRAIL_BOARD);
        int line = file.addBelow("pack", "series", "charge = \"80 %\"");
        CommandRun run = unusable(file.text());
        assertTells(run, line, "pack.charge", "no second pack", "use.charge_from");
        assertCount(run, 1);
        BuildText listed =
                BuildText.withPacks(
                        Example.TRAIL_BOARD,
                        TwoPacks.FIRST.replace("series = 10", "series = 10\ncharge = 0.8"));
        assertTells(
                unusable(listed.text()),
                listed.lineThatReads("charge = 0.8", 1),
                "packs.1.charge",
                "no second pack");
    }

    @Test
    void everyPackMustTellWhatIsRequired() {
        BuildText file =
                BuildText.withPacks(
                        Example.TRAIL_BOARD,
                        TwoPacks.FIRST.replace("parallel = 4\n", "")
                                + TwoPacks.SECOND
                                        .replace("series = 10\n", "")
                                        .replace("capacity = \"2.5 Ah\"\n", "")
                                + "[[packs]]\n");
        CommandRun run = unusable(file.text());
        String missing = "this required key is missing";
        int first = file.lineThatReads("[[packs]]", 1);
        int second = file.lineThatReads("[[packs]]", 2);
        int third = file.lineThatReads("[[packs]]", 3);
        assertTells(run, first, "packs.1.parallel", missing, "parallel = 4");
        assertTells(run, second, "packs.2.series", missing, "series = 10");
        assertTells(run, second, "packs.2.cell.capacity", missing, "3.0 Ah");
        assertTells(run, third, "packs.3.cell", missing, "or a table [packs.cell]");
        assertTells(run, third, "packs.3.series", missing);
        assertTells(run, third, "packs.3.parallel", missing);
        assertCount(run, 6);
    }

    @Test
    void mistakesOfAllPacksAreToldInOneGo() {
        BuildText file =
                BuildText.withPacks(
                        Example.TRAIL_BOARD,
                        TwoPacks.FIRST
                                        .replace("samsung-30q", "samsung-31q")
                                        .replace("\"10 AWG\"", "\"11 furlongs\"")
                                + TwoPacks.SECOND
                                        .replace("parallel = 3", "parallel = \"3 V\"")
                                        .replace("mass = \"45 g\"", "mas = \"45 g\"")
                                        .replace(
                                                "voltage_min = \"2.5 V\"",
                                                "voltage_min = \"4.5 V\"")
                                + "wiring = 3\n[battery]\njoinin = \"series\"\nplug = \"xt91\"\n");
        CommandRun run = unusable(file.text());
        assertTells(
                run,
                file.lineThatReads("cell = \"samsung-31q\"", 1),
                "packs.1.cell",
                "is no cell of the tables",
                "a table [packs.cell], or one of ");
        assertTells(
                run,
                file.lineThatReads("wire = \"11 furlongs\"", 1),
                "packs.1.wiring.wire",
                "is no wire of the tables",
                "10 AWG");
        assertTells(
                run,
                file.lineThatReads("parallel = \"3 V\"", 1),
                "packs.2.parallel",
                "no whole number",
                "parallel = 4");
        assertTells(
                run,
                file.lineThatReads("mas = \"45 g\"", 1),
                "packs.2.cell.mas",
                "not known",
                "the nearest known one is packs.2.cell.mass");
        assertTells(
                run,
                file.lineThatReads("voltage_min = \"4.5 V\"", 1),
                "packs.2.cell.voltage_min",
                "must ascend");
        assertTells(
                run,
                file.lineThatReads("joinin = \"series\"", 1),
                "battery.joinin",
                "not known",
                "the nearest known one is battery.joining");
        assertTells(
                run,
                file.lineThatReads("plug = \"xt91\"", 1),
                "battery.plug",
                "is no plug of the tables",
                "xt90");
        assertTells(
                run,
                file.lineThatReads("wiring = 3", 1),
                "packs.2.cell.wiring",
                "not known",
                "packs.2.");
        assertCount(run, 8);
    }

    @Test
    void aTableOfAPackMustBeATable() {
        BuildText file =
                BuildText.withPacks(
                        Example.TRAIL_BOARD,
                        TwoPacks.FIRST
                                + TwoPacks.SECOND.replace(
                                        "parallel = 3", "parallel = 3\nwiring = 3"));
        CommandRun run = unusable(file.text());
        assertTells(
                run,
                file.lineThatReads("wiring = 3", 1),
                "packs.2.wiring",
                "this must be a table",
                "a heading [packs.wiring] with its keys below");
        assertCount(run, 1);
    }

    @Test
    void aJoiningMustBeOneOfTheWords() {
        BuildText file = TwoPacks.file("[battery]\njoining = \"crosswise\"\n");
        assertTells(
                unusable(file.text()),
                file.lineThatReads("joining = \"crosswise\"", 1),
                "battery.joining",
                "\"crosswise\"",
                "one of parallel, series");
    }

    @ParameterizedTest(name = "{0} beside {1}")
    @CsvSource(
            nullValues = "-",
            value = {"25 °C, 5 °C, 2", "-, 5 °C, 2", "5 °C, -, 1"})
    void allPacksMustHaveOneTemperature(
            @Nullable String first, @Nullable String second, int blamed) {
        BuildText file =
                BuildText.withPacks(
                        Example.TRAIL_BOARD,
                        withTemperature(TwoPacks.FIRST, first)
                                + withTemperature(TwoPacks.SECOND, second));
        String line = "temperature = \"" + (blamed == 2 ? second : first) + '"';
        CommandRun run = unusable(file.text());
        assertTells(
                run,
                file.lineThatReads(line, 1),
                "packs." + blamed + ".temperature",
                "all packs must have one temperature");
        assertCount(run, 1);
    }

    private static String withTemperature(String pack, @Nullable String temperature) {
        return temperature == null
                ? pack
                : pack.replace("series = 10", "series = 10\ntemperature = \"" + temperature + '"');
    }

    @Test
    void onlyPacksOfLikeVoltageGoInParallel() {
        String short5 = TwoPacks.SECOND.replace("series = 10", "series = 5");
        BuildText file = BuildText.withPacks(Example.TRAIL_BOARD, TwoPacks.FIRST + short5);
        CommandRun run = unusable(file.text());
        assertTells(
                run,
                file.lineThatReads("[[packs]]", 1),
                "packs",
                "packs in parallel must have a range of open-circuit voltage in common",
                "joining = \"series\"");
        BuildText inSeries =
                BuildText.withPacks(
                        Example.TRAIL_BOARD,
                        TwoPacks.FIRST + short5 + "[battery]\njoining = \"series\"\n");
        assertThat(CommandRun.worksheet(inSeries.text()).err()).isEmpty();
    }

    @ParameterizedTest(name = "{0} beside {1}")
    @CsvSource(
            nullValues = "-",
            value = {"80 %, 90 %", "-, 90 %", "-, 0.9"})
    void packsInSeriesMustBeEquallyFull(@Nullable String first, String second) {
        BuildText file = inSeries(first, second);
        assertTells(
                unusable(file.text()),
                file.lineThatReads("charge = \"" + second + '"', 1),
                "packs.2.charge",
                "packs in series must be equally full",
                "balance them first",
                "charge = \"80 %\"");
    }

    @Test
    void oneChargeForAllPacksInSeriesIsTaken() {
        assertThat(CommandRun.worksheet(inSeries("80 %", "0.8").text()).err()).isEmpty();
    }

    private static BuildText inSeries(@Nullable String first, String second) {
        return BuildText.withPacks(
                Example.TRAIL_BOARD,
                withCharge(TwoPacks.FIRST.replace("series = 10", "series = 5"), first)
                        + withCharge(TwoPacks.SECOND.replace("series = 10", "series = 5"), second)
                        + "[battery]\njoining = \"series\"\n");
    }

    private static String withCharge(String pack, @Nullable String charge) {
        return charge == null
                ? pack
                : pack.replace("series = 5", "series = 5\ncharge = \"" + charge + '"');
    }

    /** A number that no pack has is a key like any other that is not known. */
    @Test
    void aNumberThatNoPackHasIsNotKnown() {
        CommandRun run = unusable("\"packs.7.series\" = 10\n" + TwoPacks.file("").text());
        assertTells(run, 1, "packs.7.series", "not known");
    }
}

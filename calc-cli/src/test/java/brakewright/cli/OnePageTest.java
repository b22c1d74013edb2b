package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.doubt.Tolerated;
import brakewright.cli.json.WorksheetJson;
import brakewright.cli.text.Ink;
import brakewright.cli.text.WorksheetText;
import brakewright.cli.words.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page that says what to do, for every example and every vehicle of the tests. */
class OnePageTest {

    private static final int LINES = 66;

    /** A row of the map, from the charge to the last stop. */
    private static final Pattern MAPPED = Pattern.compile(" +\\d+ % .*\\|.*\\|.* (?:m|ft|none)");

    /** By what a danger is known on the page, by the constraint or topic of its id. */
    private static final Map<String, String> KNOWN_BY =
            Map.ofEntries(
                    Map.entry("pack-return-over:protection-overvoltage-trip", "over-voltage trip"),
                    Map.entry("pack-return-over:protection-charge-trip", "charge trip"),
                    Map.entry("pack-return-over:controller-voltage-rating", "controller"),
                    Map.entry("pack-draw-over:protection-discharge-trip", "discharge trip"),
                    Map.entry("pack-draw-over:protection-undervoltage-trip", "under-voltage trip"),
                    Map.entry("protection-before-taper:protection-undervoltage-trip", "cuts dead"),
                    Map.entry("brake-current-over:grip", "brake current .*grip"),
                    Map.entry("brake-current-over:rider-balance", "brake current .*balance"),
                    Map.entry("brake-current-over:regen-overshoot", "regen limiter"),
                    Map.entry("drive-current-over:grip", "drive current .*grip"),
                    Map.entry("drive-current-over:rider-balance", "drive current .*balance"),
                    Map.entry("drive-current-over:tipping", "drive current .*tipping"),
                    Map.entry("brake-taken-away:remaining-brake", "no brake is left to speak of"),
                    Map.entry("fuse-voltage-over:fuse-voltage-rating", "fuse"),
                    Map.entry("joining-current", "Do not join the packs"),
                    Map.entry("pack-loss-cascades:pack-discharge-current", "while driving"),
                    Map.entry("pack-loss-cascades:pack-regen-current", "while braking|in series"),
                    Map.entry("protection-bypassed:pack-regen-current", "overcharging"),
                    Map.entry("regen-overshoot:protection-overvoltage-trip", "In a hard grab"),
                    Map.entry("regen-overshoot:protection-charge-trip", "In a hard grab"));

    static List<Path> vehicles() throws IOException {
        try (Stream<Path> own =
                        Files.list(
                                Path.of("src", "test", "resources", "brakewright/cli/vehicles"));
                Stream<Path> examples = Files.list(Path.of("examples"))) {
            return Stream.concat(examples, own)
                    .filter(path -> path.toString().endsWith(".toml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void isOnePageWithEveryDangerOnIt(Path vehicle) throws Exception {
        BuildFile file = BuildFile.read(Files.readAllBytes(vehicle), Ahead.tables());
        AskedSheet asked = new AskedSheet(file, Tolerated.of(file, 0, 0), UnitSystem.SI.entry());
        List<Map<String, Object>> dangers = dangers(asked);
        List<Long> wide = rows(page(asked, 120));
        for (int columns : new int[] {72, 80, 100, 120}) {
            List<String> page = page(asked, columns);
            assertThat(page)
                    .as("at %d columns", columns)
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
            assertThat(page).as("at %d columns", columns).hasSizeLessThanOrEqualTo(LINES);
            holdsEveryDanger(dangers, String.join("\n", page));
            saysAllThatAPageMustSay(String.join("\n", page).replaceAll("\\n +", " "));
            assertThat(rows(page)).as("at %d columns", columns).isEqualTo(wide);
        }
    }

    private static List<String> page(AskedSheet asked, int columns) {
        return new WorksheetText(asked, UnitSystem.SI, new Ink(false, false, columns))
                .onePage(List.of())
                .lines()
                .toList();
    }

    /** How many lines the rows of what to enter take, and how many of the map stand on one. */
    private static List<Long> rows(List<String> page) {
        return List.of(
                page.stream()
                        .dropWhile(line -> !line.startsWith("WHAT TO ENTER"))
                        .takeWhile(line -> !line.startsWith("  Speed cap"))
                        .count(),
                page.stream().filter(line -> MAPPED.matcher(line).matches()).count());
    }

    private static void saysAllThatAPageMustSay(String page) {
        assertThat(page)
                .containsSubsequence(
                        "Pack and parts: ",
                        "Brake: ",
                        "WHAT TO ENTER",
                        "Speed cap",
                        "THE BRAKE WHERE YOU RIDE",
                        "THE FIRST STOP AFTER A FULL CHARGE",
                        "DANGERS AND WARNINGS",
                        "WHAT TO MEASURE OR LOOK UP FIRST",
                        "CAUTIONS",
                        "More: --show pack,");
        assertThat(page.contains("Packs resist as after 10 s (stops, draw"))
                .as("horizons, but where there is no room for a blank line")
                .isEqualTo(page.contains("\n\n"));
    }

    private static List<Map<String, Object>> dangers(AskedSheet asked) {
        return JsonMaps.objects(JsonMaps.read(json(asked)), "findings").stream()
                .filter(each -> JsonMaps.text(each, "signal").equals("danger"))
                .toList();
    }

    private static void holdsEveryDanger(List<Map<String, Object>> dangers, String page) {
        List<String> told =
                Stream.of(page.split("\n  (?=[A-Z]{6,7} )|\n(?=  Besides)|\n\n", -1))
                        .filter(part -> part.startsWith("DANGER"))
                        .map(part -> part.replaceAll("\\s+", " "))
                        .toList();
        Set<String> kinds = dangers.stream().map(OnePageTest::kind).collect(Collectors.toSet());
        assertThat(told).as("kinds of danger %s", kinds).hasSizeGreaterThanOrEqualTo(kinds.size());
        for (Map<String, Object> danger : dangers) {
            assertThat(KNOWN_BY).containsKey(kind(danger));
            assertThat(told)
                    .as("%s", danger)
                    .anySatisfy(
                            line -> assertThat(line).containsPattern(KNOWN_BY.get(kind(danger))));
        }
    }

    private static String kind(Map<String, Object> finding) {
        return JsonMaps.text(finding, "id").replaceAll(":pack-\\d+", "");
    }

    private static String json(AskedSheet asked) {
        return new WorksheetJson(
                        asked.file(),
                        asked.sheet(),
                        asked.tolerated(),
                        Optional.empty(),
                        asked.judged(),
                        asked.recommended(),
                        asked.wet())
                .text();
    }
}

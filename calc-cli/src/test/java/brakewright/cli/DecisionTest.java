package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is printed as one decision is typed in as a whole, and asked again. */
class DecisionTest {

    private static final String BOARD = Example.TRAIL_BOARD.path();

    @TempDir private Path folder = Path.of("");

    /** As printed on the worksheet, in its words and its rounding. */
    @ParameterizedTest
    @EnumSource
    void whatIsToBeEnteredIsWithinLimitsAndRecommendsItself(Example example) {
        List<String> enter =
                entered(Answers.of("worksheet", example.path(), "--show", "all").outLines());
        BuildText file = BuildText.of(example);
        if (enter.stream().noneMatch(each -> each.startsWith("high_voltage_taper"))) {
            file.remove("settings", "high_voltage_taper");
        }
        String[] arguments = new String[4 + 2 * enter.size()];
        arguments[0] = "worksheet";
        arguments[1] = new BuildFolder(folder).put("entered", file);
        arguments[2] = "--show";
        arguments[3] = "all";
        for (int i = 0; i < enter.size(); i++) {
            arguments[4 + 2 * i] = "--with";
            arguments[5 + 2 * i] = enter.get(i);
        }
        CommandRun run = CommandRun.of(arguments);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("Pack and parts: WITHIN LIMITS");
        assertThat(run.out()).doesNotContain("not counted as a protection");
        assertThat(entered(run.outLines())).isEqualTo(enter);
    }

    private static List<String> entered(List<String> lines) {
        return lines.stream()
                .filter(line -> line.length() > 47 && !line.substring(33, 47).isBlank())
                .map(DecisionTest::setting)
                .filter(each -> !each.isEmpty())
                .toList();
    }

    private static String setting(String line) {
        String value = line.substring(33, 47).strip().replace(" to ", "V,").replace(" ", "");
        if (line.startsWith("  Motor drive, per motor")) {
            return "motor_drive_current=" + value;
        }
        if (line.startsWith("  Motor brake, per motor")) {
            return "motor_brake_current=" + value;
        }
        if (line.startsWith("  Pack discharge")) {
            return "pack_discharge_current=" + value;
        }
        if (line.startsWith("  Pack regen")) {
            return "pack_regen_current=" + value;
        }
        if (line.startsWith("  Low-voltage taper")) {
            return "low_voltage_taper=" + value;
        }
        if (line.startsWith("  High-voltage taper") && !value.equals("none")) {
            return "high_voltage_taper=" + value;
        }
        return line.startsWith("  Speed cap") ? "speed_cap=" + value : "";
    }

    /** A pack that is safe because the vehicle does not brake is no safe vehicle. */
    @ParameterizedTest
    @ValueSource(strings = {"motor_brake_current=0A", "pack_regen_current=0.1A"})
    void aVehicleWithoutABrakeIsNotCalledSafe(String change) {
        CommandRun run = Answers.of("check", BOARD, "--with", change);
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).contains("NO BRAKE IS LEFT", "Pack: ", "Parts: ", "Brake: ");
        Map<String, Object> json =
                JsonMaps.read(
                        Answers.of("check", BOARD, "--with", change, "--format", "json").out());
        assertThat(JsonMaps.text(JsonMaps.object(json, "brake_verdict"), "word")).isEqualTo("none");
    }

    @Test
    void aWeakBrakeCountsWhereOneIsStrict() {
        assertThat(Answers.of("worksheet", Example.TOUR_BOARD.path()).status()).isZero();
        assertThat(Answers.of("worksheet", Example.TOUR_BOARD.path(), "--strict").status())
                .isEqualTo(1);
    }

    @Test
    void theBrakeQuestionIsAnsweredBesideASettingThatIsOverItsLimit() {
        CommandRun run =
                Answers.of(
                        "solve",
                        BOARD,
                        "--for",
                        "motor_brake_current",
                        "--with",
                        "motor_drive_current=70A",
                        "--with",
                        "use.charge_from=70%");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("38.5");
    }

    @Test
    void setsAreProposedSideBySideAndAsTablesToPaste() {
        CommandRun run = Answers.of("propose", BOARD);
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("[proposals.full-pack]", "[proposals.strong-brake]")
                .contains("use.charge_from = ", "stands in the way");
        assertThat(run.outLines()).allMatch(line -> line.length() <= 100);
        assertThat(Answers.of("propose", Example.TRIKE.path()).status()).isZero();
    }

    /** A cap above what the voltage of the pack permits holds nothing; no set keeps it. */
    @Test
    void noSetKeepsASpeedCapThatHoldsNothing() {
        String trike = Example.TRIKE.path();
        String out = Answers.of("propose", trike, "--with", "speed_cap=36km/h").out();
        assertThat(out).contains("[proposals.least-change]");
        assertThat(out.substring(out.indexOf("[proposals."))).doesNotContain("36.0 km/h");
    }

    @Test
    void aFrictionBrakeThatIsThereIsToldAsTooWeak() {
        BuildText trike = BuildText.of(Example.TRIKE);
        trike.replace("vehicle.friction_brake", "deceleration", "deceleration = \"0.5 m/s²\"");
        String out = words(CommandRun.of("propose", new BuildFolder(folder).put("soft", trike)));
        assertThat(out)
                .contains(
                        "What would mend it: a stronger friction brake (there is one of 0.5 m/s²)")
                .doesNotContain("a friction brake that does not depend");
    }

    /** Less return than the motors could send holds first; without it the controller would. */
    @Test
    void whatHoldsTheBrakeFirstIsToldBeforeWhatWouldHoldItNext() {
        assertThat(words(Answers.of("propose", Example.SCOOTER.path())))
                .contains(
                        "the cells' charge rating stands in the way, and without it the"
                                + " controller's motor rating would.");
    }

    private static String words(CommandRun run) {
        assertThat(run.err()).isEmpty();
        return run.out().replaceAll("\\s+", " ");
    }

    /** Each is pasted as it is printed, and asked about by its name: it is what was promised. */
    @ParameterizedTest
    @CsvSource({
        "TRAIL_BOARD, ",
        "SCOOTER, ",
        "TRIKE, ",
        "TOUR_BOARD, ",
        "TRAIL_BOARD, use.speed_max=20km/h",
        "TRIKE, use.charge_from=80%"
    })
    void whatIsProposedIsWhatWasPromisedOnceItIsPasted(Example example, @Nullable String asked) {
        List<String> situation = asked == null ? List.of() : List.of("--with", asked);
        List<String> text = proposed(example, situation).outLines();
        String pasted =
                text.stream()
                        .dropWhile(line -> !line.startsWith("[proposals."))
                        .takeWhile(line -> !line.equals("CAUTIONS"))
                        .collect(Collectors.joining("\n", "\n", "\n"));
        String build = new BuildFolder(folder).put("pasted", BuildText.of(example).text() + pasted);
        List<Map<String, Object>> sets =
                JsonMaps.objects(
                        JsonMaps.read(proposed(example, situation, "--format", "json").out()),
                        "proposals");
        assertThat(sets).isNotEmpty();
        for (Map<String, Object> set : sets) {
            Map<String, Object> sheet =
                    JsonMaps.read(
                            fine(CommandRun.of(
                                            "worksheet",
                                            build,
                                            "--proposal",
                                            JsonMaps.text(set, "name"),
                                            "--format",
                                            "json"))
                                    .out());
            assertThat(JsonMaps.text(sheet, "verdict"))
                    .as("%s of %s", JsonMaps.text(set, "name"), example)
                    .isEqualTo(JsonMaps.text(set, "verdict"));
            assertThat(JsonMaps.text(JsonMaps.object(sheet, "brake_verdict"), "word"))
                    .isEqualTo(JsonMaps.text(JsonMaps.object(set, "brake_verdict"), "word"));
        }
    }

    private static CommandRun proposed(Example example, List<String> more, String... options) {
        return fine(
                Answers.of(
                        Stream.of(
                                        Stream.of("propose", example.path()),
                                        Arrays.stream(options),
                                        more.stream())
                                .flatMap(each -> each)
                                .toArray(String[]::new)));
    }

    private static CommandRun fine(CommandRun run) {
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isIn(0, 1);
        return run;
    }

    @Test
    void cellsThatMustBeWarmerAreToldInTheUnitOfInputs() {
        CommandRun run =
                Answers.of(
                        "propose",
                        Example.TRAIL_BOARD.path(),
                        "--with=use.pack_temperature=-5°C,30°C",
                        "--format=json");
        Map<String, Object> sheet = JsonMaps.read(run.out());
        assertThat(JsonMaps.objects(sheet, "proposals"))
                .map(each -> JsonMaps.object(each, "use"))
                .filteredOn(use -> use.containsKey("pack_temperature"))
                .isNotEmpty()
                .allSatisfy(
                        use ->
                                assertThat(JsonMaps.object(use, "pack_temperature"))
                                        .containsEntry("unit", "degC"));
    }
}

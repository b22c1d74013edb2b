package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.profile.Comparison;
import brakewright.profile.Profile;
import brakewright.profile.Quantity;
import brakewright.spec.Build;
import brakewright.worksheet.Worksheet;
import java.nio.file.Path;
import java.util.Objects;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The example vehicles side by side. */
class ExampleComparisonTest {

    @ParameterizedTest
    @EnumSource
    void readsWhatTheWorksheetSays(Example example) {
        Build build = build(example);
        Worksheet sheet = Worksheet.of(build);
        Comparison alone = Comparison.of(new Profile("alone", build));
        assertThat(value(alone, Quantity.TOP_SPEED, 0))
                .hasValue(sheet.drive().topSpeedFlat().speed());
        assertThat(value(alone, Quantity.LAUNCH, 0)).hasValue(sheet.drive().launch());
        assertThat(value(alone, Quantity.CLIMB, 0)).hasValue(sheet.drive().climb().steepest());
        assertThat(value(alone, Quantity.RANGE, 0)).hasValue(sheet.range().cruise().distance());
        assertThat(value(alone, Quantity.TIME_TO_CRUISE, 0))
                .hasValue(sheet.drive().toCruise().orElseThrow().time());
        assertThat(value(alone, Quantity.VERDICT, 0))
                .hasValue(sheet.review().verdict().outcome().ordinal());
        assertThat(sheet.review().verdict().outcome().key()).isEqualTo(example.verdict());
    }

    @ParameterizedTest
    @EnumSource
    void anotherVehicleIsToldBesideTheBoard(Example example) {
        Comparison mixed =
                Comparison.of(
                        new Profile("board", build(Example.TRAIL_BOARD)),
                        new Profile("other", build(example)));
        assertThat(value(mixed, Quantity.TOP_SPEED, 1))
                .isEqualTo(
                        value(
                                Comparison.of(new Profile("alone", build(example))),
                                Quantity.TOP_SPEED,
                                0));
        assertThat(mixed.rows()).allMatch(row -> row.readings().size() == 2);
        assertThat(mixed.rows().stream().allMatch(row -> row.difference(1).orElse(0.0) == 0.0))
                .isEqualTo(example == Example.TRAIL_BOARD);
    }

    @Test
    void aFirmerBrakeStopsTheBoardSooner() throws BuildFileException {
        BuildFile file = BuildArgument.read(Path.of(Example.TRAIL_BOARD.path()));
        Build firmer =
                file.with(Objects.requireNonNull(file.proposals().get("firmer-brake-more-regen")))
                        .build();
        Comparison comparison =
                Comparison.of(new Profile("present", file.build()), new Profile("firmer", firmer));
        Comparison.Row stop = row(comparison, Quantity.STOP_DRY);
        assertThat(stop.difference(1).orElseThrow()).isNegative();
        assertThat(stop.isBest(0)).isFalse();
        assertThat(stop.isBest(1)).isTrue();
        assertThat(comparison.sortedBy(stop.measure()).profiles())
                .extracting(Profile::name)
                .containsExactly("firmer", "present");
    }

    private static Build build(Example example) {
        return BuildArgument.read(Path.of(example.path())).build();
    }

    private static OptionalDouble value(Comparison comparison, Quantity quantity, int column) {
        return row(comparison, quantity).readings().get(column).value();
    }

    private static Comparison.Row row(Comparison comparison, Quantity quantity) {
        return comparison.rows().stream()
                .filter(each -> each.measure().quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }
}

package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.braking.StopOutcome;
import brakewright.review.Finding;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Settings;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A current too small to do anything is as good as none. */
@Tag("law")
class TinySettingsTest {

    private static List<Settings> tiny(double current) {
        return List.of(
                Settings.NONE.withMotorDriveCurrent(current),
                Settings.NONE.withMotorBrakeCurrent(current),
                Settings.NONE.withPackDischargeCurrent(current),
                Settings.NONE.withPackRegenCurrent(current),
                Settings.NONE.withMotorBrakeCurrent(current).withPackRegenCurrent(current));
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                Double.MIN_VALUE,
                1e-320,
                1e-310,
                Double.MIN_NORMAL,
                1e-200,
                1e-160,
                1e-100,
                1e-30,
                1e-9
            })
    void isCheckedLikeNone(double current) {
        for (Build build : List.of(Builds.trailBoard(), Builds.dockCart())) {
            List<Settings> none = tiny(0.0);
            List<Settings> some = tiny(current);
            for (int i = 0; i < some.size(); i++) {
                CheckSheet without = CheckSheet.of(build, none.get(i));
                CheckSheet with = CheckSheet.of(build, some.get(i));
                assertThat(with.proposed().review().verdict().outcome())
                        .isEqualTo(without.proposed().review().verdict().outcome());
                assertFinite(with);
            }
        }
    }

    private static void assertFinite(CheckSheet check) {
        for (Finding finding : check.proposed().review().findings()) {
            finding.value().ifPresent(value -> assertThat(value).as(finding.toString()).isFinite());
            finding.limit().ifPresent(value -> assertThat(value).as(finding.toString()).isFinite());
            finding.speed().ifPresent(value -> assertThat(value).as(finding.toString()).isFinite());
        }
        Worksheet sheet = check.proposed();
        for (StopTable.Row row : sheet.stops()) {
            if (row.outcome() instanceof StopOutcome.Stopped stopped) {
                assertThat(stopped.distance()).isFinite();
                assertThat(stopped.endCharge()).isFinite();
            }
        }
    }
}

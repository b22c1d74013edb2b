package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.powertrain.ElectricDrive;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class WorksheetProperties {

    @Property(tries = 200)
    void everyBuildHasAWorksheetOfNumbers(@ForAll Build build) {
        Worksheet sheet = Worksheet.of(build);
        assertThat(sheet.pack())
                .allSatisfy(
                        row -> {
                            assertThat(row.mayTake()).isNotNaN().isNotNegative();
                            assertThat(row.mayGive()).isNotNaN().isNotNegative();
                            assertThat(row.topSpeed().speed()).isNotNaN().isNotNegative();
                        });
        assertThat(sheet.drive().launch()).isNotNaN().isNotNegative();
        assertThat(sheet.drive().climb().steepest()).isNotNaN().isNotNegative();
    }

    @Property(tries = 200)
    void theMapNeverShowsMoreThanIsSet(@ForAll Build build) {
        Worksheet sheet = Worksheet.of(build);
        BrakeMap map = sheet.brakeMap();
        double set = sheet.operation().brake().packCurrent();
        double motor = sheet.operation().brake().motorCurrent();
        for (int row = 0; row < map.charges().length; row++) {
            assertThat(Arrays.stream(map.packCurrent()[row]))
                    .allMatch(current -> current <= set * (1.0 + 1e-12) || current <= 0.0);
            assertThat(Arrays.stream(map.motorCurrent()[row]))
                    .allMatch(current -> current >= 0.0 && current <= motor);
        }
    }

    /** The steepest slope that the wheels hold is the one on which thrust and pull are equal. */
    @Property(tries = 200)
    void theClimbIsHeldByTheThrust(@ForAll Build build) {
        Worksheet sheet = Worksheet.of(build);
        double slope = sheet.drive().climb().steepest();
        if (slope == 0.0 || Double.isInfinite(slope)) {
            return;
        }
        double rolling = build.vehicle().rollingResistance();
        double needed = (slope + rolling) / Math.hypot(1.0, slope);
        ElectricDrive set = sheet.operation().drive();
        double thrust = set.powertrain().thrust(set.motorCurrent(), 0.0) / (build.mass() * 9.80665);
        assertThat(needed).isLessThanOrEqualTo(thrust + 1e-9);
    }

    @Example
    void theExampleBuildsHaveWorksheets() {
        for (Build build : List.of(Builds.trailBoard(), Builds.parcelTrike(), Builds.dockCart())) {
            Worksheet sheet = Worksheet.of(build);
            assertThat(sheet.pack()).hasSize(21);
            assertThat(sheet.brakeMap().speeds()[0]).isZero();
            assertThat(sheet.heat().known().isPresent())
                    .isEqualTo(build.motor().heat().isPresent());
            assertThat(sheet.brakeMap().speeds()[sheet.brakeMap().speeds().length - 1])
                    .isCloseTo(sheet.operation().topSpeed(), within(1e-12));
        }
    }
}

package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import brakewright.assembly.BuildSteps;
import brakewright.assembly.Defaults;
import brakewright.assembly.KnownCell;
import brakewright.assembly.UnfitBuild;
import brakewright.assembly.Value;
import brakewright.spec.Build;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Curve;
import brakewright.spec.Input;
import brakewright.spec.Stance;
import brakewright.spec.Unit;
import brakewright.worksheet.Worksheet;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A vehicle made in code is the one that a build file of the same numbers makes. */
class BuildStepsTest {

    private static final KnownCell CELL = new KnownCell("nmc", 3.0, 15.0, 4.0, 4.2, 2.5, 0.03);

    private static BuildSteps cart() {
        return BuildSteps.titled("Cart")
                .rider(92.0, Stance.SEATED)
                .vehicle(40.0, 0.25)
                .drive(1, 4.0)
                .motor(100.0, 0.068)
                .controller(CurrentBasis.PHASE_PEAK, 60.0, 40.0, 60.0)
                .pack("samsung-30q", 10, 4);
    }

    private static final String FILE =
            """
            title = "Cart"
            [rider]
            mass = "92 kg"
            stance = "seated"
            [vehicle]
            mass = "40 kg"
            wheel_diameter = "0.25 m"
            [drive]
            motors = 1
            reduction = 4
            [motor]
            kv = "100 rpm/V"
            resistance = "0.068 ohm"
            [controller]
            current_basis = "phase-peak"
            motor_current_rating = "60 A"
            pack_current_rating = "40 A"
            voltage_rating = "60 V"
            [pack]
            series = 10
            parallel = 4
            cell = "samsung-30q"
            """;

    @Test
    void theLeastThatMustBeKnownMakesWhatAFileMakes() throws BuildFileException {
        assertThat(cart().build(Vehicles.TABLES)).isEqualTo(Vehicles.read(FILE).build());
    }

    @Test
    void aCellMayBeTold() throws BuildFileException {
        String own =
                """
                [pack.cell]
                chemistry = "nmc"
                capacity = "3 Ah"
                discharge_current = "15 A"
                charge_current = "4 A"
                voltage_max = "4.2 V"
                voltage_min = "2.5 V"
                resistance = "0.03 ohm"
                """;
        Build built =
                BuildSteps.titled("Cart")
                        .rider(92.0, Stance.SEATED)
                        .vehicle(40.0, 0.25)
                        .drive(1, 4.0)
                        .motor(100.0, 0.068)
                        .controller(CurrentBasis.PHASE_PEAK, 60.0, 40.0, 60.0)
                        .pack(CELL, 10, 4)
                        .build(Vehicles.TABLES);
        assertThat(built)
                .isEqualTo(Vehicles.read(FILE.replace("cell = \"samsung-30q\"\n", own)).build());
    }

    private static final String TWO_PACKS =
            FILE.substring(0, FILE.indexOf("[pack]"))
                    + """
                    [battery]
                    joining = "parallel"
                    fuse = "60 A"
                    [[packs]]
                    series = 10
                    parallel = 4
                    cell = "samsung-30q"
                    charge = "80 %"
                    protection.charge_trip = "20 A"
                    [[packs]]
                    series = 10
                    parallel = 2
                    cell.chemistry = "nmc"
                    cell.capacity = "3 Ah"
                    cell.discharge_current = "15 A"
                    cell.charge_current = "4 A"
                    cell.voltage_max = "4.2 V"
                    cell.voltage_min = "2.5 V"
                    cell.resistance = "0.03 ohm"
                    charge = "70 %"
                    wiring.fuse = "30 A"
                    """;

    private static BuildSteps twoPacks() {
        return cart().with(Input.PACK_CHARGE, 0.8)
                .with(Input.PROTECTION_CHARGE_TRIP, 20.0)
                .andPack(CELL, 10, 2)
                .with(Input.PACK_CHARGE, 0.7)
                .with(Input.WIRING_FUSE, 30.0)
                .with(Input.PACKS_JOINING, "parallel")
                .with(Input.TRUNK_FUSE, 60.0);
    }

    @Test
    void severalPacksMakeWhatAFileMakes() throws BuildFileException {
        Build built = twoPacks().build(Vehicles.TABLES);
        Build read = Vehicles.read(TWO_PACKS).build();
        assertThat(built).isEqualTo(read);
        assertThat(sheet(built)).isEqualTo(sheet(read));
        assertThat(built.battery().packs()).hasSize(2).doesNotHaveDuplicates();
    }

    private static List<Object> sheet(Build build) {
        Worksheet sheet = Worksheet.of(build);
        return List.of(
                sheet.alikeFindings(),
                sheet.pack(),
                sheet.firstStops(),
                sheet.hardPulls(),
                sheet.stops(),
                sheet.riddenStops(),
                sheet.driveByCharge(),
                sheet.restsOn());
    }

    static List<Path> all() {
        return Vehicles.all();
    }

    /** Whatever a file tells can be told in code, too; what it looks up is told as it was found. */
    @ParameterizedTest
    @MethodSource("all")
    void everythingMayBeTold(Path path) throws BuildFileException {
        BuildFile file = Vehicles.read(Vehicles.text(path));
        BuildSteps steps =
                BuildSteps.titled(file.title())
                        .rider(1.0, Stance.SEATED)
                        .vehicle(1.0, 1.0)
                        .drive(1, 1.0)
                        .motor(1.0, 1.0)
                        .controller(CurrentBasis.PHASE_PEAK, 1.0, 1.0, 1.0)
                        .pack(CELL, 1, 1);
        file.inputs().forEach((input, resolved) -> tell(steps, input, resolved.value()));
        for (int k = 0; k < file.packs().size(); k++) {
            if (k > 0) {
                steps.andPack(CELL, 1, 1);
            }
            file.packs().get(k).forEach((input, resolved) -> tell(steps, input, resolved.value()));
        }
        assertThat(steps.build(Defaults.NONE)).isEqualTo(file.build());
    }

    /** Build files look these up; their ratings and resistances are among what is told. */
    private static final Set<Input> LOOKED_UP =
            EnumSet.of(
                    Input.WIRING_FUSE_FAMILY,
                    Input.WIRING_WIRE,
                    Input.WIRING_LENGTH,
                    Input.WIRING_PLUG,
                    Input.TRUNK_FUSE_FAMILY,
                    Input.TRUNK_WIRE,
                    Input.TRUNK_LENGTH,
                    Input.TRUNK_PLUG);

    private static void tell(BuildSteps steps, Input input, Value value) {
        if (LOOKED_UP.contains(input)) {
            return;
        }
        if (value instanceof Value.Number number) {
            steps.with(input, number.quantity().value());
        } else if (value instanceof Value.Pair pair) {
            steps.with(input, pair.first(), pair.second());
        } else if (value instanceof Value.Word word) {
            steps.with(input, word.text());
        } else if (value instanceof Value.Points points) {
            steps.with(input, points.curve());
        }
    }

    @Test
    void allThatIsWrongIsNamedByKeyAndUnit() {
        BuildSteps steps =
                BuildSteps.titled("Cart")
                        .rider(-92.0, Stance.SEATED)
                        .vehicle(40.0, 0.25)
                        .drive(1, 4.0)
                        .motor(100.0, -0.068)
                        .controller(CurrentBasis.PHASE_PEAK, 60.0, 40.0, 60.0)
                        .pack("samsung-30q", 10, 4)
                        .with(Input.DRIVE_EFFICIENCY, 1.4)
                        .with(Input.USE_CHARGE_FROM, 1.5)
                        .with(Input.VEHICLE_WHEELBASE, -1.0);
        assertThat(wrong(steps, Vehicles.TABLES).misfits())
                .extracting(UnfitBuild.Misfit::key, UnfitBuild.Misfit::unit)
                .containsExactlyInAnyOrder(
                        tuple("rider.mass", Unit.KILOGRAM),
                        tuple("drive.efficiency", Unit.RATIO),
                        tuple("motor.resistance", Unit.OHM),
                        tuple("use.charge_from", Unit.RATIO),
                        tuple("vehicle.wheelbase", Unit.METRE));
        assertThat(wrong(steps, Vehicles.TABLES))
                .hasMessageContaining("rider.mass [kg]: rider mass must be positive, was -92.0 kg");
    }

    @Test
    void whatCannotBeToldIsRefusedWithTheRest() {
        BuildSteps steps =
                cart().with(Input.MOTOR_POLE_PAIRS, 2.5)
                        .with(Input.USE_AMBIENT, Double.NaN)
                        .with(Input.USE_PACK_TEMPERATURE, 20.0)
                        .with(Input.VEHICLE_DRIVEN_AXLE, "middle")
                        .with(Input.MOTOR_KV, "fast")
                        .with(Input.MOTOR_KV, 1.0, 2.0)
                        .with(Input.MOTOR_KV, Curve.of(new double[] {0, 1}, new double[] {0, 1}))
                        .with(Input.PACK_CHARGE, 0.5)
                        .with(Input.WIRING_WIRE, "8 AWG");
        assertThat(wrong(steps, Vehicles.TABLES).misfits())
                .extracting(UnfitBuild.Misfit::told)
                .containsExactly(
                        "motor.pole_pairs: must be a whole number of at least 1, was 2.5",
                        "use.ambient [°C]: must be a finite number, was NaN",
                        "use.pack_temperature [°C]: is no single number",
                        "vehicle.driven_axle: must be one of front, rear, both, was \"middle\"",
                        "motor.kv [rpm/V]: is no word",
                        "motor.kv [rpm/V]: is no pair of values",
                        "motor.kv [rpm/V]: is no curve",
                        "pack.wiring.wire: is looked up by build files only: tell the ratings instead",
                        "pack.charge: is told of several packs only");
    }

    @Test
    void whatIsWrongWithOneOfSeveralPacksIsNamedWithItsNumber() {
        BuildSteps misspelt =
                cart().with(Input.PACK_JOINT_RESISTANCE, Double.NaN)
                        .andPack("samsung-30q", 10, 4)
                        .with(Input.PACK_SERIES, 9.5)
                        .with(Input.WIRING_LENGTH, 0.6);
        assertThat(wrong(misspelt, Vehicles.TABLES).misfits())
                .extracting(UnfitBuild.Misfit::told)
                .containsExactly(
                        "packs.1.joint_resistance [Ω]: must be a finite number, was NaN",
                        "packs.2.series: must be a whole number of at least 1, was 9.5",
                        "packs.2.wiring.length [m]: counts by the wire, which build files look up:"
                                + " tell resistances");
        BuildSteps impossible = cart().andPack("samsung-30q", 10, 4).with(Input.WIRING_FUSE, -30.0);
        assertThat(wrong(impossible, Vehicles.TABLES).misfits())
                .extracting(UnfitBuild.Misfit::key, UnfitBuild.Misfit::unit)
                .containsExactly(tuple("packs.2.wiring.fuse", Unit.AMPERE));
        BuildSteps unknown = cart().andPack("no such", 10, 4).andPack("nor this", 10, 4);
        assertThat(wrong(unknown, Vehicles.TABLES).misfits())
                .extracting(UnfitBuild.Misfit::key)
                .containsExactly("packs.2.cell", "packs.3.cell");
    }

    /** As a file is refused that says so. */
    @Test
    void packsThatDoNotGoTogetherAreRefused() {
        BuildSteps unlike = cart().andPack("samsung-30q", 20, 4);
        assertThat(wrong(unlike, Vehicles.TABLES))
                .hasMessageStartingWith("packs: packs in parallel must have a range");
        BuildSteps unequal =
                cart().with(Input.PACK_CHARGE, 0.8)
                        .andPack("samsung-30q", 10, 4)
                        .with(Input.PACK_CHARGE, 0.7)
                        .with(Input.PACKS_JOINING, "series");
        assertThat(wrong(unequal, Vehicles.TABLES))
                .hasMessageStartingWith("packs: packs in series must be equally full");
        BuildSteps warm = cart().andPack("samsung-30q", 10, 4).with(Input.PACK_TEMPERATURE, 40.0);
        assertThat(wrong(warm, Vehicles.TABLES))
                .hasMessageStartingWith("packs: all packs must have one temperature");
        assertThat(wrong(cart().with(Input.TRUNK_FUSE, 60.0), Vehicles.TABLES))
                .hasMessage("battery.fuse [A]: is told of several packs only");
    }

    @Test
    void whatIsNeededAndHasNoDefaultIsNamed() {
        assertThat(wrong(cart(), Defaults.NONE).misfits())
                .extracting(UnfitBuild.Misfit::told)
                .containsExactly("pack.cell: \"samsung-30q\" is no cell of the tables");
        BuildSteps own =
                BuildSteps.titled("Cart")
                        .rider(92.0, Stance.SEATED)
                        .vehicle(40.0, 0.25)
                        .drive(1, 4.0)
                        .motor(100.0, 0.068)
                        .controller(CurrentBasis.PHASE_PEAK, 60.0, 40.0, 60.0)
                        .pack(CELL, 10, 4);
        assertThat(wrong(own, Defaults.NONE).misfits())
                .extracting(UnfitBuild.Misfit::key)
                .containsExactly("vehicle.mass_centre_from_front");
    }

    private static UnfitBuild wrong(BuildSteps steps, Defaults defaults) {
        UnfitBuild wrong = catchThrowableOfType(UnfitBuild.class, () -> steps.build(defaults));
        assertThat(wrong).isNotNull();
        return wrong;
    }
}

package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.assembly.Resolved;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A build file that was written anew is the same vehicle, in the words of its owner. */
class TomlWriterTest {

    private static final String SMALL =
            """
            # Two wheels, one motor.
            title = "Cart \\"two\\"" # its name
            notes = \"""
            One line,
              another # that is no comment.\"""

            [rider]
            # with helmet
            mass = "92 kg ± 2 kg"   # scales
            stance = 'seated'
            [vehicle]
            mass = "40 kg"
            wheel_diameter = "250 mm"
            [drive]
            motors = 1
            reduction = 4
            [motor]
            kv = "100 rpm/V"
            resistance = "68 mΩ"
            [controller]
            current_basis = "phase-peak"
            motor_current_rating = "60 A"
            pack_current_rating = "40 A"
            voltage_rating = "60 V"
            [pack]
            cell = "samsung-30q"
            series = 10
            parallel = 4
            [settings]
            # not yet
            high_voltage_taper = "none"
            # the end
            """;

    static List<Path> vehicles() {
        return Vehicles.all();
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void isTheSameVehicle(Path path) throws BuildFileException {
        BuildFile file = Vehicles.read(Vehicles.text(path));
        BuildFile again = Vehicles.read(file.toml());
        assertThat(again.build()).isEqualTo(file.build());
        assertThat(again.named()).isEqualTo(file.named());
        assertThat(again.proposals()).isEqualTo(file.proposals());
        assertThat(again.title()).isEqualTo(file.title());
        assertThat(again.notes()).isEqualTo(file.notes());
        assertThat(again.toml()).isEqualTo(file.toml());
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void isTheSameVehicleWithAProposalInPlace(Path path) throws BuildFileException {
        BuildFile file = Vehicles.read(Vehicles.text(path));
        for (Map.Entry<String, Changes> each : file.proposals().entrySet()) {
            BuildFile changed = file.with(each.getValue());
            assertThat(changed.toml()).contains("#: from proposals." + each.getKey());
            assertThat(Vehicles.read(changed.toml()).build()).isEqualTo(changed.build());
        }
    }

    @Test
    void keepsTheCommentsOfItsOwner() throws BuildFileException {
        String text = Vehicles.read(SMALL).toml();
        assertThat(text)
                .contains("# Two wheels, one motor.\ntitle = \"Cart \\\"two\\\"\"  # its name\n")
                .contains("# with helmet\nmass = \"92 kg ± 2 kg\"  # scales\n")
                .contains("One line,\n  another # that is no comment.\"\"\"\n")
                .endsWith("\n# not yet\n# the end\n");
        assertThat(Vehicles.read(text).toml()).isEqualTo(text);
    }

    @Test
    void tellsWhatIsTakenAndFromWhere() throws BuildFileException {
        BuildFile file = Vehicles.read(SMALL);
        String text = file.toml();
        file.inputs()
                .forEach(
                        (input, resolved) -> {
                            String name = input.key().substring(input.key().lastIndexOf('.') + 1);
                            assertThat(text)
                                    .contains(
                                            resolved.from() == Resolved.From.FILE
                                                    ? "\n" + name + " = "
                                                    : "\n#: " + name + " = ");
                            if (resolved.from() != Resolved.From.FILE) {
                                assertThat(text)
                                        .contains(resolved.from().key() + ", " + resolved.source());
                            }
                        });
    }

    @Test
    void writesJsonAsToml() throws BuildFileException {
        BuildFile file = Vehicles.read(SMALL);
        BuildFile json =
                Vehicles.read(
                        """
                        {"title": "Cart \\"two\\"", "notes": "One line,\\n  another # that is no comment.",
                        "rider": {"mass": "92 kg ± 2 kg", "stance": "seated"},
                        "vehicle": {"mass": "40 kg", "wheel_diameter": "250 mm"},
                        "drive": {"motors": 1, "reduction": 4},
                        "motor": {"kv": "100 rpm/V", "resistance": "68 mΩ"},
                        "controller": {"current_basis": "phase-peak", "motor_current_rating": "60 A",
                            "pack_current_rating": "40 A", "voltage_rating": "60 V"},
                        "pack": {"cell": "samsung-30q", "series": 10, "parallel": 4}}
                        """);
        assertThat(json.build()).isEqualTo(file.build());
        assertThat(Vehicles.read(json.toml()).named()).isEqualTo(file.named());
    }
}

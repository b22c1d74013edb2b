package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import brakewright.assembly.Value;
import brakewright.buildfile.QuantityParser.NotAQuantity;
import brakewright.spec.Curve;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SchemaTest {

    private static final ValueReader.CurveTable NO_CURVES =
            new ValueReader.CurveTable() {
                @Override
                public Optional<Curve> curve(String id, String quantity) {
                    return Optional.empty();
                }

                @Override
                public List<String> ids(String quantity) {
                    return List.of();
                }
            };

    static List<Schema.Entry> entries() {
        return Schema.all();
    }

    @ParameterizedTest
    @EnumSource
    void hasAnEntryForEveryInput(Input input) {
        assertThatCode(() -> Schema.of(input)).doesNotThrowAnyException();
        assertThat(Schema.of(input).key()).isEqualTo(input.key());
        assertThat(Input.ofKey(input.key())).contains(input);
    }

    @Test
    void hasNoEntryTwice() {
        assertThat(entries()).hasSize(Input.values().length);
    }

    /** The example is read as it is printed in a complaint. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("entries")
    void anExampleIsAValueOfItsOwnKindWithinItsRange(Schema.Entry entry) {
        String line = Spelling.TOML.example(entry, entry.key());
        List<Problem> problems = new ArrayList<>();
        WrittenText toml = TomlText.read(line, problems);
        assertThat(problems).as(line).isEmpty();
        String name = entry.key().substring(entry.key().lastIndexOf('.') + 1);
        Object raw = Objects.requireNonNull(toml.table().values().get(name), line).raw();
        Optional<Value> value =
                new ValueReader(NO_CURVES, Spelling.TOML, problems)
                        .read(entry, entry.key(), raw, 1);
        assertThat(problems).as(line).isEmpty();
        assertThat(value).isPresent();
        FileKeys json =
                FileKeys.parse("{" + Spelling.JSON.example(entry, entry.key()) + "}", problems);
        assertThat(problems).as(line).isEmpty();
        assertThat(
                        new ValueReader(NO_CURVES, Spelling.JSON, problems)
                                .read(entry, entry.key(), json.values().get(entry.key()).raw(), 1))
                .isPresent();
        assertThat(problems).as(line).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("entries")
    void aRangeAscends(Schema.Entry entry) {
        if (entry.kind() instanceof Kind.Words || entry.kind() instanceof Kind.Text) {
            assertThat(entry.input().unit()).isEqualTo(Unit.NONE);
        } else {
            assertThat(entry.low()).isLessThan(entry.high());
            assertThat(entry.input().unit()).isNotEqualTo(Unit.NONE);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("entries")
    void theUnitOfAnInputIsTheCalculationUnitOfItsDimension(Schema.Entry entry)
            throws NotAQuantity {
        Kind kind = entry.kind();
        if (kind instanceof Kind.Measured measured) {
            assertUnity(entry, measured.dimension());
        } else if (kind instanceof Kind.MeasuredPair pair) {
            assertUnity(entry, pair.dimension());
        } else if (entry.input() == Input.USE_STOPS_PER_KM) {
            assertThat(entry.input().unit())
                    .as("told by the name of the key")
                    .isEqualTo(Unit.PER_KILOMETRE);
        } else if (!(kind instanceof Kind.Tabulated)) {
            assertThat(entry.input().unit()).isIn(Unit.RATIO, Unit.NONE);
        }
    }

    private static void assertUnity(Schema.Entry entry, Dimension dimension) throws NotAQuantity {
        assertThat(QuantityParser.parse("1 " + entry.input().unit().plain(), dimension).value())
                .as(entry.key())
                .isEqualTo(1.0);
    }

    @Test
    void requiresWhatTheBuildFileFormatRequires() {
        assertThat(entries().stream().filter(Schema.Entry::required).map(Schema.Entry::input))
                .containsExactlyInAnyOrderElementsOf(
                        Set.of(
                                Input.RIDER_MASS,
                                Input.RIDER_STANCE,
                                Input.VEHICLE_MASS,
                                Input.VEHICLE_WHEEL_DIAMETER,
                                Input.DRIVE_MOTORS,
                                Input.DRIVE_REDUCTION,
                                Input.MOTOR_KV,
                                Input.MOTOR_RESISTANCE,
                                Input.CONTROLLER_CURRENT_BASIS,
                                Input.CONTROLLER_MOTOR_CURRENT_RATING,
                                Input.CONTROLLER_PACK_CURRENT_RATING,
                                Input.CONTROLLER_VOLTAGE_RATING,
                                Input.PACK_SERIES,
                                Input.PACK_PARALLEL));
    }
}

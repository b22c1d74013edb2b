package brakewright.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number of a vehicle is checked when it is given, with a message that helps. */
class RejectedInputTest {

    private static final Map<String, Record> VALID =
            Stream.of(
                            Builds.trailBoard().vehicle().axles(),
                            Builds.trailBoard().battery(),
                            Builds.pack(Builds.trailBoard()).cell(),
                            Builds.pack(Builds.trailBoard()).cell().charging(),
                            Builds.trailBoard().use().climate(),
                            Builds.trailBoard().controllers(),
                            Builds.trailBoard().criteria(),
                            Builds.pack(Builds.trailBoard()).cell().discharging(),
                            Builds.trailBoard().drive(),
                            Builds.trailBoard().use().effort(),
                            Builds.trailBoard().margins(),
                            Builds.trailBoard().motor(),
                            Builds.trailBoard().motor().heat().orElseThrow(),
                            Builds.pack(Builds.trailBoard()),
                            Builds.pack(Builds.trailBoard()).protection(),
                            Builds.pack(Builds.trailBoard()).cell().relaxation(),
                            Builds.trailBoard().use().riding(),
                            new Riding.Measured(60.0, 5.0),
                            new PulseRating(OptionalDouble.of(40.0), OptionalDouble.of(12.0), 10.0),
                            Builds.trailBoard().rider(),
                            Builds.dockCart().settings(),
                            Builds.dockCart().settings().highVoltageTaper().orElseThrow(),
                            Builds.trailBoard().use(),
                            Builds.trailBoard().vehicle(),
                            Builds.pack(Builds.trailBoard()).wiring().fuseBreaking(),
                            Builds.pack(Builds.trailBoard()).wiring())
                    .collect(
                            Collectors.toMap(
                                    each -> each.getClass().getSimpleName(), Function.identity()));

    record Rejected(
            String type,
            String component,
            String quantity,
            String unit,
            String range,
            String value) {

        @Override
        public String toString() {
            return type + "." + component + " = " + value;
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rejected")
    void namesTheQuantityItsUnitAndRange(Rejected rejected) {
        assertThatThrownBy(() -> rebuild(rejected))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(rejected.quantity())
                .hasMessageContaining(rejected.unit())
                .hasMessageContaining(rejected.range());
    }

    @Test
    void everyNumberOfEveryRecordIsListed() throws IOException {
        TreeSet<String> numbers = new TreeSet<>();
        for (Record record : VALID.values()) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                Class<?> type = component.getType();
                if (type == double.class || type == int.class || type == OptionalDouble.class) {
                    numbers.add(record.getClass().getSimpleName() + "." + component.getName());
                }
            }
        }
        assertThat(rejected().map(each -> each.type() + "." + each.component()).distinct().sorted())
                .containsExactlyElementsOf(numbers);
    }

    /** A message about a ratio has no unit to name, and so no gap where one would stand. */
    @Test
    void aMessageHasNoGapWhereARatioHasNoUnit() {
        assertThatThrownBy(() -> Require.within("grip", 3.0, 0.02, 2.0, Unit.RATIO))
                .hasMessage("grip must be from 0.02 to 2.0, was 3.0");
        assertThatThrownBy(() -> Require.positive("reduction", -1.0, Unit.RATIO))
                .hasMessage("reduction must be positive, was -1.0");
    }

    @Test
    void aCellRejectsAVoltageThatFallsAndFactorsThatVanish() {
        Cell cell = Builds.pack(Builds.trailBoard()).cell();
        Curve falling = Curve.of(new double[] {0.0, 1.0}, new double[] {4.0, 3.0});
        assertThatThrownBy(() -> withCurves(cell, falling, Curve.constant(1.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("open-circuit voltage must not fall");
        assertThatThrownBy(() -> withCurves(cell, cell.openCircuitVoltage(), Curve.constant(0.0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("resistance factor by charge");
    }

    @Test
    void anEndlessVoltageIsNoLimit() {
        assertThatThrownBy(() -> Builds.flatCell(3.6, 0.01, 2.5, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void motorsMustDivideAmongControllers() {
        assertThatThrownBy(() -> Builds.withDrive(Builds.trailBoard(), new Drive(3, 4.0, 0.9), 0.2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3 motors and 2 controllers");
    }

    @Test
    void aProtectionOnTheChargeLeadHasNoTripWhileRiding() {
        assertThatThrownBy(
                        () ->
                                new Protection(
                                        OptionalDouble.empty(),
                                        OptionalDouble.of(20.0),
                                        OptionalDouble.empty(),
                                        OptionalDouble.empty(),
                                        Protection.Path.CHARGE_LEAD,
                                        OptionalDouble.empty(),
                                        OptionalDouble.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("charge lead");
    }

    @Test
    void tapersMustRunTheRightWay() {
        Taper rising = new Taper(30.0, 40.0);
        Settings none = Settings.NONE;
        assertThatThrownBy(() -> tapered(Optional.of(rising), Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("low-voltage taper");
        assertThatThrownBy(() -> tapered(Optional.empty(), Optional.of(new Taper(40.0, 30.0))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("high-voltage taper");
        assertThat(rising.band()).isEqualTo(10.0);
        assertThat(none.overlaidBy(none)).isEqualTo(none);
    }

    @Test
    void settingsThatAreGivenReplaceTheOthers() {
        Settings made = Builds.dockCart().settings();
        assertThat(Settings.NONE.overlaidBy(made)).isEqualTo(made);
        assertThat(made.overlaidBy(Settings.NONE)).isEqualTo(made);
    }

    @Test
    void everyInputIsFoundByItsName() {
        for (Input input : Input.values()) {
            assertThat(Input.ofKey(input.key())).contains(input);
        }
        assertThat(Input.ofKey("no.such.input")).isEmpty();
    }

    @Test
    void chargingIsSharedInTheColdBandOnly() {
        ChargingWindow window =
                new ChargingWindow(0.0, 45.0, 10.0, 0.2, ChargingWindow.WHATEVER_THE_CHARGE);
        assertThat(window.shareAt(-0.1)).isZero();
        assertThat(window.shareAt(0.0)).isEqualTo(0.2);
        assertThat(window.shareAt(9.99)).isEqualTo(0.2);
        assertThat(window.shareAt(10.0)).isEqualTo(1.0);
        assertThat(window.shareAt(45.0)).isEqualTo(1.0);
        assertThat(window.shareAt(45.1)).isZero();
        assertThatThrownBy(() -> window.shareAt(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cell temperature must be a number");
    }

    static Stream<Rejected> rejected() throws IOException {
        try (InputStream stream = RejectedInputTest.class.getResourceAsStream("rejected.csv")) {
            List<String> lines =
                    new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                            .lines()
                            .filter(line -> !line.startsWith("#"))
                            .skip(1)
                            .toList();
            return lines.stream().flatMap(RejectedInputTest::parse);
        }
    }

    private static Stream<Rejected> parse(String line) {
        String[] cells = line.split(",", -1);
        boolean count = cells[4].startsWith("at least");
        return Stream.concat(
                        Stream.of(cells[5].split(" ")), count ? Stream.empty() : Stream.of("NaN"))
                .map(
                        value ->
                                new Rejected(
                                        cells[0], cells[1], cells[2], cells[3], cells[4], value));
    }

    /** Makes the valid record again with one component replaced. */
    private static void rebuild(Rejected rejected) throws Throwable {
        Record valid = Objects.requireNonNull(VALID.get(rejected.type()), rejected.type());
        RecordComponent[] components = valid.getClass().getRecordComponents();
        Class<?>[] types =
                Stream.of(components).map(RecordComponent::getType).toArray(Class[]::new);
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            values[i] =
                    components[i].getName().equals(rejected.component())
                            ? convert(rejected.value(), types[i])
                            : components[i].getAccessor().invoke(valid);
        }
        try {
            valid.getClass().getConstructor(types).newInstance(values);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    private static Object convert(String value, Class<?> type) {
        if (type == int.class) {
            return Integer.parseInt(value);
        }
        double number = Double.parseDouble(value);
        return type == OptionalDouble.class ? OptionalDouble.of(number) : number;
    }

    private static Cell withCurves(Cell cell, Curve voltage, Curve byCharge) {
        return cell.withOpenCircuitVoltage(voltage)
                .withResistanceByCharge(ResistanceByCharge.alike(byCharge));
    }

    private static Settings tapered(Optional<Taper> low, Optional<Taper> high) {
        return new Settings(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                low,
                high,
                OptionalDouble.empty());
    }
}

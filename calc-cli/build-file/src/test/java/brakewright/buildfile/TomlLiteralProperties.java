package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.assembly.Quantity;
import brakewright.assembly.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What is written is read as what it was. */
@Tag("law")
class TomlLiteralProperties {

    @Provide
    Arbitrary<Schema.Entry> keys() {
        return Arbitraries.of(
                Schema.all().stream()
                        .filter(entry -> entry.kind().isSingleNumber())
                        .filter(entry -> !(entry.kind() instanceof Kind.Count))
                        .toList());
    }

    @Property(tries = 300)
    void aNumberIsTheSameAgain(
            @ForAll("keys") Schema.Entry key,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(15) double share) {
        double value = key.least() + share * (key.high() - key.least());
        assertThat(read(key, new Value.Number(Quantity.exact(value))))
                .isEqualTo(new Value.Number(Quantity.exact(value)));
    }

    @Property(tries = 300)
    void aToleranceIsTheSameAgain(
            @ForAll("keys") Schema.Entry key,
            @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(15) double share,
            @ForAll @DoubleRange(min = 0.001, max = 0.9) @Scale(15) double off) {
        double value = key.low() + share * (key.high() - key.low());
        Quantity quantity = new Quantity(value, off * Math.abs(value));
        Value.Number got = (Value.Number) read(key, new Value.Number(quantity));
        assertThat(got.quantity().value()).isEqualTo(value);
        // of a ratio it is written in percent: three roundings
        assertThat(got.quantity().tolerance())
                .isBetween(
                        quantity.tolerance() - 3.0 * Math.ulp(quantity.tolerance()),
                        quantity.tolerance() + 3.0 * Math.ulp(quantity.tolerance()));
    }

    @Property(tries = 200)
    void aTextIsTheSameAgain(@ForAll String text) {
        String said = text.replaceAll("\\p{C}", "").replace("\r", "");
        assertThat(raw(TomlLiteral.quoted(said))).isEqualTo(said);
        assertThat(raw(TomlLiteral.quoted(said + "\n\"\\" + said)))
                .isEqualTo(said + "\n\"\\" + said);
    }

    private static Value read(Schema.Entry key, Value value) {
        List<Problem> problems = new ArrayList<>();
        Object raw = raw(TomlLiteral.of(key, value));
        Value read =
                new ValueReader(new TableCurves(Vehicles.TABLES), Spelling.TOML, problems)
                        .read(key, key.key(), raw, 1)
                        .orElseThrow(() -> new AssertionError(problems));
        assertThat(problems).isEmpty();
        return read;
    }

    private static Object raw(String literal) {
        List<Problem> problems = new ArrayList<>();
        WrittenTable table = TomlText.read("key = " + literal, problems).table();
        assertThat(problems).as(literal).isEmpty();
        return Objects.requireNonNull(table.values().get("key")).raw();
    }
}

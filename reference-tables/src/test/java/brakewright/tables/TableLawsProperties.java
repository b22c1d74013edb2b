package brakewright.tables;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.spec.Curve;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** What holds for the tables whatever is asked of them. */
@Tag("law")
class TableLawsProperties {

    private static final ReferenceTables TABLES = ReferenceTables.load();

    @Provide
    Arbitrary<WireEntry> wires() {
        return Arbitraries.of(TABLES.wires());
    }

    @Provide
    Arbitrary<Default> defaults() {
        return Arbitraries.of(TABLES.defaults());
    }

    @Provide
    Arbitrary<CurveEntry> curves() {
        return Arbitraries.of(TABLES.curves());
    }

    @Property
    void blanksAndCaseOfAWireSizeDoNotMatter(
            @ForAll("wires") WireEntry wire,
            @ForAll @IntRange(max = 3) int blanks,
            @ForAll boolean upper) {
        String spaced = wire.size().replace(" ", " ".repeat(blanks));
        String spelled = upper ? spaced.toUpperCase(Locale.ROOT) : spaced.toLowerCase(Locale.ROOT);
        assertThat(TABLES.wire(spelled)).contains(wire);
    }

    @Property
    void wireSizesBetweenThoseOfTheTableAreNotFound(@ForAll @IntRange(min = 1, max = 60) int mm2) {
        boolean listed = List.of(1, 4, 6, 10, 16, 25).contains(mm2);
        assertThat(TABLES.wire(mm2 + " mm²").isPresent()).isEqualTo(listed);
    }

    @Property
    void aFactThatNoRowNamesChangesNoDefault(
            @ForAll("defaults") Default entry,
            @ForAll @AlphaChars @StringLength(min = 10, max = 12) String fact,
            @ForAll @AlphaChars String value) {
        Map<String, String> facts = new HashMap<>(entry.when());
        assertThat(TABLES.defaultFor(entry.key(), facts)).contains(entry);
        facts.put(fact, value);
        assertThat(TABLES.defaultFor(entry.key(), facts)).contains(entry);
    }

    @Property
    void everyCurveKeepsItsOrderBetweenItsPoints(
            @ForAll("curves") CurveEntry entry,
            @ForAll @DoubleRange(min = -50, max = 80) double one,
            @ForAll @DoubleRange(min = -50, max = 80) double other) {
        Curve curve = entry.curve();
        double low = curve.at(Math.min(one, other));
        double high = curve.at(Math.max(one, other));
        switch (entry.quantity()) {
            case OPEN_CIRCUIT_VOLTAGE -> assertThat(low).isLessThanOrEqualTo(high);
            case RESISTANCE_BY_TEMPERATURE -> assertThat(low).isGreaterThanOrEqualTo(high);
            case RESISTANCE_BY_CHARGE ->
                    assertThat(Math.min(low, high)).isGreaterThanOrEqualTo(1.0);
        }
    }
}

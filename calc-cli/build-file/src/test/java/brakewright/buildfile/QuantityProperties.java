package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.assembly.Quantity;
import brakewright.buildfile.QuantityParser.NotAQuantity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class QuantityProperties {

    @Provide
    Arbitrary<ListedUnit> units() {
        return Arbitraries.of(ListedUnit.all());
    }

    @Property
    void aValueWrittenInAnyUnitReadsBack(
            @ForAll("units") ListedUnit unit,
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value)
            throws NotAQuantity {
        double written = (value - unit.offset()) / unit.factor();
        double read = QuantityParser.parse(written + " " + unit.symbol(), unit.dimension()).value();
        assertThat(read)
                .isCloseTo(
                        value, within(1e-12 * Math.max(Math.abs(value), Math.abs(unit.offset()))));
    }

    @Property
    void aToleranceWrittenInAnyUnitReadsBack(
            @ForAll("units") ListedUnit unit,
            @ForAll @DoubleRange(min = 0, max = 1e6) double tolerance)
            throws NotAQuantity {
        double written = tolerance / unit.factor();
        String text = "1 " + unit.symbol() + " ± " + written + " " + unit.symbol();
        assertThat(QuantityParser.parse(text, unit.dimension()).tolerance())
                .isCloseTo(tolerance, within(1e-12 * tolerance));
    }

    @Property
    void noTextMakesAnythingButAQuantityOrAComplaint(
            @ForAll String text, @ForAll Dimension dimension) {
        try {
            Quantity quantity = QuantityParser.parse(text, dimension);
            assertThat(quantity.value()).isFinite();
            assertThat(quantity.tolerance()).isFinite().isNotNegative();
        } catch (NotAQuantity complaint) {
            assertThat(complaint.getMessage()).isNotBlank();
        }
    }

    @Provide
    Arbitrary<String> nearMisses() {
        return Arbitraries.of(
                        "1", "9", "e308", "e", ".", ",", "-", "+", "±", "+-", " ", "%", "m", "km",
                        "m/s", "Ω", "°C", "°F", "K", "\t")
                .list()
                .ofMaxSize(10)
                .map(parts -> String.join("", parts));
    }

    @Property
    void noNearMissMakesAnythingButAQuantityOrAComplaint(
            @ForAll("nearMisses") String text, @ForAll Dimension dimension) {
        noTextMakesAnythingButAQuantityOrAComplaint(text, dimension);
    }
}

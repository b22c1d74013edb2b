package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brakewright.spec.Input;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A row that cannot be right stops the load, and the message says where it is. */
class KeyTableTest {

    private static String shipped() throws IOException {
        try (InputStream bytes =
                Objects.requireNonNull(KeyTable.class.getResourceAsStream(KeyTable.NAME))) {
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Each case changes the first row that holds {@code old}. */
    @ParameterizedTest(name = "{1} for {0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            rider.mass,mass|rider.weight,mass|key|the key of an input, was "rider.weight"
            vehicle.mass,mass|rider.mass,mass|key|a key that no earlier row has, was "rider.mass"
            rider.mass,mass|rider.mass,heaviness|kind|a kind that the first lines name, was "heaviness"
            rider.mass,mass|rider.mass,ass|kind|a kind that the first lines name, was "ass"
            rider.mass,mass|rider.mass,pair(mas)|kind|a kind that the first lines name, was "pair(mas)"
            rider.mass,mass|rider.mass,words()|kind|a kind that the first lines name, was "words()"
            rider.mass,mass|rider.mass,curve(mass)|kind|a kind that the first lines name, was "curve(mass)"
            mass,required,10,250|mass,needed,10,250|need|required, own cell or optional, was "needed"
            mass,required,10,250|mass,required,ten,250|lowest|a number, was "ten"
            mass,required,10,250|mass,required,,250|lowest|a number, was ""
            mass,required,10,250|mass,required,10,NaN|highest|a finite number, was "NaN"
            mass,required,10,250|mass,required,10,10|highest|a number above 10, was "10"
            (yes no),optional,,|(yes no),optional,0,|lowest|nothing, was "0"
            92 kg,rider with gear|,rider with gear|example|a text, was ""
            92 kg,rider with gear|92 kg,|what|a text, was ""
            gear,bathroom scale,|gear,,|found|a text, was ""
            gear,bathroom scale,|gear,bathroom scale,none|left_out|nothing, was "none"
            rider,bathroom scale,assumed|rider,bathroom scale,|left_out|a text, was ""
            """)
    void isNamedWithItsLineAndColumn(String old, String changed, String column, String expected)
            throws IOException {
        String shipped = shipped();
        assertThat(shipped).contains(old);
        int at = shipped.indexOf(old);
        long line = shipped.substring(0, at + 1).lines().count();
        String spoiled = shipped.substring(0, at) + changed + shipped.substring(at + old.length());

        assertThatThrownBy(() -> KeyTable.read(new StringReader(spoiled)))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage(
                        "keys.csv, line " + line + ", column " + column + ": expected " + expected);
    }

    @ParameterizedTest
    @CsvSource({"'gear,bathroom scale,', gear, 7", "gear, 'gear,with helmet', 10"})
    void aRowOfOtherLengthIsNamedWithItsLine(String old, String changed, int fields)
            throws IOException {
        String spoiled = shipped().replaceFirst("rider with " + old, "rider with " + changed);
        long line = spoiled.substring(0, spoiled.indexOf("rider.mass,")).lines().count() + 1;
        assertThatThrownBy(() -> KeyTable.read(new StringReader(spoiled)))
                .hasMessage("keys.csv, line " + line + ": expected 9 fields, was " + fields);
    }

    @Test
    void otherColumnsAreRefused() throws IOException {
        String spoiled = shipped().replace("key,kind,need", "key,sort,need");
        assertThatThrownBy(() -> KeyTable.read(new StringReader(spoiled)))
                .hasMessageContaining(": expected the columns key,kind,need,")
                .hasMessageContaining(", was key,sort,need,");
    }

    @Test
    void anInputWithoutARowIsNamed() throws IOException {
        String spoiled = shipped().replaceFirst("\nuse.headwind,[^\n]*", "");
        assertThatThrownBy(() -> KeyTable.read(new StringReader(spoiled)))
                .hasMessage("keys.csv: no row for use.headwind");
    }

    @Test
    void hasOneRowForEachInput() throws IOException {
        long rows = shipped().lines().filter(line -> !line.startsWith("#")).count() - 1;
        assertThat(rows).isEqualTo(Input.values().length);
    }
}

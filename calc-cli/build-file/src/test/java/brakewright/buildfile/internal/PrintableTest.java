package brakewright.buildfile.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintableTest {

    @ParameterizedTest
    @CsvSource({
        "001b, \\u001B",
        "0007, \\u0007",
        "000a, \\n",
        "000d, \\r",
        "0009, \\t",
        "007f, \\u007F",
        "009b, \\u009B",
        "00ad, \\u00AD",
        "034f, \\u034F",
        "061c, \\u061C",
        "115f, \\u115F",
        "200b, \\u200B",
        "200e, \\u200E",
        "2028, \\u2028",
        "202e, \\u202E",
        "2066, \\u2066",
        "3164, \\u3164",
        "d800, \\uD800",
        "fe0f, \\uFE0F",
        "feff, \\uFEFF",
        "ffff, \\uFFFF",
        "e0001, \\U000E0001"
    })
    void showsWhatCannotBeSeen(String hex, String shown) {
        String odd = Character.toString(Integer.parseInt(hex, 16));
        assertThat(Printable.shown("a" + odd + "b")).isEqualTo("a" + shown + "b");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "Trail board", "68 mΩ ± 10 %", "Šķūnis", "坂道", "🛹", "a\\u202Eb", "é"})
    void leavesWhatIsSeen(String text) {
        assertThat(Printable.shown(text)).isEqualTo(text);
        assertThat(Printable.inJson(text)).isEqualTo(text);
    }

    @Test
    void keepsWhatItsWriterPutThere() {
        assertThat(Printable.shownBut("a\n\u001b[0m\u200b", "\u001b\n"))
                .isEqualTo("a\n\u001b[0m\\u200B");
    }

    /** JSON has escapes of four digits only, two for a character beyond them. */
    @Test
    void escapesInJsonAsJsonDoes() {
        assertThat(Printable.inJson("{\n  \"a\" : \"\u202e\u007f\udb40\udc01\"\n}\n"))
                .isEqualTo("{\n  \"a\" : \"\\u202E\\u007F\\uDB40\\uDC01\"\n}\n");
    }
}

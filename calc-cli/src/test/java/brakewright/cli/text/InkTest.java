package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class InkTest {

    @Property
    void plainIsAsciiWhateverTheTextHolds(@ForAll String text) {
        assertThat(new Ink(false, true).settle(text).chars()).allMatch(letter -> letter < 128);
    }

    @Property
    void allLettersStayWherePlainIsNotAskedFor(@ForAll String text) {
        assertThat(new Ink(true, false).settle(text)).isEqualTo(text);
    }

    @Example
    void plainSpellsTheLettersOfUnits() {
        assertThat(new Ink(false, true).settle("5 mΩ ± 10 %, 20 °C, 3 m/s², −1"))
                .isEqualTo("5 mohm +- 10 %, 20 degC, 3 m/s2, -1");
    }

    @Example
    void paintsOnlyInColour() {
        assertThat(new Ink(true, false).paint(Ink.Tone.GOOD, "fine"))
                .isEqualTo("\u001b[30;42mfine\u001b[0m");
        assertThat(new Ink(false, false).paint(Ink.Tone.GOOD, "fine")).isEqualTo("fine");
    }
}

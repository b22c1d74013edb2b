package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;

class PageTest {

    @Property
    void aParagraphOfShortWordsStaysWithinAHundredColumns(
            @ForAll @Size(max = 200)
                    java.util.List<@AlphaChars @StringLength(min = 1, max = 20) String> words,
            @ForAll @IntRange(max = 40) int indent) {
        String text =
                new Page(new Ink(false, false))
                        .paragraph("", indent, String.join(" ", words))
                        .text();
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
        assertThat(text.replaceAll("\\s+", " ").strip()).isEqualTo(String.join(" ", words));
    }

    @Example
    void aNumberStaysWithItsUnit() {
        String text =
                new Page(new Ink(false, false)).paragraph("", 0, "x".repeat(96) + " 5 km/h").text();
        assertThat(text).endsWith("\n5 km/h\n");
    }

    @Example
    void coloursTakeNoRoom() {
        Ink ink = new Ink(true, false);
        String label = ink.paint(Ink.Tone.BAD, "DANGER");
        assertThat(new Page(new Ink(false, false)).paragraph(label, 10, "text").text())
                .isEqualTo(label + "    text\n");
    }

    @Example
    void aPlainLabelKeepsTheTextInItsColumn() {
        String text =
                new Page(new Ink(false, true)).paragraph("at 20 °C", 12, "x ".repeat(60)).text();
        assertThat(text).startsWith("at 20 degC  x x");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
    }

    @Example
    void linesDoNotEndInBlanks() {
        assertThat(new Page(new Ink(false, false)).line("a   ").blank().text()).isEqualTo("a\n\n");
    }
}

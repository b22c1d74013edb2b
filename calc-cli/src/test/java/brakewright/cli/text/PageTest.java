package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.CharRange;
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

    /** Words of any length, letters of two units among them; nothing is lost. */
    @Property
    void noLineIsWiderThanAHundredColumnsWhateverTheWords(
            @ForAll @Size(max = 20)
                    java.util.List<@CharRange(from = 'a', to = 'e') @StringLength(max = 300) String>
                            words,
            @ForAll @IntRange(max = 40) int indent) {
        String all = String.join(" ", words).replace("e", "\ud83d\udef4");
        Page page = new Page(new Ink(true, false));
        String text = page.paragraph("label", indent, all).line(all).text();
        assertThat(text.lines())
                .allSatisfy(
                        line ->
                                assertThat(line.codePointCount(0, line.length()))
                                        .isLessThanOrEqualTo(100));
        assertThat(text.replaceAll("\\s+", ""))
                .isEqualTo(("label" + all + all).replaceAll("\\s+", ""));
    }

    @Example
    void aHeadingThatIsTooLongIsBrokenWithItsColour() {
        Ink ink = new Ink(true, false);
        String text = new Page(ink).line(ink.heading("x".repeat(150))).text();
        assertThat(text.replaceAll("\u001b\\[[0-9;]*m", ""))
                .isEqualTo("X".repeat(100) + "\n" + "X".repeat(50) + "\n");
    }

    @Example
    void aRowThatIsTooLongGoesOnAlike() {
        String row = "  " + "x ".repeat(60).strip();
        assertThat(new Page(new Ink(false, false)).line(row).text().lines())
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).startsWith("  x"));
    }

    @Example
    void aLabelWiderThanItsColumnKeepsABlank() {
        String text =
                new Page(new Ink(false, true))
                        .paragraph("cells at 20 °C", 14, "up to 3.7 A " + "x ".repeat(60))
                        .text();
        assertThat(text).startsWith("cells at 20 degC up to 3.7 A x");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
    }

    @Example
    void aLineFeedBeginsALine() {
        assertThat(new Page(new Ink(false, false)).paragraph("", 2, "a\n\nb c").text())
                .isEqualTo("  a\n\n  b c\n");
    }

    @Example
    void linesDoNotEndInBlanks() {
        assertThat(new Page(new Ink(false, false)).line("a   ").blank().text()).isEqualTo("a\n\n");
    }
}

package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextPlotTest {

    private static String drawn(Ink ink, double... values) {
        Page page = new Page(ink);
        new TextPlot(ink, page)
                .courses(
                        "force [N]",
                        new String[] {"0", "10 m/s"},
                        List.of(new TextPlot.Course("thrust", '•', '*', values)));
        return page.text();
    }

    private static double[] rising() {
        return TextPlot.columns(0.0, 10.0);
    }

    @Test
    void aCourseRisesFromFootToHead() {
        List<String> lines = drawn(new Ink(false, false), rising()).lines().toList();
        String highest =
                lines.stream().filter(line -> line.contains("10.0 │")).findFirst().orElseThrow();
        String lowest =
                lines.stream().filter(line -> line.contains("0.0 │•")).findFirst().orElseThrow();
        assertThat(highest.lastIndexOf('•')).isEqualTo(highest.length() - 1);
        assertThat(lines.indexOf(highest)).isLessThan(lines.indexOf(lowest));
        assertThat(lines).anyMatch(line -> line.contains("• thrust"));
    }

    @Test
    void plainPicturesAreAscii() {
        assertThat(drawn(new Ink(false, true), rising()))
                .matches("[\\x00-\\x7f]*")
                .contains("* thrust");
    }

    @Test
    void aPictureFitsTheNarrowestPage() {
        assertThat(drawn(new Ink(false, false, Ink.FEWEST_COLUMNS), rising()).lines())
                .allMatch(line -> line.length() <= Ink.FEWEST_COLUMNS);
    }

    @Test
    void whatIsNotKnownIsLeftOut() {
        double[] gap = rising();
        gap[20] = Double.NaN;
        long points =
                drawn(new Ink(false, false), gap)
                        .lines()
                        .limit(13)
                        .flatMapToInt(String::chars)
                        .filter(letter -> letter == '•')
                        .count();
        assertThat(points).isEqualTo(TextPlot.COLUMNS - 1);
        double[] flat = new double[TextPlot.COLUMNS];
        Arrays.fill(flat, 3.0);
        assertThat(drawn(new Ink(false, false), flat)).isEmpty();
    }

    @Test
    void aDocumentHasPicturesOfItsOwn() {
        Manuscript manuscript = new Manuscript();
        assertThat(new TextPlot(manuscript.ink(), new Page(manuscript.ink())).isShown()).isFalse();
    }
}

package brakewright.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class ChartTest {

    private static final String HOSTILE = "</title><script>alert(1)</script>\"'&\u0000\u202e\ud800";

    private static final double[] PLACES =
            IntStream.rangeClosed(0, 30).mapToDouble(i -> i).toArray();

    @Test
    void aChartIsNamedAndToldInASentence() {
        Drawn drawn = new Drawn(plot("as set now", List.of(1.0, 2.0)));
        assertThat(drawn.only("title").getTextContent()).isEqualTo("Deceleration");
        assertThat(drawn.only("desc").getTextContent()).isEqualTo("It falls.");
        assertThat(drawn.only("svg").getAttribute("aria-labelledby"))
                .isEqualTo(
                        drawn.only("title").getAttribute("id")
                                + " "
                                + drawn.only("desc").getAttribute("id"));
        assertThat(drawn.texts())
                .contains("deceleration [m/s²]", "speed [km/h]", "as set now 0", "20");
    }

    @Test
    void hostileTextIsText() {
        for (Chart chart : all(HOSTILE)) {
            Drawn drawn = new Drawn(chart);
            assertThat(drawn.all("script")).isEmpty();
            assertThat(drawn.only("title").getTextContent())
                    .isEqualTo("</title><script>alert(1)</script>\"'&\ufffd\ufffd\ufffd");
        }
    }

    @Test
    void theSameNumbersAreDrawnTheSame() {
        List<String> once = all("any").stream().map(Chart::document).toList();
        assertThat(all("any").stream().map(Chart::document).toList()).isEqualTo(once);
    }

    /** As many courses as nobody draws, of any slope, with labels of any length. */
    @Property(tries = 60)
    void noLabelLiesOnAnotherOrOutside(
            @ForAll @Size(min = 1, max = 7)
                    List<@DoubleRange(min = -50.0, max = 50.0) Double> slopes,
            @ForAll @IntRange(min = 1, max = 60) int letters) {
        Drawn drawn = new Drawn(plot("w".repeat(letters), slopes));
        List<Box> boxes = drawn.boxes();
        for (int i = 0; i < boxes.size(); i++) {
            assertThat(drawn.frame().grown(0.1).holds(boxes.get(i)))
                    .as(drawn.texts().get(i))
                    .isTrue();
            for (int other = 0; other < i; other++) {
                assertThat(boxes.get(i).meets(boxes.get(other)))
                        .as(drawn.texts().get(i) + " on " + drawn.texts().get(other))
                        .isFalse();
            }
        }
    }

    @Test
    void whatHasNoRoomStandsBelowTheChart() {
        List<Double> many = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            many.add(i / 10.0);
        }
        Drawn crowded = new Drawn(plot("one of many courses", many));
        assertThat(crowded.texts()).contains("one of many courses 0", "one of many courses 29");
        assertThat(crowded.frame().height())
                .isGreaterThan(new Drawn(plot("few", List.of(1.0))).frame().height());
    }

    /** Its name stands beside it, not on it. */
    @Test
    void aCourseOfTwoPointsIsNotCoveredByItsName() {
        Plot plot =
                new Plot(
                        "Two",
                        "",
                        Axis.exact("sheet", "", 1.0, 2.0),
                        Axis.holding("deceleration", "m/s²", 0.0, 2.0),
                        new double[] {1.0, 2.0},
                        List.of(new Line("weakest brake", Role.PRESENT, new double[] {1.1, 1.1})),
                        List.of());
        Drawn drawn = new Drawn(plot);
        Box label = drawn.boxes().get(drawn.texts().indexOf("weakest brake"));
        double line = new Canvas("c", plot.across(), plot.up()).y(1.1);
        assertThat(label.top() < line && label.bottom() > line).isFalse();
    }

    @Test
    void aGapIsNotDrawnAcross() {
        double[] values = {1.0, 2.0, Double.NaN, 2.0, 1.0};
        Plot plot =
                new Plot(
                        "Gap",
                        "",
                        Axis.exact("time", "s", 0.0, 4.0),
                        Axis.holding("speed", "km/h", 0.0, 2.0),
                        new double[] {0.0, 1.0, 2.0, 3.0, 4.0},
                        List.of(new Line("measured", Role.MEASURED, values)),
                        List.of());
        String course = lines(new Drawn(plot)).get(0).getAttribute("d");
        assertThat(course.chars().filter(letter -> letter == 'M').count()).isEqualTo(2);
        assertThat(plot.numbers().rows().get(2)).containsExactly("2.0", "");
    }

    @Test
    void manyPointsAreDrawnInFewAndKeepTheirPeaks() {
        double[] places = IntStream.range(0, 20_000).mapToDouble(i -> i).toArray();
        double[] values = IntStream.range(0, 20_000).mapToDouble(i -> Math.sin(i)).toArray();
        values[12_345] = 9.0;
        Plot plot =
                new Plot(
                        "Many",
                        "",
                        Axis.exact("time", "s", 0.0, 20_000.0),
                        Axis.holding("current", "A", -1.0, 9.0),
                        places,
                        List.of(new Line("measured", Role.MEASURED, values)),
                        List.of());
        String course = lines(new Drawn(plot)).get(0).getAttribute("d");
        assertThat(course.length()).isLessThan(15_000);
        assertThat(course)
                .contains(" " + Svg.number(new Canvas("c", plot.across(), plot.up()).y(9.0)));
        assertThat(plot.numbers().rows()).hasSizeLessThan(62);
    }

    @Test
    void aCourseWithoutAValueForEachPlaceIsRefused() {
        assertThatThrownBy(
                        () ->
                                new Plot(
                                        "",
                                        "",
                                        Axis.exact("", "", 0.0, 1.0),
                                        Axis.exact("", "", 0.0, 1.0),
                                        PLACES,
                                        List.of(new Line("short", Role.PRESENT, new double[2])),
                                        List.of()))
                .hasMessage("short must have 31 values, had 2");
    }

    @Test
    void aFieldTellsItsLevelsInNumbers() {
        Drawn drawn = new Drawn(field("more than may be"));
        assertThat(drawn.texts()).contains("0 A", "10 A", "20 A", "more than may be");
        assertThat(drawn.all("pattern")).hasSize(1);
        assertThat(field("").numbers().rows().get(0).get(0)).isEqualTo("30");
    }

    @Test
    void aBarIsAsLongAsItsValue() {
        List<Element> bars = new Drawn(bars("air")).all("rect");
        double half = Double.parseDouble(bars.get(1).getAttribute("width"));
        assertThat(Double.parseDouble(bars.get(0).getAttribute("width")))
                .isBetween(2.0 * half - 0.11, 2.0 * half + 0.11);
        assertThat(new Drawn(bars("air")).texts()).contains("air", "40.0 %", "20.0 %");
    }

    private static List<Element> lines(Drawn drawn) {
        return drawn.all("path").stream()
                .filter(path -> path.getAttribute("class").startsWith("c-line"))
                .toList();
    }

    private static List<Chart> all(String text) {
        Axis across = Axis.exact(text, text, 0.0, 30.0);
        return List.of(
                new Plot(
                        text,
                        text,
                        across,
                        across,
                        PLACES,
                        List.of(new Line(text, Role.PRESENT, PLACES)),
                        List.of(Bound.level(text, Role.LIMIT, 20.0, Bound.Beyond.MORE))),
                new FieldChart(
                        text,
                        text,
                        across,
                        across,
                        across,
                        PLACES,
                        PLACES,
                        sum(),
                        List.of(region(text))),
                new Bars(text, text, across, List.of(new Bars.Part(text, 3.0))));
    }

    private static double[][] sum() {
        double[][] values = new double[PLACES.length][PLACES.length];
        for (int row = 0; row < PLACES.length; row++) {
            for (int column = 0; column < PLACES.length; column++) {
                values[row][column] = PLACES[column] - PLACES[row] / 3.0;
            }
        }
        return values;
    }

    private static Region region(String label) {
        return new Region(label, Role.LIMIT, true, sum(), 15.0);
    }

    private static FieldChart field(String label) {
        return new FieldChart(
                "Map",
                "",
                Axis.exact("speed", "km/h", 0.0, 30.0),
                Axis.exact("charge", "%", 0.0, 30.0),
                Axis.holding("current", "A", 0.0, 30.0),
                PLACES,
                PLACES,
                sum(),
                List.of(region(label)));
    }

    private static Bars bars(String name) {
        return new Bars(
                "Shares",
                "",
                Axis.holding("share", "%", 0.0, 40.0),
                List.of(new Bars.Part(name, 40.0), new Bars.Part("rolling", 20.0)));
    }

    private static Plot plot(String label, List<Double> slopes) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < slopes.size(); i++) {
            double[] values = new double[PLACES.length];
            for (int place = 0; place < PLACES.length; place++) {
                values[place] = 20.0 + slopes.get(i) * PLACES[place] / 30.0;
            }
            lines.add(new Line(label + " " + i, Role.values()[i % Role.values().length], values));
        }
        return new Plot(
                "Deceleration",
                "It falls.",
                Axis.exact("speed", "km/h", 0.0, 30.0),
                Axis.holding("deceleration", "m/s²", -30.0, 70.0),
                PLACES,
                lines,
                List.of(
                        Bound.level("what is wanted", Role.WANTED, 21.0, Bound.Beyond.NEITHER),
                        Bound.level("what is permitted", Role.LIMIT, 24.0, Bound.Beyond.MORE),
                        Bound.upright("the highest", Role.GROUND, 29.0)));
    }
}

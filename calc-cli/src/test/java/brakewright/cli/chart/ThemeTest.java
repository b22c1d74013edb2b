package brakewright.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Reads the colours from the style as a browser does. */
class ThemeTest {

    /** Source: Web Content Accessibility Guidelines 2.1, W3C, 2018, 1.4.3 and 1.4.11. */
    private static final double LETTERS = 4.5;

    private static final double SHAPES = 3.0;

    private static final List<String> INKS =
            List.of("ink", "quiet", "present", "proposed", "other", "limit", "wanted");

    private static final Pattern COLOUR = Pattern.compile("--([a-z]+):(#[0-9a-f]{6})");

    @Test
    void lettersAreReadOnBothGrounds() {
        for (Map<String, String> scheme : schemes()) {
            for (String ink : INKS) {
                for (String ground : List.of("ground", "leaf")) {
                    assertThat(contrast(scheme.get(ink), scheme.get(ground)))
                            .as(ink + " on " + ground)
                            .isGreaterThanOrEqualTo(LETTERS);
                }
            }
        }
    }

    /** The deepest shade is that of every level over the other. */
    @Test
    void lettersAndLinesAreReadOnTheDeepestShade() {
        Matcher opacity =
                Pattern.compile("c-shade\\{[^}]*fill-opacity:([.0-9]+)").matcher(Theme.css());
        assertThat(opacity.find()).isTrue();
        double shine = Math.pow(1.0 - Double.parseDouble(opacity.group(1)), 6);
        for (Map<String, String> scheme : schemes()) {
            String deepest = mixed(scheme.get("ground"), scheme.get("present"), shine);
            assertThat(contrast(scheme.get("ink"), deepest)).isGreaterThanOrEqualTo(LETTERS);
            assertThat(contrast(scheme.get("limit"), scheme.get("ground")))
                    .isGreaterThanOrEqualTo(SHAPES);
        }
    }

    @Test
    void noRoleHasTheStrokeOfAnother() {
        Set<String> strokes = new HashSet<>();
        for (Role role : Role.values()) {
            Matcher rule =
                    Pattern.compile("path\\." + role.style() + "\\{([^}]*)\\}")
                            .matcher(Theme.css());
            assertThat(rule.find()).as(role.name()).isTrue();
            String shape = rule.group(1).replaceAll("stroke:[^;]*;?", "");
            assertThat(strokes.add(shape)).as(role + " " + shape).isTrue();
        }
    }

    /** The light one first; both have every colour. */
    private static List<Map<String, String>> schemes() {
        String css = Theme.css();
        int dark = css.indexOf("@media");
        Function<String, Map<String, String>> read =
                text -> {
                    Map<String, String> colours = new HashMap<>();
                    COLOUR.matcher(text)
                            .results()
                            .forEach(each -> colours.put(each.group(1), each.group(2)));
                    return colours;
                };
        List<Map<String, String>> schemes =
                List.of(read.apply(css.substring(0, dark)), read.apply(css.substring(dark)));
        assertThat(schemes.get(0).keySet()).isEqualTo(schemes.get(1).keySet()).containsAll(INKS);
        return schemes;
    }

    private static double contrast(String one, String other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String colour) {
        double[] linear =
                Arrays.stream(channels(colour))
                        .map(each -> each / 255.0)
                        .map(
                                each ->
                                        each <= 0.04045
                                                ? each / 12.92
                                                : Math.pow((each + 0.055) / 1.055, 2.4))
                        .toArray();
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
    }

    private static double[] channels(String colour) {
        return new double[] {
            Integer.parseInt(colour.substring(1, 3), 16),
            Integer.parseInt(colour.substring(3, 5), 16),
            Integer.parseInt(colour.substring(5, 7), 16)
        };
    }

    private static String mixed(String ground, String over, double shine) {
        double[] below = channels(ground);
        double[] above = channels(over);
        StringBuilder colour = new StringBuilder("#");
        for (int i = 0; i < 3; i++) {
            colour.append(
                    String.format("%02x", Math.round(shine * below[i] + (1.0 - shine) * above[i])));
        }
        return colour.toString();
    }
}

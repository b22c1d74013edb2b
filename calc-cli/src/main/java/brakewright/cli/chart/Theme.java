package brakewright.cli.chart;

import java.util.List;

/**
 * The colours and strokes of charts and pages, light and dark. Letters in any of them are read on
 * the ground that they stand on, and no two roles have the same stroke.
 */
public final class Theme {

    /**
     * A colour, light and dark.
     *
     * @param name of the property of the style that has it
     * @param light on a light ground
     * @param dark on a dark ground
     */
    public record Shade(String name, String light, String dark) {}

    private static final List<Shade> SHADES =
            List.of(
                    new Shade("ground", "#fcfbf7", "#14191d"),
                    new Shade("leaf", "#f3f0e7", "#1d252b"),
                    new Shade("ink", "#1f2c35", "#e8e5dc"),
                    new Shade("quiet", "#53606a", "#a9b4bb"),
                    new Shade("hair", "#ddd8ca", "#344049"),
                    new Shade("present", "#0a6570", "#5fc6cb"),
                    new Shade("proposed", "#7a3e97", "#d3a3e8"),
                    new Shade("other", "#775700", "#dcb650"),
                    new Shade("limit", "#a83218", "#ff957b"),
                    new Shade("wanted", "#3d691d", "#9fd274"));

    private static final String STROKES =
            "svg.c{display:block;width:100%;height:auto;overflow:visible;"
                    + "font:12.5px ui-sans-serif,system-ui,\"Helvetica Neue\",Arial,"
                    + "\"DejaVu Sans\",sans-serif;font-variant-numeric:tabular-nums}"
                    + ".c text{fill:var(--ink)}"
                    + ".c .c-tick,.c .c-axis{fill:var(--quiet)}"
                    + ".c path{fill:none;stroke-linejoin:round}"
                    + ".c .c-hair{stroke:var(--hair)}"
                    + ".c .c-base{stroke:var(--quiet)}"
                    + ".c .c-line{stroke-width:2.2}"
                    + ".c .c-level{stroke:var(--present);stroke-width:.7}"
                    + ".c .c-shade{fill:var(--present);fill-opacity:.1}"
                    + ".c .c-zone{stroke:none;fill-opacity:1}"
                    + ".c .c-hatch{stroke-width:1.8}"
                    + ".c .c-bar{fill:var(--present)}"
                    + ".c path.c-present{stroke:var(--present)}"
                    + ".c path.c-proposed{stroke:var(--proposed);stroke-dasharray:9 3}"
                    + ".c path.c-other{stroke:var(--other);stroke-dasharray:9 3 2 3}"
                    + ".c path.c-further{stroke:var(--ink);stroke-dasharray:9 3 2 3 2 3}"
                    + ".c path.c-measured{stroke:var(--ink);stroke-width:1.4}"
                    + ".c path.c-limit{stroke:var(--limit);stroke-width:1.6}"
                    + ".c path.c-hatch{stroke-dasharray:none;stroke-width:1.8}"
                    + ".c path.c-wanted{stroke:var(--wanted);stroke-dasharray:2 4}"
                    + ".c path.c-ground{stroke:var(--quiet);stroke-width:1.4;stroke-dasharray:5 3}"
                    + ".c .c-label{paint-order:stroke;stroke:var(--ground);stroke-width:3px;"
                    + "stroke-linejoin:round;font-weight:500}"
                    + ".c text.c-present{fill:var(--present)}"
                    + ".c text.c-proposed{fill:var(--proposed)}"
                    + ".c text.c-other{fill:var(--other)}"
                    + ".c text.c-limit{fill:var(--limit)}"
                    + ".c text.c-wanted{fill:var(--wanted)}"
                    + ".c text.c-ground{fill:var(--quiet)}";

    private Theme() {}

    /**
     * Returns the colours.
     *
     * @return the ground first
     */
    public static List<Shade> shades() {
        return SHADES;
    }

    /**
     * Returns the style that charts need: light on paper, and on a screen as it is preferred there.
     *
     * @return rules without a line break
     */
    public static String css() {
        StringBuilder light = new StringBuilder(":root{color-scheme:light dark");
        StringBuilder dark =
                new StringBuilder("@media screen and (prefers-color-scheme:dark){:root{");
        for (Shade shade : SHADES) {
            light.append(";--").append(shade.name()).append(':').append(shade.light());
            dark.append("--").append(shade.name()).append(':').append(shade.dark()).append(';');
        }
        return light.append('}') + dark.append("}}").toString() + STROKES;
    }
}

package brakewright.cli.chart;

/** A picture of numbers. */
public sealed interface Chart permits Plot, FieldChart, Bars {

    /**
     * Returns what is shown.
     *
     * @return a few words
     */
    String title();

    /**
     * Returns what to see in it.
     *
     * @return one sentence or two
     */
    String caption();

    /**
     * Draws it.
     *
     * @param id by which its parts are told from those of other charts of a page: letters, digits
     *     and hyphens
     * @return an element for a page that has the style of {@link Theme#css()}
     */
    String svg(String id);

    /**
     * Returns its numbers.
     *
     * @return as they are drawn
     */
    Grid numbers();

    /**
     * Draws it for a file of its own.
     *
     * @return a document that needs nothing beside it
     */
    default String document() {
        String drawn = svg("chart");
        int body = drawn.indexOf('>') + 1;
        return drawn.substring(0, body)
                        .replace("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" ")
                + "<style>"
                + Theme.css()
                + "svg.c{width:560px;background:var(--ground)}</style>"
                + drawn.substring(body)
                + "\n";
    }
}

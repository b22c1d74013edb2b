package brakewright.cli.chart;

/**
 * Where something holds on a {@link FieldChart}.
 *
 * @param label what holds there, in few words
 * @param role how its edge is drawn
 * @param isHatched whether all of it is hatched
 * @param values a row for each place at the side; it holds where they are at least {@code from}
 * @param from the value
 */
public record Region(String label, Role role, boolean isHatched, double[][] values, double from) {}

package brakewright.cli.chart;

/**
 * A course over the quantity of the chart.
 *
 * @param label what it is, in few words
 * @param role how it is drawn
 * @param values one at each place; what is not finite is a gap
 */
public record Line(String label, Role role, double[] values) {}

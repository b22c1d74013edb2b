/**
 * Draws charts as scalable vector graphics, the same to the letter for the same numbers.
 *
 * <p>A chart is told in data: {@link brakewright.cli.chart.Plot} has lines and bounds over one
 * quantity, {@link brakewright.cli.chart.FieldChart} a quantity over two others, {@link
 * brakewright.cli.chart.Bars} shares of a whole. Each has a title, a sentence that says what to
 * see, and its numbers as a {@link brakewright.cli.chart.Grid} of text. Colours and strokes stand
 * in {@link brakewright.cli.chart.Theme} alone; no chart tells anything by colour alone.
 */
@NullMarked
package brakewright.cli.chart;

import org.jspecify.annotations.NullMarked;

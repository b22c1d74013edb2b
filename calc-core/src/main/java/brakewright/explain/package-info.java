/**
 * How a result comes about, step by step: formula, terms, value, source.
 *
 * <p>The entry class is {@link brakewright.explain.Workings}. It stands above all models and none
 * of them knows it. The formulas are written once more here, as text that a reader can follow with
 * a calculator; tests work every step out from its text and hold the last one against the sheet.
 *
 * <pre>{@code
 * if (Workings.of(Worksheet.of(board), ResultId.TOP_SPEED) instanceof Working working) {
 *     System.out.println(working.value() + " in " + working.steps().size() + " steps");
 * }
 * }</pre>
 */
@NullMarked
package brakewright.explain;

import org.jspecify.annotations.NullMarked;

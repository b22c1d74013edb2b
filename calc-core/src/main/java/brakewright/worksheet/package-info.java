/**
 * Everything a builder wants to know about one vehicle, computed at once.
 *
 * <p>The entry class is {@link brakewright.worksheet.Worksheet}. It and its sheets add no physics:
 * they ask the other packages over the charge states and speeds in use and keep their answers.
 *
 * <p>{@link brakewright.worksheet.Workings} shows how a result comes about, step by step: formula,
 * terms, value, source. There the formulas are written once more, as text that a reader can follow
 * with a calculator; tests work every step out from its text and hold the last one against the
 * sheet.
 */
@NullMarked
package brakewright.worksheet;

import org.jspecify.annotations.NullMarked;

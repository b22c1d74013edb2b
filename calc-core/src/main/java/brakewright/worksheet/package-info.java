/**
 * Everything a builder wants to know about one vehicle, computed at once.
 *
 * <p>The entry class is {@link brakewright.worksheet.Worksheet}. It and its sheets add no physics:
 * they ask the other packages over the charge states and speeds in use and keep their answers.
 */
@NullMarked
package brakewright.worksheet;

import org.jspecify.annotations.NullMarked;

/**
 * Everything a builder wants to know about one vehicle, computed at once.
 *
 * <p>The entry class is {@link brakewright.worksheet.Worksheet}. It adds no physics: it asks the
 * other packages over the charge states and speeds in use and keeps their answers.
 */
@NullMarked
package brakewright.worksheet;

import org.jspecify.annotations.NullMarked;

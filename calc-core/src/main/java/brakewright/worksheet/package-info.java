/**
 * Everything a builder wants to know about one vehicle, computed at once.
 *
 * <p>The entry class is {@link brakewright.worksheet.Worksheet}. It and its sheets add no physics:
 * they ask the other packages over the charge states and speeds in use and keep their answers.
 *
 * <pre>{@code
 * Worksheet sheet = Worksheet.of(board);                      // finds its parts when they are asked for
 * Verdict verdict = sheet.review().verdict();
 * double brake = sheet.limits().motorBrake().value();         // A per motor
 * int stops = sheet.stops().size();
 * }</pre>
 */
@NullMarked
package brakewright.worksheet;

import org.jspecify.annotations.NullMarked;

/**
 * The worksheet as JSON, for other programs: keys end in their unit, what was not computed is
 * absent, and no number is infinite or not a number.
 */
@NullMarked
package brakewright.cli.json;

import org.jspecify.annotations.NullMarked;
